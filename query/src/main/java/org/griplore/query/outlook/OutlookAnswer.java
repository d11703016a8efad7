package org.griplore.query.outlook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.griplore.query.answer.Wording;
import org.griplore.query.compare.CompareOptions;
import org.griplore.query.discipline.ComparisonScale;
import org.griplore.query.discipline.DisciplineArms;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.evidence.Likeness;
import org.griplore.query.question.CommonOptions;

/** Gathers what is expected of a field, discipline by discipline, and says it. */
final class OutlookAnswer {
  private final Evidence evidence;
  private final Filter filter;
  private final Likeness likeness;
  private final int[] asked;
  private final double level;
  private final int top;
  private final long seed;
  private final Exclusions excluded;
  private final Citations citations;
  private final List<OutlookRow> rows = new ArrayList<>();
  private final Map<String, DisciplineOutlook> outlooks = new LinkedHashMap<>();
  private boolean apart;
  private List<String> disciplines = List.of();

  OutlookAnswer(
      Evidence evidence,
      Filter filter,
      Likeness likeness,
      int[] asked,
      double level,
      int top,
      long seed,
      Exclusions excluded) {
    this.evidence = evidence;
    this.filter = filter;
    this.likeness = likeness;
    this.asked = asked;
    this.level = level;
    this.top = top;
    this.seed = seed;
    this.excluded = excluded;
    this.citations = new Citations(evidence);
  }

  private record Reckoned(
      ComparisonScale measure,
      Exclusions left,
      List<TestBlock> blocks,
      Optional<DisciplineOutlook> outlook) {}

  /** Reckons the disciplines, side by side. */
  void reckon(List<String> keys) {
    disciplines = keys;
    DescentForest descent = DescentForest.of(evidence.models());
    List<Reckoned> all =
        keys.parallelStream()
            .map(
                key -> {
                  DisciplineArms arms = DisciplineArms.of(evidence, key, filter);
                  List<TestBlock> blocks = TestBlocks.of(evidence, arms);
                  return new Reckoned(
                      arms.measure(),
                      arms.excluded(),
                      blocks,
                      DisciplineOutlook.of(descent, blocks, asked));
                })
            .toList();
    for (int d = 0; d < keys.size(); d++) {
      Reckoned reckoned = all.get(d);
      if (reckoned.outlook.isEmpty()) {
        excluded.add("disciplines in which too little is known of these tyres");
        continue;
      }
      reckoned.left.list().forEach(left -> excluded.add(left.reason(), left.count()));
      outlooks.put(keys.get(d), reckoned.outlook.get());
      apart |= !FieldComponent.connected(reckoned.blocks, reckoned.outlook.get(), descent);
      add(keys.get(d), reckoned, seed + d);
    }
  }

  private void add(String key, Reckoned reckoned, long itsSeed) {
    DisciplineOutlook outlook = reckoned.outlook.get();
    ComparisonScale measure = reckoned.measure;
    Levels results = outlook.results();
    FieldPlaces places = FieldPlaces.of(results, top, itsSeed);
    int field = outlook.field().length;
    excluded.add("older tests of a large archive", outlook.leftOut());
    excluded.add("tyres of which nothing is known in a discipline", asked.length - field);
    List<OutlookRow> told = new ArrayList<>();
    for (int i = 0; i < field; i++) {
      double mean = results.mean()[i];
      double half = outlook.factor(level) * results.sd(i);
      int model = outlook.field()[i];
      List<Integer> own = entriesOf(model, reckoned.blocks);
      own.forEach(citations::citeEntry);
      told.add(
          new OutlookRow(
              evidence.models().get(model).name(),
              key,
              measure.shownUnit(),
              measure.shown(mean),
              measure.shown(mean - half),
              measure.shown(mean + half),
              places.expected()[i],
              field > top ? (Double) places.top()[i] : null,
              field,
              own.size(),
              likeness.isOpen()
                  ? null
                  : (Integer) (int) own.stream().filter(e -> likeness.takes(evidence, e)).count(),
              outlook.basis()[i].key(),
              measure.log(mean)));
    }
    told.sort(Comparator.comparingDouble(OutlookRow::expectedPlace));
    rows.addAll(told);
  }

  private static List<Integer> entriesOf(int model, List<TestBlock> blocks) {
    List<Integer> entries = new ArrayList<>();
    for (TestBlock block : blocks) {
      for (int i = 0; i < block.models().length; i++) {
        if (block.models()[i] == model) {
          entries.add(block.entries()[i]);
        }
      }
    }
    return entries;
  }

  /** Adds the total under weights, first; nothing without weights. */
  void total(Map<String, Double> weights) {
    if (weights.isEmpty()) {
      return;
    }
    OutlookTotals totals =
        OutlookTotals.of(disciplines, outlooks, weights, asked, level, top, seed);
    int field = totals.models().length;
    excluded.add("tyres with less than half of the weight, in the total", asked.length - field);
    if (field < 2) {
      return;
    }
    List<OutlookRow> told = new ArrayList<>();
    for (int i = 0; i < field; i++) {
      told.add(
          new OutlookRow(
              evidence.models().get(totals.models()[i]).name(),
              "overall",
              "components",
              totals.expected()[i],
              totals.low()[i],
              totals.high()[i],
              totals.place()[i],
              field > top ? (Double) totals.top()[i] : null,
              field,
              null,
              null,
              null,
              null));
    }
    told.sort(Comparator.comparingDouble(OutlookRow::expectedPlace));
    rows.addAll(0, told);
  }

  List<OutlookRow> rows() {
    return rows;
  }

  Citations citations() {
    return citations;
  }

  String summary() {
    if (rows.isEmpty()) {
      return "Too little is known of these tyres to expect anything.";
    }
    boolean total = rows.get(0).discipline().equals("overall");
    List<OutlookRow> first =
        rows.stream()
            .filter(row -> row.discipline().equals(rows.get(0).discipline()))
            .limit(2)
            .toList();
    if (total || outlooks.size() == 1) {
      OutlookRow best = first.get(0);
      return String.format(
          Locale.ROOT,
          "%s is expected first in %s, %s against the mean of the field (%.0f %% of new tests"
              + " from %s to %s)%s.",
          best.model(),
          total ? "the total" : best.discipline(),
          Wording.difference(best.expected(), best.unit()),
          100 * level,
          Wording.signed(best.low(), 1),
          Wording.signed(best.high(), 1),
          best.topThree() == null
              ? ""
              : String.format(
                  Locale.ROOT, ", among the first three with %.0f %%", 100 * best.topThree()));
    }
    return leaders();
  }

  private String leaders() {
    Map<String, Integer> leads = new TreeMap<>();
    outlooks
        .keySet()
        .forEach(
            key ->
                rows.stream()
                    .filter(row -> row.discipline().equals(key))
                    .findFirst()
                    .ifPresent(row -> leads.merge(row.model(), 1, Integer::sum)));
    return leads.entrySet().stream()
        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
        .limit(3)
        .map(lead -> lead.getKey() + " in " + lead.getValue())
        .collect(
            Collectors.joining(
                ", ", "In " + outlooks.size() + " disciplines expected first: ", "."));
  }

  List<String> caveats(boolean sourcesChosen) {
    List<String> caveats = new ArrayList<>();
    caveats.add(
        String.format(
            Locale.ROOT,
            "Expected is the result in a new test less the mean of the field; %.0f %% of new results"
                + " are to fall within the interval, if tests go on as they did: `backtest` says how"
                + " well that held.",
            100 * level));
    List<String> unknown = unknown();
    if (!unknown.isEmpty()) {
      caveats.add(
          "Nothing is known of "
              + String.join(", ", unknown)
              + ": neither it nor its line was tested.");
    }
    if (rows.stream().anyMatch(row -> ExpectationBasis.PREDECESSOR.key().equals(row.basis()))) {
      caveats.add(
          "A tyre that rests on its predecessor was not tested in the discipline: it is expected at"
              + " the predecessor plus the usual step from one generation to the next.");
    }
    if (apart) {
      caveats.add(
          "In some disciplines no chain of tests connects all of these tyres; they are then compared"
              + " by what is usual of their season class alone.");
    }
    if (!likeness.isOpen()) {
      caveats.add(
          "Like tests are those with "
              + likeness.meaning()
              + ". The expectation rests on tests of all sizes and cars; how tyres change between"
              + " them is in the width of the interval.");
    }
    caveats.add(
        String.format(
            Locale.ROOT,
            "Chances of the first three by %,d drawn tests (seed %d): off by at most %.1f points"
                + " (one standard error).",
            FieldPlaces.DRAWS,
            seed,
            50 / Math.sqrt(FieldPlaces.DRAWS)));
    if (rows.stream().anyMatch(row -> row.unit().equals("%"))) {
      caveats.add(CompareOptions.PER_CENT);
    }
    if (!sourcesChosen) {
      caveats.add(
          "Reports supplied by makers are left out; `--source own independent maker` counts them.");
    }
    caveats.add(CommonOptions.RESULTS_HOLD);
    return caveats;
  }

  private List<String> unknown() {
    return Arrays.stream(asked)
        .filter(
            model ->
                outlooks.values().stream()
                    .noneMatch(of -> Arrays.stream(of.field()).anyMatch(m -> m == model)))
        .mapToObj(model -> evidence.models().get(model).name())
        .toList();
  }

  /** How far things differ in each discipline, as standard deviations on its scale. */
  Map<String, OutlookQuestion.Differing> varianceComponents() {
    Map<String, OutlookQuestion.Differing> components = new LinkedHashMap<>();
    outlooks.forEach(
        (key, of) ->
            components.put(
                key,
                new OutlookQuestion.Differing(
                    of.tests(),
                    Math.sqrt(of.components().tauSquared()),
                    Math.sqrt(of.components().line()),
                    Math.sqrt(of.components().step()),
                    of.components().run() == 0 ? null : Math.sqrt(of.components().run()),
                    of.usualStep())));
    return components.isEmpty() ? null : components;
  }
}
