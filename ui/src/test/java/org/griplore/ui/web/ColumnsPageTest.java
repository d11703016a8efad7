package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.ingest.recognise.ColumnMapReader;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Addition;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What was said of a table's columns")
class ColumnsPageTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2025-01-01T12:00:00Z"), ZoneOffset.UTC);

  private Archive archive;
  private QueryContext queryContext;
  private Explorer explorer;
  private String page;
  private Sender sender;

  @BeforeEach
  void open(@TempDir Path folder) throws IOException {
    DisciplineCatalogue catalogue = DisciplineCatalogue.standard();
    Path table =
        Files.writeString(folder.resolve("own.csv"), "Tyre;Q\nOvrand One;31\nOvrand Two;32\n");
    String map =
        "{\"columns\": [{\"header\": \"Q\", \"meaning\": \"wet-circle\", \"unit\": \"m/s2\"}]}";
    archive = Archive.openOrCreate(folder.resolve("archive"));
    new Intake(archive, catalogue, CLOCK)
        .add(
            List.of(table),
            new ReadOptions(Map.of(), false, ColumnMapReader.read(map, "map", catalogue)),
            (name, done, total) -> {});
    queryContext = new QueryContext(archive, catalogue);
    explorer = new Explorer(queryContext, CLOCK);
    String base = "http://localhost:" + explorer.start(0);
    page = base + "/columns";
    sender = new Sender(base);
  }

  @AfterEach
  void close() {
    explorer.close();
    queryContext.close();
    archive.close();
  }

  private HttpResponse<String> forget(String number) {
    return sender.form("/columns", Map.of("forget", number));
  }

  @Test
  @DisplayName("is listed in words, and forgotten by its button; an unknown one is refused")
  void forgotten() {
    String number = String.valueOf(archive.columnMaps().get(0).id());
    assertThat(Reader.get(page).body())
        .contains("“Q”: wet-circle, in m/s²", "own.csv", "2025-01-01", "value=\"" + number + "\"");
    assertThat(forget("999").statusCode()).isEqualTo(400);
    assertThat(forget("one").body()).contains("nothing was forgotten");
    assertThat(archive.columnMaps()).hasSize(1);
    assertThat(forget(number).statusCode()).isEqualTo(303);
    assertThat(archive.columnMaps()).isEmpty();
    assertThat(Reader.get(page).body()).contains("Nothing is remembered");
  }

  @Test
  @DisplayName("stays while somebody else holds the archive's lock, who is named as the reason")
  @SuppressWarnings("try") // the lock is only held
  void busy() {
    String number = String.valueOf(archive.columnMaps().get(0).id());
    Original other = Original.of("other.csv", "other".getBytes(StandardCharsets.UTF_8));
    try (Addition held = archive.begin(other, "table", CLOCK)) {
      HttpResponse<String> answer = forget(number);
      assertThat(answer.statusCode()).isEqualTo(409);
      assertThat(answer.body()).contains("Somebody else is adding", "nothing was forgotten");
    }
    assertThat(archive.columnMaps()).hasSize(1);
  }
}
