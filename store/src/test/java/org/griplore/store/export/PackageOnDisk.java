package org.griplore.store.export;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A package as somebody else would read it, knowing nothing but the rules: Data Package, Data
 * Resource, CSV Dialect and Table Schema, version 1, at specs.frictionlessdata.io.
 */
public final class PackageOnDisk {
  private static final Pattern NAME = Pattern.compile("[-a-z0-9._/]+");

  /** Lexical forms of Table Schema, "Types and Formats", each in its default format. */
  private static final Map<String, Predicate<String>> FORMS =
      Map.of(
          "string", text -> true,
          "integer", Pattern.compile("[+-]?\\d+").asMatchPredicate(),
          "number", Pattern.compile("[+-]?\\d+(\\.\\d+)?(E[+-]?\\d+)?").asMatchPredicate(),
          "boolean", Pattern.compile("true|True|TRUE|1|false|False|FALSE|0").asMatchPredicate(),
          "datetime",
              Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\dZ").asMatchPredicate());

  private final Path folder;
  private final JsonNode descriptor;
  private final Map<String, Table> tables = new LinkedHashMap<>();
  private final List<String> problems = new ArrayList<>();

  /** A table's header and rows; null is missing. */
  public record Table(List<String> header, List<List<String>> rows) {
    /** The values of one field. */
    public List<String> values(String field) {
      int column = header.indexOf(field);
      return rows.stream().map(row -> row.get(column)).toList();
    }
  }

  private PackageOnDisk(Path folder) throws IOException {
    this.folder = folder;
    this.descriptor = new ObjectMapper().readTree(folder.resolve("datapackage.json").toFile());
  }

  /** Reads a package and notes what breaks the rules. */
  public static PackageOnDisk read(Path folder) {
    try {
      PackageOnDisk read = new PackageOnDisk(folder);
      read.check();
      return read;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What breaks the rules, in sentences; empty when nothing does. */
  public List<String> problems() {
    return problems;
  }

  /** A table by its name. */
  public Table table(String name) {
    return tables.get(name);
  }

  /** Every file's bytes, a character each, by path: two packages are the same if these are. */
  public static Map<String, String> bytes(Path folder) {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(
            folder.relativize(file).toString(),
            new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      }
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void check() throws IOException {
    require(NAME.matcher(descriptor.at("/name").asText()).matches(), "the package has a name");
    Set<String> names = new HashSet<>();
    for (JsonNode resource : descriptor.at("/resources")) {
      String name = resource.at("/name").asText();
      require(NAME.matcher(name).matches() && names.add(name), name + ": a name of its own");
      file(resource);
      if (resource.has("schema")) {
        Table table = csv(folder.resolve(resource.at("/path").asText()));
        tables.put(name, table);
        fields(name, resource.at("/schema/fields"), table);
        primaryKey(name, resource.at("/schema/primaryKey"), table);
      }
    }
    for (JsonNode resource : descriptor.at("/resources")) {
      for (JsonNode key : resource.at("/schema/foreignKeys")) {
        foreignKey(resource.at("/name").asText(), key);
      }
    }
  }

  private void require(boolean holds, String rule) {
    if (!holds) {
      problems.add(rule);
    }
  }

  /** Data Resource: a path is relative, with / and without ..; bytes and hash are those found. */
  private void file(JsonNode resource) throws IOException {
    String path = resource.at("/path").asText();
    require(!path.startsWith("/") && !path.contains(".."), path + ": a path within the package");
    byte[] content = Files.readAllBytes(folder.resolve(path));
    require(resource.at("/bytes").asLong() == content.length, path + ": bytes");
    require(resource.at("/hash").asText().equals("sha256:" + sha256(content)), path + ": hash");
  }

  private static String sha256(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (java.security.NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private void fields(String name, JsonNode fields, Table table) {
    List<String> declared = new ArrayList<>();
    fields.forEach(field -> declared.add(field.at("/name").asText()));
    require(declared.equals(table.header()), name + ": the header has the fields in order");
    require(new HashSet<>(declared).size() == declared.size(), name + ": field names differ");
    for (JsonNode field : fields) {
      String of = name + "." + field.at("/name").asText();
      Predicate<String> form = FORMS.get(field.at("/type").asText());
      require(form != null, of + ": a type of Table Schema");
      Set<String> words = new HashSet<>();
      field.at("/constraints/enum").forEach(word -> words.add(word.asText()));
      for (String value : table.values(field.at("/name").asText())) {
        if (value == null) {
          require(!field.at("/constraints/required").asBoolean(), of + ": required");
        } else {
          require(form != null && form.test(value), of + ": its type, found " + value);
          require(words.isEmpty() || words.contains(value), of + ": one of its words, " + value);
        }
      }
    }
  }

  private static List<String> names(JsonNode oneOrMore) {
    List<String> names = new ArrayList<>();
    if (oneOrMore.isTextual()) {
      names.add(oneOrMore.asText());
    }
    oneOrMore.forEach(name -> names.add(name.asText()));
    return names;
  }

  private static List<List<String>> values(Table table, List<String> fields) {
    List<Integer> columns = fields.stream().map(table.header()::indexOf).toList();
    return table.rows().stream().map(row -> columns.stream().map(row::get).toList()).toList();
  }

  private void primaryKey(String name, JsonNode key, Table table) {
    List<String> fields = names(key);
    require(!fields.isEmpty() && table.header().containsAll(fields), name + ": key fields");
    List<List<String>> values = values(table, fields);
    require(new HashSet<>(values).size() == values.size(), name + ": the key tells rows apart");
    require(values.stream().noneMatch(row -> row.contains(null)), name + ": the key is not empty");
  }

  private void foreignKey(String name, JsonNode key) {
    String resource = key.at("/reference/resource").asText();
    Table to = tables.get(resource.isEmpty() ? name : resource);
    require(to != null, name + ": the key leads to a table");
    Set<List<String>> known = new HashSet<>(values(to, names(key.at("/reference/fields"))));
    for (List<String> value : values(tables.get(name), names(key.at("/fields")))) {
      require(value.contains(null) || known.contains(value), name + ": leads to a row, " + value);
    }
  }

  /** RFC 4180; an empty field is missing, as missingValues is [""]. */
  private static Table csv(Path file) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    List<String> row = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean quoted = false;
    String text = Files.readString(file);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quoted && c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
        field.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == ',' || c == '\n')) {
        row.add(field.isEmpty() ? null : field.toString());
        field.setLength(0);
        if (c == '\n') {
          rows.add(row);
          row = new ArrayList<>();
        }
      } else if (quoted || c != '\r') {
        field.append(c);
      }
    }
    return new Table(rows.get(0), rows.subList(1, rows.size()));
  }
}
