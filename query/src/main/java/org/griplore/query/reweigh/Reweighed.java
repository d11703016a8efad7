package org.griplore.query.reweigh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.griplore.query.answer.SourceReference;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Ranking;
import org.griplore.query.reweigh.ReweighRow.Acceptance;
import org.griplore.query.reweigh.ReweighRow.Favoured;
import org.griplore.query.reweigh.ReweighRow.NewPlace;
import org.griplore.query.statistics.Acceptability;
import org.griplore.store.vocabulary.TestDate;

/** Ranks scored tests under the user's weights and under weights drawn from all there are. */
final class Reweighed {
  /** Work for one answer: weightings times tyres times disciplines. */
  private static final double WORK = 4e8;

  private static final int FEWEST_DRAWS = 200;
  private static final int MOST_DRAWS = 5000;

  private final Evidence evidence;
  private final List<String> disciplines;
  private final List<ScoredTest> tests;
  private final int top;
  private final int draws;
  private final Citations citations;
  private final List<Acceptability> acceptability;
  private final Map<Integer, List<At>> byModel = new TreeMap<>();

  /** A model's row in a test. */
  private record At(int test, int row, int place) {}

  Reweighed(
      Evidence evidence,
      List<String> disciplines,
      List<ScoredTest> tests,
      int top,
      Integer draws,
      long seed) {
    this.evidence = evidence;
    this.disciplines = disciplines;
    this.tests = tests;
    this.top = top;
    this.draws = draws == null ? affordable(tests) : draws;
    this.citations = new Citations(evidence);
    // one seed for all: every test meets the same weightings
    this.acceptability =
        tests.parallelStream()
            .map(
                test ->
                    Acceptability.of(
                        test.scores(),
                        Acceptability.Weights.uniform(test.weights().length),
                        Acceptability.Missing.OWN,
                        this.draws,
                        seed))
            .toList();
    for (int t = 0; t < tests.size(); t++) {
      int[] places = tests.get(t).places();
      for (int row = 0; row < places.length; row++) {
        int model = evidence.entries().model()[tests.get(t).entries()[row]];
        byModel.computeIfAbsent(model, m -> new ArrayList<>()).add(new At(t, row, places[row]));
      }
    }
  }

  private static int affordable(List<ScoredTest> tests) {
    double work =
        tests.stream().mapToDouble(test -> test.field() * (double) test.weights().length).sum();
    return (int) Math.max(FEWEST_DRAWS, Math.min(MOST_DRAWS, WORK / Math.max(1, work)));
  }

  /** How many weightings were drawn. */
  int draws() {
    return draws;
  }

  /** Models that any of the tests ranks. */
  List<Integer> models() {
    return List.copyOf(byModel.keySet());
  }

  List<SourceReference> sources() {
    return citations.list();
  }

  Citations citations() {
    return citations;
  }

  /** The model's row, or null when no test that counts ranks it. */
  ReweighRow row(int model) {
    List<At> ranked = byModel.get(model);
    if (ranked == null) {
      return null;
    }
    int largest = ranked.stream().mapToInt(at -> tests.get(at.test).field()).max().orElseThrow();
    double[] shares = new double[largest];
    List<NewPlace> places = new ArrayList<>();
    for (At at : ranked) {
      for (int place = 1; place <= tests.get(at.test).field(); place++) {
        shares[place - 1] += acceptability.get(at.test).place(at.row, place) / ranked.size();
      }
      places.add(place(at));
    }
    int within = (int) ranked.stream().filter(at -> at.place <= top).count();
    List<Integer> reported =
        places.stream().map(NewPlace::reported).filter(place -> place != null).toList();
    double acceptable = Math.min(1, Arrays.stream(shares, 0, Math.min(top, largest)).sum());
    return new ReweighRow(
        evidence.models().get(model).name(),
        ranked.size(),
        within,
        (double) within / ranked.size(),
        reported.size(),
        reported.isEmpty() ? null : (int) reported.stream().filter(p -> p <= top).count(),
        acceptable,
        error(acceptable),
        IntStream.rangeClosed(1, largest)
            .mapToObj(place -> new Acceptance(place, shares[place - 1], error(shares[place - 1])))
            .toList(),
        favoured(ranked),
        places);
  }

  /**
   * The mean of the weightings that put the model first (its central weights, Lahdelma and Salminen
   * 2001), over the disciplines of each test, tests by how many weightings they give; the heaviest
   * first. None when no weighting puts it first.
   */
  private List<Favoured> favoured(List<At> ranked) {
    double[] sums = new double[disciplines.size()];
    double firsts = 0;
    for (At at : ranked) {
      Optional<double[]> central = acceptability.get(at.test).centralWeights(at.row);
      if (central.isPresent()) {
        double share = acceptability.get(at.test).place(at.row, 1);
        double[] has = tests.get(at.test).weights();
        double whole = 0;
        for (int d = 0; d < sums.length; d++) {
          whole += has[d] > 0 ? central.get()[d] : 0;
        }
        for (int d = 0; d < sums.length; d++) {
          sums[d] += has[d] > 0 ? share * central.get()[d] / whole : 0;
        }
        firsts += share;
      }
    }
    double all = firsts;
    return all == 0
        ? List.of()
        : IntStream.range(0, sums.length)
            .filter(d -> sums[d] > 0)
            .mapToObj(d -> new Favoured(disciplines.get(d), sums[d] / all))
            .sorted(Comparator.comparingDouble(Favoured::weight).reversed())
            .toList();
  }

  /**
   * Standard error of a mean share. The tests meet the same weightings, so the variance of the mean
   * over tests is at most the mean of p(1 - p), which is at most that of the mean.
   */
  private double error(double share) {
    return Math.sqrt(Math.max(0, share * (1 - share)) / draws);
  }

  private NewPlace place(At at) {
    ScoredTest test = tests.get(at.test);
    TestDate date = evidence.tests().get(test.test()).details().date();
    return new NewPlace(
        evidence.tests().get(test.test()).key(),
        date == null ? null : date.text(),
        at.place,
        test.field(),
        reported(test.entries()[at.row]),
        citations.citeEntry(test.entries()[at.row]));
  }

  /** The place in the report's own total; null when it has none. */
  private Integer reported(int entry) {
    int overall = evidence.discipline("overall");
    if (overall < 0) {
      return null;
    }
    Ranking ranking = evidence.ranking(overall);
    int model = evidence.entries().model()[entry];
    int test = evidence.entries().test()[entry];
    for (int i = ranking.rowsOfModel().from(model); i < ranking.rowsOfModel().to(model); i++) {
      int row = ranking.rowsOfModel().rows()[i];
      if (evidence.entries().test()[evidence.results().entry()[ranking.result(row)]] == test
          && ranking.place(row) > 0) {
        return ranking.place(row);
      }
    }
    return null;
  }
}
