-- Rises with every change of the archive: what was derived from it knows whether it is stale.
CREATE TABLE archive_state (id INTEGER PRIMARY KEY CHECK (id = 1), stamp INTEGER NOT NULL) STRICT;
INSERT INTO archive_state (id, stamp) VALUES (1, 0);

-- A file somebody gave us, known by where it was read from. Its content is in `revision`.
CREATE TABLE source_file (
  id INTEGER PRIMARY KEY,
  origin TEXT NOT NULL UNIQUE
) STRICT;

-- One reading of one content of a file. Older readings stay; the current one is not superseded.
CREATE TABLE revision (
  id INTEGER PRIMARY KEY,
  source_file INTEGER NOT NULL REFERENCES source_file,
  number INTEGER NOT NULL,
  sha256 TEXT NOT NULL,
  bytes INTEGER NOT NULL,
  name TEXT NOT NULL,
  form TEXT NOT NULL,
  options TEXT NOT NULL,
  added_at TEXT NOT NULL,
  superseded_by INTEGER REFERENCES revision,
  UNIQUE (source_file, number)
) STRICT;
CREATE INDEX revision_sha256 ON revision (sha256);

-- What a revision says differently from the one before it.
CREATE TABLE revision_change (
  revision INTEGER NOT NULL REFERENCES revision,
  position INTEGER NOT NULL,
  sentence TEXT NOT NULL,
  PRIMARY KEY (revision, position)
) STRICT, WITHOUT ROWID;

-- Words that many rows share.
CREATE TABLE discipline (id INTEGER PRIMARY KEY, key TEXT NOT NULL UNIQUE) STRICT;
CREATE TABLE unit (id INTEGER PRIMARY KEY, symbol TEXT NOT NULL UNIQUE) STRICT;
CREATE TABLE rule (id INTEGER PRIMARY KEY, words TEXT NOT NULL UNIQUE) STRICT;
CREATE TABLE sheet (id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE) STRICT;

-- A name that was taken for a model of its own and turned out to mean another points to it;
-- `same_as_revision` is the reading (of a lineage table, say) that settled it.
CREATE TABLE model (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE,
  same_as INTEGER REFERENCES model,
  same_as_revision INTEGER REFERENCES revision
) STRICT;

-- What a source says of a model's descent.
CREATE TABLE lineage (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL REFERENCES revision,
  model INTEGER NOT NULL REFERENCES model,
  maker TEXT,
  line TEXT,
  generation TEXT,
  launched TEXT,
  season TEXT,
  segment TEXT,
  follows INTEGER REFERENCES model,
  aliases TEXT NOT NULL,
  stands_at TEXT
) STRICT;
CREATE INDEX lineage_model ON lineage (model);
CREATE INDEX lineage_revision ON lineage (revision);

-- A test, known by its key across sources.
CREATE TABLE test (id INTEGER PRIMARY KEY, key TEXT NOT NULL UNIQUE) STRICT;

-- A test as one revision of one source tells it.
CREATE TABLE report (
  id INTEGER PRIMARY KEY,
  test INTEGER NOT NULL REFERENCES test,
  revision INTEGER NOT NULL REFERENCES revision,
  title TEXT,
  publication TEXT,
  source_kind TEXT,
  date TEXT,
  size TEXT,
  season TEXT,
  vehicle TEXT,
  vehicle_mass_kg REAL,
  venue TEXT,
  surface_c REAL,
  air_c REAL,
  details_at TEXT NOT NULL
) STRICT;
CREATE INDEX report_test ON report (test);
CREATE INDEX report_revision ON report (revision);

CREATE TABLE entry (
  id INTEGER PRIMARY KEY,
  report INTEGER NOT NULL REFERENCES report,
  model INTEGER NOT NULL REFERENCES model,
  size TEXT,
  name_at TEXT
) STRICT;
CREATE INDEX entry_report ON entry (report);
CREATE INDEX entry_model ON entry (model);

-- Cells are written as sheet:row:column:text as found.
CREATE TABLE result (
  id INTEGER PRIMARY KEY,
  entry INTEGER NOT NULL REFERENCES entry,
  discipline INTEGER NOT NULL REFERENCES discipline,
  value REAL,
  unit INTEGER REFERENCES unit,
  spread REAL,
  runs INTEGER,
  place INTEGER,
  value_at TEXT,
  spread_at TEXT,
  runs_at TEXT,
  place_at TEXT,
  rule INTEGER REFERENCES rule
) STRICT;
CREATE INDEX result_entry ON result (entry);

CREATE TABLE run (
  id INTEGER PRIMARY KEY,
  report INTEGER NOT NULL REFERENCES report,
  discipline INTEGER NOT NULL REFERENCES discipline,
  sequence INTEGER NOT NULL,
  model INTEGER NOT NULL REFERENCES model,
  role TEXT NOT NULL,
  run INTEGER,
  from_kmh REAL,
  to_kmh REAL,
  distance_m REAL,
  time_s REAL,
  level_db REAL,
  value REAL,
  unit INTEGER REFERENCES unit,
  surface_c REAL,
  air_c REAL,
  remark TEXT,
  stands_at TEXT NOT NULL
) STRICT;
CREATE INDEX run_report ON run (report);

CREATE TABLE note (
  id INTEGER PRIMARY KEY,
  report INTEGER NOT NULL REFERENCES report,
  model INTEGER REFERENCES model,
  discipline INTEGER REFERENCES discipline,
  words TEXT NOT NULL,
  stands_at TEXT NOT NULL
) STRICT;
CREATE INDEX note_report ON note (report);

CREATE TABLE finding (
  id INTEGER PRIMARY KEY,
  revision INTEGER NOT NULL REFERENCES revision,
  kind TEXT NOT NULL,
  stands_at TEXT,
  found TEXT NOT NULL,
  expected TEXT NOT NULL,
  remedy TEXT NOT NULL
) STRICT;
CREATE INDEX finding_revision ON finding (revision);
