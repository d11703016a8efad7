package org.griplore.ingest.decide;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import org.griplore.ingest.grid.source.DocumentReader;
import org.griplore.ingest.grid.text.DelimitedText;
import org.griplore.ingest.grid.text.RecordReader;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Decision.Topic;
import org.griplore.store.vocabulary.Decision.Verdict;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Decisions as a table that can be taken to another archive: {@code name, decision, value,
 * decided_at, words}. A decision is {@code same-as}, {@code new}, {@code follows}, {@code
 * starts-line}, {@code maker}, {@code line}, {@code generation}, {@code launched}, {@code season}
 * or {@code segment}; the value is a model's name or what holds, and an empty one says that there
 * is none.
 */
public final class DecisionsFile {
  private static final List<String> COLUMNS =
      List.of("name", "decision", "value", "decided_at", "words");

  private final Original original;
  private final Clock clock;

  private DecisionsFile(Original original, Clock clock) {
    this.original = original;
    this.clock = clock;
  }

  /** The text of a file with these decisions. */
  public static String text(List<Decision> decisions) {
    StringBuilder text = new StringBuilder(String.join(",", COLUMNS)).append('\n');
    for (Decision decision : decisions) {
      StringJoiner row = new StringJoiner(",", "", "\n");
      row.add(quoted(decision.name()));
      row.add(word(decision));
      row.add(quoted(decision.value() == null ? "" : decision.value()));
      row.add(decision.decidedAt().toString());
      row.add(quoted(decision.words()));
      text.append(row);
    }
    return text.toString();
  }

  private static String quoted(String field) {
    return field.matches("[^,;\t|\"\r\n]*") ? field : '"' + field.replace("\"", "\"\"") + '"';
  }

  private static String word(Decision decision) {
    return switch (decision.topic()) {
      case MEANING -> decision.verdict() == Verdict.IS ? "same-as" : "new";
      case FOLLOWS -> decision.verdict() == Verdict.IS ? "follows" : "starts-line";
      default -> decision.topic().word();
    };
  }

  /**
   * Reads decisions from a file.
   *
   * @param clock for decisions that do not say when they were made
   * @throws Refusal with the line, when it is no such file or a decision cannot be understood
   */
  public static List<Decision> read(Original original, Clock clock) {
    return new DecisionsFile(original, clock).read();
  }

  private List<Decision> read() {
    DelimitedText text =
        DocumentReader.delimited(original)
            .orElseGet(() -> new DelimitedText(original, StandardCharsets.UTF_8, ','));
    List<Decision> decisions = new ArrayList<>();
    try (RecordReader records = text.open()) {
      Map<String, Integer> columns = columns(records);
      while (records.next()) {
        if (records.count() > 1 || !records.field(0).isBlank()) {
          decisions.add(decision(records, columns));
        }
      }
    } catch (IOException e) {
      throw new Refusal(original.name() + " cannot be read: " + e.getMessage() + ".", e);
    }
    return decisions;
  }

  private static String header() {
    return "a header with the columns name, decision, value (and decided_at, words)";
  }

  private Map<String, Integer> columns(RecordReader records) throws IOException {
    Map<String, Integer> columns = new HashMap<>();
    if (records.next()) {
      for (int i = 0; i < records.count(); i++) {
        columns.putIfAbsent(records.field(i).strip().toLowerCase(Locale.ROOT), i);
      }
    }
    if (!columns.keySet().containsAll(COLUMNS.subList(0, 3))) {
      throw refusal(1, "its header", String.join(", ", columns.keySet()), header());
    }
    return columns;
  }

  private Decision decision(RecordReader records, Map<String, Integer> columns) {
    int line = records.line();
    String name = field(records, columns, "name");
    if (name.isEmpty()) {
      throw refusal(line, "name", name, "the name that the decision is about");
    }
    String word = field(records, columns, "decision").toLowerCase(Locale.ROOT);
    String value = field(records, columns, "value");
    boolean alone = word.equals("new") || word.equals("starts-line");
    boolean needed = word.equals("same-as") || word.equals("follows");
    if (alone && !value.isEmpty() || needed && value.isEmpty()) {
      throw refusal(line, "value", value, alone ? "nothing" : "a model's name");
    }
    Topic topic =
        topic(word)
            .orElseThrow(
                () ->
                    refusal(
                        line,
                        "decision",
                        word,
                        "same-as, new, follows, starts-line, maker, line, generation, launched,"
                            + " season or segment"));
    if (!value.isEmpty()) {
      value = DescentDecisions.read(topic, value);
    }
    return new Decision(
        name,
        topic,
        value.isEmpty() ? Verdict.NONE : Verdict.IS,
        value.isEmpty() ? null : value,
        decidedAt(line, field(records, columns, "decided_at")),
        field(records, columns, "words"));
  }

  private static Optional<Topic> topic(String word) {
    return switch (word) {
      case "same-as", "new" -> Optional.of(Topic.MEANING);
      case "follows", "starts-line" -> Optional.of(Topic.FOLLOWS);
      default -> Topic.ofWord(word).filter(topic -> topic != Topic.MEANING);
    };
  }

  private Instant decidedAt(int line, String text) {
    try {
      return text.isEmpty() ? clock.instant() : Instant.parse(text);
    } catch (DateTimeParseException e) {
      throw refusal(line, "decided_at", text, "a moment like 2024-05-01T12:00:00Z");
    }
  }

  private static String field(RecordReader records, Map<String, Integer> columns, String name) {
    Integer column = columns.get(name);
    return column == null || column >= records.count() ? "" : records.field(column).strip();
  }

  private Refusal refusal(int line, String where, String found, String expected) {
    return new Refusal(
        "%s, line %d, %s: found \"%s\", expected %s; nothing was decided."
            .formatted(original.name(), line, where, found, expected),
        new Problem(original.name() + ", line " + line + ", " + where, found, expected));
  }
}
