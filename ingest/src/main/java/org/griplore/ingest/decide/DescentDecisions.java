package org.griplore.ingest.decide;

import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.recognise.DateReader;
import org.griplore.ingest.recognise.DetailsReader;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Decision.Topic;
import org.griplore.store.vocabulary.Decision.Verdict;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.SeasonClass;

/**
 * Decides what holds of a model's descent, whatever the sources say: its predecessor, maker, line,
 * generation, launch, season class and segment.
 */
public final class DescentDecisions {
  private final Archive archive;
  private final Clock clock;

  /** Decides in an archive that can be written. */
  public DescentDecisions(Archive archive, Clock clock) {
    this.archive = archive;
    this.clock = clock;
  }

  /**
   * What is wanted of a model's descent.
   *
   * @param values what holds, by topic; a null value says that there is none
   * @param takenBack topics on which the sources' word holds again
   */
  public record Wanted(Map<Topic, String> values, List<Topic> takenBack) {
    /** Keeps the map from changing; it may hold nulls. */
    public Wanted {
      Map<Topic, String> kept = new EnumMap<>(Topic.class);
      kept.putAll(values);
      values = kept;
      takenBack = List.copyOf(takenBack);
    }
  }

  /**
   * Decides all that is wanted, or nothing.
   *
   * @param words why; may be empty
   * @return what was new
   * @throws Refusal when a model is not known, a value cannot be read, or a model would follow
   *     itself
   */
  public List<Decision> decide(String model, Wanted wanted, String words) {
    KnownNames known = new KnownNames(archive);
    String name = known.model("model", model);
    List<Decision> decisions = new ArrayList<>();
    wanted
        .values()
        .forEach(
            (topic, value) -> {
              String read =
                  value == null
                      ? null
                      : topic == Topic.FOLLOWS ? known.model("follows", value) : read(topic, value);
              Verdict verdict = read == null ? Verdict.NONE : Verdict.IS;
              decisions.add(
                  new Decision(name, topic, verdict, read, clock.instant(), words.strip()));
            });
    for (Topic topic : wanted.takenBack()) {
      decisions.add(new Decision(name, topic, Verdict.OPEN, null, clock.instant(), words.strip()));
    }
    return archive.decide(decisions);
  }

  /**
   * The topics on which something is decided of a model.
   *
   * @throws Refusal when nothing is
   */
  public static List<Topic> decided(Archive archive, String model) {
    String name = new KnownNames(archive).model("model", model);
    List<Topic> topics =
        archive.decisions().stream()
            .filter(decision -> decision.topic() != Topic.MEANING)
            .filter(decision -> decision.key().equals(NameKey.of(name)))
            .map(Decision::topic)
            .toList();
    if (topics.isEmpty()) {
      throw new Refusal("Nothing is decided on the descent of " + name + ".");
    }
    return topics;
  }

  /** The value as it is kept: dates in ISO 8601, season classes by their key. */
  static String read(Topic topic, String value) {
    return switch (topic) {
      case LAUNCHED ->
          DateReader.read(value.strip())
              .orElseThrow(() -> refusal(topic, value, "a year or a date, like 2021"))
              .date()
              .text();
      case SEASON -> {
        SeasonClass season = DetailsReader.seasonOf(value);
        if (season == null) {
          throw refusal(topic, value, "summer, winter or all-season");
        }
        yield season.key();
      }
      default -> value.strip();
    };
  }

  private static Refusal refusal(Topic topic, String found, String expected) {
    return new Refusal(
        "The "
            + (topic == Topic.LAUNCHED ? "launch" : topic.word())
            + " is \""
            + found
            + "\"; expected "
            + expected
            + ".",
        new Problem(topic.word(), found, expected));
  }
}
