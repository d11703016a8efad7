package org.griplore.ingest.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.griplore.ingest.AddedSource;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.ingest.decide.NameDecisions;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Original;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.names.OpenName;
import org.griplore.store.names.OpenNames;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Finding;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two names in one test are two tyres, in whatever order files come; all of it is invented. */
class NamesInOneTestTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2024-05-01T12:00:00Z"), ZoneOffset.UTC);
  private static final String LINEAGE =
      """
      maker,line,model,generation,follows,aliases
      Velmora,Aurelis,Aurelis 5,1,,Velmora Aurelis V
      """;

  @TempDir Path folder;
  private Archive archive;

  @BeforeEach
  void open() {
    archive = Archive.openOrCreate(folder.resolve("archive"));
  }

  @AfterEach
  void close() {
    archive.close();
  }

  private void add(String name, String text) {
    AddedSource added =
        new Intake(archive, DisciplineCatalogue.standard(), NOON)
            .add(Original.of(name, text.getBytes(StandardCharsets.UTF_8)), ReadOptions.NONE);
    assertThat(added.refusal()).isNull();
  }

  private static String table(int test, String... tyres) {
    StringBuilder text = new StringBuilder("Test: T" + test + "\n\nTyre;Wet braking (m)\n");
    for (int i = 0; i < tyres.length; i++) {
      text.append(tyres[i]).append(';').append(30 + test).append('.').append(i).append('\n');
    }
    return text.toString();
  }

  /** The model of each figure. */
  private Map<String, String> models() {
    Snapshot s = archive.snapshot();
    Map<String, String> models = new TreeMap<>();
    for (int i = 0; i < s.results().count(); i++) {
      int model = s.entries().model()[s.results().entry()[i]];
      models.put(Double.toString(s.results().value()[i]), s.models().get(model).name());
    }
    return models;
  }

  private List<String> findings() {
    return archive.findings().stream()
        .map(record -> record.finding())
        .filter(finding -> finding.kind() != Finding.Kind.NOT_READ)
        .map(finding -> finding.found() + ": " + finding.expected())
        .toList();
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "Velmora Aurelys 5;Velmora Aurelis 5",
        "Velmora Aurelis 5;Velmora Aurelys 5",
        "Velmora Aurelis V;Velmora Aurelys 5",
        "Velmora Aurelys 5;Velmora Aurellis 5"
      })
  void neitherIsTakenForAMisspelling(String both) {
    add("lineage.csv", LINEAGE);
    String[] tyres = both.split(";");
    add("a.csv", table(1, tyres));
    assertThat(models()).hasSize(2);
    assertThat(models().values()).doesNotHaveDuplicates();
    assertThat(findings())
        .anySatisfy(
            finding ->
                assertThat(finding)
                    .contains("Aurelys", "Velmora Aurelis 5", "both stand in this test"));
  }

  /** Names of which the archive knew neither: the second is no misspelling of the first. */
  @Test
  void unknownNamesArePartedToo() {
    add("a.csv", table(1, "Haslund Vejgripen 7", "Haslund Vejgrippen 7", "Haslund Vejgripen 8"));
    assertThat(models().values())
        .containsExactly("Haslund Vejgripen 7", "Haslund Vejgrippen 7", "Haslund Vejgripen 8");
  }

  @Test
  void aNameThatWasJoinedIsPartedByALaterTestAndJoinedAgainWithoutIt() {
    add("lineage.csv", LINEAGE);
    add("a.csv", table(1, "Velmora Aurelys 5"));
    assertThat(models()).containsEntry("31.0", "Velmora Aurelis 5");
    add("b.csv", table(2, "Velmora Aurelis 5", "Velmora Aurelys 5"));
    assertThat(models())
        .containsEntry("31.0", "Velmora Aurelys 5")
        .containsEntry("32.0", "Velmora Aurelis 5")
        .containsEntry("32.1", "Velmora Aurelys 5");
    OpenName open = OpenNames.of(archive).get(0);
    assertThat(open.name()).isEqualTo("Velmora Aurelys 5");
    assertThat(open.candidates().get(0).reason()).contains("but both stood in test T2");
    add("b.csv", table(2, "Velmora Aurelis 5"));
    assertThat(models())
        .containsOnly(
            Map.entry("31.0", "Velmora Aurelis 5"), Map.entry("32.0", "Velmora Aurelis 5"));
  }

  @Test
  void aDecisionJoinsThemAllTheSame() {
    add("lineage.csv", LINEAGE);
    add("a.csv", table(1, "Velmora Aurelis 5", "Velmora Aurelys 5"));
    new NameDecisions(archive, NOON).sameAs(List.of("Velmora Aurelys 5"), "Aurelis 5", "");
    assertThat(models().values()).containsOnly("Velmora Aurelis 5");
    assertThat(models()).hasSize(2);
  }

  @Test
  void aLineageTableThatComesLaterJoinsNoneOfThem() {
    add("a.csv", table(1, "Velmora Aurelis 5", "Velmora Aurelys 5"));
    add("lineage.csv", LINEAGE);
    assertThat(models().values()).containsExactly("Velmora Aurelis 5", "Velmora Aurelys 5");
    assertThat(findings())
        .anySatisfy(finding -> assertThat(finding).contains("test T1 holds \"Velmora Aurelis 5\""));
  }

  @Test
  void aLongTableSaysWhichNamesStandBesideEachOther() {
    add("lineage.csv", LINEAGE);
    add(
        "long.csv",
        """
        test,model,discipline,value,unit
        T1,Velmora Aurelys 5,wet-braking,31.1,m
        T2,Velmora Aurelys 5,wet-braking,32.1,m
        T2,Velmora Aurelis 5,wet-braking,32.2,m
        """);
    assertThat(models())
        .containsEntry("31.1", "Velmora Aurelys 5")
        .containsEntry("32.1", "Velmora Aurelys 5")
        .containsEntry("32.2", "Velmora Aurelis 5");
    assertThat(findings())
        .anySatisfy(
            finding ->
                assertThat(finding)
                    .contains(
                        "\"Velmora Aurelys 5\" is like Velmora Aurelis 5, but test T2 holds"));
  }

  /** A state or a variant that stands beside a name makes another entry, of the same model. */
  @Test
  void aStateBesideTheNameIsNoOtherModel() {
    add("lineage.csv", LINEAGE);
    add(
        "long.csv",
        """
        test,model,discipline,value,unit
        T1,Velmora Aurelis 5,wet-braking,31.1,m
        T1,"Velmora Aurelis 5 (worn, 4 mm)",wet-braking,31.2,m
        T1,Velmora Aurelis 5 (EV),wet-braking,31.3,m
        T1,Velmora Aurelis 5 EV,wet-braking,31.4,m
        """);
    add("t2.csv", table(2, "Velmora Aurelis 5", "Velmora Aurelis 5 abgefahren"));
    assertThat(archive.models())
        .extracting(model -> model.name())
        .containsExactlyInAnyOrder("Velmora Aurelis 5", "Velmora Aurelis 5 EV");
    assertThat(OpenNames.of(archive).get(0).candidates().get(0).reason())
        .startsWith("the same but for the mark \"ev\"");
  }

  /** The runs of two tyres in one log are never put together. */
  @Test
  void aRunLogKeepsThemApart() {
    add("lineage.csv", LINEAGE);
    StringBuilder log =
        new StringBuilder("test,discipline,sequence,tyre,role,run,from_kmh,to_kmh,distance_m\n");
    List<String> sets = List.of("Control", "Velmora Aurelis 5", "Velmora Aurelys 5", "Control");
    for (int set = 0; set < sets.size(); set++) {
      for (int run = 1; run <= 3; run++) {
        log.append("T1,wet-braking,").append(set + 1).append(',').append(sets.get(set));
        log.append(sets.get(set).equals("Control") ? ",reference," : ",candidate,").append(run);
        log.append(",80,20,").append(30 + set).append('.').append(run).append('\n');
      }
    }
    add("log.csv", log.toString());
    assertThat(models().values())
        .containsExactlyInAnyOrder("Velmora Aurelis 5", "Velmora Aurelys 5");
  }

  /** Whatever the order of files, names that ever stood together end apart. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void theOrderOfFilesChangesNothing(long seed) {
    String[][] tests = {
      {"Velmora Aurelys 5", "Quillarn Tarvion 11"},
      {"Velmora Aurelis 5", "Velmora Aurelys 5"},
      {"Velmora Aurellis 5", "Quilarn Tarvion 11"},
      {"Velmora Aurelys 5"},
      {"Velmora Aurelis 5", "Quillarn Tarvion 11"}
    };
    List<Integer> order = new ArrayList<>(Arrays.asList(0, 1, 2, 3, 4));
    Collections.shuffle(order, new Random(seed));
    add("lineage.csv", LINEAGE + "Quillarn,Tarvion,Tarvion 11,1,,\n");
    order.forEach(test -> add("t" + test + ".csv", table(test, tests[test])));
    assertThat(models())
        .containsOnly(
            Map.entry("30.0", "Velmora Aurelys 5"),
            Map.entry("30.1", "Quillarn Tarvion 11"),
            Map.entry("31.0", "Velmora Aurelis 5"),
            Map.entry("31.1", "Velmora Aurelys 5"),
            Map.entry("32.0", "Velmora Aurelis 5"),
            Map.entry("32.1", "Quillarn Tarvion 11"),
            Map.entry("33.0", "Velmora Aurelys 5"),
            Map.entry("34.0", "Velmora Aurelis 5"),
            Map.entry("34.1", "Quillarn Tarvion 11"));
  }
}
