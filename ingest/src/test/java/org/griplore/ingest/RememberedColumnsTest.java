package org.griplore.ingest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.ColumnMapReader;
import org.griplore.store.archive.AdditionOutcome;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.ColumnMapRecord;
import org.griplore.store.archive.FindingRecord;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A correction of columns")
class RememberedColumnsTest {
  private static final DisciplineCatalogue CATALOGUE = DisciplineCatalogue.standard();
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2025-01-01T00:00:00Z"), ZoneOffset.UTC);
  private static final String MAP =
      "{\"columns\":[{\"header\":\"WB\",\"meaning\":\"wet-braking\",\"unit\":\"ft\"}]}";

  private Archive archive;
  private Intake intake;

  @BeforeEach
  void open(@TempDir Path folder) {
    archive = Archive.openOrCreate(folder.resolve("archive"));
    intake = new Intake(archive, CATALOGUE, CLOCK);
  }

  @AfterEach
  void close() {
    archive.close();
  }

  private static Original table(String name, String header, int first) {
    String text = "%s\nOvrand One;%d;7\nOvrand Two;105;8\n".formatted(header, first);
    return Original.of(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private AdditionOutcome add(Original source, String map) {
    ColumnMap said = map == null ? ColumnMap.NONE : ColumnMapReader.read(map, "map", CATALOGUE);
    AddedSource added = intake.add(source, new ReadOptions(Map.of(), false, said));
    assertThat(added.refusal()).isNull();
    return added.outcome();
  }

  @Test
  @DisplayName("is used for later files of the same headers, with a finding that says so")
  void used() {
    assertThat(add(table("before.csv", "Tyre;WB;Comfort", 99), null).results()).isEqualTo(2);
    assertThat(add(table("a.csv", "Tyre;WB;Comfort", 101), MAP).results()).isEqualTo(4);
    assertThat(archive.columnMaps())
        .extracting(ColumnMapRecord::layout, ColumnMapRecord::map, ColumnMapRecord::file)
        .containsExactly(org.assertj.core.groups.Tuple.tuple("tyre | wb | comfort", MAP, "a.csv"));

    Original later = table("b.csv", "TYRE;  wb ;Comfort", 102);
    assertThat(intake.preview(later, ReadOptions.NONE).findings())
        .anyMatch(finding -> finding.expected().contains("corrected on 2025-01-01 for a.csv"));
    AdditionOutcome outcome = add(later, null);
    assertThat(outcome.results()).isEqualTo(4);
    assertThat(archive.findingsOf(outcome.revision()))
        .extracting(FindingRecord::finding)
        .anyMatch(finding -> finding.remedy().contains("`griplore columns --forget 1`"));
    assertThat(archive.columnMaps()).as("it is remembered once").hasSize(1);
    assertThat(add(later, null).status()).isEqualTo(AdditionOutcome.Status.UNCHANGED);
    assertThat(add(table("before.csv", "Tyre;WB;Comfort", 99), null).status())
        .as("what was added before is read anew by it")
        .isEqualTo(AdditionOutcome.Status.REVISED);
  }

  @Test
  @DisplayName("finds a table again in which nothing is recognised without it")
  void unrecognised() {
    String map =
        "{\"columns\":[{\"header\":\"Q0\",\"meaning\":\"tyre\"},"
            + "{\"header\":\"Q1\",\"meaning\":\"wet-braking\",\"unit\":\"ft\"}]}";
    add(table("a.csv", "Q0;Q1;Q2", 101), map);
    assertThat(add(table("b.csv", "Q0;Q1;Q2", 102), null).results()).isEqualTo(2);
  }

  @Test
  @DisplayName("is not used for other headers, units or publishers")
  void otherLayouts() {
    add(table("a.csv", "Tyre;WB;Comfort", 101), MAP);
    for (String header :
        new String[] {
          "Tyre;WB;Comfort (points)",
          "Tyre;Comfort;WB",
          "Source: Reifenkreis Nord\n\nTyre;WB;Comfort"
        }) {
      assertThat(add(table(header.hashCode() + ".csv", header, 102), null).results())
          .as(header)
          .isEqualTo(2);
    }
  }

  @Test
  @DisplayName("gives way to a newer one, and to what is said of a file itself")
  void newest() {
    add(table("a.csv", "Tyre;WB;Comfort", 101), MAP);
    add(table("b.csv", "Tyre;WB;Comfort", 102), MAP.replace("wet", "dry"));
    assertThat(archive.columnMaps()).hasSize(1);
    add(table("c.csv", "Tyre;WB;Comfort", 103), null);
    assertThat(archive.snapshot().disciplines()).contains("dry-braking");
    assertThat(archive.columnMaps().get(0).file()).isEqualTo("b.csv");
  }

  @Test
  @DisplayName("can be forgotten, and goes when its file is taken back")
  void forgotten() {
    add(table("a.csv", "Tyre;WB;Comfort", 101), MAP);
    archive.forgetColumns(1, CLOCK);
    assertThat(archive.columnMaps()).isEmpty();
    assertThat(add(table("b.csv", "Tyre;WB;Comfort", 102), null).results()).isEqualTo(2);
    assertThatThrownBy(() -> archive.forgetColumns(1, CLOCK))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("no remembered columns of number 1");

    add(table("c.csv", "Tyre;WB;Comfort", 103), MAP);
    assertThat(archive.columnMaps()).hasSize(1);
    archive.undo();
    assertThat(archive.columnMaps()).isEmpty();
  }
}
