-- Readings that were added together, by one command or one commit in the page, share a delivery: it
-- is taken back as one. Of older archives that is not known, and each reading counts alone.
ALTER TABLE revision ADD COLUMN delivery INTEGER;
UPDATE revision SET delivery = id;
CREATE INDEX revision_delivery ON revision (delivery);

-- What a model's name meant before a reading settled it: what `undo` goes back to.
CREATE TABLE meant_before (
  revision INTEGER NOT NULL REFERENCES revision,
  model INTEGER NOT NULL REFERENCES model,
  same_as INTEGER REFERENCES model,
  same_as_revision INTEGER REFERENCES revision,
  PRIMARY KEY (revision, model)
) STRICT, WITHOUT ROWID;

-- The highest number a table's rows had before some were taken back: a number that was once told,
-- in a link to a figure, say, never comes to mean another row.
CREATE TABLE number_used (
  name TEXT PRIMARY KEY,
  highest INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE INDEX model_same_as ON model (same_as);
CREATE INDEX lineage_follows ON lineage (follows);
CREATE INDEX note_model ON note (model);
CREATE INDEX run_model ON run (model);

-- The steps from what was found to a result, where they are more than reading its number.
CREATE TABLE result_step (
  id INTEGER PRIMARY KEY,
  result INTEGER NOT NULL REFERENCES result,
  rule TEXT NOT NULL,
  before REAL,
  before_unit INTEGER REFERENCES unit,
  after REAL NOT NULL,
  after_unit INTEGER NOT NULL REFERENCES unit,
  label TEXT,
  stands_at TEXT
) STRICT;
CREATE INDEX result_step_result ON result_step (result);
