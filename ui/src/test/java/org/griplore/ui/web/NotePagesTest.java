package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.NoteRecord;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A note written in the page")
class NotePagesTest {
  private Archive archive;
  private QueryContext queryContext;
  private Explorer explorer;
  private String base;
  private Sender sender;

  @BeforeEach
  void open(@TempDir Path folder) throws IOException {
    Path table = folder.resolve("own-2021-1.csv");
    Files.writeString(table, "Tyre;Wet braking (m)\nOvrand One;31\nOvrand Two;32\n");
    archive = DemoExplorer.archive(folder, table);
    queryContext = new QueryContext(archive, DisciplineCatalogue.standard());
    Clock clock = Clock.fixed(Instant.parse("2025-01-01T12:00:00Z"), ZoneOffset.UTC);
    explorer = new Explorer(queryContext, clock);
    base = "http://localhost:" + explorer.start(0);
    sender = new Sender(base);
  }

  @AfterEach
  void close() {
    explorer.close();
    queryContext.close();
    archive.close();
  }

  private HttpResponse<String> send(String text, String model, String discipline) {
    return sender.form(
        "/note",
        Map.of("test", "own-2021-1", "model", model, "discipline", discipline, "text", text));
  }

  @Test
  @DisplayName("on a tyre in a test is a source of its own, and found by its words")
  void onTyre() {
    assertThat(Reader.get(base + "/test?test=own-2021-1").body())
        .contains("<a href=\"/note?test=own-2021-1\">");
    assertThat(Reader.get(base + "/note?test=own-2021-1").body())
        .contains("Ovrand Two</option>")
        .contains("Wet braking</option>");
    assertThat(Reader.get(base + "/find?text=skittish").body()).doesNotContain("Lively");
    HttpResponse<String> answer =
        send("Lively,\r\nskittish; a third | of\tit; # not a heading", "Ovrand Two", "wet-braking");
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(answer.headers().firstValue("Location")).contains("/test?test=own-2021-1");
    List<NoteRecord> notes = archive.notes();
    assertThat(notes).hasSize(1);
    assertThat(notes.get(0).text()).endsWith("Lively, skittish; a third | of it; # not a heading");
    assertThat(archive.revisions().get(1).name()).matches("note-2025-01-01-[0-9a-f]{8}\\.md");
    assertThat(queryContext.evidence().tests()).as("no other test came in").hasSize(1);
    assertThat(Reader.get(base + "/find?text=skittish&model=Ovrand+Two").body()).contains("Lively");
    assertThat(Reader.get(base + "/test?test=own-2021-1").body()).contains("Lively");
  }

  @Test
  @DisplayName("on a model is written in one of its tests")
  void onModel() {
    assertThat(Reader.get(base + "/note?model=Ovrand+One").body())
        .contains("value=\"own-2021-1\"")
        .contains("<option value=\"Ovrand One\" selected>");
    assertThat(send("quiet", "", "").statusCode()).isEqualTo(303);
    assertThat(archive.notes()).hasSize(1);
  }

  @Test
  @DisplayName("is asked for again when it is empty, refused for no test, and shown as text")
  void refused() {
    HttpResponse<String> empty = send(" \n", "Ovrand One", "");
    assertThat(empty.statusCode()).isEqualTo(400);
    assertThat(empty.body()).contains("The note is empty");
    assertThat(send("x".repeat(5000), "", "").body()).contains("5000 letters");
    assertThat(Reader.get(base + "/note?test=none").statusCode()).isEqualTo(400);
    assertThat(Reader.get(base + "/note").statusCode()).isEqualTo(400);
    assertThat(sender.form("/note", Map.of("test", "none", "text", "a")).statusCode())
        .isEqualTo(400);
    assertThat(archive.notes()).isEmpty();
    assertThat(send("<script>alert(1)</script> squeal", "Ovrand One", "").statusCode())
        .isEqualTo(303);
    assertThat(Reader.get(base + "/test?test=own-2021-1").body())
        .contains("squeal")
        .doesNotContain("<script>alert");
  }
}
