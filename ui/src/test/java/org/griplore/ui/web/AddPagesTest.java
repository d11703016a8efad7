package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Revision;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.ui.web.intake.Drafts;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A table given to the page")
class AddPagesTest {
  private static final String TABLE =
      "Größe: 205/55 R16 91V\n\nReifen;NaBr;Komfort\n"
          + "Ovrand One;101;7\nOvrand Two;105;8\nOvrand Three;109;6\n";

  private Archive archive;
  private QueryContext queryContext;
  private Explorer explorer;
  private String base;
  private Sender sender;

  @BeforeEach
  void open(@TempDir Path folder) {
    archive = Archive.openOrCreate(folder.resolve("archive"));
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

  @Test
  @DisplayName("is shown, corrected, added, and seen in the standings")
  void wholeWay() {
    String page = sender.paste(TABLE);
    String shown = Reader.get(base + page).body();
    assertThat(shown)
        .contains("not understood")
        .contains("101 · 105 · 109")
        .contains("read from it: 205/55 R16 91V");
    assertThat(archive.stamp()).as("nothing is kept yet").isZero();

    Map<String, String> said =
        Map.of(
            "draft", Sender.id(page),
            "meaning-1", "wet-braking",
            "unit-1", "ft",
            "date", "14.06.2021",
            "source_kind", "own");
    HttpResponse<String> corrected = sender.form("/draft", said);
    assertThat(corrected.statusCode()).isEqualTo(303);
    assertThat(corrected.headers().firstValue("Location")).contains(page);
    assertThat(Reader.get(base + page).body())
        .contains("as was said")
        .contains("wet-braking, m")
        .contains("30.7848");
    assertThat(archive.stamp()).isZero();

    HttpResponse<String> added = sender.form("/draft/add", said);
    assertThat(added.statusCode()).isEqualTo(303);
    String done = added.headers().firstValue("Location").orElseThrow();
    assertThat(done).isEqualTo("/added?revision=1");
    assertThat(Reader.get(base + done).body())
        .contains("<a href=\"/test?test=pasted-2025-01-01-")
        .contains("<a href=\"/standings?discipline=wet-braking\">");
    assertThat(Reader.get(base + "/standings?discipline=wet-braking").body())
        .contains("Ovrand One")
        .contains("Ovrand Three");

    Revision reading = archive.revisions().get(0);
    assertThat(reading.name()).matches("pasted-2025-01-01-[0-9a-f]{8}\\.tsv");
    assertThat(archive.originals().path(reading.sha256()))
        .hasBinaryContent(TABLE.getBytes(StandardCharsets.UTF_8));
    assertThat(Reader.get(base + page).statusCode()).as("the draft is gone").isEqualTo(410);
  }

  @Test
  @DisplayName("is not added when something was said that was not shown yet")
  void unseen() {
    String page = sender.paste(TABLE);
    HttpResponse<String> answer =
        sender.form("/draft/add", Map.of("draft", Sender.id(page), "meaning-1", "dry-braking"));
    assertThat(answer.headers().firstValue("Location")).contains(page);
    assertThat(archive.stamp()).isZero();
    assertThat(Reader.get(base + page).body()).contains("as was said");
  }

  @Test
  @DisplayName("begins with what was said of another with the same headers")
  void remembered() {
    Map<String, String> said = Map.of("meaning-1", "wet-braking", "unit-1", "ft");
    String first = Sender.id(sender.paste(TABLE));
    Map<String, String> all = new java.util.HashMap<>(said);
    all.put("draft", first);
    sender.form("/draft", all);
    sender.form("/draft/add", all);
    String page = sender.paste(TABLE + "Ovrand Four;120;5\n");
    assertThat(Reader.get(base + page).body())
        .contains("as was said")
        .contains("columns read as corrected on 2025-01-01")
        .contains("name=\"unit-1\" value=\"ft\"");
  }

  @Test
  @DisplayName("twice the same is the same source")
  void twice() {
    for (String expected : new String[] {"/added?revision=1", "/added?revision=1&same=1"}) {
      String page = sender.paste(TABLE);
      HttpResponse<String> added = sender.form("/draft/add", Map.of("draft", Sender.id(page)));
      assertThat(added.headers().firstValue("Location")).contains(expected);
    }
    assertThat(archive.sourceCount()).isEqualTo(1);
    assertThat(Reader.get(base + "/added?revision=1&same=1").body()).contains("already");
  }

  @Test
  @DisplayName("says beside the field what is wrong, and keeps what was typed")
  void problems() {
    String page = sender.paste(TABLE);
    HttpResponse<String> answer =
        sender.form(
            "/draft",
            Map.of(
                "draft", Sender.id(page),
                "meaning-1", "wet-braking",
                "unit-1", "dB(A)",
                "unit-2", "<i>",
                "size", "205-55",
                "date", "32.13.2021",
                "headerRow", "-1"));
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body())
        .contains("“dB(A)” is no unit of wet-braking; expected one like m.")
        .contains("“&lt;i&gt;” is no unit")
        .contains("“205-55” is not understood; expected like 205/55 R16 91V.")
        .contains("“32.13.2021” is not understood")
        .contains("“-1” is no row")
        .contains("value=\"205-55\"");
    assertThat(Reader.get(base + page).body()).doesNotContain("205-55");
    assertThat(archive.stamp()).isZero();
  }

  @Test
  @DisplayName("in which no header is known can be read by its row of headers")
  void unknownHeaders() {
    String page = sender.paste("Q1\tQ2\nOvrand One\t31\nOvrand Two\t32\n");
    assertThat(Reader.get(base + page).body()).contains("kept as a draft");
    String id = Sender.id(page);
    sender.form("/draft", Map.of("draft", id, "headerRow", "1"));
    assertThat(Reader.get(base + page).body()).contains("not understood").contains("31 · 32");
    Map<String, String> said =
        Map.of(
            "draft", id,
            "headerRow", "1",
            "meaning-0", "tyre",
            "meaning-1", "wet-braking",
            "unit-1", "m");
    sender.form("/draft", said);
    assertThat(Reader.get(base + page).body()).contains("Ovrand Two</th>");
    assertThat(sender.form("/draft/add", said).headers().firstValue("Location"))
        .contains("/added?revision=1");
  }

  @Test
  @DisplayName("may be a file, kept under its name without a path")
  void file() {
    HttpResponse<String> given =
        sender.give("", "C:\\\\tests\\\\summer.csv", TABLE.getBytes(StandardCharsets.UTF_8));
    String page = given.headers().firstValue("Location").orElseThrow();
    assertThat(Reader.get(base + page).body()).contains("How summer.csv is understood");
    sender.form("/draft/add", Map.of("draft", Sender.id(page)));
    assertThat(archive.revisions().get(0).name()).isEqualTo("summer.csv");
  }

  @Test
  @DisplayName("is asked for again when there is none, or two, and refused when it is foreign")
  void nothing() {
    assertThat(sender.give(" \n", "", new byte[0]).body()).contains("There is nothing yet");
    HttpResponse<String> both = sender.give(TABLE, "a.csv", new byte[] {65});
    assertThat(both.statusCode()).isEqualTo(400);
    assertThat(both.body()).contains("give one of them").contains("Ovrand Three;109;6");
    HttpResponse<String> pdf =
        sender.give("", "a.pdf", "%PDF-1.7\n...".getBytes(StandardCharsets.US_ASCII));
    String page = pdf.headers().firstValue("Location").orElseThrow();
    assertThat(Reader.get(base + page).body()).contains("PDF").doesNotContain("Add to the archive");
  }

  @Test
  @DisplayName("is shown as text whatever it holds")
  void hostile() {
    String page =
        sender.paste(
            "Title: <script>alert(1)</script>\n\nTyre;Wet braking (m);x\"><img src=x onerror=a>\n"
                + "Ovrand <script>alert(2)</script>;31;</textarea><b>\nOvrand '\">&;32;javascript:alert(3)\n");
    assertThat(Reader.get(base + page).body())
        .doesNotContain("<script>alert")
        .doesNotContain("<img")
        .doesNotContain("<b>\n")
        .contains("&lt;script&gt;alert(2)");
    assertThat(sender.give("</textarea><script>x</script>", "a", new byte[] {1}).body())
        .doesNotContain("<script>x");
  }

  @Test
  @DisplayName("is let go when others were given since")
  void bounded() {
    String first = sender.paste(TABLE);
    for (int i = 0; i < Drafts.MOST; i++) {
      sender.paste(TABLE + "Ovrand " + "ABCDEFGH".charAt(i) + "x;90;5\n");
    }
    HttpResponse<String> gone = Reader.get(base + first);
    assertThat(gone.statusCode()).isEqualTo(410);
    assertThat(gone.body()).contains("Give it again");
    assertThat(Reader.get(base + "/draft").statusCode()).isEqualTo(410);
    assertThat(Reader.get(base + "/added?revision=7").statusCode()).isEqualTo(400);
  }

  @Test
  @DisplayName("is not taken from another site, nor where the explorer only reads")
  void closed() {
    for (String path : new String[] {"/add", "/draft", "/draft/add"}) {
      assertThat(Reader.send("POST", base + path).statusCode()).as(path).isEqualTo(403);
    }
    try (Explorer reading = new Explorer(queryContext)) {
      String address = "http://localhost:" + reading.start(0);
      assertThat(Reader.get(address + "/add").body())
          .contains("opened for reading only")
          .doesNotContain("<textarea");
      HttpResponse<String> answer = new Sender(address).give(TABLE, "", new byte[0]);
      assertThat(answer.statusCode()).isEqualTo(403);
      assertThat(answer.body()).contains("opened for reading only");
    }
  }
}
