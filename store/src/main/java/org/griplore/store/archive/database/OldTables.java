package org.griplore.store.archive.database;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.store.archive.writing.Rules;
import org.griplore.store.vocabulary.Phrase;
import org.griplore.store.wording.PhraseBook;

/**
 * The tables of version 2 while their rows move to those of version 3. What SQL can copy the script
 * copies; what was packed into one text is unpacked here.
 */
public final class OldTables {
  private static final Pattern CELLS = Pattern.compile("cells\\((\\w+)\\)");

  /** Where one option ends and another begins: names came in order, then the map of columns. */
  private static final Pattern OPTION = Pattern.compile("(?:^|; )([a-z][a-z0-9_ -]*)=");

  private final Connection connection;

  public OldTables(Connection connection) {
    this.connection = connection;
  }

  private List<String> names(String type, String like) {
    return Sql.list(
        connection,
        "SELECT name FROM sqlite_schema WHERE type = ? AND name LIKE ? AND sql IS NOT NULL"
            + " AND name NOT LIKE 'sqlite%'",
        row -> row.getString(1),
        type,
        like);
  }

  /** Renames all tables and drops their indexes. */
  public void setAside() {
    names("index", "%").forEach(index -> Sql.execute(connection, "DROP INDEX " + index));
    names("table", "%")
        .forEach(
            table ->
                Sql.execute(connection, "ALTER TABLE %1$s RENAME TO old_%1$s".formatted(table)));
  }

  public void drop() {
    names("table", "old\\_%".replace("\\", "")).stream()
        .filter(table -> table.startsWith("old_"))
        .forEach(table -> Sql.execute(connection, "DROP TABLE " + table));
  }

  /**
   * Puts four expressions in the place of each {@code cells(column)}: a packed cell was {@code
   * sheet number:row:column:text}. It is cut as bytes, so that a text with a NUL stays whole.
   */
  public static String cellColumns(String script) {
    Matcher matcher = CELLS.matcher(script);
    return matcher.replaceAll(
        match -> {
          String sheet = "CAST(" + match.group(1) + " AS BLOB)";
          String row = afterColon(sheet);
          String column = afterColon(row);
          return "CAST(%s AS INTEGER), CAST(%s AS INTEGER), CAST(%s AS INTEGER), CAST(%s AS TEXT)"
              .formatted(sheet, row, column, afterColon(column));
        });
  }

  private static String afterColon(String bytes) {
    return "substr(%1$s, instr(%1$s, x'3A') + 1)".formatted(bytes);
  }

  /** Moves what SQL alone cannot take apart. */
  public void unpack() {
    details();
    aliases();
    options();
    lists("reduction", "cycles", "cycle");
    lists("reduction", "limits", "limit");
    lists("reduced_set", "reasons", "reason");
    rules();
    for (String table : List.of("revision_change", "reduction_account", "reduced_set_account")) {
      String id = table.equals("revision_change") ? "revision_id" : table.replace("account", "id");
      String part = table.equals("revision_change") ? "''" : "part";
      code(
          table,
          id + ", " + part + ", position",
          id + " = ? AND " + part + " = ? AND position = ?",
          "");
    }
    code("result_step", "id", "id = ?", "");
    code("result_step", "id", "id = ?", "label_");
    code("reduced_run", "id", "id = ?", "left_out_");
    code("reduced_run", "id", "id = ?", "flag_");
    code("finding", "id", "id = ?", "expected_");
    code("finding", "id", "id = ?", "remedy_");
  }

  private record Packed(long id, String text) {}

  private List<Packed> packed(String table, String column) {
    return Sql.list(
        connection,
        "SELECT id, %1$s FROM %2$s WHERE %1$s <> '' ORDER BY id".formatted(column, table),
        row -> new Packed(row.getLong(1), row.getString(2)));
  }

  /** A line a detail, {@code name=cell}, with line feeds and backslashes of the text escaped. */
  private void details() {
    for (Packed report : packed("old_report", "details_at")) {
      for (String line : report.text().split("\n")) {
        int equals = line.indexOf('=');
        String[] parts = unescape(line.substring(equals + 1)).split(":", 4);
        Sql.execute(
            connection,
            "INSERT INTO report_detail (report_id, detail, sheet_id, row, \"column\", cell_text)"
                + " VALUES (?, ?, ?, ?, ?, ?)",
            report.id(),
            line.substring(0, equals),
            Integer.parseInt(parts[0]),
            Integer.parseInt(parts[1]),
            Integer.parseInt(parts[2]),
            parts[3]);
      }
    }
  }

  private static String unescape(String text) {
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\\' && i + 1 < text.length()) {
        char next = text.charAt(++i);
        plain.append(next == 'n' ? '\n' : next);
      } else {
        plain.append(c);
      }
    }
    return plain.toString();
  }

  private void aliases() {
    for (Packed lineage : packed("old_lineage", "aliases")) {
      int position = 0;
      for (String alias : lineage.text().split("\\|")) {
        Sql.execute(
            connection,
            "INSERT INTO lineage_alias (lineage_id, position, name) VALUES (?, ?, ?)",
            lineage.id(),
            ++position,
            alias);
      }
    }
  }

  private void options() {
    for (Packed revision : packed("old_revision", "options")) {
      int position = 0;
      for (Map.Entry<String, String> option : options(revision.text())) {
        Sql.execute(
            connection,
            "INSERT INTO revision_option (revision_id, position, name, value) VALUES (?, ?, ?, ?)",
            revision.id(),
            ++position,
            option.getKey(),
            option.getValue());
      }
    }
  }

  /**
   * The options of {@code name=value; name=value; details first; map={...}}. Names stand in their
   * order: what looks like a name and does not come after the one before it is part of a value.
   */
  public static List<Map.Entry<String, String>> options(String text) {
    String details = text;
    String map = null;
    int at = text.startsWith("map={") ? 0 : text.indexOf("; map={");
    if (at >= 0) {
      map = text.substring(text.indexOf("map={", at) + "map=".length());
      details = text.substring(0, at);
    }
    boolean first = details.endsWith("; details first");
    details = first ? details.substring(0, details.length() - "; details first".length()) : details;
    List<Map.Entry<String, String>> options = new ArrayList<>();
    TreeSet<String> names = new TreeSet<>();
    Matcher next = OPTION.matcher(details);
    int begins = 0;
    String name = null;
    while (next.find()) {
      if (names.isEmpty() || next.group(1).compareTo(names.last()) > 0) {
        if (name != null) {
          options.add(Map.entry(name, details.substring(begins, next.start())));
        }
        name = next.group(1);
        names.add(name);
        begins = next.end();
      }
    }
    if (name != null) {
      options.add(Map.entry(name, details.substring(begins)));
    }
    if (first) {
      options.add(Map.entry("details first", "yes"));
    }
    if (map != null) {
      options.add(Map.entry("map", map));
    }
    return options;
  }

  private void lists(String table, String column, String part) {
    for (Packed list : packed("old_" + table, column)) {
      int position = 0;
      for (String sentence : list.text().lines().toList()) {
        Phrase phrase = PhraseBook.phrase(sentence);
        Sql.execute(
            connection,
            "INSERT INTO %1$s_account (%1$s_id, part, position, code, parameters) VALUES (?, ?, ?, ?, ?)"
                .formatted(table),
            list.id(),
            part,
            ++position,
            phrase.code(),
            PhraseColumns.json(phrase.parameters()));
      }
    }
  }

  private void rules() {
    for (Packed rule : packed("old_rule", "words")) {
      Sql.execute(connection, "DELETE FROM rule_part WHERE rule_id = ?", rule.id());
      Rules.write(connection, (int) rule.id(), PhraseBook.phrases(rule.text()));
    }
  }

  private record Said(Object[] key, String words) {}

  /** Gives sentences that were copied as they are their codes, where they have one. */
  private void code(String table, String key, String where, String prefix) {
    List<Said> told =
        Sql.list(
            connection,
            "SELECT %3$sparameters, %2$s FROM %1$s WHERE %3$scode = 'told'"
                .formatted(table, key, prefix),
            row -> new Said(key(row), PhraseColumns.words("told", row.getString(1))));
    for (Said each : told) {
      Phrase phrase = PhraseBook.phrase(each.words());
      if (!phrase.code().equals(Phrase.TOLD)) {
        Object[] parameters = new Object[each.key().length + 2];
        parameters[0] = phrase.code();
        parameters[1] = PhraseColumns.json(phrase.parameters());
        System.arraycopy(each.key(), 0, parameters, 2, each.key().length);
        Sql.execute(
            connection,
            "UPDATE %1$s SET %2$scode = ?, %2$sparameters = ? WHERE %3$s"
                .formatted(table, prefix, where),
            parameters);
      }
    }
  }

  private static Object[] key(ResultSet row) throws SQLException {
    Object[] key = new Object[row.getMetaData().getColumnCount() - 1];
    for (int i = 0; i < key.length; i++) {
      key[i] = row.getObject(i + 2);
    }
    return key;
  }
}
