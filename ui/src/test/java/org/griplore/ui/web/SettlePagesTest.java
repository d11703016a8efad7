package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names and descent are decided on their pages; all of it is invented. */
class SettlePagesTest {
  private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([0-9a-f]{64})\"");
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2025-01-01T12:00:00Z"), ZoneOffset.UTC);

  private Archive archive;
  private QueryContext queryContext;
  private Explorer explorer;
  private String base;

  @BeforeEach
  void open(@TempDir Path folder) throws IOException {
    Path lineage =
        Files.writeString(
            folder.resolve("lineage.csv"),
            """
            maker,line,model,generation,launched,follows
            Velmora,Aurelis,Aurelis 4,1,2016,
            Velmora,Aurelis,Aurelis 5,2,2019,Aurelis 4
            """);
    Path table =
        Files.writeString(
            folder.resolve("t1.csv"),
            "Test: T1\n\nTyre;Wet braking (m)\nVelmora Aurelys 5;31\nHaslund <b>Vejgrip</b> 7;32\n");
    archive = DemoExplorer.archive(folder, lineage, table);
    queryContext = new QueryContext(archive, DisciplineCatalogue.standard());
    explorer = new Explorer(queryContext, NOON);
    base = "http://localhost:" + explorer.start(0);
  }

  @AfterEach
  void close() {
    explorer.close();
    queryContext.close();
    archive.close();
  }

  private String page(String path) {
    HttpResponse<String> page = Reader.get(base + path);
    assertThat(page.statusCode()).as(path).isEqualTo(200);
    return page.body();
  }

  private HttpResponse<String> send(String path, Map<String, String> fields)
      throws IOException, InterruptedException {
    Matcher token = TOKEN.matcher(page("/lineage?model=Velmora+Aurelis+4"));
    assertThat(token.find()).isTrue();
    String body =
        fields.entrySet().stream()
            .map(field -> field.getKey() + "=" + encoded(field.getValue()))
            .collect(Collectors.joining("&", "token=" + token.group(1) + "&", ""));
    return HttpClient.newHttpClient()
        .send(
            HttpRequest.newBuilder(URI.create(base + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", base)
                .POST(BodyPublishers.ofString(body))
                .build(),
            BodyHandlers.ofString());
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  @Test
  void aNameIsDecidedWithOneClickAndTakenBack() throws Exception {
    assertThat(page("/settle"))
        .contains("Taken for a misspelling of Velmora Aurelis 5.")
        .contains("<button name=\"same-as\" value=\"Velmora Aurelis 5\">")
        .contains("Haslund &lt;b&gt;Vejgrip&lt;/b&gt; 7")
        .doesNotContain("<b>Vejgrip");
    HttpResponse<String> sent =
        send("/settle", Map.of("name", "Velmora Aurelys 5", "decision", "new", "because", "odd"));
    assertThat(sent.statusCode()).isEqualTo(303);
    assertThat(sent.headers().firstValue("Location")).contains("/settle");
    assertThat(page("/settle"))
        .contains("Decided on names")
        .contains("is a model of its own")
        .contains("odd")
        .doesNotContain("Taken for a misspelling");
    assertThat(page("/models.csv")).contains("Velmora Aurelys 5");
    send("/settle", Map.of("name", "Velmora Aurelys 5", "decision", "undecided"));
    assertThat(page("/settle"))
        .contains("Taken for a misspelling of Velmora Aurelis 5.")
        .doesNotContain("Decided on names");
    assertThat(page("/models.csv")).doesNotContain("Velmora Aurelys 5");
  }

  @Test
  void allNamesWithoutACandidateAreDecidedAtOnce() throws Exception {
    send("/settle", Map.of("decision", "rest-are-new"));
    assertThat(page("/settle.csv")).contains("Aurelys").doesNotContain("Haslund");
    assertThat(page("/findings.csv")).contains("Aurelys").doesNotContain("Haslund");
  }

  @Test
  void whatCannotBeDecidedIsRefusedInASentence() throws Exception {
    HttpResponse<String> unknown =
        send("/settle", Map.of("name", "Velmora Aurelys 5", "same-as", "Velmora Auriga"));
    assertThat(unknown.statusCode()).isEqualTo(400);
    assertThat(unknown.body())
        .contains("Velmora Auriga\" is no model in the archive: did you mean Velmora Aurelis");
    HttpResponse<String> empty = send("/settle", Map.of("name", "Velmora Aurelys 5"));
    assertThat(empty.statusCode()).isEqualTo(400);
    assertThat(empty.body()).contains("nothing was decided");
    HttpResponse<String> circle =
        send("/lineage", Map.of("model", "Velmora Aurelis 4", "follows", "Velmora Aurelis 5"));
    assertThat(circle.statusCode()).isEqualTo(400);
    assertThat(circle.body())
        .contains("Velmora Aurelis 4 follows Velmora Aurelis 5 follows Velmora Aurelis 4");
    assertThat(archive.decisions()).isEmpty();
  }

  @Test
  void onlyWhatWasChangedOfADescentIsDecided() throws Exception {
    assertThat(page("/lineage?model=Velmora+Aurelis+5")).contains("value=\"Velmora Aurelis 4\"");
    send(
        "/lineage",
        Map.of(
            "model", "Velmora Aurelis 5",
            "follows", "",
            "maker", "Velmora",
            "launched", "03/2019",
            "segment", ""));
    assertThat(archive.decisions())
        .extracting(decision -> decision.verb() + " " + decision.value())
        .containsExactlyInAnyOrder("starts its line null", "has the launch 2019-03");
    send("/lineage", Map.of("model", "Velmora Aurelis 5", "undecided", "follows"));
    assertThat(page("/lineage?model=Velmora+Aurelis+5"))
        .contains("value=\"Velmora Aurelis 4\"")
        .contains("value=\"2019-03\"");
  }

  @Test
  void anExplorerThatOnlyReadsShowsNoForms() {
    try (Explorer reading = new Explorer(queryContext)) {
      String address = "http://localhost:" + reading.start(0);
      for (String path : new String[] {"/settle", "/lineage?model=Velmora+Aurelis+4"}) {
        assertThat(Reader.get(address + path).body())
            .contains("for reading only")
            .doesNotContain("method=\"post\"");
      }
    }
  }
}
