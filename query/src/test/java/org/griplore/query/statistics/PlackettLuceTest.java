package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.griplore.query.statistics.Closeness.assertPrinted;
import static org.griplore.query.statistics.Closeness.assertRelative;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlackettLuceTest {
  private static final int[] FIRST = {1, 2};
  private static final int[] SECOND = {2, 1};
  private static final int[] TIED = {1, 1};

  private static RankedField pair(int i, int j, int[] places, double weight) {
    return new RankedField(new int[] {i, j}, places, weight);
  }

  private static RankedField order(int... models) {
    return new RankedField(models, IntStream.rangeClosed(1, models.length).toArray());
  }

  /** Davidson 1970: six brands of pudding compared in pairs, ties allowed. */
  @Test
  void pairsWithTies() {
    ReferenceCase pudding = ReferenceCase.beside("e2_pudding");
    List<RankedField> fields = new ArrayList<>();
    for (Map<String, String> row : pudding.data()) {
      int i = Integer.parseInt(row.get("i")) - 1;
      int j = Integer.parseInt(row.get("j")) - 1;
      fields.add(pair(i, j, FIRST, Double.parseDouble(row.get("w_ij"))));
      fields.add(pair(i, j, SECOND, Double.parseDouble(row.get("w_ji"))));
      fields.add(pair(i, j, TIED, Double.parseDouble(row.get("t_ij"))));
    }
    PlackettLuceFit fit = PlackettLuce.fit(6, fields, 0);
    assertThat(fit.components()).isEqualTo(1);
    assertThat(fit.separated(0)).isFalse();
    for (ReferenceCase.Expected e : pudding.expected()) {
      int brand = e.key1().isEmpty() ? 0 : Integer.parseInt(e.key1().substring(5)) - 1;
      PlackettLuceFit.Contrast contrast = fit.contrast(brand, 0).orElseThrow();
      double actual =
          switch (e.quantity()) {
            case "logworth.ref.brand1" -> contrast.difference();
            case "se.ref.brand1" -> contrast.se();
            case "worth" -> fit.worth(brand);
            case "log.tie2" -> fit.logTie(2);
            case "tie2(delta=nu of Davidson)" -> Math.exp(fit.logTie(2));
            case "log.tie2.se" -> fit.logTieSe(2);
            case "loglik" -> fit.logLikelihood();
            default -> throw new AssertionError(e.quantity());
          };
      assertRelative(e.toString(), actual, e.value(), 1e-8);
    }
  }

  /** Agresti 2002, table 10.11, without and with an advantage of the home side. */
  @Test
  void pairsWithoutTies() {
    ReferenceCase baseball = ReferenceCase.carried("agresti-2002");
    List<Map<String, String>> rows = baseball.data();
    List<String> teams = new ArrayList<>(rows.stream().map(r -> r.get("home")).distinct().toList());
    Collections.sort(teams, Collections.reverseOrder());
    int[] home = rows.stream().mapToInt(r -> teams.indexOf(r.get("home"))).toArray();
    int[] away = rows.stream().mapToInt(r -> teams.indexOf(r.get("away"))).toArray();
    double[] homeWins = baseball.column("home.wins");
    double[] awayWins = baseball.column("away.wins");
    var pairs = new PairedComparisons.Pairs(home, away, homeWins, awayWins);
    assertThat(teams.get(6)).isEqualTo("Baltimore");
    PairedComparisons plain = PairedComparisons.fit(7, pairs, false);
    PairedComparisons withHome = PairedComparisons.fit(7, pairs, true);
    List<RankedField> fields = new ArrayList<>();
    for (int i = 0; i < home.length; i++) {
      fields.add(pair(home[i], away[i], FIRST, homeWins[i] == 0 ? 1e-300 : homeWins[i]));
      fields.add(pair(home[i], away[i], SECOND, awayWins[i] == 0 ? 1e-300 : awayWins[i]));
    }
    PlackettLuceFit ranked = PlackettLuce.fit(7, fields, 0);
    assertThat(ranked.tieOrders()).isEmpty();
    List<ReferenceCase.Expected> all = new ArrayList<>(baseball.expected());
    all.addAll(baseball.published());
    int checked = 0;
    for (ReferenceCase.Expected e : all) {
      int team = teams.indexOf(e.key1());
      List<Double> actual =
          switch (e.quantity()) {
            case "bt.ability.ref.Baltimore" ->
                List.of(
                    plain.strengths()[team], ranked.contrast(team, 6).orElseThrow().difference());
            case "bt.se" -> List.of(plain.ses()[team], ranked.contrast(team, 6).orElseThrow().se());
            case "bt.deviance" -> List.of(plain.deviance());
            case "bt.home.coef" ->
                List.of(team < 0 ? withHome.advantage() : withHome.strengths()[team]);
            case "bt.home.se" -> List.of(team < 0 ? withHome.advantageSe() : withHome.ses()[team]);
            case "bt.home.deviance" -> List.of(withHome.deviance());
            // Residual degrees of freedom and a likelihood with binomial coefficients.
            case "bt.df", "bt.loglik", "bt.home.df", "bt.home.loglik" -> List.of();
            default -> throw new AssertionError(e.quantity());
          };
      for (double value : actual) {
        if (e.decimals() > 0) {
          assertPrinted(e.toString(), value, e.value(), e.decimals());
        } else {
          assertRelative(e.toString(), value, e.value(), 1e-8);
        }
        checked++;
      }
    }
    assertThat(checked).isGreaterThan(60);
  }

  /** Chances of all orders of a field, groups listed one by one, sum to one. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {21, 22, 23})
  void likelihoodOfAllOrdersSumsToOne(long seed) {
    Random random = new Random(seed);
    int n = 4;
    int[] orders = {2, 3};
    double[] at = random.doubles(n + 2, -1, 1).toArray();
    double sum = 0;
    int listed = 0;
    for (int code = 0; code < 256; code++) {
      int[] places = {code & 3, code >> 2 & 3, code >> 4 & 3, code >> 6 & 3};
      int used = (int) Arrays.stream(places).distinct().count();
      boolean canonical = Arrays.stream(places).max().orElseThrow() == used - 1;
      RankedField field = new RankedField(new int[] {0, 1, 2, 3}, places);
      if (!canonical || field.groups().stream().anyMatch(group -> group.length > 3)) {
        continue;
      }
      TieLikelihood likelihood = new TieLikelihood(n, orders);
      TieLikelihood.choices(field).forEach(choice -> likelihood.add(choice, at));
      sum += Math.exp(likelihood.value());
      listed++;
      assertSlopes(field, n, orders, at);
    }
    assertThat(listed).isEqualTo(75 - 1);
    assertRelative("sum of chances", sum, 1, 1e-12);
  }

  private static void assertSlopes(RankedField field, int n, int[] orders, double[] at) {
    TieLikelihood here = new TieLikelihood(n, orders);
    TieLikelihood.choices(field).forEach(choice -> here.add(choice, at));
    double h = 1e-5;
    for (int i = 0; i < at.length; i++) {
      double[] up = at.clone();
      double[] down = at.clone();
      up[i] += h;
      down[i] -= h;
      TieLikelihood above = new TieLikelihood(n, orders);
      TieLikelihood below = new TieLikelihood(n, orders);
      TieLikelihood.choices(field).forEach(choice -> above.add(choice, up));
      TieLikelihood.choices(field).forEach(choice -> below.add(choice, down));
      double slope = (above.value() - below.value()) / (2 * h);
      assertThat(here.slope[i]).isCloseTo(slope, org.assertj.core.api.Assertions.within(1e-8));
      for (int j = 0; j < at.length; j++) {
        double bend = -(above.slope[j] - below.slope[j]) / (2 * h);
        assertThat(here.information.get(i, j))
            .isCloseTo(bend, org.assertj.core.api.Assertions.within(1e-8));
      }
    }
  }

  /** Fields of different models drawn from stated worths: found again within their errors. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {31, 32})
  void statedWorthsAreFoundAgain(long seed) {
    Random random = new Random(seed);
    int models = 20;
    double[] truth = random.doubles(models, -1, 1).toArray();
    List<RankedField> fields = new ArrayList<>();
    for (int test = 0; test < 400; test++) {
      List<Integer> all = new ArrayList<>(IntStream.range(0, models).boxed().toList());
      Collections.shuffle(all, random);
      List<Integer> field = all.subList(0, 8);
      double[] arrival =
          field.stream()
              .mapToDouble(m -> -Math.log(1 - random.nextDouble()) / Math.exp(truth[m]))
              .toArray();
      Integer[] sorted = IntStream.range(0, 8).boxed().toArray(Integer[]::new);
      Arrays.sort(sorted, (a, b) -> Double.compare(arrival[a], arrival[b]));
      fields.add(order(Arrays.stream(sorted).mapToInt(field::get).toArray()));
    }
    PlackettLuceFit fit = PlackettLuce.fit(models, fields, 0);
    double mean = Arrays.stream(truth).average().orElseThrow();
    double squares = 0;
    double sum = 0;
    for (int model = 0; model < models; model++) {
      double z = (fit.effect(model) - (truth[model] - mean)) / fit.se(model);
      squares += z * z;
      sum += fit.effect(model);
    }
    assertThat(squares / (models - 1)).isBetween(0.3, 2.2);
    assertThat(Math.abs(sum)).isLessThan(1e-9);
  }

  @Test
  void partsThatNeverMetAreNotCompared() {
    List<RankedField> fields =
        List.of(order(0, 1), order(1, 0), order(2, 3, 4), order(4, 3, 2), order(6));
    PlackettLuceFit fit = PlackettLuce.fit(7, fields, 0);
    assertThat(fit.components()).isEqualTo(2);
    assertThat(fit.component(5)).isEqualTo(-1);
    assertThat(fit.component(6)).isEqualTo(-1);
    assertThat(fit.contrast(0, 1).orElseThrow().difference()).isCloseTo(0, within(1e-12));
    assertThat(fit.contrast(0, 2)).isEmpty();
    assertThat(fit.contrast(5, 6)).isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> fit.effect(5));
  }

  private static org.assertj.core.data.Offset<Double> within(double offset) {
    return org.assertj.core.api.Assertions.within(offset);
  }

  @Test
  void separatedModelsAreNamedAndStayFinite() {
    List<RankedField> fields =
        List.of(order(0, 1, 2, 3), order(1, 0, 3, 2), order(4, 5), order(5, 4));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PlackettLuce.fit(6, fields, 0))
        .withMessageContaining("[[0, 1], [2, 3]]");
    PlackettLuceFit fit = PlackettLuce.fit(6, fields, PlackettLuce.USUAL_GHOST);
    assertThat(fit.separated(0)).isTrue();
    assertThat(fit.separated(1)).isFalse();
    assertThat(fit.levels(0)).containsExactly(List.of(0, 1), List.of(2, 3));
    assertThat(fit.levels(1)).containsExactly(List.of(4, 5));
    assertThat(fit.effect(0)).isCloseTo(fit.effect(1), within(1e-9)).isBetween(0.3, 10.0);
    assertThat(fit.effect(2)).isCloseTo(fit.effect(3), within(1e-9)).isBetween(-10.0, -0.3);
    assertThat(fit.contrast(0, 2).orElseThrow().se()).isBetween(0.1, 10.0);
    assertThat(fit.logLikelihood()).isNegative();
  }

  /** One win and one tie: the worth and the tie parameter run off together. */
  @Test
  void separationThroughTiesIsFoundToo() {
    List<RankedField> fields = List.of(pair(0, 1, FIRST, 1), pair(0, 1, TIED, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> PlackettLuce.fit(2, fields, 0));
    PlackettLuceFit fit = PlackettLuce.fit(2, fields, 0.5);
    assertThat(fit.separated(0)).isTrue();
    assertThat(fit.effect(0)).isBetween(0.05, 10.0);
    assertThat(fit.se(0)).isBetween(0.05, 20.0);
  }

  @Test
  void nothingButTies() {
    List<RankedField> pairs = List.of(pair(0, 1, TIED, 3), pair(1, 2, TIED, 2));
    PlackettLuceFit fit = PlackettLuce.fit(3, pairs, 0.5);
    assertThat(fit.separated(0)).isTrue();
    for (int model = 0; model < 3; model++) {
      assertThat(fit.effect(model)).isCloseTo(0, within(1e-6));
    }
  }

  @Test
  void singleModelsAndNoFields() {
    PlackettLuceFit none = PlackettLuce.fit(3, List.of(), 0);
    assertThat(none.components()).isZero();
    assertThat(none.logLikelihood()).isZero();
    PlackettLuceFit single = PlackettLuce.fit(1, List.of(order(0)), 0);
    assertThat(single.component(0)).isEqualTo(-1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PlackettLuce.fit(1, List.of(order(0, 1)), 0));
    assertThatIllegalArgumentException().isThrownBy(() -> order(0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> pair(0, 1, FIRST, 0));
  }

  @Test
  void strengthsWithoutFiniteEstimateAreRefused() {
    var unbeaten =
        new PairedComparisons.Pairs(
            new int[] {0}, new int[] {1}, new double[] {3}, new double[] {0});
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PairedComparisons.fit(2, unbeaten, false));
    var even =
        new PairedComparisons.Pairs(
            new int[] {0}, new int[] {1}, new double[] {2}, new double[] {2});
    assertThat(PairedComparisons.fit(2, even, false).strengths()[0]).isZero();
    assertThatIllegalArgumentException().isThrownBy(() -> PairedComparisons.fit(3, even, false));
    assertThatIllegalArgumentException().isThrownBy(() -> PairedComparisons.fit(2, even, true));
  }
}
