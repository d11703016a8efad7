package org.griplore.store.vocabulary;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The disciplines known, in the order they are shown. The standard ones are a resource; a user's
 * file of the same form adds more or takes the place of some.
 */
public final class DisciplineCatalogue {
  private final Map<String, Discipline> byKey;
  private HeaderIndex headers;

  private DisciplineCatalogue(Map<String, Discipline> byKey) {
    this.byKey = byKey;
  }

  /** A discipline recognised in a header, by which words and in which language. */
  public record Match(Discipline discipline, String words, String language) {}

  /** The disciplines that come with the program. */
  public static DisciplineCatalogue standard() {
    try (InputStream in = DisciplineCatalogue.class.getResourceAsStream("disciplines.json")) {
      return new DisciplineCatalogue(read("disciplines.json", JsonValues.read(in)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * These disciplines and those of a file of the same form; the file's take the place of others
   * with the same key.
   *
   * @throws Refusal when the file cannot be read or an entry is not complete
   */
  public DisciplineCatalogue with(Path file) {
    Map<String, Discipline> together = new LinkedHashMap<>(byKey);
    try {
      together.putAll(
          read(
              file.toString(),
              JsonValues.read(new ByteArrayInputStream(Files.readAllBytes(file)))));
    } catch (JsonProcessingException e) {
      throw new Refusal(
          "%s, line %d: this is no JSON: %s."
              .formatted(file, e.getLocation().getLineNr(), e.getOriginalMessage()),
          e);
    } catch (IOException e) {
      throw new Refusal(file + " cannot be read.", e);
    }
    return new DisciplineCatalogue(together);
  }

  private static Map<String, Discipline> read(String file, Object root) {
    if (!(root instanceof List<?> list)) {
      throw new Refusal(
          file + " holds no list of disciplines.",
          new Problem(file, "something else", "a JSON array of disciplines"));
    }
    Map<String, Discipline> read = new LinkedHashMap<>();
    int number = 0;
    for (Object element : list) {
      Discipline discipline = discipline(file + ", discipline " + ++number, fields(element));
      read.put(discipline.key(), discipline);
    }
    return read;
  }

  /** The fields of an object; none of anything else. */
  @SuppressWarnings("unchecked")
  private static Map<String, Object> fields(Object value) {
    return value instanceof Map<?, ?> map ? (Map<String, Object>) map : Map.of();
  }

  private static List<?> elements(Object value) {
    return value instanceof List<?> list ? list : List.of();
  }

  private static Discipline discipline(String where, Map<String, Object> node) {
    String key = text(where, node, "key");
    if (!key.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      throw refusal(where, "key", key, "lower-case words joined by hyphens");
    }
    String symbol = text(where, node, "unit");
    Unit unit =
        Unit.ofSymbol(symbol)
            .orElseThrow(() -> refusal(where, "unit", symbol, "a unit's symbol, like m or km/h"));
    List<Discipline.Alternative> alternatives = new ArrayList<>();
    for (Object alternative : elements(node.get("alternatives"))) {
      alternatives.add(
          new Discipline.Alternative(
              word(where, fields(alternative), "dimension", Dimension.class),
              word(where, fields(alternative), "better", Direction.class)));
    }
    Map<String, List<String>> words = new LinkedHashMap<>();
    fields(node.get("headerWords"))
        .forEach(
            (language, phrases) ->
                words.put(language, elements(phrases).stream().map(String::valueOf).toList()));
    Object describes = node.get("describes");
    return new Discipline(
        key,
        text(where, node, "name"),
        unit,
        word(where, node, "better", Direction.class),
        word(where, node, "scale", Scale.class),
        alternatives,
        words,
        repeatability(where, node.get("repeatability")),
        describes == null ? "" : describes.toString());
  }

  private static Discipline.Repeatability repeatability(String where, Object value) {
    if (value == null) {
      return null;
    }
    Map<String, Object> node = fields(value);
    return new Discipline.Repeatability(
        node.get("coefficientOfVariation") instanceof Double number ? number : null,
        node.get("standardDeviation") instanceof Double number ? number : null,
        text(where + ", repeatability", node, "source"));
  }

  private static String text(String where, Map<String, Object> node, String field) {
    if (!(node.get(field) instanceof String text) || text.isBlank()) {
      throw refusal(where, field, "nothing", "a text");
    }
    return text;
  }

  private static <E extends Enum<E>> E word(
      String where, Map<String, Object> node, String field, Class<E> type) {
    String text = text(where, node, field);
    for (E constant : type.getEnumConstants()) {
      if (constant.name().equals(text)) {
        return constant;
      }
    }
    throw refusal(
        where, field, text, "one of " + java.util.Arrays.toString(type.getEnumConstants()));
  }

  private static Refusal refusal(String where, String field, String found, String expected) {
    return new Refusal(
        "%s: `%s` is \"%s\"; expected %s.".formatted(where, field, found, expected),
        new Problem(where + ", " + field, found, expected));
  }

  /** The discipline with this key, or null when the catalogue does not have it. */
  public Discipline get(String key) {
    return byKey.get(key);
  }

  /** All disciplines in the order they are shown. */
  public List<Discipline> all() {
    return List.copyOf(byKey.values());
  }

  /** The discipline that a table's header speaks of; the longest known phrase in it counts. */
  public Optional<Match> byHeader(String header) {
    return headers().find(header);
  }

  /** Made when first asked for: questions never ask. */
  private synchronized HeaderIndex headers() {
    if (headers == null) {
      headers = new HeaderIndex(byKey.values());
    }
    return headers;
  }
}
