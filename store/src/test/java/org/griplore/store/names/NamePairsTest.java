package org.griplore.store.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.griplore.store.names.InventedNames.Slip;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Hundreds of invented names written wrongly, and hundreds of two that differ as makers let models
 * differ: no two models are taken for one, and nearly all misspellings are offered. The rates are
 * our own goals, no source.
 */
class NamePairsTest {
  private static final int PAIRS = 100;

  /** Among as many other models as an archive has. */
  private static NameFinder finder(InventedNames names, String maker, String name) {
    NameFinder finder = new NameFinder();
    for (int i = 0; i < 30; i++) {
      String other = names.maker();
      finder.learn(names.name(other, names.line(), names.mark()), other, List.of());
    }
    finder.learn(name, maker, List.of());
    return finder;
  }

  private static boolean isTaken(NameFinder finder, String written, String name) {
    List<Candidate> found = finder.candidates(written, 3);
    return finder.exact(written).contains(name)
        || !found.isEmpty() && found.get(0).model().equals(name) && found.get(0).isMisspelling();
  }

  private static boolean isOffered(NameFinder finder, String written, String name) {
    return finder.exact(written).contains(name)
        || finder.candidates(written, 3).stream().anyMatch(c -> c.model().equals(name));
  }

  /** The same words with something that sets models apart. */
  private static List<String> others(InventedNames names, String maker, String line, String mark) {
    List<String> others = new ArrayList<>();
    String name = names.name(maker, line, mark);
    for (String suffix :
        List.of(
            "EV", "XL", "RFT", "S", "R", "C", "X", "+", "Plus", "GT", "TS", "RS", "RSX", "XLS",
            "II", "III", "IV", "V", "2", "3", "10", "Evo", "Neo", "Sport", "Winter", "SUV", "Van",
            "4S", "H/T")) {
      if (!mark.endsWith(suffix) && !name.endsWith(suffix)) {
        others.add(name + " " + suffix);
      }
    }
    others.add(names.name(maker, line + "s", mark));
    others.add(name + names.letter());
    others.add(name + name.charAt(name.length() - 1));
    others.add(names.name(maker, line + names.letterBut(line.charAt(line.length() - 1)), mark));
    String small = line.toLowerCase(Locale.ROOT);
    others.add(names.name(maker, names.letterBut(small.charAt(0)) + small, mark));
    others.add(names.name(maker, names.letterBut(small.charAt(0)) + small.substring(1), mark));
    if (!mark.isEmpty()) {
      others.add(names.name(maker, line, ""));
      others.add(names.name(maker, line, mark.replaceAll("\\d+", "7")).replace("II", "IX") + "9");
    }
    return others;
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void noTwoModelsAreTakenForOne(long seed) {
    InventedNames names = new InventedNames(new Random(seed));
    List<String> merged = new ArrayList<>();
    int pairs = 0;
    for (int i = 0; i < PAIRS / 4; i++) {
      String maker = names.maker();
      String line = names.line();
      String mark = names.mark();
      String name = names.name(maker, line, mark);
      NameFinder finder = finder(names, maker, name);
      for (String other : others(names, maker, line, mark)) {
        pairs++;
        if (isTaken(finder, other, name)) {
          merged.add(other + " for " + name);
        }
      }
    }
    assertThat(pairs).isGreaterThan(700);
    assertThat(merged).isEmpty();
  }

  /** Such names are offered all the same, so that one click joins them. */
  @Test
  void aSuffixIsOfferedWithItsReason() {
    NameFinder finder = new NameFinder();
    finder.learn("Brennach Trakkor", "Brennach", List.of());
    for (String suffix : List.of("EV", "XL", "RFT", "S", "R", "C", "+", "II", "2")) {
      List<Candidate> offered = finder.candidates("Brennach Trakkor " + suffix, 3);
      assertThat(offered).as(suffix).hasSize(1);
      assertThat(offered.get(0).isMisspelling()).isFalse();
      assertThat(offered.get(0).reason()).startsWith("the same but for the mark");
    }
  }

  @Test
  void mostMisspellingsAreTakenAndNearlyAllAreOffered() {
    Map<Slip, double[]> rates = new EnumMap<>(Slip.class);
    for (Slip slip : Slip.values()) {
      Random random = new Random(41 + slip.ordinal());
      InventedNames names = new InventedNames(random);
      double[] rate = rates.computeIfAbsent(slip, s -> new double[3]);
      while (rate[0] < PAIRS) {
        String maker = names.maker();
        String line = names.line();
        String mark = names.mark();
        String name = names.name(maker, line, mark);
        String written = names.written(maker, line, mark, slip);
        if (written.equals(name)) {
          continue;
        }
        NameFinder finder = finder(names, maker, name);
        rate[0]++;
        rate[1] += isTaken(finder, written, name) ? 1 : 0;
        rate[2] += isOffered(finder, written, name) ? 1 : 0;
      }
    }
    rates.forEach(
        (slip, rate) -> {
          assertThat(rate[2] / rate[0]).as("offered: %s", slip).isGreaterThanOrEqualTo(0.99);
          assertThat(rate[1] / rate[0]).as("taken: %s", slip).isGreaterThanOrEqualTo(0.9);
        });
  }
}
