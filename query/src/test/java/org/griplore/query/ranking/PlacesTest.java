package org.griplore.query.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.griplore.query.statistics.Closeness.assertRelative;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.griplore.query.statistics.ReferenceCase;
import org.griplore.store.vocabulary.Direction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlacesTest {
  private static final ReferenceCase TIES = ReferenceCase.carried("top-three-ties");

  @Test
  void equalValuesShareTheBetterPlace() {
    double[] metres = {27.4, 26.9, 27.4, 28.0};
    assertThat(Places.of(metres, Direction.LOW)).containsExactly(2, 1, 2, 4);
    assertThat(Places.of(metres, Direction.HIGH)).containsExactly(2, 4, 2, 1);
    assertThat(Places.of(new double[] {0.0, -0.0, 1}, Direction.LOW)).containsExactly(1, 1, 3);
    assertThat(Places.of(new double[0], Direction.LOW)).isEmpty();
    assertThat(Places.of(new double[] {3}, Direction.LOW)).containsExactly(1);
    assertThat(Places.sharers(new int[] {2, 1, 2, 4, 0})).containsExactly(2, 1, 2, 1, 0);
  }

  @Test
  void missingValuesAreNotRanked() {
    int[] places = new int[3];
    Places.rank(new double[] {5, Double.NaN, 4}, 3, Direction.LOW, places);
    assertThat(places).containsExactly(2, 0, 1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Places.of(new double[] {1, Double.NaN}, Direction.LOW));
  }

  /** A place is one more than the number of better values, however large the field. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13, 14})
  void bothWaysOfRankingCountWhatIsBetter(long seed) {
    Random random = new Random(seed);
    for (int field : new int[] {1, 2, 8, 24, 25, 60, 400}) {
      double[] values = random.ints(field, -20, 20).mapToDouble(v -> v / 10.0).toArray();
      values[0] = -0.0;
      for (Direction better : Direction.values()) {
        int[] places = Places.of(values, better);
        for (int i = 0; i < field; i++) {
          int ahead = 0;
          for (double other : values) {
            ahead += better.sign() * (other - values[i]) > 0 ? 1 : 0;
          }
          assertThat(places[i]).isEqualTo(ahead + 1);
        }
      }
    }
  }

  /** Credits for the first three with ties, by exact arithmetic. */
  @Test
  void creditsForTheFirstThreeAreExact() {
    Map<String, List<Map<String, String>>> tests =
        TIES.data().stream()
            .collect(
                Collectors.groupingBy(
                    row -> row.get("test"), LinkedHashMap::new, Collectors.toList()));
    int checked = 0;
    for (ReferenceCase.Expected e : TIES.expected()) {
      List<Map<String, String>> field = tests.get(e.key1());
      int[] ranks = field.stream().mapToInt(row -> Integer.parseInt(row.get("rank"))).toArray();
      double[] values = new double[ranks.length];
      for (int i = 0; i < ranks.length; i++) {
        values[i] = ranks[i];
      }
      int[] places = Places.of(values, Direction.LOW);
      assertThat(places).isEqualTo(ranks);
      int[] sharers = Places.sharers(places);
      int item = 0;
      while (!e.key2().isEmpty() && !field.get(item).get("item").equals(e.key2())) {
        item++;
      }
      int place = places[item];
      int with = sharers[item];
      double actual =
          switch (e.quantity()) {
            case "credit.fractional" -> TopShare.SHARED.of(place, with, 3);
            case "top3.generous(min rank<=3)" -> TopShare.WHOLE.of(place, with, 3);
            case "top3.strict(max rank<=3)" -> TopShare.STRICT.of(place, with, 3);
            case "top3.midrank<=3" -> TopShare.MIDDLE.of(place, with, 3);
            case "sum.credit" -> {
              double sum = 0;
              for (int i = 0; i < places.length; i++) {
                sum += TopShare.SHARED.of(places[i], sharers[i], 3);
              }
              yield sum;
            }
            case "chance.min(3,n)/n" -> TopShare.chance(places.length, 3);
            case "percentile.(n-midrank)/(n-1)" -> TopShare.standing(place, with, places.length);
            // Dense ranking would call fifth of six a third place; it is not offered.
            case "top3.dense<=3" -> e.value();
            default -> throw new AssertionError(e.quantity());
          };
      assertRelative(e.toString(), actual, e.value(), 1e-15);
      checked++;
    }
    assertThat(checked).isEqualTo(304);
  }

  @Test
  void impossiblePlacesAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> TopShare.SHARED.of(0, 1, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> TopShare.WHOLE.of(1, 0, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> TopShare.chance(0, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> TopShare.standing(1, 1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> TopShare.standing(4, 2, 4));
  }
}
