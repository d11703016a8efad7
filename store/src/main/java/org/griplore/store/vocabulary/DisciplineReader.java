package org.griplore.store.vocabulary;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads the JSON form of a discipline catalogue and says exactly what it does not understand. */
final class DisciplineReader {
  private static final Pattern KEY = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
  private static final Set<String> FIELDS =
      Set.of(
          "key",
          "name",
          "unit",
          "better",
          "scale",
          "alternatives",
          "words",
          "repeatability",
          "describes");

  private final String file;
  private final boolean phrasesChecked;

  /** Reads a user's file; its phrases are checked. */
  DisciplineReader(String file) {
    this(file, true);
  }

  /**
   * @param phrasesChecked false for the file that comes with the program: every command reads it,
   *     and a test has checked its phrases
   */
  DisciplineReader(String file, boolean phrasesChecked) {
    this.file = file;
    this.phrasesChecked = phrasesChecked;
  }

  Map<String, Discipline> read(Path path, Map<String, Discipline> into) {
    try (InputStream data = Files.newInputStream(path)) {
      return read(data, into);
    } catch (IOException e) {
      throw new Refusal(
          file + " cannot be read: " + e.getMessage(), e, new Problem(file, "", "a readable file"));
    }
  }

  Map<String, Discipline> read(InputStream data, Map<String, Discipline> into) throws IOException {
    JsonNode root;
    try {
      root = new ObjectMapper().readTree(data);
    } catch (JsonProcessingException e) {
      String where = file + ", line " + e.getLocation().getLineNr();
      throw new Refusal(
          where + " is not JSON: " + e.getOriginalMessage(),
          e,
          new Problem(where, e.getOriginalMessage(), "JSON"));
    }
    JsonNode list = root == null ? null : root.get("disciplines");
    if (list == null || !list.isArray()) {
      throw refusal("the file", "disciplines", "", "a list of disciplines");
    }
    int number = 0;
    for (JsonNode entry : list) {
      number++;
      Discipline read = discipline(entry, "entry " + number, into);
      into.put(read.key(), read);
    }
    return into;
  }

  private Discipline discipline(JsonNode entry, String place, Map<String, Discipline> known) {
    String key = text(entry, place, "key");
    if (!KEY.matcher(key).matches()) {
      throw refusal(place, "key", key, "lower-case words joined by hyphens, like wet-braking");
    }
    for (Iterator<String> names = entry.fieldNames(); names.hasNext(); ) {
      String field = names.next();
      if (!FIELDS.contains(field)) {
        throw refusal(key, field, field, "a field among " + String.join(", ", sorted(FIELDS)));
      }
    }
    Discipline old = known.get(key);
    Unit unit = given(entry, "unit", old) ? unit(entry, key) : old.unit();
    return new Discipline(
        key,
        given(entry, "name", old) ? text(entry, key, "name") : old.name(),
        unit.dimension(),
        unit,
        given(entry, "better", old) ? choice(entry, key, "better", Direction.class) : old.better(),
        given(entry, "scale", old) ? scale(entry, key, unit) : old.scale(),
        entry.has("alternatives") || old == null ? alternatives(entry, key) : old.alternatives(),
        entry.has("words") || old == null ? words(entry, key) : old.headerWords(),
        entry.has("repeatability") || old == null ? repeatability(entry, key) : old.repeatability(),
        given(entry, "describes", old) ? text(entry, key, "describes") : old.describes());
  }

  private static boolean given(JsonNode entry, String field, Discipline old) {
    return old == null || entry.has(field);
  }

  private Unit unit(JsonNode entry, String key) {
    String symbol = text(entry, key, "unit");
    return Unit.ofSymbol(symbol)
        .filter(unit -> unit != Unit.NUMBER)
        .orElseThrow(() -> refusal(key, "unit", symbol, "a unit among " + symbols()));
  }

  private Scale scale(JsonNode entry, String key, Unit unit) {
    Scale scale = choice(entry, key, "scale", Scale.class);
    Scale natural =
        switch (unit.dimension()) {
          case LEVEL -> Scale.LEVEL;
          case POINTS, MARK -> Scale.POINTS;
          default -> Scale.RATIO;
        };
    if (scale != natural) {
      throw refusal(
          key, "scale", lower(scale), lower(natural) + ", as the unit is " + unit.symbol());
    }
    return scale;
  }

  private List<Alternative> alternatives(JsonNode entry, String key) {
    List<Alternative> all = new ArrayList<>();
    for (JsonNode other : entry.path("alternatives")) {
      all.add(new Alternative(unit(other, key), choice(other, key, "better", Direction.class)));
    }
    return all;
  }

  private Map<String, List<String>> words(JsonNode entry, String key) {
    Map<String, List<String>> all = new LinkedHashMap<>();
    JsonNode words = entry.path("words");
    if (!words.isMissingNode() && !words.isObject()) {
      throw refusal(key, "words", words.toString(), "lists of phrases by language");
    }
    for (Iterator<String> languages = words.fieldNames(); languages.hasNext(); ) {
      String language = languages.next();
      if (!words.get(language).isArray()) {
        throw refusal(key, "words." + language, words.get(language).toString(), "a list");
      }
      List<String> phrases = new ArrayList<>();
      for (JsonNode phrase : words.get(language)) {
        phrases.add(phrase(phrase.asText(), key, language));
      }
      all.put(language, List.copyOf(phrases));
    }
    return all;
  }

  private String phrase(String notation, String key, String language) {
    if (!phrasesChecked) {
      return notation;
    }
    try {
      HeaderPhrase.of(notation);
      return notation;
    } catch (IllegalArgumentException e) {
      throw refusal(key, "words." + language, notation, "words, each with * where it is open");
    }
  }

  private Repeatability repeatability(JsonNode entry, String key) {
    JsonNode node = entry.path("repeatability");
    if (node.isMissingNode() || node.isNull()) {
      return null;
    }
    JsonNode value = node.path("value");
    if (!value.isNumber() || !(value.doubleValue() > 0)) {
      throw refusal(key, "repeatability.value", value.asText(), "a number above 0");
    }
    return new Repeatability(
        choice(node, key, "kind", Repeatability.Kind.class),
        value.doubleValue(),
        choice(node, key, "basis", Repeatability.Basis.class),
        text(node, key, "source"));
  }

  private String text(JsonNode entry, String key, String field) {
    JsonNode value = entry.path(field);
    if (!value.isTextual() || value.textValue().isBlank()) {
      throw refusal(key, field, value.isMissingNode() ? "" : value.toString(), "a text");
    }
    return value.textValue();
  }

  private <E extends Enum<E>> E choice(JsonNode entry, String key, String field, Class<E> type) {
    String found = text(entry, key, field);
    return Arrays.stream(type.getEnumConstants())
        .filter(constant -> lower(constant).equals(found))
        .findFirst()
        .orElseThrow(
            () ->
                refusal(
                    key,
                    field,
                    found,
                    Arrays.stream(type.getEnumConstants())
                        .map(DisciplineReader::lower)
                        .collect(Collectors.joining(" or "))));
  }

  private Refusal refusal(String key, String field, String found, String expected) {
    String where = file + ", " + key + ", " + field;
    String stood = found.isEmpty() ? "nothing stands there" : "found " + found;
    return new Refusal(
        where + ": " + stood + "; expected " + expected, new Problem(where, found, expected));
  }

  private static String lower(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  private static List<String> sorted(Set<String> names) {
    return names.stream().sorted().toList();
  }

  private static String symbols() {
    return Arrays.stream(Unit.values())
        .filter(unit -> unit != Unit.NUMBER)
        .map(Unit::symbol)
        .collect(Collectors.joining(", "));
  }
}
