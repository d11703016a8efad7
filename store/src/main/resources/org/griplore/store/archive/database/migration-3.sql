-- Schema 3. What was packed into texts stands in columns and rows of its own, key words are lower case
-- and checked, sentences are codes with parameters, and foreign keys are named like what they point to.
-- SCHEMA.md describes every table and column. Old tables are renamed before this script runs, and
-- `cells(old column)` stands for four columns: number of the sheet, row, column, text.

-- Rises with every change: what was derived from an archive knows whether it is stale. `last_result_id`
-- is the highest number a result ever had: `result` does without AUTOINCREMENT, which would cost a
-- third of the time of a bare insert.
CREATE TABLE archive_state (
  id INTEGER PRIMARY KEY CHECK (id = 1),
  stamp INTEGER NOT NULL,
  last_result_id INTEGER NOT NULL DEFAULT 0
) STRICT;
INSERT INTO archive_state (id, stamp, last_result_id)
  SELECT id, stamp, max((SELECT coalesce(max(id), 0) FROM old_result),
    (SELECT coalesce(max(highest), 0) FROM old_number_used WHERE name = 'result'))
  FROM old_archive_state;

-- What one addition brings; it is taken back as one.
CREATE TABLE delivery (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  added_at TEXT NOT NULL,
  reason TEXT,
  digest TEXT
) STRICT;
INSERT INTO delivery (id, added_at) SELECT delivery, substr(min(added_at), 1, 19) || 'Z' FROM old_revision GROUP BY delivery;

-- A file somebody gave us, known by where it was read from.
CREATE TABLE source (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  origin TEXT NOT NULL UNIQUE
) STRICT;
INSERT INTO source (id, origin) SELECT id, origin FROM old_source_file;

-- One reading of one content of a source. Older ones stay; the current one is not superseded.
CREATE TABLE revision (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  source_id INTEGER NOT NULL REFERENCES source,
  delivery_id INTEGER NOT NULL REFERENCES delivery ON DELETE CASCADE,
  number INTEGER NOT NULL CHECK (number >= 1),
  sha256 TEXT NOT NULL,
  bytes INTEGER NOT NULL,
  file TEXT NOT NULL,
  form TEXT NOT NULL,
  added_at TEXT NOT NULL,
  superseded_by_id INTEGER REFERENCES revision ON DELETE SET NULL,
  UNIQUE (source_id, number)
) STRICT;
CREATE INDEX revision_by_delivery ON revision (delivery_id);
CREATE INDEX revision_by_sha256 ON revision (sha256);
CREATE INDEX revision_by_successor ON revision (superseded_by_id);
INSERT INTO revision (id, source_id, delivery_id, number, sha256, bytes, file, form, added_at,
    superseded_by_id)
  SELECT id, source_file, delivery, number, sha256, bytes, name, form,
    substr(added_at, 1, 19) || 'Z', superseded_by
  FROM old_revision;

-- How a revision was read, where that was said.
CREATE TABLE revision_option (
  revision_id INTEGER NOT NULL REFERENCES revision ON DELETE CASCADE,
  position INTEGER NOT NULL,
  name TEXT NOT NULL,
  value TEXT NOT NULL,
  PRIMARY KEY (revision_id, position)
) STRICT, WITHOUT ROWID;

-- What a revision says differently from the one before it.
CREATE TABLE revision_change (
  revision_id INTEGER NOT NULL REFERENCES revision ON DELETE CASCADE,
  position INTEGER NOT NULL,
  code TEXT NOT NULL,
  parameters TEXT NOT NULL,
  PRIMARY KEY (revision_id, position)
) STRICT, WITHOUT ROWID;
INSERT INTO revision_change (revision_id, position, code, parameters)
  SELECT revision, position, 'told', json_array(sentence) FROM old_revision_change;

-- Words that many rows share.
CREATE TABLE discipline (id INTEGER PRIMARY KEY, key TEXT NOT NULL UNIQUE) STRICT;
CREATE TABLE unit (id INTEGER PRIMARY KEY, symbol TEXT NOT NULL UNIQUE) STRICT;
CREATE TABLE sheet (id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE) STRICT;
INSERT INTO discipline SELECT id, key FROM old_discipline;
INSERT INTO unit SELECT id, symbol FROM old_unit;
INSERT INTO sheet SELECT id, name FROM old_sheet;

-- What was done from the text as found to a result, part by part.
CREATE TABLE rule (id INTEGER PRIMARY KEY) STRICT;
CREATE TABLE rule_part (
  rule_id INTEGER NOT NULL REFERENCES rule ON DELETE CASCADE,
  position INTEGER NOT NULL,
  code TEXT NOT NULL,
  parameters TEXT NOT NULL,
  PRIMARY KEY (rule_id, position)
) STRICT, WITHOUT ROWID;
INSERT INTO rule SELECT id FROM old_rule;
INSERT INTO rule_part SELECT id, 1, 'told', json_array(words) FROM old_rule;

-- How figures came about: what they are, in which speed window and on which surface.
CREATE TABLE circumstance (
  id INTEGER PRIMARY KEY,
  kind TEXT NOT NULL DEFAULT 'measured' CHECK (kind IN ('measured', 'declared', 'claimed')),
  from_kmh REAL,
  to_kmh REAL,
  surface TEXT CHECK (surface IN ('dry', 'damp', 'wet', 'snow', 'ice')),
  water_mm REAL,
  surface_c REAL,
  air_c REAL
) STRICT;
INSERT INTO circumstance (id, kind) VALUES (1, 'measured');

-- A name that a source has for a model. One that means another model points to it. What sources and
-- decisions together say of the descent is derived, as are `same_as_id` and `same_as_revision_id`.
CREATE TABLE model (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL UNIQUE,
  same_as_id INTEGER REFERENCES model,
  same_as_revision_id INTEGER REFERENCES revision ON DELETE SET NULL,
  renamed_at INTEGER NOT NULL DEFAULT 0,
  maker TEXT,
  line TEXT,
  generation TEXT,
  launched TEXT,
  season TEXT CHECK (season IN ('summer', 'winter', 'all-season')),
  segment TEXT,
  follows_id INTEGER REFERENCES model ON DELETE SET NULL
) STRICT;
CREATE INDEX model_by_same_as ON model (same_as_id);
CREATE INDEX model_by_same_as_revision ON model (same_as_revision_id);
CREATE INDEX model_by_line ON model (line);
CREATE INDEX model_by_follows ON model (follows_id);
INSERT INTO model (id, name, same_as_id, same_as_revision_id, renamed_at)
  SELECT id, name, same_as, same_as_revision, renamed_at FROM old_model;

-- The model that a revision took a name to mean, when that was not the name itself.
CREATE TABLE name_taken (
  revision_id INTEGER NOT NULL REFERENCES revision ON DELETE CASCADE,
  model_id INTEGER NOT NULL REFERENCES model,
  means_id INTEGER NOT NULL REFERENCES model,
  how TEXT NOT NULL CHECK (how IN ('told', 'known', 'assumed')),
  PRIMARY KEY (revision_id, model_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX name_taken_by_model ON name_taken (model_id);
CREATE INDEX name_taken_by_means ON name_taken (means_id);
INSERT INTO name_taken (revision_id, model_id, means_id, how)
  SELECT revision, name, means, lower(how) FROM old_reading_of_name;

-- What a source says of a model's descent.
CREATE TABLE lineage (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  revision_id INTEGER NOT NULL REFERENCES revision ON DELETE CASCADE,
  model_id INTEGER NOT NULL REFERENCES model,
  maker TEXT,
  line TEXT,
  generation TEXT,
  launched TEXT,
  season TEXT CHECK (season IN ('summer', 'winter', 'all-season')),
  segment TEXT,
  follows_id INTEGER REFERENCES model,
  sheet_id INTEGER REFERENCES sheet,
  row INTEGER,
  "column" INTEGER,
  cell_text TEXT
) STRICT;
CREATE INDEX lineage_by_model ON lineage (model_id);
CREATE INDEX lineage_by_revision ON lineage (revision_id);
CREATE INDEX lineage_by_follows ON lineage (follows_id);
INSERT INTO lineage (id, revision_id, model_id, maker, line, generation, launched, season, segment,
    follows_id, sheet_id, row, "column", cell_text)
  SELECT id, revision, model, maker, line, generation, launched, lower(replace(season, '_', '-')),
    segment, follows, cells(stands_at) FROM old_lineage;
CREATE TABLE lineage_alias (
  lineage_id INTEGER NOT NULL REFERENCES lineage ON DELETE CASCADE,
  position INTEGER NOT NULL,
  name TEXT NOT NULL,
  PRIMARY KEY (lineage_id, position)
) STRICT, WITHOUT ROWID;

-- What the user decided on a name, or on a model's descent: the newest on a topic stands. Names are
-- kept as text, so that decisions outlive revisions and can be carried to another archive.
CREATE TABLE decision (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL,
  topic TEXT NOT NULL CHECK (topic IN
    ('meaning', 'maker', 'line', 'generation', 'launched', 'season', 'segment', 'follows')),
  verdict TEXT NOT NULL CHECK (verdict IN ('is', 'none', 'open')),
  value TEXT,
  decided_at TEXT NOT NULL,
  reason TEXT NOT NULL,
  CHECK ((value IS NOT NULL) = (verdict = 'is'))
) STRICT;
INSERT INTO decision (id, name, topic, verdict, value, decided_at, reason)
  SELECT id, name, lower(topic), lower(verdict), value,
    substr(decided_at, 1, 19) || 'Z', words FROM old_decision;

-- Whether two tests are one test told twice, by their keys.
CREATE TABLE test_decision (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  test_key TEXT NOT NULL,
  other_key TEXT NOT NULL,
  verdict TEXT NOT NULL CHECK (verdict IN ('same', 'apart', 'open')),
  decided_at TEXT NOT NULL,
  reason TEXT NOT NULL,
  CHECK (test_key <> other_key)
) STRICT;

-- A test or one result of it that was taken back with a reason, by what it is known by, so that it
-- stays retracted when its source is read anew. `open` takes the retraction itself back.
CREATE TABLE retraction (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  test_key TEXT NOT NULL,
  model TEXT,
  size TEXT,
  discipline TEXT,
  kind TEXT CHECK (kind IN ('measured', 'declared', 'claimed')),
  from_kmh REAL,
  to_kmh REAL,
  repeat INTEGER,
  verdict TEXT NOT NULL CHECK (verdict IN ('retracted', 'open')),
  reason TEXT NOT NULL,
  retracted_at TEXT NOT NULL,
  CHECK ((model IS NULL) = (discipline IS NULL))
) STRICT;
CREATE INDEX retraction_by_test ON retraction (test_key);

-- A test, known by its key across sources, with what its current reports together say of it: of each
-- detail the first that is stated. The details are derived.
CREATE TABLE test (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  key TEXT NOT NULL UNIQUE,
  title TEXT,
  publication TEXT,
  source_kind TEXT CHECK (source_kind IN ('own', 'independent', 'maker')),
  date TEXT,
  size TEXT,
  season TEXT CHECK (season IN ('summer', 'winter', 'all-season')),
  vehicle TEXT,
  vehicle_mass_kg REAL,
  venue TEXT,
  surface_c REAL,
  air_c REAL
) STRICT;
CREATE INDEX test_by_date ON test (date);
INSERT INTO test (id, key) SELECT id, key FROM old_test;

-- A test as one revision of one source tells it.
CREATE TABLE report (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  test_id INTEGER NOT NULL REFERENCES test,
  revision_id INTEGER NOT NULL REFERENCES revision ON DELETE CASCADE,
  title TEXT,
  publication TEXT,
  source_kind TEXT CHECK (source_kind IN ('own', 'independent', 'maker')),
  date TEXT,
  size TEXT,
  season TEXT CHECK (season IN ('summer', 'winter', 'all-season')),
  vehicle TEXT,
  vehicle_mass_kg REAL,
  venue TEXT,
  surface_c REAL,
  air_c REAL
) STRICT;
CREATE INDEX report_by_test ON report (test_id);
CREATE INDEX report_by_revision ON report (revision_id);
INSERT INTO report (id, test_id, revision_id, title, publication, source_kind, date, size, season,
    vehicle, vehicle_mass_kg, venue, surface_c, air_c)
  SELECT id, test, revision, title, publication, lower(source_kind), date, size,
    lower(replace(season, '_', '-')), vehicle, vehicle_mass_kg, venue, surface_c, air_c
  FROM old_report;

-- Where a report states a detail of its test.
CREATE TABLE report_detail (
  report_id INTEGER NOT NULL REFERENCES report ON DELETE CASCADE,
  detail TEXT NOT NULL,
  sheet_id INTEGER NOT NULL REFERENCES sheet,
  row INTEGER NOT NULL,
  "column" INTEGER NOT NULL,
  cell_text TEXT NOT NULL,
  PRIMARY KEY (report_id, detail)
) STRICT, WITHOUT ROWID;

-- The weight that a report gives a discipline in its total, as a share of 1 or in its own measure.
CREATE TABLE report_weight (
  report_id INTEGER NOT NULL REFERENCES report ON DELETE CASCADE,
  discipline_id INTEGER NOT NULL REFERENCES discipline,
  weight REAL NOT NULL CHECK (weight >= 0),
  sheet_id INTEGER REFERENCES sheet,
  row INTEGER,
  "column" INTEGER,
  cell_text TEXT,
  PRIMARY KEY (report_id, discipline_id)
) STRICT, WITHOUT ROWID;

-- A discipline that a report says was not tested, and why.
CREATE TABLE report_omission (
  report_id INTEGER NOT NULL REFERENCES report ON DELETE CASCADE,
  discipline_id INTEGER NOT NULL REFERENCES discipline,
  reason TEXT NOT NULL,
  PRIMARY KEY (report_id, discipline_id)
) STRICT, WITHOUT ROWID;

-- A tyre in a report: a model in a size, a state and a variant.
CREATE TABLE entry (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  report_id INTEGER NOT NULL REFERENCES report ON DELETE CASCADE,
  model_id INTEGER NOT NULL REFERENCES model,
  size TEXT,
  state TEXT NOT NULL DEFAULT 'new' CHECK (state IN ('new', 'worn')),
  tread_mm REAL,
  mileage_km REAL,
  age_years REAL,
  ev INTEGER NOT NULL DEFAULT 0 CHECK (ev IN (0, 1)),
  extra_load INTEGER NOT NULL DEFAULT 0 CHECK (extra_load IN (0, 1)),
  run_flat INTEGER NOT NULL DEFAULT 0 CHECK (run_flat IN (0, 1)),
  seal INTEGER NOT NULL DEFAULT 0 CHECK (seal IN (0, 1)),
  sheet_id INTEGER REFERENCES sheet,
  row INTEGER,
  "column" INTEGER,
  cell_text TEXT
) STRICT;
CREATE INDEX entry_by_report ON entry (report_id);
CREATE INDEX entry_by_model ON entry (model_id);
INSERT INTO entry (id, report_id, model_id, size, sheet_id, row, "column", cell_text)
  SELECT id, report, model, size, cells(name_at) FROM old_entry;

-- A figure of an entry in a discipline. Figures of one entry, discipline and circumstance are told
-- apart by `repeat`.
CREATE TABLE result (
  id INTEGER PRIMARY KEY,
  entry_id INTEGER NOT NULL REFERENCES entry ON DELETE CASCADE,
  discipline_id INTEGER NOT NULL REFERENCES discipline,
  circumstance_id INTEGER NOT NULL DEFAULT 1 REFERENCES circumstance,
  repeat INTEGER NOT NULL DEFAULT 1 CHECK (repeat >= 1),
  sequence INTEGER,
  value REAL,
  unit_id INTEGER REFERENCES unit,
  spread REAL,
  runs INTEGER,
  place INTEGER CHECK (place >= 1),
  rule_id INTEGER REFERENCES rule,
  value_sheet_id INTEGER REFERENCES sheet,
  value_row INTEGER,
  value_column INTEGER,
  value_text TEXT,
  spread_sheet_id INTEGER REFERENCES sheet,
  spread_row INTEGER,
  spread_column INTEGER,
  spread_text TEXT,
  runs_sheet_id INTEGER REFERENCES sheet,
  runs_row INTEGER,
  runs_column INTEGER,
  runs_text TEXT,
  place_sheet_id INTEGER REFERENCES sheet,
  place_row INTEGER,
  place_column INTEGER,
  place_text TEXT,
  UNIQUE (entry_id, discipline_id, circumstance_id, repeat),
  CHECK (value IS NOT NULL OR place IS NOT NULL)
) STRICT;
INSERT INTO result
  SELECT id, entry, discipline, 1, 1, NULL, value, unit, spread, runs, place, rule, cells(value_at),
    cells(spread_at), cells(runs_at), cells(place_at) FROM old_result;

-- The steps from what was found to a result, where they are more than reading its number.
CREATE TABLE result_step (
  id INTEGER PRIMARY KEY,
  result_id INTEGER NOT NULL REFERENCES result ON DELETE CASCADE,
  code TEXT NOT NULL,
  parameters TEXT NOT NULL,
  before REAL,
  before_unit_id INTEGER REFERENCES unit,
  after REAL NOT NULL,
  after_unit_id INTEGER NOT NULL REFERENCES unit,
  label_code TEXT,
  label_parameters TEXT,
  sheet_id INTEGER REFERENCES sheet,
  row INTEGER,
  "column" INTEGER,
  cell_text TEXT
) STRICT;
CREATE INDEX result_step_by_result ON result_step (result_id);
INSERT INTO result_step
  SELECT id, result, 'told', json_array(rule), before, before_unit, after, after_unit,
    iif(label IS NULL, NULL, 'told'), iif(label IS NULL, NULL, json_array(label)), cells(stands_at)
  FROM old_result_step;

-- What a tyre of an entry cost on a day.
CREATE TABLE price (
  id INTEGER PRIMARY KEY,
  entry_id INTEGER NOT NULL REFERENCES entry ON DELETE CASCADE,
  amount REAL NOT NULL CHECK (amount > 0),
  currency TEXT NOT NULL,
  day TEXT,
  per TEXT NOT NULL DEFAULT 'tyre' CHECK (per IN ('tyre', 'set')),
  size TEXT,
  shop TEXT,
  sheet_id INTEGER REFERENCES sheet,
  row INTEGER,
  "column" INTEGER,
  cell_text TEXT
) STRICT;
CREATE INDEX price_by_entry ON price (entry_id);

-- One run of a run log as it stands there.
CREATE TABLE run (
  id INTEGER PRIMARY KEY,
  report_id INTEGER NOT NULL REFERENCES report ON DELETE CASCADE,
  discipline_id INTEGER NOT NULL REFERENCES discipline,
  sequence INTEGER NOT NULL,
  model_id INTEGER NOT NULL REFERENCES model,
  role TEXT NOT NULL CHECK (role IN ('reference', 'candidate')),
  run INTEGER,
  from_kmh REAL,
  to_kmh REAL,
  distance_m REAL,
  time_s REAL,
  level_db REAL,
  value REAL,
  unit_id INTEGER REFERENCES unit,
  surface_c REAL,
  air_c REAL,
  remark TEXT,
  sheet_id INTEGER NOT NULL REFERENCES sheet,
  row INTEGER NOT NULL,
  "column" INTEGER NOT NULL,
  cell_text TEXT NOT NULL
) STRICT;
CREATE INDEX run_by_report ON run (report_id);
CREATE INDEX run_by_model ON run (model_id);
INSERT INTO run
  SELECT id, report, discipline, sequence, model, lower(role), run, from_kmh, to_kmh, distance_m,
    time_s, level_db, value, unit, surface_c, air_c, remark, cells(stands_at) FROM old_run;

-- How a log's runs of one discipline were reduced to results.
CREATE TABLE reduction (
  id INTEGER PRIMARY KEY,
  report_id INTEGER NOT NULL REFERENCES report ON DELETE CASCADE,
  discipline_id INTEGER NOT NULL REFERENCES discipline,
  unit_id INTEGER NOT NULL REFERENCES unit,
  by_ratio INTEGER NOT NULL CHECK (by_ratio IN (0, 1)),
  better TEXT NOT NULL CHECK (better IN ('low', 'high')),
  coast_by TEXT,
  from_kmh REAL,
  to_kmh REAL,
  level REAL,
  slope REAL,
  trend_p REAL,
  step_after INTEGER,
  step_size REAL,
  step_p REAL
) STRICT;
CREATE INDEX reduction_by_report ON reduction (report_id);
INSERT INTO reduction
  SELECT id, report, discipline, unit, by_ratio, lower(better), coast_by, from_kmh, to_kmh, level,
    slope, trend_p, step_after, step_size, step_p FROM old_reduction;

-- What must be said of a reduction: what runs were averaged in, what the level means, what the
-- reference did, the cycles of the day and the limits it was judged by.
CREATE TABLE reduction_account (
  reduction_id INTEGER NOT NULL REFERENCES reduction ON DELETE CASCADE,
  part TEXT NOT NULL CHECK (part IN ('measure', 'level', 'trace', 'cycle', 'limit')),
  position INTEGER NOT NULL,
  code TEXT NOT NULL,
  parameters TEXT NOT NULL,
  PRIMARY KEY (reduction_id, part, position)
) STRICT, WITHOUT ROWID;
INSERT INTO reduction_account
  SELECT id, 'measure', 1, 'told', json_array(measure) FROM old_reduction
  UNION ALL SELECT id, 'level', 1, 'told', json_array(level_words) FROM old_reduction
  UNION ALL SELECT id, 'trace', 1, 'told', json_array(trace) FROM old_reduction;

-- One set of tyres at its place in the order of the day.
CREATE TABLE reduced_set (
  id INTEGER PRIMARY KEY,
  reduction_id INTEGER NOT NULL REFERENCES reduction ON DELETE CASCADE,
  sequence INTEGER NOT NULL,
  model_id INTEGER NOT NULL REFERENCES model,
  role TEXT NOT NULL CHECK (role IN ('reference', 'candidate')),
  cycle INTEGER,
  mean REAL,
  deviation REAL,
  counted INTEGER NOT NULL,
  reference REAL,
  effect REAL,
  effect_error REAL,
  valid INTEGER NOT NULL CHECK (valid IN (0, 1))
) STRICT;
CREATE INDEX reduced_set_by_reduction ON reduced_set (reduction_id);
CREATE INDEX reduced_set_by_model ON reduced_set (model_id);
INSERT INTO reduced_set
  SELECT id, reduction, sequence, model, lower(role), cycle, mean, deviation, counted, reference,
    effect, effect_error, valid FROM old_reduced_set;

-- What must be said of a set: how its reference is made up, whether it stands, which limits it broke.
CREATE TABLE reduced_set_account (
  reduced_set_id INTEGER NOT NULL REFERENCES reduced_set ON DELETE CASCADE,
  part TEXT NOT NULL CHECK (part IN ('reference', 'standing', 'reason')),
  position INTEGER NOT NULL,
  code TEXT NOT NULL,
  parameters TEXT NOT NULL,
  PRIMARY KEY (reduced_set_id, part, position)
) STRICT, WITHOUT ROWID;
INSERT INTO reduced_set_account
  SELECT id, 'reference', 1, 'told', json_array(reference_words) FROM old_reduced_set
    WHERE reference_words <> ''
  UNION ALL SELECT id, 'standing', 1, 'told', json_array(standing) FROM old_reduced_set;

CREATE TABLE reduced_run (
  id INTEGER PRIMARY KEY,
  reduced_set_id INTEGER NOT NULL REFERENCES reduced_set ON DELETE CASCADE,
  run_id INTEGER NOT NULL REFERENCES run ON DELETE CASCADE,
  figure REAL,
  left_out_code TEXT,
  left_out_parameters TEXT,
  flag_code TEXT,
  flag_parameters TEXT
) STRICT;
CREATE INDEX reduced_run_by_set ON reduced_run (reduced_set_id);
CREATE INDEX reduced_run_by_run ON reduced_run (run_id);
INSERT INTO reduced_run
  SELECT id, reduced_set, run, figure,
    iif(left_out IS NULL, NULL, 'told'), iif(left_out IS NULL, NULL, json_array(left_out)),
    iif(flag IS NULL, NULL, 'told'), iif(flag IS NULL, NULL, json_array(flag)) FROM old_reduced_run;

-- What a report says in words.
CREATE TABLE note (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  report_id INTEGER NOT NULL REFERENCES report ON DELETE CASCADE,
  model_id INTEGER REFERENCES model,
  discipline_id INTEGER REFERENCES discipline,
  text TEXT NOT NULL,
  sheet_id INTEGER NOT NULL REFERENCES sheet,
  row INTEGER NOT NULL,
  "column" INTEGER NOT NULL,
  cell_text TEXT NOT NULL
) STRICT;
CREATE INDEX note_by_report ON note (report_id);
CREATE INDEX note_by_model ON note (model_id);
INSERT INTO note SELECT id, report, model, discipline, words, cells(stands_at) FROM old_note;

-- Something in a source that was not understood, or only by assuming something.
CREATE TABLE finding (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  revision_id INTEGER NOT NULL REFERENCES revision ON DELETE CASCADE,
  kind TEXT NOT NULL CHECK (kind IN ('assumed', 'new-name', 'conflict', 'not-read')),
  found TEXT NOT NULL,
  expected_code TEXT NOT NULL,
  expected_parameters TEXT NOT NULL,
  remedy_code TEXT NOT NULL,
  remedy_parameters TEXT NOT NULL,
  sheet_id INTEGER REFERENCES sheet,
  row INTEGER,
  "column" INTEGER,
  cell_text TEXT
) STRICT;
CREATE INDEX finding_by_revision ON finding (revision_id);
INSERT INTO finding
  SELECT id, revision, lower(replace(kind, '_', '-')), found, 'told', json_array(expected), 'told',
    json_array(remedy), cells(stands_at) FROM old_finding;

-- A table that could not be decided on, with the readings of it that were proposed.
CREATE TABLE draft (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  revision_id INTEGER NOT NULL REFERENCES revision ON DELETE CASCADE,
  sheet_id INTEGER REFERENCES sheet,
  first_row INTEGER,
  last_row INTEGER,
  first_column INTEGER,
  last_column INTEGER,
  readings TEXT NOT NULL,
  state TEXT NOT NULL DEFAULT 'open' CHECK (state IN ('open', 'taken', 'dismissed')),
  chosen INTEGER,
  decided_at TEXT
) STRICT;
CREATE INDEX draft_by_revision ON draft (revision_id);

-- What a user said of the columns of tables of one layout: it is used for later files of that layout,
-- the newest first, until it is forgotten.
CREATE TABLE column_map (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  revision_id INTEGER NOT NULL REFERENCES revision ON DELETE CASCADE,
  layout TEXT NOT NULL,
  map TEXT NOT NULL,
  forgotten_at TEXT
) STRICT;
CREATE INDEX column_map_by_layout ON column_map (layout);
CREATE INDEX column_map_by_revision ON column_map (revision_id);
INSERT INTO column_map SELECT id, revision, layout, map,
  substr(forgotten_at, 1, 19) || 'Z' FROM old_column_map;

-- An answer that was kept under a name, as it was then.
CREATE TABLE kept_answer (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL UNIQUE,
  question TEXT NOT NULL,
  options TEXT NOT NULL,
  sentence TEXT NOT NULL,
  answer TEXT NOT NULL,
  stamp INTEGER NOT NULL,
  delivery INTEGER NOT NULL,
  kept_at TEXT NOT NULL
) STRICT;

-- A plan with what was expected before the day; once frozen it never changes.
CREATE TABLE plan (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL UNIQUE,
  plan TEXT NOT NULL,
  forecast TEXT,
  digest TEXT,
  frozen_at TEXT,
  CHECK ((frozen_at IS NULL) OR (forecast IS NOT NULL AND digest IS NOT NULL))
) STRICT;
CREATE TRIGGER plan_frozen BEFORE UPDATE ON plan WHEN old.frozen_at IS NOT NULL
BEGIN SELECT RAISE(ABORT, 'a frozen plan never changes'); END;
CREATE TRIGGER plan_kept BEFORE DELETE ON plan WHEN old.frozen_at IS NOT NULL
BEGIN SELECT RAISE(ABORT, 'a frozen plan never goes'); END;

-- The runs of a day on the track, one after the other. A correction is a line of its own.
CREATE TABLE track_run (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  plan_id INTEGER NOT NULL REFERENCES plan,
  entered_at TEXT NOT NULL,
  corrects_id INTEGER REFERENCES track_run,
  discipline TEXT NOT NULL,
  sequence INTEGER NOT NULL,
  model TEXT NOT NULL,
  role TEXT NOT NULL CHECK (role IN ('reference', 'candidate')),
  run INTEGER,
  from_kmh REAL,
  to_kmh REAL,
  distance_m REAL,
  time_s REAL,
  level_db REAL,
  value REAL,
  unit TEXT,
  surface_c REAL,
  air_c REAL,
  remark TEXT
) STRICT;
CREATE INDEX track_run_by_plan ON track_run (plan_id);
CREATE TRIGGER track_run_written BEFORE UPDATE ON track_run
BEGIN SELECT RAISE(ABORT, 'a run is corrected by another line'); END;
CREATE TRIGGER track_run_kept BEFORE DELETE ON track_run
BEGIN SELECT RAISE(ABORT, 'a run is corrected by another line'); END;

-- A discipline that was given up on the day.
CREATE TABLE track_abort (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  plan_id INTEGER NOT NULL REFERENCES plan,
  discipline TEXT NOT NULL,
  reason TEXT NOT NULL,
  entered_at TEXT NOT NULL
) STRICT;
CREATE INDEX track_abort_by_plan ON track_abort (plan_id);

-- Numbers that were told before something was taken back are not given again.
UPDATE sqlite_sequence SET seq = max(seq, coalesce(
  (SELECT max(highest) FROM old_number_used WHERE name = sqlite_sequence.name), 0));
INSERT INTO sqlite_sequence (name, seq) SELECT name, highest FROM old_number_used
  WHERE name IN
      ('delivery', 'revision', 'model', 'lineage', 'test', 'report', 'entry', 'note', 'finding')
    AND name NOT IN (SELECT name FROM sqlite_sequence);
