package org.griplore.ingest;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.assertj.core.api.Assertions;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What cannot be taken is refused in one sentence that names the file, and the archive stays as it
 * was; other files of the same call are taken all the same.
 */
class BadInputTest {
  private static final String GOOD =
      """
      Test: good-1
      Date: 2021-06-14

      Tyre,Wet braking (m)
      Velmora Aurelis 5,31.2
      Quillarn Tarvion 11,32.5
      """;

  @TempDir Path folder;
  private Archive archive;

  @BeforeEach
  void addSomethingGood() throws IOException {
    archive = Archive.openOrCreate(folder.resolve("archive"));
    add(write("good.csv", GOOD.getBytes(StandardCharsets.UTF_8)));
  }

  @AfterEach
  void close() {
    archive.close();
  }

  private Path write(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  private List<AddedSource> add(Path... files) {
    return new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC())
        .add(Arrays.asList(files), ReadOptions.NONE, (name, done, total) -> {});
  }

  /** Adds a bad file and gives the sentence it was refused with. */
  private String refused(Path bad) throws IOException {
    long stamp = archive.stamp();
    List<String> before = contents();
    List<AddedSource> added = add(bad);
    assertThat(added).hasSize(1);
    Refusal refusal = added.get(0).refusal();
    assertThat(refusal).as("%s was taken", bad.getFileName()).isNotNull();
    String sentence = refusal.sentence();
    assertThat(sentence).contains(bad.getFileName().toString()).endsWith(".").doesNotContain("\n");
    assertThat(sentence).doesNotContain("Exception").hasSizeLessThan(400);
    assertThat(archive.stamp()).isEqualTo(stamp);
    assertThat(contents()).isEqualTo(before);
    return sentence;
  }

  private List<String> contents() {
    List<String> lines = new java.util.ArrayList<>(ArchiveLines.tests(archive));
    lines.addAll(ArchiveLines.results(archive));
    lines.addAll(ArchiveLines.notes(archive));
    lines.addAll(ArchiveLines.findings(archive));
    archive.revisions().forEach(revision -> lines.add(revision.toString()));
    archive.models().forEach(model -> lines.add(model.toString()));
    return lines;
  }

  private static byte[] workbook() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "Bench", "1.0")) {
      Worksheet sheet = workbook.newWorksheet("Wet");
      String[][] cells = {
        {"Tyre", "Wet braking (m)"}, {"Velmora Aurelis 5", "31.2"}, {"Ostrané Corvant", "33.1"}
      };
      for (int row = 0; row < cells.length; row++) {
        for (int column = 0; column < 2; column++) {
          sheet.value(row, column, cells[row][column]);
        }
      }
    }
    return out.toByteArray();
  }

  @Test
  void aWholeWorkbookIsTakenAndATruncatedOneIsNot() throws IOException {
    byte[] whole = workbook();
    assertThat(add(write("whole.xlsx", whole)).get(0).refusal()).isNull();
    for (int length : new int[] {whole.length / 4, whole.length / 2, whole.length - 30}) {
      refused(write("cut-" + length + ".xlsx", Arrays.copyOf(whole, length)));
    }
  }

  @Test
  void aZipThatUnpacksToGigabytesIsNotUnpacked() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
      zip.write("<workbook><sheets/></workbook>".getBytes(StandardCharsets.UTF_8));
      zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
      byte[] zeros = new byte[1 << 20];
      for (int i = 0; i < 2048; i++) {
        zip.write(zeros);
      }
    }
    assertThat(out.size()).isLessThan(10_000_000);
    long start = System.nanoTime();
    refused(write("bomb.xlsx", out.toByteArray()));
    assertThat((System.nanoTime() - start) / 1e9).as("seconds").isLessThan(20);
  }

  @Test
  void aZipInWhichThereIsNothingToReadIsRefused() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("Thumbs.db"));
      zip.write("hello".getBytes(StandardCharsets.UTF_8));
    }
    assertThat(refused(write("plain.zip", out.toByteArray()))).contains("nothing to read");
  }

  @Test
  void aPageWithoutATableIsRefused() throws IOException {
    String page = "<!DOCTYPE html><html><body><h1>Tyres</h1><p>None today.</p></body></html>";
    refused(write("page.html", page.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void binaryJunkIsRefused() throws IOException {
    byte[] junk = new byte[100_000];
    new Random(20_260_101).nextBytes(junk);
    refused(write("junk.csv", junk));
    refused(write("zeros.bin", new byte[5000]));
  }

  @Test
  void anEmptyFileAndOneOfBlankLinesAreRefused() throws IOException {
    refused(write("empty.csv", new byte[0]));
    refused(write("blank.csv", "\n\n   \n\t\n".getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void textIsReadWithItsLettersWhateverTheEncoding() throws IOException {
    String table = "Test: enc-%s\n\nReifen;Nassbremsen (m)\nHjortmåne Snöklar 9;31,2\nA B 1;32,0\n";
    for (String charset : List.of("windows-1252", "UTF-8", "UTF-16", "UTF-16LE", "UTF-16BE")) {
      byte[] bytes = table.formatted(charset).getBytes(charset);
      assertThat(add(write(charset + ".csv", bytes)).get(0).refusal()).as(charset).isNull();
      assertThat(ArchiveLines.results(archive))
          .contains("enc-" + charset + " | Hjortmåne Snöklar 9 | wet-braking | 31.2 m");
    }
  }

  @Test
  void aHundredMegabytesOfOneLineAreRefusedWithoutFillingTheMemory() throws IOException {
    Path file = folder.resolve("line.csv");
    byte[] part = "1234567890".repeat(100_000).getBytes(StandardCharsets.UTF_8);
    try (OutputStream out = Files.newOutputStream(file)) {
      for (int i = 0; i < 100; i++) {
        out.write(part);
      }
    }
    long start = System.nanoTime();
    refused(file);
    assertThat((System.nanoTime() - start) / 1e9).as("seconds").isLessThan(20);
  }

  @Test
  void aHundredMegabytesOfOneRowAreRefused() throws IOException {
    Path file = folder.resolve("row.csv");
    byte[] part = "12345,67890,".repeat(80_000).getBytes(StandardCharsets.UTF_8);
    try (OutputStream out = Files.newOutputStream(file)) {
      for (int i = 0; i < 100; i++) {
        out.write(part);
      }
    }
    refused(file);
  }

  @Test
  void damagedJsonIsRefusedWithItsLine() throws IOException {
    String json =
        "{\"test\": \"x\",\n \"results\": [{\"tyre\": \"A\", \"Wet braking (m)\": 31.2},\n";
    assertThat(refused(write("cut.json", json.getBytes(StandardCharsets.UTF_8)))).contains("line");
  }

  @Test
  void aMissingPathIsRefusedBeforeAnythingIsAdded() throws IOException {
    long stamp = archive.stamp();
    Path good =
        write("second.csv", GOOD.replace("good-1", "good-2").getBytes(StandardCharsets.UTF_8));
    Refusal refusal =
        Assertions.catchThrowableOfType(
            Refusal.class, () -> add(good, folder.resolve("not there")));
    assertThat(refusal.sentence()).contains("not there");
    assertThat(archive.stamp()).isEqualTo(stamp);
  }

  @Test
  void aTableOfSomethingElseIsRefused() throws IOException {
    String table = "Name,Street,Town\nAnna,Elm 1,Ulm\nBert,Oak 2,Bern\n";
    refused(write("people.csv", table.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void aLineageWithACycleLeavesTheArchiveAsItWas() throws IOException {
    String lineage =
        "maker,model,generation,follows\nVelmora,Aurelis 5,2,Aurelis 6\nVelmora,Aurelis 6,3,Aurelis 5\n";
    assertThat(refused(write("lineage.csv", lineage.getBytes(StandardCharsets.UTF_8))))
        .contains("row 2")
        .contains("would follow itself");
  }

  @Test
  void aLongTableThatBreaksOffHalfWayLeavesNothing() throws IOException {
    StringBuilder table = new StringBuilder("test,model,discipline,value,unit\n");
    for (int i = 0; i < 3000; i++) {
      table
          .append("half-")
          .append(i / 10)
          .append(",Velmora Aurelis ")
          .append(i % 10)
          .append(",wet-braking,31,m\n");
    }
    table.append("half-1,Velmora Aurelis 5,wet-braking,3\0,m\n");
    assertThat(refused(write("half.csv", table.toString().getBytes(StandardCharsets.UTF_8))))
        .contains("line 3002");
  }

  @Test
  void oneBadFileDoesNotKeepTheOthersOut() throws IOException {
    Path several = Files.createDirectory(folder.resolve("several"));
    Files.writeString(several.resolve("a.csv"), GOOD.replace("good-1", "several-a"));
    Files.write(several.resolve("b.xlsx"), Arrays.copyOf(workbook(), 300));
    Files.writeString(several.resolve("c.csv"), GOOD.replace("good-1", "several-c"));
    List<AddedSource> added = add(several);
    assertThat(added)
        .filteredOn(s -> s.refusal() != null)
        .extracting(AddedSource::name)
        .containsExactly("b.xlsx");
    assertThat(ArchiveLines.tests(archive))
        .anyMatch(t -> t.startsWith("several-a"))
        .anyMatch(t -> t.startsWith("several-c"));
  }

  @Test
  void aLongTableWithoutUnitsSaysHowToStateThem() throws IOException {
    String table = "test,model,discipline,value\nlong-1,Velmora Aurelis 5,wet-braking,31\n";
    add(write("long.csv", table.getBytes(StandardCharsets.UTF_8)));
    assertThat(archive.findings())
        .extracting(record -> record.finding().remedy())
        .anyMatch(remedy -> remedy.contains("`unit wet-braking: "));
    byte[] details = "unit wet-braking: ft\n".getBytes(StandardCharsets.UTF_8);
    write("feet.csv.details", details);
    add(write("feet.csv", table.replace("long-1", "feet-1").getBytes(StandardCharsets.UTF_8)));
    assertThat(ArchiveLines.results(archive))
        .anyMatch(line -> line.startsWith("feet-1") && line.contains("9.44"));
  }

  @Test
  void aHeaderAloneIsKnownByTheUsersOwnDisciplinesToo() throws IOException {
    Path own =
        text(
            "disciplines.json",
            "{\"disciplines\": [{\"key\": \"kerb-strike\", \"name\": \"Kerb strike\","
                + " \"unit\": \"m\", \"better\": \"low\", \"scale\": \"ratio\", \"describes\": \"A strike.\","
                + " \"words\": {\"en\": [\"kerb strike\"]}}]}");
    DisciplineCatalogue catalogue = DisciplineCatalogue.standard().with(own);
    Intake intake = new Intake(archive, catalogue, Clock.systemUTC());
    AddedSource added =
        intake
            .add(
                List.of(text("own.csv", "Model,Kerb strike\n")),
                ReadOptions.NONE,
                (name, done, total) -> {})
            .get(0);
    assertThat(added.refusal()).isNotNull();
    assertThat(added.refusal().sentence()).contains("no rows below it");
  }

  @Test
  void aTableThatIsBrokenIsNoNote() throws IOException {
    String header = "Model,Wet braking [m],Dry braking [m]\n";
    assertThat(refused(text("header.csv", header))).contains("no rows below it");
    assertThat(refused(text("long.csv", "test,model,discipline,value,unit\n\n")))
        .contains("no rows below it");
    assertThat(
            refused(
                text(
                    "quote.csv",
                    header + "Velmora Aurelis 5,30,31,32,33\nA\n\"open,33,34\nB,1,2\n")))
        .contains("line 4")
        .contains("never closed");
    String endless = "Model,Wet braking [m],Remark\nA,31.2," + "x".repeat(300_000) + "\nB,32,-\n";
    assertThat(add(text("endless.csv", endless)).get(0).refusal()).isNull();
    assertThat(ArchiveLines.results(archive)).anyMatch(line -> line.startsWith("endless | A"));
    String note = "Tyre, wet braking\nIt felt vague.\nIt was late.\nI would book it again.\n";
    assertThat(add(text("note.txt", note)).get(0).refusal()).isNull();
  }

  private Path text(String name, String text) throws IOException {
    return write(name, text.getBytes(StandardCharsets.UTF_8));
  }
}
