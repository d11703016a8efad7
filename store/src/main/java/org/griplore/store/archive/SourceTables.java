package org.griplore.store.archive;

import java.sql.Connection;
import java.util.Arrays;
import java.util.List;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.SeasonClass;

/** What is given away of sources: their readings, what these say of models, and findings. */
final class SourceTables {
  static final List<String> SEASONS =
      Arrays.stream(SeasonClass.values()).map(SeasonClass::key).toList();

  private final CellText.SheetNames sheets;
  private final DenseNumbers readings;
  private final DenseNumbers deliveries;

  SourceTables(Connection connection) {
    sheets = SheetList.of(connection);
    readings = DenseNumbers.ofTable(connection, "revision");
    deliveries =
        DenseNumbers.of(connection, "SELECT DISTINCT delivery FROM revision ORDER BY delivery");
  }

  List<TableQuery> all() {
    return List.of(
        readings(),
        changes(),
        models(),
        readNames(),
        decisions(),
        columnMaps(),
        lineage(),
        findings());
  }

  /** A word of an enumeration as it is written in files. */
  static String word(String column) {
    return "lower(replace(" + column + ", '_', '-'))";
  }

  private TableQuery readings() {
    return new TableQuery(
            "readings",
            "Readings of sources",
            "One reading of one content of a file. A changed file is read anew; the older reading"
                + " stays, superseded.")
        .numbered("reading", readings::of, "Its number, in the order of adding")
        .always()
        .text("source", "What the source is known by: the path it was read from, or a name")
        .always()
        .integer("number", "Which reading of this source it is, from 1")
        .always()
        .text("file", "The file's name")
        .always()
        .text("form", "What it was read as")
        .always()
        .text("options", "How it was read, where told; empty by the defaults")
        .moment("added", "When it was added")
        .always()
        .numbered("delivery", deliveries::of, "Readings with the same number were added together")
        .always()
        .integer("bytes", "Length of the content")
        .always()
        .text("sha256", "SHA-256 of the content")
        .always()
        .text("original", "The content as it was given, in this package")
        .always()
        .numbered("superseded_by", readings::of, "The reading that took its place")
        .to("", "reading")
        .key("reading")
        .from(
            "SELECT r.id, s.origin, r.number, r.name, r.form, r.options, r.added_at, r.delivery,"
                + " r.bytes, r.sha256, 'originals/' || substr(r.sha256, 1, 2) || '/' || r.sha256,"
                + " r.superseded_by FROM revision r JOIN source_file s ON s.id = r.source_file"
                + " ORDER BY r.id");
  }

  private TableQuery changes() {
    return new TableQuery(
            "reading_changes",
            "What changed from one reading to the next",
            "One sentence on what a reading says differently from the one before it.")
        .numbered("reading", readings::of, "The newer reading")
        .always()
        .to("readings", "reading")
        .integer("position", "Place of the sentence, from 1")
        .always()
        .text("sentence", "What changed")
        .always()
        .key("reading", "position")
        .from("SELECT revision, position, sentence FROM revision_change ORDER BY 1, 2");
  }

  private TableQuery models() {
    return new TableQuery("models", "Models", "A name that a source has for a model.")
        .text("model", "The name")
        .always()
        .text("same_as", "The model's own name, where this one is another name of it")
        .to("", "model")
        .numbered("settled_by", readings::of, "The reading that settled this")
        .to("readings", "reading")
        .key("model")
        .from(
            "SELECT m.name, s.name, m.same_as_revision FROM model m"
                + " LEFT JOIN model s ON s.id = m.same_as ORDER BY m.name");
  }

  private TableQuery readNames() {
    return new TableQuery(
            "read_names",
            "What names were read as",
            "The model that a reading took a name to mean, when that was not the name itself.")
        .numbered("reading", readings::of, "The reading")
        .always()
        .to("readings", "reading")
        .text("model", "The name")
        .always()
        .to("models", "model")
        .text("means", "The model that it was taken to mean")
        .always()
        .to("models", "model")
        .text("how", "By a lineage table, as a known name of it, or as a misspelling")
        .always()
        .oneOf(List.of("told", "known", "assumed"))
        .key("reading", "model")
        .from(
            "SELECT t.revision, m.name, s.name, lower(t.how) FROM reading_of_name t"
                + " JOIN model m ON m.id = t.name JOIN model s ON s.id = t.means"
                + " ORDER BY t.revision, m.name");
  }

  private TableQuery decisions() {
    return new TableQuery(
            "decisions",
            "Decisions",
            "What was decided on a name or a model's descent, those taken back included. The newest"
                + " on a name and topic stands.")
        .integer("decision", "Its number, in the order they were made")
        .always()
        .text("name", "The name it is about")
        .always()
        .text("topic", "What was decided: the meaning of the name, or part of its descent")
        .always()
        .oneOf(Arrays.stream(Decision.Topic.values()).map(Decision.Topic::word).toList())
        .text("verdict", "The value, that there is none, or that it was taken back")
        .always()
        .oneOf(List.of("is", "none", "open"))
        .text("value", "The model's name, or what holds")
        .moment("decided_at", "When")
        .always()
        .text("words", "Why")
        .key("decision")
        .from(
            "SELECT row_number() OVER (ORDER BY id), name, lower(topic), lower(verdict), value,"
                + " decided_at, nullif(words, '') FROM decision ORDER BY id");
  }

  private TableQuery columnMaps() {
    return new TableQuery(
            "column_maps",
            "Column maps",
            "What a user said of the columns of tables with certain headers. The newest on a layout"
                + " is used for later files, unless it was forgotten.")
        .integer("column_map", "Its number, in the order they were given")
        .always()
        .numbered("reading", readings::of, "The reading it was given with")
        .always()
        .to("readings", "reading")
        .text("layout", "The headers, after who published them where that is stated")
        .always()
        .text("map", "What was said, as JSON")
        .always()
        .moment("forgotten_at", "When it was forgotten")
        .key("column_map")
        .from(
            "SELECT row_number() OVER (ORDER BY id), revision, layout, map, forgotten_at"
                + " FROM column_map ORDER BY id");
  }

  private TableQuery lineage() {
    return new TableQuery(
            "lineage", "Descent of models", "What one row of a lineage table says of a model.")
        .numbered("reading", readings::of, "The reading")
        .always()
        .to("readings", "reading")
        .integer("position", "Place of the row within the reading, from 1")
        .always()
        .text("model", "The model")
        .always()
        .to("models", "model")
        .text("maker", "Its maker")
        .text("line", "Its product family")
        .text("generation", "Its generation within the line")
        .text("launched", "When it was launched: a day, a month or a year")
        .text("season", "Its season class")
        .oneOf(SEASONS)
        .text("segment", "Its segment")
        .text("follows", "Its predecessor")
        .to("models", "model")
        .text("aliases", "Other names, parted by |")
        .cell("", sheets, "the row")
        .key("reading", "position")
        .from(
            "SELECT l.revision, row_number() OVER (PARTITION BY l.revision ORDER BY l.id), m.name,"
                + " l.maker, l.line, l.generation, l.launched, "
                + word("l.season")
                + ", l.segment, f.name, l.aliases, l.stands_at FROM lineage l"
                + " JOIN model m ON m.id = l.model LEFT JOIN model f ON f.id = l.follows"
                + " ORDER BY l.id");
  }

  private TableQuery findings() {
    return new TableQuery(
            "findings",
            "Findings",
            "Something in a source that was not understood, or only by assuming something.")
        .numbered("reading", readings::of, "The reading")
        .always()
        .to("readings", "reading")
        .integer("position", "Place of the finding within the reading, from 1")
        .always()
        .text("kind", "What sort of finding it is")
        .always()
        .oneOf(
            Arrays.stream(Finding.Kind.values())
                .map(kind -> kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'))
                .toList())
        .text("about", "What it is about: the text found, or a description")
        .text("expected", "What would have been understood, or what was assumed")
        .text("remedy", "What can be done about it")
        .cell("", sheets, "it")
        .key("reading", "position")
        .from(
            "SELECT revision, row_number() OVER (PARTITION BY revision ORDER BY id), "
                + word("kind")
                + ", found, expected, remedy, stands_at FROM finding ORDER BY id");
  }
}
