-- What people and `export` read. A comment before each view says NAME | title | fields that tell rows apart
-- | what a row is; one behind each column its type (! where there is always a value), {the words there
-- are}, -> the view and column whose rows it names, and what it means. SCHEMA.md is made of these.

-- deliveries | Deliveries | delivery_id | What one addition brought; it is taken back as one.
CREATE VIEW deliveries AS SELECT
  d.id AS delivery_id, -- integer!: its number, in the order of adding
  d.added_at AS added_at, -- datetime!: when it was begun
  d.reason AS reason, -- string: why, where that was said
  (SELECT count(*) FROM revision r WHERE r.delivery_id = d.id) AS revisions -- integer!: how many revisions it holds
FROM delivery d;

-- sources | Sources | revision_id | One reading of one content of a file. A changed file is read anew; the older revision stays, superseded.
CREATE VIEW sources AS SELECT
  r.id AS revision_id, -- integer!: number of the revision, in the order of adding
  r.source_id AS source_id, -- integer!: number of the source, the same for all its revisions
  o.origin AS origin, -- string!: what the source is known by: the path it was read from, or a name
  r.number AS number, -- integer!: which revision of this source it is, from 1
  r.file AS file, -- string!: the file's name
  r.form AS form, -- string!: what it was read as
  r.added_at AS added_at, -- datetime!: when it was added
  r.delivery_id AS delivery_id, -- integer! -> deliveries.delivery_id: the delivery that brought it
  r.bytes AS bytes, -- integer!: length of the content
  r.sha256 AS sha256, -- string!: SHA-256 of the content
  'originals/' || substr(r.sha256, 1, 2) || '/' || r.sha256 AS original, -- string!: the content as it was given, beside the database
  r.superseded_by_id IS NULL AS current, -- boolean!: whether it counts: no newer revision took its place
  r.superseded_by_id AS superseded_by_id -- integer -> .revision_id: the revision that took its place
FROM revision r
  JOIN source o ON o.id = r.source_id;

-- source_options | How sources were read | revision_id,position | What was said of how to read a source.
CREATE VIEW source_options AS SELECT
  x.revision_id AS revision_id, -- integer! -> sources.revision_id: the revision
  x.position AS position, -- integer!: place of the option, from 1
  x.name AS name, -- string!: what was said: a detail's name, or `map` for its columns
  x.value AS value -- string: the value
FROM revision_option x;

-- changes | Changes | revision_id,position | What a revision says differently from the one before it.
CREATE VIEW changes AS SELECT
  x.revision_id AS revision_id, -- integer! -> sources.revision_id: the newer revision
  x.position AS position, -- integer!: place of the change, from 1
  r.file AS file, -- string!: the file's name
  r.number AS number, -- integer!: which revision of its source the newer one is
  r.added_at AS added_at, -- datetime!: when it was added
  x.code AS code, -- string!: what changed: `figure-changed`, `figure-new`, `figure-gone`, `count-changed` ...
  x.parameters AS parameters -- string!: a JSON array: model, discipline, test, the figure before and after
FROM revision_change x
  JOIN revision r ON r.id = x.revision_id;

-- models | Models | model | A model that sources name, with what they and the user's decisions say of its descent.
CREATE VIEW models AS SELECT
  m.name AS model, -- string!: its name
  m.maker AS maker, -- string: its maker
  m.line AS line, -- string: its product family
  m.generation AS generation, -- string: its generation within the line
  m.launched AS launched, -- string: when it was launched: a day, a month or a year
  m.season AS season, -- string {summer|winter|all-season}: its season class
  m.segment AS segment, -- string: its segment
  f.name AS follows, -- string -> .model: its predecessor
  (SELECT count(DISTINCT p.test_id) FROM model n JOIN entry e ON e.model_id = n.id JOIN report p ON p.id = e.report_id JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL WHERE n.id = m.id OR n.same_as_id = m.id) AS tests -- integer!: in how many tests it was
FROM model m
  LEFT JOIN model f ON f.id = m.follows_id
  WHERE m.same_as_id IS NULL;

-- names | Names | name | A name that sources use, and the model it means.
CREATE VIEW names AS SELECT
  m.name AS name, -- string!: the name
  s.name AS model, -- string! -> models.model: the model it means; the name itself where it is a model
  m.same_as_revision_id AS revision_id -- integer -> sources.revision_id: the revision that took it so; empty where the user decided it or nobody did
FROM model m
  JOIN model s ON s.id = coalesce(m.same_as_id, m.id);

-- names_taken | What names were taken for | revision_id,name | The model that a revision took a name to mean, when that was not the name itself.
CREATE VIEW names_taken AS SELECT
  x.revision_id AS revision_id, -- integer! -> sources.revision_id: the revision
  m.name AS name, -- string! -> names.name: the name
  s.name AS means, -- string! -> names.name: the name of the model that it was taken to mean
  x.how AS how -- string! {told|known|assumed}: by a lineage table, as a known name of it, or as a misspelling
FROM name_taken x
  JOIN model m ON m.id = x.model_id
  JOIN model s ON s.id = x.means_id;

-- lineages | Descent of models | lineage_id | What one row of a lineage table says of a model.
CREATE VIEW lineages AS SELECT
  x.id AS lineage_id, -- integer!: number of the row, in the order of adding
  x.revision_id AS revision_id, -- integer! -> sources.revision_id: the revision
  m.name AS name, -- string! -> names.name: the model as the row names it
  x.maker AS maker, -- string: its maker
  x.line AS line, -- string: its product family
  x.generation AS generation, -- string: its generation within the line
  x.launched AS launched, -- string: when it was launched: a day, a month or a year
  x.season AS season, -- string {summer|winter|all-season}: its season class
  x.segment AS segment, -- string: its segment
  f.name AS follows, -- string -> names.name: its predecessor
  h.name AS sheet, -- string: sheet, table or section where the row stands; empty where a file has one only
  x.row AS row, -- integer: its row (in texts: line), from 1
  x."column" AS "column", -- integer: its column, from 1
  x.cell_text AS cell_text -- string: the text found there, unchanged
FROM lineage x
  JOIN model m ON m.id = x.model_id
  LEFT JOIN model f ON f.id = x.follows_id
  LEFT JOIN sheet h ON h.id = x.sheet_id;

-- lineage_aliases | Other names in lineage tables | lineage_id,position | Another name that a row of a lineage table gives its model.
CREATE VIEW lineage_aliases AS SELECT
  x.lineage_id AS lineage_id, -- integer! -> lineages.lineage_id: the row
  x.position AS position, -- integer!: place of the name, from 1
  x.name AS alias -- string!: the other name
FROM lineage_alias x;

-- decisions | Decisions on names and descent | decision_id | What was decided on a name or a model's descent, what was taken back included. The newest on a name and topic stands.
CREATE VIEW decisions AS SELECT
  x.id AS decision_id, -- integer!: its number, in the order they were made
  x.name AS name, -- string!: the name it is about
  x.topic AS topic, -- string! {meaning|maker|line|generation|launched|season|segment|follows}: what was decided
  x.verdict AS verdict, -- string! {is|none|open}: that it is the value, that there is none, or that it was taken back
  x.value AS value, -- string: the model's name, or what holds
  x.decided_at AS decided_at, -- datetime!: when
  x.reason AS reason -- string: why
FROM decision x;

-- test_decisions | Decisions on tests told twice | decision_id | Whether two tests are one that was told twice. The newest on a pair stands.
CREATE VIEW test_decisions AS SELECT
  x.id AS decision_id, -- integer!: its number, in the order they were made
  x.test_key AS test, -- string!: key of a test
  x.other_key AS other_test, -- string!: key of the other
  x.verdict AS verdict, -- string! {same|apart|open}: one test, two tests, or taken back
  x.decided_at AS decided_at, -- datetime!: when
  x.reason AS reason -- string: why
FROM test_decision x;

-- retractions | Retractions | retraction_id | A test or a result that was taken back with a reason. The newest on the same stands.
CREATE VIEW retractions AS SELECT
  x.id AS retraction_id, -- integer!: its number, in the order they were made
  x.test_key AS test, -- string!: key of the test
  x.model AS model, -- string: the model whose result it is; empty for the whole test
  x.size AS size, -- string: the entry's own size
  x.discipline AS discipline, -- string: the result's discipline; empty for the whole test
  x.kind AS kind, -- string {measured|declared|claimed}: what sort of figure
  x.from_kmh AS from_kmh, -- number: speed at the start of its window, km/h
  x.to_kmh AS to_kmh, -- number: speed at its end, km/h
  x.repeat AS repeat, -- integer: which repeat
  x.verdict AS verdict, -- string! {retracted|open}: retracted, or the retraction taken back
  x.reason AS reason, -- string!: why
  x.retracted_at AS retracted_at -- datetime!: when
FROM retraction x;

-- column_maps | Column maps | column_map_id | What a user said of the columns of tables with certain headers. The newest on a layout is used for later files, unless it was forgotten.
CREATE VIEW column_maps AS SELECT
  x.id AS column_map_id, -- integer!: its number, in the order they were given
  x.revision_id AS revision_id, -- integer! -> sources.revision_id: the revision it was given with
  x.layout AS layout, -- string!: the headers, after who published them where that is stated
  x.map AS map, -- string!: what was said, as JSON
  x.forgotten_at AS forgotten_at -- datetime: when it was forgotten
FROM column_map x;

-- tests | Tests | test | A test, known by its key across sources. Its details are those of the first report that counts and states them.
CREATE VIEW tests AS SELECT
  t.key AS test, -- string!: its key
  t.title AS title, -- string: its title
  t.date AS date, -- string: when it was tested: a day, a month or a year
  t.publication AS publication, -- string: who published it
  t.source_kind AS source_kind, -- string {own|independent|maker}: who stands behind it
  t.size AS size, -- string: the size tested
  t.season AS season, -- string {summer|winter|all-season}: the season class tested
  t.vehicle AS vehicle, -- string: the vehicle
  t.vehicle_mass_kg AS vehicle_mass_kg, -- number: its mass as tested, kg
  t.venue AS venue, -- string: the proving ground
  t.surface_c AS surface_c, -- number: temperature of the surface, degrees Celsius
  t.air_c AS air_c, -- number: temperature of the air, degrees Celsius
  (SELECT count(*) FROM report p JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL WHERE p.test_id = t.id) AS reports, -- integer!: how many current reports tell of it
  (SELECT count(*) FROM report p JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL JOIN entry e ON e.report_id = p.id WHERE p.test_id = t.id) AS entries -- integer!: how many entries these have
FROM test t;

-- reports | Reports | report_id | A test as one current source tells it.
CREATE VIEW reports AS SELECT
  p.id AS report_id, -- integer!: its number, in the order of adding
  t.key AS test, -- string! -> tests.test: the test's key
  p.revision_id AS revision_id, -- integer! -> sources.revision_id: the revision
  r.file AS file, -- string!: the file's name
  p.title AS title, -- string: its title
  p.date AS date, -- string: when it was tested: a day, a month or a year
  p.publication AS publication, -- string: who published it
  p.source_kind AS source_kind, -- string {own|independent|maker}: who stands behind it
  p.size AS size, -- string: the size tested
  p.season AS season, -- string {summer|winter|all-season}: the season class tested
  p.vehicle AS vehicle, -- string: the vehicle
  p.vehicle_mass_kg AS vehicle_mass_kg, -- number: its mass as tested, kg
  p.venue AS venue, -- string: the proving ground
  p.surface_c AS surface_c, -- number: temperature of the surface, degrees Celsius
  p.air_c AS air_c -- number: temperature of the air, degrees Celsius
FROM report p
  JOIN test t ON t.id = p.test_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL;

-- report_details | Where details stand | report_id,detail | Where a report states a detail of its test.
CREATE VIEW report_details AS SELECT
  x.report_id AS report_id, -- integer! -> reports.report_id: the report
  x.detail AS detail, -- string!: which detail
  h.name AS sheet, -- string: sheet, table or section where it stands; empty where a file has one only
  x.row AS row, -- integer!: its row (in texts: line), from 1
  x."column" AS "column", -- integer!: its column, from 1
  x.cell_text AS cell_text -- string: the text found there, unchanged
FROM report_detail x
  JOIN report p ON p.id = x.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL
  JOIN sheet h ON h.id = x.sheet_id;

-- report_weights | Weights of reports | report_id,discipline | The weight that a report gives a discipline in its total.
CREATE VIEW report_weights AS SELECT
  x.report_id AS report_id, -- integer! -> reports.report_id: the report
  d.key AS discipline, -- string! -> disciplines.discipline: the discipline
  x.weight AS weight, -- number!: the weight, in the report's own measure
  h.name AS sheet, -- string: sheet, table or section where it stands; empty where a file has one only
  x.row AS row, -- integer: its row (in texts: line), from 1
  x."column" AS "column", -- integer: its column, from 1
  x.cell_text AS cell_text -- string: the text found there, unchanged
FROM report_weight x
  JOIN report p ON p.id = x.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL
  JOIN discipline d ON d.id = x.discipline_id
  LEFT JOIN sheet h ON h.id = x.sheet_id;

-- report_omissions | What reports say was not tested | report_id,discipline | A discipline that a report says was not tested, and why.
CREATE VIEW report_omissions AS SELECT
  x.report_id AS report_id, -- integer! -> reports.report_id: the report
  d.key AS discipline, -- string! -> disciplines.discipline: the discipline
  x.reason AS reason -- string!: why
FROM report_omission x
  JOIN report p ON p.id = x.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL
  JOIN discipline d ON d.id = x.discipline_id;

-- entries | Entries | entry_id | A tyre in a report: a model in a size, a state and a variant.
CREATE VIEW entries AS SELECT
  e.id AS entry_id, -- integer!: its number, in the order of adding
  e.report_id AS report_id, -- integer! -> reports.report_id: the report
  m.name AS name, -- string! -> names.name: the model by the name it was first taken for
  s.name AS model, -- string! -> models.model: the model, its name settled
  e.size AS size, -- string: its size, where it has one of its own
  e.state AS state, -- string! {new|worn}: whether the tyre was new
  e.tread_mm AS tread_mm, -- number: depth of its tread, mm
  e.mileage_km AS mileage_km, -- number: distance it had run, km
  e.age_years AS age_years, -- number: its age, years
  e.ev AS ev, -- boolean!: made or marked for electric vehicles
  e.extra_load AS extra_load, -- boolean!: extra load
  e.run_flat AS run_flat, -- boolean!: runs without air for a distance
  e.seal AS seal, -- boolean!: seals punctures by itself
  h.name AS sheet, -- string: sheet, table or section where the name stands; empty where a file has one only
  e.row AS row, -- integer: its row (in texts: line), from 1
  e."column" AS "column", -- integer: its column, from 1
  e.cell_text AS cell_text -- string: the text found there, unchanged
FROM entry e
  JOIN report p ON p.id = e.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL
  JOIN model m ON m.id = e.model_id
  JOIN model s ON s.id = coalesce(m.same_as_id, m.id)
  LEFT JOIN sheet h ON h.id = e.sheet_id;

-- results | Results | result_id | A figure of a tyre in a discipline, of current revisions, with its test and the cell it was read from.
CREATE VIEW results AS SELECT
  x.id AS result_id, -- integer!: its number, the one that `griplore origin` takes
  t.key AS test, -- string! -> tests.test: the test's key
  coalesce(p.title, t.title) AS title, -- string: title of the test
  coalesce(p.date, t.date) AS date, -- string: when it was tested: a day, a month or a year
  coalesce(p.publication, t.publication) AS publication, -- string: who published it
  coalesce(p.source_kind, t.source_kind) AS source_kind, -- string {own|independent|maker}: who stands behind it
  coalesce(e.size, p.size, t.size) AS size, -- string: the size of the tyre, or of the test
  coalesce(p.season, t.season) AS season, -- string {summer|winter|all-season}: the season class tested
  coalesce(p.vehicle, t.vehicle) AS vehicle, -- string: the vehicle
  coalesce(p.vehicle_mass_kg, t.vehicle_mass_kg) AS vehicle_mass_kg, -- number: its mass as tested, kg
  coalesce(p.venue, t.venue) AS venue, -- string: the proving ground
  coalesce(c.surface_c, p.surface_c, t.surface_c) AS surface_c, -- number: temperature of the surface, degrees Celsius
  coalesce(c.air_c, p.air_c, t.air_c) AS air_c, -- number: temperature of the air, degrees Celsius
  s.maker AS maker, -- string: its maker
  s.line AS line, -- string: its product family
  s.name AS model, -- string! -> models.model: the model, its name settled
  s.generation AS generation, -- string: its generation within the line
  d.key AS discipline, -- string! -> disciplines.discipline: what was measured or rated
  x.value AS value, -- number: the value, in the unit
  u.symbol AS unit, -- string: the unit
  x.spread AS spread, -- number: standard deviation of the runs, in the unit
  x.runs AS runs, -- integer: number of runs
  x.place AS place, -- integer: place as published, 1 for the best
  r.file AS file, -- string!: the file it stands in
  h.name AS sheet, -- string: sheet, table or section where the value stands, else the place
  coalesce(x.value_row, x.place_row) AS row, -- integer: its row, from 1
  coalesce(x.value_column, x.place_column) AS "column", -- integer: its column, from 1
  coalesce(x.value_text, x.place_text) AS cell_text, -- string: the text found there, unchanged
  e.state AS state, -- string! {new|worn}: whether the tyre was new
  e.tread_mm AS tread_mm, -- number: depth of its tread, mm
  e.mileage_km AS mileage_km, -- number: distance it had run, km
  e.age_years AS age_years, -- number: its age, years
  e.ev AS ev, -- boolean!: made or marked for electric vehicles
  e.extra_load AS extra_load, -- boolean!: extra load
  e.run_flat AS run_flat, -- boolean!: runs without air for a distance
  e.seal AS seal, -- boolean!: seals punctures by itself
  c.kind AS kind, -- string! {measured|declared|claimed}: what sort of figure it is
  c.from_kmh AS from_kmh, -- number: speed at the start of the window, km/h
  c.to_kmh AS to_kmh, -- number: speed at its end, km/h
  c.surface AS surface, -- string {dry|damp|wet|snow|ice}: what it was measured on, where that is said of the figure itself
  c.water_mm AS water_mm, -- number: depth of the water, mm
  x.sequence AS sequence, -- integer: place of its set in the order of the day
  x.repeat AS repeat, -- integer!: tells figures of one entry, discipline and circumstance apart, from 1
  x.entry_id AS entry_id, -- integer! -> entries.entry_id: the entry
  p.id AS report_id, -- integer! -> reports.report_id: the report
  r.id AS revision_id, -- integer! -> sources.revision_id: the revision
  x.rule_id AS rule_id, -- integer: the rule that was applied to what was found
  hs.name AS spread_sheet, -- string: sheet, table or section where the spread stands
  x.spread_row AS spread_row, -- integer: its row, from 1
  x.spread_column AS spread_column, -- integer: its column, from 1
  x.spread_text AS spread_text, -- string: the text found there, unchanged
  hr.name AS runs_sheet, -- string: sheet, table or section where the number of runs stands
  x.runs_row AS runs_row, -- integer: its row, from 1
  x.runs_column AS runs_column, -- integer: its column, from 1
  x.runs_text AS runs_text, -- string: the text found there, unchanged
  hp.name AS place_sheet, -- string: sheet, table or section where the place stands
  x.place_row AS place_row, -- integer: its row, from 1
  x.place_column AS place_column, -- integer: its column, from 1
  x.place_text AS place_text -- string: the text found there, unchanged
FROM result x
  JOIN entry e ON e.id = x.entry_id
  JOIN report p ON p.id = e.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL
  JOIN test t ON t.id = p.test_id
  JOIN model m ON m.id = e.model_id
  JOIN model s ON s.id = coalesce(m.same_as_id, m.id)
  JOIN discipline d ON d.id = x.discipline_id
  JOIN circumstance c ON c.id = x.circumstance_id
  LEFT JOIN unit u ON u.id = x.unit_id
  LEFT JOIN sheet h ON h.id = coalesce(x.value_sheet_id, x.place_sheet_id)
  LEFT JOIN sheet hs ON hs.id = x.spread_sheet_id
  LEFT JOIN sheet hr ON hr.id = x.runs_sheet_id
  LEFT JOIN sheet hp ON hp.id = x.place_sheet_id;

-- rules | Rules | rule_id,position | What was done from the text as found to a result, part by part.
CREATE VIEW rules AS SELECT
  x.rule_id AS rule_id, -- integer!: the rule, as results name it
  x.position AS position, -- integer!: place of the part, from 1
  x.code AS code, -- string!: what was done
  x.parameters AS parameters -- string!: a JSON array of what it was done with
FROM rule_part x
  WHERE x.rule_id IN (SELECT y.rule_id FROM result y
  JOIN entry e ON e.id = y.entry_id
  JOIN report p ON p.id = e.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL);

-- result_steps | Steps to results | step_id | One step from what was found to a result, where they are more than reading its number.
CREATE VIEW result_steps AS SELECT
  x.id AS step_id, -- integer!: its number; steps of a result stand in their order
  x.result_id AS result_id, -- integer! -> results.result_id: the result
  x.code AS code, -- string!: what was done
  x.parameters AS parameters, -- string!: a JSON array of what it was done with
  x.before AS before, -- number: the figure before; empty where a text or many figures went in
  b.symbol AS before_unit, -- string: its unit
  x.after AS after, -- number!: the figure after
  a.symbol AS after_unit, -- string: its unit
  x.label_code AS label, -- string: how sure the rule is, or what else must be said with it
  x.label_parameters AS label_parameters, -- string: a JSON array for the label
  h.name AS sheet, -- string: sheet, table or section where what went in stands; empty where a file has one only
  x.row AS row, -- integer: its row (in texts: line), from 1
  x."column" AS "column", -- integer: its column, from 1
  x.cell_text AS cell_text -- string: the text found there, unchanged
FROM result_step x
  JOIN result f ON f.id = x.result_id
  JOIN entry e ON e.id = f.entry_id
  JOIN report p ON p.id = e.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL
  LEFT JOIN unit b ON b.id = x.before_unit_id
  JOIN unit a ON a.id = x.after_unit_id
  LEFT JOIN sheet h ON h.id = x.sheet_id;

-- prices | Prices | price_id | What a tyre of an entry cost on a day.
CREATE VIEW prices AS SELECT
  x.id AS price_id, -- integer!: its number
  x.entry_id AS entry_id, -- integer! -> entries.entry_id: the entry
  s.name AS model, -- string! -> models.model: the model, its name settled
  x.amount AS amount, -- number!: the amount
  x.currency AS currency, -- string!: its currency: ISO 4217, or `currency` where none is stated
  x.day AS day, -- string: when
  x.per AS per, -- string! {tyre|set}: for one tyre or a set of four
  coalesce(x.size, e.size) AS size, -- string: the size it was asked for
  x.shop AS shop, -- string: where
  h.name AS sheet, -- string: sheet, table or section where it stands; empty where a file has one only
  x.row AS row, -- integer: its row (in texts: line), from 1
  x."column" AS "column", -- integer: its column, from 1
  x.cell_text AS cell_text -- string: the text found there, unchanged
FROM price x
  JOIN entry e ON e.id = x.entry_id
  JOIN report p ON p.id = e.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL
  JOIN model m ON m.id = e.model_id
  JOIN model s ON s.id = coalesce(m.same_as_id, m.id)
  LEFT JOIN sheet h ON h.id = x.sheet_id;

-- runs | Logged runs | run_id | One run of a run log as it stands there.
CREATE VIEW runs AS SELECT
  x.id AS run_id, -- integer!: its number; runs of a log stand in their order
  t.key AS test, -- string! -> tests.test: the test's key
  coalesce(p.date, t.date) AS date, -- string: when it was tested: a day, a month or a year
  d.key AS discipline, -- string! -> disciplines.discipline: what was measured
  x.sequence AS sequence, -- integer!: place of the set in the order of the day, from 1
  s.name AS model, -- string! -> models.model: the model, its name settled
  x.role AS role, -- string! {reference|candidate}: what the set is there for
  x.run AS run, -- integer: number of the run within its set
  x.from_kmh AS from_kmh, -- number: speed at the start of the measured window, km/h
  x.to_kmh AS to_kmh, -- number: speed at its end, km/h
  x.distance_m AS distance_m, -- number: distance covered in the window, m
  x.time_s AS time_s, -- number: time, s
  x.level_db AS level_db, -- number: sound level, dB(A)
  x.value AS value, -- number: any other measured figure, in the unit
  u.symbol AS unit, -- string: unit of the value
  x.surface_c AS surface_c, -- number: temperature of the surface, degrees Celsius
  x.air_c AS air_c, -- number: temperature of the air, degrees Celsius
  x.remark AS remark, -- string: the log's remark
  r.file AS file, -- string!: the file it stands in
  h.name AS sheet, -- string: sheet, table or section where the run's tyre stands; empty where a file has one only
  x.row AS row, -- integer!: its row (in texts: line), from 1
  x."column" AS "column", -- integer!: its column, from 1
  x.cell_text AS cell_text, -- string: the text found there, unchanged
  p.id AS report_id -- integer! -> reports.report_id: the report
FROM run x
  JOIN report p ON p.id = x.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL
  JOIN test t ON t.id = p.test_id
  JOIN model m ON m.id = x.model_id
  JOIN model s ON s.id = coalesce(m.same_as_id, m.id)
  JOIN discipline d ON d.id = x.discipline_id
  LEFT JOIN unit u ON u.id = x.unit_id
  JOIN sheet h ON h.id = x.sheet_id;

-- reductions | Reductions | reduction_id | How a log's runs of one discipline became results.
CREATE VIEW reductions AS SELECT
  x.id AS reduction_id, -- integer!: its number
  x.report_id AS report_id, -- integer! -> reports.report_id: the report
  d.key AS discipline, -- string! -> disciplines.discipline: what was measured
  u.symbol AS unit, -- string: unit of means, references, level and steps; empty for plain numbers
  x.by_ratio AS by_ratio, -- boolean!: whether sets are compared by ratio, else by difference
  x.better AS better, -- string! {low|high}: which way is better in that unit
  x.coast_by AS coast_by, -- string: class of tyre whose coast-by correction the levels had
  x.from_kmh AS from_kmh, -- number: nominal speed at the start of the window, km/h
  x.to_kmh AS to_kmh, -- number: nominal speed at its end, km/h
  x.level AS level, -- number: the reference's figure that results stand on
  x.slope AS slope, -- number: change of the reference a place in the order of the day
  x.trend_p AS trend_p, -- number: p of the trend
  x.step_after AS step_after, -- integer: sequence number after which a step fits best
  x.step_size AS step_size, -- number: later mean less earlier mean
  x.step_p AS step_p -- number: p of the step, corrected for the search
FROM reduction x
  JOIN report p ON p.id = x.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL
  JOIN discipline d ON d.id = x.discipline_id
  JOIN unit u ON u.id = x.unit_id;

-- reduction_accounts | Accounts of reductions | reduction_id,part,position | What must be said of a reduction.
CREATE VIEW reduction_accounts AS SELECT
  x.reduction_id AS reduction_id, -- integer! -> reductions.reduction_id: the reduction
  x.part AS part, -- string! {measure|level|trace|cycle|limit}: what runs were averaged in, what the level means, what the reference did, the cycles of the day, the limits it was judged by
  x.position AS position, -- integer!: place within the part, from 1
  x.code AS code, -- string!: what is said
  x.parameters AS parameters -- string!: a JSON array that fills it
FROM reduction_account x
  JOIN reduction y ON y.id = x.reduction_id
  JOIN report p ON p.id = y.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL;

-- reduced_sets | Reduced sets | reduced_set_id | One set of tyres at its place in the order of the day.
CREATE VIEW reduced_sets AS SELECT
  x.id AS reduced_set_id, -- integer!: its number
  x.reduction_id AS reduction_id, -- integer! -> reductions.reduction_id: the reduction
  x.sequence AS sequence, -- integer!: place in the order of the day, from 1
  s.name AS model, -- string! -> models.model: the model, its name settled
  x.role AS role, -- string! {reference|candidate}: what the set is there for
  x.cycle AS cycle, -- integer: the cycle a candidate was driven in, from 1
  x.mean AS mean, -- number: mean of the runs that count
  x.deviation AS deviation, -- number: their standard deviation (n - 1)
  x.counted AS counted, -- integer!: how many runs count
  x.reference AS reference, -- number: the reference at a candidate's place
  x.effect AS effect, -- number: natural logarithm of the ratio to it, or the difference
  x.effect_error AS effect_error, -- number: its standard error
  x.valid AS valid -- boolean!: whether it stands under the limits
FROM reduced_set x
  JOIN reduction y ON y.id = x.reduction_id
  JOIN report p ON p.id = y.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL
  JOIN model m ON m.id = x.model_id
  JOIN model s ON s.id = coalesce(m.same_as_id, m.id);

-- reduced_set_accounts | Accounts of sets | reduced_set_id,part,position | What must be said of a set.
CREATE VIEW reduced_set_accounts AS SELECT
  x.reduced_set_id AS reduced_set_id, -- integer! -> reduced_sets.reduced_set_id: the set
  x.part AS part, -- string! {reference|standing|reason}: how its reference is made up, whether it stands, which limits it broke
  x.position AS position, -- integer!: place within the part, from 1
  x.code AS code, -- string!: what is said
  x.parameters AS parameters -- string!: a JSON array that fills it
FROM reduced_set_account x
  JOIN reduced_set z ON z.id = x.reduced_set_id
  JOIN reduction y ON y.id = z.reduction_id
  JOIN report p ON p.id = y.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL;

-- reduced_runs | Reduced runs | reduced_run_id | What one logged run went into its set's mean with.
CREATE VIEW reduced_runs AS SELECT
  x.id AS reduced_run_id, -- integer!: its number
  x.reduced_set_id AS reduced_set_id, -- integer! -> reduced_sets.reduced_set_id: the set
  x.run_id AS run_id, -- integer! -> runs.run_id: the run
  x.figure AS figure, -- number: what it measured, in the reduction's unit
  x.left_out_code AS left_out, -- string: why it does not count
  x.left_out_parameters AS left_out_parameters, -- string: a JSON array that fills it
  x.flag_code AS flag, -- string: what is odd about it, though it counts
  x.flag_parameters AS flag_parameters -- string: a JSON array that fills it
FROM reduced_run x
  JOIN run y ON y.id = x.run_id
  JOIN report p ON p.id = y.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL;

-- notes | Notes | note_id | What a current report says in words.
CREATE VIEW notes AS SELECT
  x.id AS note_id, -- integer!: its number
  t.key AS test, -- string! -> tests.test: the test's key
  coalesce(p.title, t.title) AS title, -- string: title of the test
  coalesce(p.date, t.date) AS date, -- string: when it was tested: a day, a month or a year
  coalesce(p.publication, t.publication) AS publication, -- string: who published it
  coalesce(p.source_kind, t.source_kind) AS source_kind, -- string {own|independent|maker}: who stands behind it
  s.maker AS maker, -- string: the model's maker
  s.line AS line, -- string: its product family
  s.name AS model, -- string -> models.model: the model it is about, its name settled; empty when about the test as a whole
  s.generation AS generation, -- string: its generation within the line
  d.key AS discipline, -- string -> disciplines.discipline: the discipline it is about
  x.text AS text, -- string!: the note
  r.file AS file, -- string!: the file it stands in
  h.name AS sheet, -- string: sheet, table or section where it stands; empty where a file has one only
  x.row AS row, -- integer!: its row (in texts: line), from 1
  x."column" AS "column", -- integer!: its column, from 1
  x.cell_text AS cell_text, -- string: the text found there, unchanged
  p.id AS report_id -- integer! -> reports.report_id: the report
FROM note x
  JOIN report p ON p.id = x.report_id
  JOIN revision r ON r.id = p.revision_id AND +r.superseded_by_id IS NULL
  JOIN test t ON t.id = p.test_id
  LEFT JOIN model m ON m.id = x.model_id
  LEFT JOIN model s ON s.id = coalesce(m.same_as_id, m.id)
  LEFT JOIN discipline d ON d.id = x.discipline_id
  JOIN sheet h ON h.id = x.sheet_id;

-- findings | Findings | finding_id | Something in a current source that was not understood, or only by assuming something.
CREATE VIEW findings AS SELECT
  x.id AS finding_id, -- integer!: its number
  r.file AS file, -- string!: the file
  x.kind AS kind, -- string! {assumed|new-name|conflict|not-read}: what sort of finding it is
  x.found AS found, -- string: the text found, or what it is about
  x.expected_code AS expected, -- string!: what would have been understood, or what was assumed
  x.expected_parameters AS expected_parameters, -- string!: a JSON array that fills it
  x.remedy_code AS remedy, -- string!: what can be done about it
  x.remedy_parameters AS remedy_parameters, -- string!: a JSON array that fills it
  h.name AS sheet, -- string: sheet, table or section where it stands; empty where a file has one only
  x.row AS row, -- integer: its row (in texts: line), from 1
  x."column" AS "column", -- integer: its column, from 1
  x.cell_text AS cell_text, -- string: the text found there, unchanged
  r.id AS revision_id -- integer! -> sources.revision_id: the revision
FROM finding x
  JOIN revision r ON r.id = x.revision_id AND +r.superseded_by_id IS NULL
  LEFT JOIN sheet h ON h.id = x.sheet_id;

-- drafts | Drafts | draft_id | A table that could not be decided on, with the readings of it that were proposed.
CREATE VIEW drafts AS SELECT
  x.id AS draft_id, -- integer!: its number
  x.revision_id AS revision_id, -- integer! -> sources.revision_id: the revision
  r.file AS file, -- string!: the file
  h.name AS sheet, -- string: sheet, table or section where it stands
  x.first_row AS first_row, -- integer: its first row
  x.last_row AS last_row, -- integer: its last row
  x.first_column AS first_column, -- integer: its first column
  x.last_column AS last_column, -- integer: its last column
  x.readings AS readings, -- string!: the readings with score and reasons, best first, as JSON
  x.state AS state, -- string! {open|taken|dismissed}: what became of it
  x.chosen AS chosen, -- integer: which reading was taken, from 1
  x.decided_at AS decided_at -- datetime: when
FROM draft x
  JOIN revision r ON r.id = x.revision_id
  LEFT JOIN sheet h ON h.id = x.sheet_id;

-- kept_answers | Kept answers | kept_answer_id | An answer that was kept under a name, as it was then.
CREATE VIEW kept_answers AS SELECT
  x.id AS kept_answer_id, -- integer!: its number
  x.name AS name, -- string!: its name
  x.question AS question, -- string!: the question
  x.options AS options, -- string!: its options, as JSON
  x.sentence AS sentence, -- string!: its sentence
  x.answer AS answer, -- string!: the whole answer, as JSON
  x.delivery AS delivery, -- integer!: the newest delivery then
  x.kept_at AS kept_at -- datetime!: when
FROM kept_answer x;

-- plans | Plans | plan_id | A plan of a test, with what was expected before the day.
CREATE VIEW plans AS SELECT
  x.id AS plan_id, -- integer!: its number
  x.name AS name, -- string!: its name
  x.plan AS plan, -- string!: the plan, as JSON
  x.forecast AS forecast, -- string: what was expected, as JSON
  x.digest AS digest, -- string: digest of the archive it was expected from
  x.frozen_at AS frozen_at -- datetime: since when it never changes
FROM plan x;

-- track_runs | Runs on the track | track_run_id | The runs of a day, one after the other; a correction is a line of its own.
CREATE VIEW track_runs AS SELECT
  x.id AS track_run_id, -- integer!: its number, in the order of entering
  x.plan_id AS plan_id, -- integer! -> plans.plan_id: the plan
  x.entered_at AS entered_at, -- datetime!: when it was entered
  x.corrects_id AS corrects_id, -- integer -> .track_run_id: the line that it corrects
  x.discipline AS discipline, -- string!: what was measured
  x.sequence AS sequence, -- integer!: place of the set in the order of the day, from 1
  x.model AS model, -- string!: the model's name
  x.role AS role, -- string! {reference|candidate}: what the set is there for
  x.run AS run, -- integer: number of the run within its set
  x.from_kmh AS from_kmh, -- number: speed at the start of the measured window, km/h
  x.to_kmh AS to_kmh, -- number: speed at its end, km/h
  x.distance_m AS distance_m, -- number: distance covered in the window, m
  x.time_s AS time_s, -- number: time, s
  x.level_db AS level_db, -- number: sound level, dB(A)
  x.value AS value, -- number: any other measured figure, in the unit
  x.unit AS unit, -- string: unit of the value
  x.surface_c AS surface_c, -- number: temperature of the surface, degrees Celsius
  x.air_c AS air_c, -- number: temperature of the air, degrees Celsius
  x.remark AS remark -- string: a remark
FROM track_run x;

-- track_aborts | Disciplines given up | track_abort_id | A discipline that was given up on the day.
CREATE VIEW track_aborts AS SELECT
  x.id AS track_abort_id, -- integer!: its number
  x.plan_id AS plan_id, -- integer! -> plans.plan_id: the plan
  x.discipline AS discipline, -- string!: the discipline
  x.reason AS reason, -- string!: why
  x.entered_at AS entered_at -- datetime!: when
FROM track_abort x;
