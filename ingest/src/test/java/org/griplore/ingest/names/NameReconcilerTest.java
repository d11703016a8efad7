package org.griplore.ingest.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.griplore.store.names.Candidate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Written names and the models they mean, from a table; the models are invented. */
class NameReconcilerTest {
  private static final Path TABLES = Path.of("src/test/resources/names");

  record Case(String written, String model, String how, String why) {
    @Override
    public String toString() {
      return "\"" + written + "\" is " + how + " " + model + " (" + why + ")";
    }
  }

  static List<Case> cases() throws IOException {
    return rows("cases.csv").stream().map(row -> new Case(row[0], row[1], row[2], row[3])).toList();
  }

  private static List<String[]> rows(String table) throws IOException {
    return Files.readAllLines(TABLES.resolve(table)).stream()
        .skip(1)
        .map(line -> line.split(";", -1))
        .toList();
  }

  private static NameReconciler reconciler(List<String[]> known) {
    NameReconciler reconciler = new NameReconciler(List.of());
    for (String[] model : known) {
      reconciler.learn(
          model[0], model[1], model[2].isEmpty() ? List.of() : List.of(model[2].split("\\|")));
    }
    return reconciler;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void settlesAsTheTableSays(Case c) throws IOException {
    NameReconciler.Settled settled = reconciler(rows("known.csv")).settle(c.written());
    assertThat(settled.model()).isEqualTo(c.model());
    assertThat(settled.getClass().getSimpleName().toUpperCase(java.util.Locale.ROOT))
        .isEqualTo(c.how());
  }

  @Test
  void theTableIsLong() throws IOException {
    assertThat(cases()).hasSizeGreaterThanOrEqualTo(100);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void theOrderOfTheKnownModelsChangesNothing(long seed) throws IOException {
    List<String[]> known = new ArrayList<>(rows("known.csv"));
    Collections.shuffle(known, new Random(seed));
    NameReconciler reconciler = reconciler(known);
    for (Case c : cases()) {
      if (!c.how().equals("NEW")) {
        assertThat(reconciler.settle(c.written()).model()).as("%s", c).isEqualTo(c.model());
      }
    }
  }

  @Test
  void aNewNameIsKnownFromThenOn() {
    NameReconciler reconciler = new NameReconciler(List.of());
    assertThat(reconciler.settle("Ottendal Ruvik 2"))
        .isInstanceOf(NameReconciler.Settled.New.class);
    assertThat(reconciler.settle("OTTENDAL RUVIK 2"))
        .isEqualTo(new NameReconciler.Settled.Known("Ottendal Ruvik 2"));
  }

  @Test
  void twoModelsThatAreEquallyNearAreNotGuessed() {
    NameReconciler reconciler = new NameReconciler(List.of());
    reconciler.learn("Haslund Vejgrib 7", "Haslund", List.of());
    reconciler.learn("Haslund Vejgrip 7", "Haslund", List.of());
    NameReconciler.Settled settled = reconciler.settle("Haslund Vejgriq 7");
    assertThat(settled).isInstanceOf(NameReconciler.Settled.New.class);
    assertThat(((NameReconciler.Settled.New) settled).nearest())
        .extracting(Candidate::model)
        .containsExactly("Haslund Vejgrib 7", "Haslund Vejgrip 7");
  }

  @Test
  void anAliasOfTwoModelsIsNotGuessed() {
    NameReconciler reconciler = new NameReconciler(List.of());
    reconciler.learn("Haslund Vejgrip 7", "Haslund", List.of("V7"));
    reconciler.learn("Velmora Vintaro 7", "Velmora", List.of("V7"));
    assertThat(reconciler.settle("V7")).isInstanceOf(NameReconciler.Settled.New.class);
  }

  @Test
  void anotherGenerationIsOfferedButNeverTaken() throws IOException {
    NameReconciler.Settled settled = reconciler(rows("known.csv")).settle("Quillarn Tarvion 12");
    assertThat(((NameReconciler.Settled.New) settled).nearest())
        .extracting(Candidate::model)
        .containsExactly("Quillarn Tarvion 10", "Quillarn Tarvion 11");
  }
}
