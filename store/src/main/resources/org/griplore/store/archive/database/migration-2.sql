-- Readings that were added together, by one command or one commit in the page, share a delivery: it
-- is taken back as one. Of older archives that is not known, and each reading counts alone.
ALTER TABLE revision ADD COLUMN delivery INTEGER;
UPDATE revision SET delivery = id;
CREATE INDEX revision_delivery ON revision (delivery);

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

-- Which model a reading took a name to mean, when that was not the name itself, and how: TOLD by a
-- lineage table, KNOWN as a shorter name or an alias, ASSUMED a misspelling. The newest reading counts.
CREATE TABLE reading_of_name (
  revision INTEGER NOT NULL REFERENCES revision,
  name INTEGER NOT NULL REFERENCES model,
  means INTEGER NOT NULL REFERENCES model,
  how TEXT NOT NULL,
  PRIMARY KEY (revision, name)
) STRICT, WITHOUT ROWID;
CREATE INDEX reading_of_name_name ON reading_of_name (name);
INSERT INTO reading_of_name (revision, name, means, how)
  SELECT same_as_revision, id, same_as, 'TOLD' FROM model WHERE same_as IS NOT NULL;

-- What the user decided on a name, or on a model's descent: the newest on a topic stands. Names are
-- kept as text, so that decisions outlive readings and can be carried to another archive.
-- `model.same_as` follows from these and from `reading_of_name`.
CREATE TABLE decision (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  topic TEXT NOT NULL,
  verdict TEXT NOT NULL,
  value TEXT,
  decided_at TEXT NOT NULL,
  words TEXT NOT NULL
) STRICT;

-- The archive's stamp when a model's names changed last: notes are found by them.
ALTER TABLE model ADD COLUMN renamed_at INTEGER NOT NULL DEFAULT 0;

-- How a log's runs of one discipline were reduced to results; lists of sentences stand a line each.
CREATE TABLE reduction (
  id INTEGER PRIMARY KEY,
  report INTEGER NOT NULL REFERENCES report,
  discipline INTEGER NOT NULL REFERENCES discipline,
  measure TEXT NOT NULL,
  unit INTEGER NOT NULL REFERENCES unit,
  by_ratio INTEGER NOT NULL,
  better TEXT NOT NULL,
  coast_by TEXT,
  from_kmh REAL,
  to_kmh REAL,
  level REAL,
  level_words TEXT NOT NULL,
  trace TEXT NOT NULL,
  slope REAL,
  trend_p REAL,
  step_after INTEGER,
  step_size REAL,
  step_p REAL,
  cycles TEXT NOT NULL,
  limits TEXT NOT NULL
) STRICT;
CREATE INDEX reduction_report ON reduction (report);

CREATE TABLE reduced_set (
  id INTEGER PRIMARY KEY,
  reduction INTEGER NOT NULL REFERENCES reduction,
  sequence INTEGER NOT NULL,
  model INTEGER NOT NULL REFERENCES model,
  role TEXT NOT NULL,
  cycle INTEGER,
  mean REAL,
  deviation REAL,
  counted INTEGER NOT NULL,
  reference REAL,
  reference_words TEXT NOT NULL,
  effect REAL,
  effect_error REAL,
  valid INTEGER NOT NULL,
  standing TEXT NOT NULL,
  reasons TEXT NOT NULL
) STRICT;
CREATE INDEX reduced_set_reduction ON reduced_set (reduction);
CREATE INDEX reduced_set_model ON reduced_set (model);

CREATE TABLE reduced_run (
  id INTEGER PRIMARY KEY,
  reduced_set INTEGER NOT NULL REFERENCES reduced_set,
  run INTEGER NOT NULL REFERENCES run,
  figure REAL,
  left_out TEXT,
  flag TEXT
) STRICT;
CREATE INDEX reduced_run_set ON reduced_run (reduced_set);
CREATE INDEX reduced_run_run ON reduced_run (run);

-- What a user said of the columns of tables of one layout: it is used for later files of that layout,
-- the newest first, until it is forgotten.
CREATE TABLE column_map (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL REFERENCES revision,
  layout TEXT NOT NULL,
  map TEXT NOT NULL,
  forgotten_at TEXT
) STRICT;
CREATE INDEX column_map_layout ON column_map (layout);
CREATE INDEX column_map_revision ON column_map (revision);
