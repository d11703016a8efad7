package org.griplore.store.vocabulary;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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
  private static final ObjectMapper JSON =
      new ObjectMapper().disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES);

  private final Map<String, Discipline> byKey;
  private final HeaderIndex headers;

  private DisciplineCatalogue(Map<String, Discipline> byKey) {
    this.byKey = byKey;
    this.headers = new HeaderIndex(byKey.values());
  }

  /** A discipline recognised in a header, by which words and in which language. */
  public record Match(Discipline discipline, String words, String language) {}

  /** The disciplines that come with the program. */
  public static DisciplineCatalogue standard() {
    try (InputStream in = DisciplineCatalogue.class.getResourceAsStream("disciplines.json")) {
      return new DisciplineCatalogue(read("disciplines.json", JSON.readTree(in)));
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
      together.putAll(read(file.toString(), JSON.readTree(Files.readAllBytes(file))));
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

  private static Map<String, Discipline> read(String file, JsonNode root) {
    if (!root.isArray()) {
      throw new Refusal(
          file + " holds no list of disciplines.",
          new Problem(file, root.getNodeType().toString(), "a JSON array of disciplines"));
    }
    Map<String, Discipline> read = new LinkedHashMap<>();
    int number = 0;
    for (JsonNode node : root) {
      Discipline discipline = discipline(file + ", discipline " + ++number, node);
      read.put(discipline.key(), discipline);
    }
    return read;
  }

  private static Discipline discipline(String where, JsonNode node) {
    String key = text(where, node, "key");
    if (!key.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      throw refusal(where, "key", key, "lower-case words joined by hyphens");
    }
    String symbol = text(where, node, "unit");
    Unit unit =
        Unit.ofSymbol(symbol)
            .orElseThrow(() -> refusal(where, "unit", symbol, "a unit's symbol, like m or km/h"));
    List<Discipline.Alternative> alternatives = new ArrayList<>();
    for (JsonNode alternative : node.path("alternatives")) {
      alternatives.add(
          new Discipline.Alternative(
              word(where, alternative, "dimension", Dimension.class),
              word(where, alternative, "better", Direction.class)));
    }
    Map<String, List<String>> words = new LinkedHashMap<>();
    node.path("headerWords")
        .fields()
        .forEachRemaining(
            language -> {
              List<String> phrases = new ArrayList<>();
              language.getValue().forEach(phrase -> phrases.add(phrase.asText()));
              words.put(language.getKey(), phrases);
            });
    return new Discipline(
        key,
        text(where, node, "name"),
        unit,
        word(where, node, "better", Direction.class),
        word(where, node, "scale", Scale.class),
        alternatives,
        words,
        repeatability(where, node.path("repeatability")),
        node.path("describes").asText(""));
  }

  private static Discipline.Repeatability repeatability(String where, JsonNode node) {
    if (node.isMissingNode() || node.isNull()) {
      return null;
    }
    return new Discipline.Repeatability(
        node.hasNonNull("coefficientOfVariation")
            ? (Double) node.get("coefficientOfVariation").asDouble()
            : null,
        node.hasNonNull("standardDeviation")
            ? (Double) node.get("standardDeviation").asDouble()
            : null,
        text(where + ", repeatability", node, "source"));
  }

  private static String text(String where, JsonNode node, String field) {
    String text = node.path(field).asText("");
    if (text.isBlank()) {
      throw refusal(where, field, "nothing", "a text");
    }
    return text;
  }

  private static <E extends Enum<E>> E word(
      String where, JsonNode node, String field, Class<E> type) {
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
    return headers.find(header);
  }
}
