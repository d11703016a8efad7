package org.griplore.ingest;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import org.griplore.ingest.forms.UnderstoodColumn;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pasted table shows how it is understood, and nothing is written. */
class PreviewTest {
  private static final String PASTED =
      """
      Reifen;Platz;Nassbremsen [ft];Komfort;Farbe
      Velmora Aurelis 5;1;95;7,5;rot
      Quillarn Tarvion 11;2;97;6,5;blau
      """;

  @TempDir Path folder;

  private static Original pasted(String text) {
    return Original.of("pasted table", text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void columnsAreShownWithMeaningUnitAndSamples() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      Intake intake = new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC());
      Preview preview = intake.preview(pasted(PASTED), ReadOptions.NONE);
      assertThat(preview.columns())
          .extracting(
              UnderstoodColumn::header,
              UnderstoodColumn::meaning,
              UnderstoodColumn::unit,
              c -> c.samples().get(0))
          .containsExactly(
              org.assertj.core.groups.Tuple.tuple("Reifen", "tyre", "", "Velmora Aurelis 5"),
              org.assertj.core.groups.Tuple.tuple("Platz", "place, overall", "", "1"),
              org.assertj.core.groups.Tuple.tuple("Nassbremsen [ft]", "wet-braking", "ft", "95"),
              org.assertj.core.groups.Tuple.tuple("Komfort", "comfort", "points", "7,5"),
              org.assertj.core.groups.Tuple.tuple("Farbe", "not understood", "", "rot"));
      assertThat(preview.reports()).hasSize(1);
      assertThat(preview.reports().get(0).entries().get(0).results())
          .filteredOn(result -> result.discipline().equals("wet-braking"))
          .singleElement()
          .satisfies(result -> assertThat(result.value()).isEqualTo(95 * 0.3048))
          .satisfies(result -> assertThat(result.rule()).isEqualTo("from ft to m"));
      assertThat(preview.findings())
          .extracting(Finding::kind)
          .contains(Finding.Kind.NOT_READ, Finding.Kind.ASSUMED, Finding.Kind.NEW_NAME);
      assertThat(preview.complete()).isTrue();
      assertThat(archive.stamp()).isZero();
      assertThat(archive.models()).isEmpty();
    }
  }

  @Test
  void whatIsShownIsWhatIsWritten() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      Intake intake = new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC());
      ReadOptions options = new ReadOptions(Map.of("source_kind", "own", "date", "2021-06-14"));
      Preview preview = intake.preview(pasted(PASTED), options);
      AddedSource added = intake.add(pasted(PASTED), options);
      assertThat(added.refusal()).isNull();
      assertThat(added.outcome().findings()).isEqualTo(preview.findings().size());
      long results =
          preview.reports().stream()
              .flatMap(report -> report.entries().stream())
              .mapToLong(entry -> entry.results().size())
              .sum();
      assertThat(added.outcome().results()).isEqualTo(results).isEqualTo(6);
    }
  }

  @Test
  void aLongTableShowsItsBeginning() {
    StringBuilder table = new StringBuilder("test,model,discipline,value,unit,colour\n");
    for (int i = 0; i < 5000; i++) {
      table.append("long-").append(i).append(",Velmora Aurelis 5,wet-braking,31,m,red\n");
    }
    try (Archive archive = Archive.openOrCreate(folder)) {
      Preview preview =
          new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC())
              .preview(pasted(table.toString()), ReadOptions.NONE);
      assertThat(preview.form()).isEqualTo("long table");
      assertThat(preview.reports()).hasSize(Preview.KEPT);
      assertThat(preview.complete()).isFalse();
      assertThat(preview.columns())
          .extracting(UnderstoodColumn::meaning)
          .containsExactly("test", "model", "discipline", "value", "unit", "not understood");
    }
  }
}
