package org.griplore.store.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Ten thousand invented names: a search looks at a few, not at all. */
class ManyNamesTest {
  private static final int NAMES = 10_000;

  /** Forty makers with lines of several generations, as an archive of that size would hold. */
  private static List<String[]> names(int count) {
    InventedNames invented = new InventedNames(new Random(7));
    Set<String> seen = new TreeSet<>();
    List<String[]> names = new ArrayList<>();
    List<String> makers = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      makers.add(invented.maker());
    }
    while (names.size() < count) {
      String maker = makers.get(names.size() % makers.size());
      String line = invented.line();
      for (int generation = 1; generation <= 5 && names.size() < count; generation++) {
        String name = invented.name(maker, line, String.valueOf(generation));
        if (seen.add(name)) {
          names.add(new String[] {name, maker});
        }
      }
    }
    return names;
  }

  private static NameFinder finder(List<String[]> names) {
    NameFinder finder = new NameFinder();
    names.forEach(name -> finder.learn(name[0], name[1], List.of()));
    return finder;
  }

  @Test
  void eachNameIsFoundByAMisspelling() {
    List<String[]> names = names(NAMES);
    NameFinder finder = finder(names);
    int found = 0;
    int asked = 0;
    for (int i = 0; i < names.size(); i += 50) {
      String name = names.get(i)[0];
      int at = name.indexOf(' ') + 4;
      String written = name.substring(0, at) + name.charAt(at) + name.substring(at);
      asked++;
      found += finder.candidates(written, 3).stream().anyMatch(c -> c.model().equals(name)) ? 1 : 0;
    }
    assertThat(found).isEqualTo(asked);
  }

  /**
   * Counted, not timed: so many ways of writing are compared for a name, however many there are.
   */
  @Test
  void theWorkForANameDoesNotGrowWithTheArchive() {
    assertThat(compared(names(NAMES))).isLessThan(2.0 * compared(names(NAMES / 10)) + 20);
  }

  private static double compared(List<String[]> names) {
    NameFinder finder = finder(names);
    long compared = 0;
    int asked = 0;
    for (int i = 0; i < names.size(); i += names.size() / 200) {
      compared += finder.alike(names.get(i)[0].toLowerCase(java.util.Locale.ROOT)).size();
      asked++;
    }
    return (double) compared / asked;
  }
}
