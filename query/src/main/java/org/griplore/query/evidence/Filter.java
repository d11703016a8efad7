package org.griplore.query.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;

/**
 * Which entries count: the filters common to the questions. It knows its own words, so an answer
 * can say what was asked and what was left out.
 *
 * <p>Reports that makers supplied count where {@code --source} asks for them and nowhere else, and
 * a test that two reports tell counts once.
 */
public final class Filter {
  /** Why a result in a maker's report does not count. */
  public static final String BY_MAKER = "reports supplied by a maker";

  /** Why a result in a test that another report tells as well does not count. */
  public static final String RETOLD = "tests that another report tells too, counted once";

  /** The options, as every filtered question offers them. */
  public static final List<Option> OPTIONS =
      List.of(
          Option.once("size", "SIZE", "only tests in this size, like \"205/55 R16\"", null),
          Option.once("rim", "INCH", "only sizes for this rim diameter", null),
          Option.once("season", "CLASS", "only this season class", null)
              .oneOf(List.of("summer", "winter", "all-season")),
          Option.once("segment", "WORDS", "only models of this market segment", null),
          Option.once("from", "DATE", "only tests from this day, month or year on", null),
          Option.once("to", "DATE", "only tests up to this day, month or year", null),
          Option.repeated("source", "KIND", "only reports of this kind")
              .oneOf(List.of("own", "independent", "maker")),
          Option.once("state", "STATE", "only tyres in this state; any takes new and worn", "new")
              .oneOf(List.of("new", "worn", "any")),
          Option.once(
                  "evidence",
                  "KIND",
                  "only figures of this kind; declared ones stand on labels and data sheets",
                  "measured")
              .oneOf(List.of("measured", "declared", "claimed")),
          Option.once("surface-from", "C", "only on surfaces at least this warm", null),
          Option.once("surface-to", "C", "only on surfaces at most this warm", null),
          Option.once("air-from", "C", "only in air at least this warm", null),
          Option.once("air-to", "C", "only in air at most this warm", null),
          Option.repeated("without", "TEST", "as if this test were not there"));

  private final Evidence evidence;
  private final String size;
  private final Double rim;
  private final SeasonClass season;
  private final String segment;
  private final TestDate from;
  private final TestDate to;
  private final Set<SourceKind> kinds = EnumSet.noneOf(SourceKind.class);
  private final Makers makers;
  private final boolean retoldCount;
  private final Conditions conditions;
  private final boolean asked;
  private final boolean open;

  /** Whether maker-supplied reports count. */
  private enum Makers {
    COUNT,
    LEFT_OUT,
    ALONE
  }

  /**
   * Reads the filters.
   *
   * @throws org.griplore.store.vocabulary.Refusal when one cannot be understood, or from is after
   *     to
   */
  public Filter(Choices choices, Evidence evidence) {
    this.evidence = evidence;
    this.size = choices.has("size") ? sizeKey(choices.text("size")) : null;
    this.rim = choices.has("rim") ? (Double) choices.number("rim", 8, 30).getAsDouble() : null;
    this.season =
        choices.has("season") ? SeasonClass.ofKey(choices.text("season")).orElseThrow() : null;
    this.segment = choices.text("segment");
    this.from = choices.date("from");
    this.to = choices.date("to");
    choices.all("source").forEach(word -> kinds.add(SourceKind.ofKey(word).orElseThrow()));
    if (from != null && to != null && from.text().compareTo(upTo(to)) > 0) {
      throw Choices.refusal("from", from.text(), "a date that is not after `to`, " + to.text());
    }
    this.makers = kinds.isEmpty() && evidence.hasMakerReports() ? Makers.LEFT_OUT : Makers.COUNT;
    this.retoldCount = evidence.toldTwice().pairs().isEmpty();
    this.conditions = new Conditions(choices, evidence);
    this.asked =
        conditions.isAsked()
            || size != null
            || rim != null
            || season != null
            || segment != null
            || from != null
            || to != null
            || !kinds.isEmpty();
    this.open = !asked && retoldCount && makers == Makers.COUNT && conditions.isOpen();
  }

  private Filter(Filter other, Makers makers, boolean retoldCount, Conditions conditions) {
    this.evidence = other.evidence;
    this.size = other.size;
    this.rim = other.rim;
    this.season = other.season;
    this.segment = other.segment;
    this.from = other.from;
    this.to = other.to;
    this.kinds.addAll(other.kinds);
    this.makers = makers;
    this.retoldCount = retoldCount;
    this.conditions = conditions;
    this.asked = other.asked;
    this.open = !asked && retoldCount && makers == Makers.COUNT && conditions.isOpen();
  }

  /** The same filter without reports that a maker supplied. */
  public Filter withoutMakers() {
    return !evidence.hasMakerReports()
        ? this
        : new Filter(this, Makers.LEFT_OUT, retoldCount, conditions);
  }

  /** The same filter for reports that a maker supplied alone. */
  public Filter onlyMakers() {
    return new Filter(this, Makers.ALONE, retoldCount, conditions);
  }

  /**
   * The same filter for every report, makers' and those that tell a test again as well: for lists
   * of what there is, which judge nothing.
   */
  public Filter everyReport() {
    return new Filter(this, Makers.COUNT, true, conditions.ofEveryKind());
  }

  private static String sizeKey(String text) {
    return TyreSize.find(text)
        .map(TyreSize::key)
        .orElseThrow(() -> Choices.refusal("size", text, "a size like 205/55 R16"));
  }

  /** The end of a reduced date, so that texts compare: 2021 covers 2021-12-31. */
  private static String upTo(TestDate date) {
    return date.text() + "\uffff";
  }

  /** Why an entry does not count, in words; empty when it does. */
  public Optional<String> reasonAgainst(int entry) {
    if (open) {
      return Optional.empty();
    }
    int position = evidence.entries().test()[entry];
    if (!retoldCount && evidence.toldTwice().isRetold(position)) {
      return Optional.of(RETOLD);
    }
    Optional<String> state = conditions.reasonAgainstEntry(entry);
    if (state.isPresent()) {
      return state;
    }
    Details test = evidence.tests().get(position).details();
    ModelRecord model = evidence.models().get(evidence.entries().model()[entry]);
    if (size != null || rim != null) {
      Optional<TyreSize> its = Optional.ofNullable(evidence.sizeOf(entry)).flatMap(TyreSize::find);
      if (its.isEmpty()) {
        return Optional.of("size not stated");
      }
      if (size != null && !its.get().key().equals(size)) {
        return Optional.of("another size");
      }
      if (rim != null && its.get().rimCode() != rim) {
        return Optional.of("another rim diameter");
      }
    }
    if (season != null) {
      SeasonClass its = model.season() == null ? test.season() : model.season();
      if (its != season) {
        return Optional.of(its == null ? "season not stated" : "another season class");
      }
    }
    if (segment != null && !segment.equalsIgnoreCase(model.segment())) {
      return Optional.of(model.segment() == null ? "segment not stated" : "another segment");
    }
    return reasonAgainst(test);
  }

  /** Why a result does not count, in words, be it for its entry; empty when it does. */
  public Optional<String> reasonAgainstResult(int result) {
    if (open) {
      return Optional.empty();
    }
    Optional<String> ofEntry = reasonAgainst(evidence.results().entry()[result]);
    return ofEntry.isPresent() ? ofEntry : conditions.reasonAgainstResult(result);
  }

  /** Why a test does not count for its date or source; empty when it does. */
  public Optional<String> reasonAgainst(Details test) {
    if (from != null || to != null) {
      if (test.date() == null) {
        return Optional.of("date not stated");
      }
      String date = test.date().text();
      if (from != null && upTo(test.date()).compareTo(from.text()) < 0
          || to != null && date.compareTo(upTo(to)) > 0) {
        return Optional.of("outside the dates asked for");
      }
    }
    boolean byMaker = test.kind() == SourceKind.MAKER;
    if (makers != Makers.COUNT && byMaker != (makers == Makers.ALONE)) {
      return Optional.of(byMaker ? BY_MAKER : "reports not supplied by a maker");
    }
    if (!kinds.isEmpty() && (test.kind() == null || !kinds.contains(test.kind()))) {
      return Optional.of(
          test.kind() == null ? "kind of source not stated" : "another kind of source");
    }
    return Optional.empty();
  }

  /** Whether a model's own season class and segment are asked for, tested or not. */
  public boolean takes(ModelRecord model) {
    return (season == null || model.season() == null || model.season() == season)
        && (segment == null || segment.equalsIgnoreCase(model.segment()));
  }

  /** What the filter asks, equal for filters that let the same entries of one evidence count. */
  public List<Object> key() {
    return Arrays.asList(
        size, rim, season, segment, from, to, kinds, makers, retoldCount, conditions.key());
  }

  /** Whether anything is filtered at all. */
  public boolean isOpen() {
    return !asked;
  }

  /** The filters of a question that was asked, as the next question takes them. */
  public static Map<String, List<String>> given(Inquiry inquiry) {
    Map<String, List<String>> given = new LinkedHashMap<>();
    for (Option option : OPTIONS) {
      if (inquiry.options().containsKey(option.name())) {
        given.put(option.name(), inquiry.options().get(option.name()));
      }
    }
    return given;
  }

  /** The filters in words, to go on a sentence: {@code ", in 205/55 R16, from 2019"}. */
  public String words() {
    List<String> words = new ArrayList<>();
    if (size != null) {
      words.add("in " + size);
    }
    if (rim != null) {
      words.add("on " + trimmed(rim) + " inch rims");
    }
    if (season != null) {
      words.add(season.key() + " tyres");
    }
    if (segment != null) {
      words.add("segment " + segment);
    }
    if (from != null) {
      words.add("from " + from.text());
    }
    if (to != null) {
      words.add("to " + to.text());
    }
    if (!kinds.isEmpty()) {
      words.add(String.join(" or ", kinds.stream().map(SourceKind::key).toList()) + " sources");
    }
    conditions.words(words);
    return words.isEmpty() ? "" : ", " + String.join(", ", words);
  }

  private static String trimmed(double number) {
    return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
  }
}
