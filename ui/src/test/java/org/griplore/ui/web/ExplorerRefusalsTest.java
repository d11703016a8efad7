package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.SocketException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The explorer turns away")
class ExplorerRefusalsTest {
  private static final DemoExplorer DEMO = DemoExplorer.get();

  @Test
  @DisplayName("an unknown model, with the nearest names as links that work")
  void unknownModel() {
    HttpResponse<String> answer =
        Reader.get(DEMO.address("/placings?model=Velmroa+Aurelis+4&top=2"));
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body())
        .contains("is no model in the archive")
        .contains("<a href=\"/placings?model=Velmora+Aurelis+4&amp;top=2\">Velmora Aurelis 4</a>");
    assertThat(Reader.get(DEMO.address("/placings?model=Velmora+Aurelis+4&top=2")).statusCode())
        .isEqualTo(200);
  }

  @Test
  @DisplayName("an unknown test, with tests that are near")
  void unknownTest() {
    assertThat(Reader.get(DEMO.address("/test?test=own-2021")).body())
        .contains("<a href=\"/test?test=own-2021-2\">own-2021-2</a>");
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "/placings?top=0",
        "/placings?top=1&top=2",
        "/placings?nothing=1",
        "/placings?discipline=%27%3B+DROP+TABLE+results",
        "/placings?from=2024&to=2010",
        "/origin?result=99999999999999999999",
        "/origin?result=-1",
        "/find?text=wet&limit=1000000",
        "/find?text=wet&model=%3Cscript%3E",
        "/tests?size=%25s%25n",
        "/model?model=Velmora+Aurelis+4&model=Velmora+Aurelis+5",
        "/model?model=%3Cscript%3Ealert(1)%3C/script%3E",
        "/line?line=%00",
        "/coverage?limit=-1",
        "/coverage?missing=%22%3E%3Cscript%3E",
        "/coverage?sort=worst",
        "/search?text=velmora&limit=1000000",
        "/test?test=../../etc/passwd"
      })
  void hostileOptions(String address) throws Exception {
    HttpResponse<String> page = Reader.get(DEMO.address(address));
    assertThat(page.statusCode()).isEqualTo(400);
    assertThat(page.body()).contains("<h1>Not answered</h1>").doesNotContain("<script>");
    HttpResponse<String> json = Reader.get(DEMO.address(address.replace("?", ".json?")));
    assertThat(json.statusCode()).isEqualTo(400);
    assertThat(json.headers().firstValue("Content-Type").orElseThrow())
        .startsWith("application/json");
    JsonNode error = new ObjectMapper().readTree(json.body());
    assertThat(error.get("error").asText())
        .endsWith(error.get("error").asText().endsWith("?") ? "?" : ".");
  }

  @ParameterizedTest(name = "{0}: status {1}")
  @CsvSource({"POST, 405", "PUT, 405", "DELETE, 405", "PATCH, 405", "OPTIONS, 405", "HEAD, 200"})
  void methods(String method, int status) {
    HttpResponse<String> answer = Reader.send(method, DEMO.address("/placings"));
    assertThat(answer.statusCode()).isEqualTo(status);
    if (status == 405) {
      assertThat(answer.headers().firstValue("Allow")).contains("GET, HEAD");
    } else {
      assertThat(answer.body()).isEmpty();
      assertThat(answer.headers().firstValue("Content-Type")).contains("text/html;charset=utf-8");
    }
  }

  @Test
  @DisplayName("names of other machines in the Host header")
  void foreignHost() throws IOException {
    String answer =
        raw("GET /placings HTTP/1.1\r\nHost: elsewhere.example:" + DEMO.port() + "\r\n");
    assertThat(answer).startsWith("HTTP/1.1 403").contains("answers on localhost only");
    assertThat(raw("GET /placings HTTP/1.1\r\nHost: 127.0.0.1\r\n")).startsWith("HTTP/1.1 200");
  }

  @ParameterizedTest(name = "an address of {0} characters, without a trace of the inside")
  @ValueSource(ints = {7_000, 9_000, 5_000_000})
  void endlessAddress(int length) throws IOException {
    String answer =
        raw("GET /find?text=" + "a".repeat(length) + " HTTP/1.1\r\nHost: localhost\r\n");
    assertThat(answer)
        .startsWith("HTTP/1.1 414")
        .doesNotContain("\tat ")
        .doesNotContain("Exception");
  }

  @Test
  @DisplayName("a page that does not exist")
  void noPage() {
    assertThat(Reader.get(DEMO.address("/nothing")).body()).contains("There is no page /nothing.");
    HttpResponse<String> json = Reader.get(DEMO.address("/nothing.json"));
    assertThat(json.statusCode()).isEqualTo(404);
    assertThat(json.body()).contains("\"error\" : \"There is no page /nothing.json.\"");
  }

  @Test
  @DisplayName("anything but its own files, by the headers of every page")
  void headers() {
    HttpResponse<String> page = Reader.get(DEMO.address("/"));
    String policy = page.headers().firstValue("Content-Security-Policy").orElseThrow();
    assertThat(policy)
        .contains("default-src 'none'")
        .contains("script-src 'self'")
        .doesNotContain("unsafe");
    assertThat(page.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
    assertThat(page.body())
        .doesNotContain("<style")
        .doesNotContain(" style=")
        .doesNotContain("http://")
        .doesNotContain("https://www")
        .doesNotContainPattern("<script(?! defer src=\"/static/)")
        .doesNotContainPattern(" on[a-z]+=");
    assertThat(Reader.get(DEMO.address("/favicon.ico")).statusCode()).isEqualTo(302);
  }

  @Test
  @DisplayName("script in names and notes, by writing it as text")
  void escapes(@TempDir Path folder) throws IOException {
    Path source = folder.resolve("bad.csv");
    Files.writeString(
        source,
        """
        Title: <script>alert("title")</script> & more
        Date: 2021-05-04

        Tyre;Wet braking (m);Notes
        Ovrand <img src=x onerror=alert(1)>;30.1;quiet <script>alert("note")</script> tread
        Ovrand "Quote' 2;31.2;none
        Ovrand Third;32.2;none
        Ovrand Fourth;33.2;none
        """,
        StandardCharsets.UTF_8);
    try (Archive archive = DemoExplorer.archive(folder, source);
        QueryContext queryContext = new QueryContext(archive, DisciplineCatalogue.standard());
        Explorer explorer = new Explorer(queryContext)) {
      String base = "http://localhost:" + explorer.start(0);
      String test = queryContext.evidence().tests().get(0).key();
      for (String path :
          new String[] {
            "/",
            "/placings?discipline=wet-braking",
            "/model?model=Ovrand+Third",
            "/standings",
            "/coverage",
            "/search?text=ovrand",
            "/search?text=%3Cscript%3Ealert(2)%3C/script%3E",
            "/models",
            "/tests",
            "/test?test=" + test,
            "/find?text=quiet",
            "/origin?result=1",
            "/sources",
            "/findings"
          }) {
        String page = Reader.get(base + path).body();
        assertThat(page).as(path).doesNotContain("<script>alert").doesNotContain("<img");
      }
      assertThat(Reader.get(base + "/find?text=quiet").body()).contains("&lt;script&gt;alert(");
    }
  }

  @Test
  @DisplayName("questions about an archive that was removed while it was served")
  void removedArchive(@TempDir Path folder) throws IOException {
    Path source = folder.resolve("small.csv");
    Files.writeString(source, "Tyre;Wet braking (m)\nOvrand One;30.1\nOvrand Two;31.2\n");
    try (Archive archive = DemoExplorer.archive(folder, source);
        QueryContext queryContext = new QueryContext(archive, DisciplineCatalogue.standard());
        Explorer explorer = new Explorer(queryContext)) {
      String base = "http://localhost:" + explorer.start(0);
      assertThat(Reader.get(base + "/tests").statusCode()).isEqualTo(200);
      DemoExplorer.remove(folder.resolve("archive"));
      HttpResponse<String> page = Reader.get(base + "/tests");
      assertThat(page.statusCode()).isEqualTo(503);
      assertThat(page.body()).contains("is not there any more.");
      assertThat(Reader.get(base + "/tests.json").body()).contains("is not there any more.");
    }
  }

  private static String raw(String head) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", DEMO.port())) {
      socket.setSoTimeout(20_000);
      try {
        socket
            .getOutputStream()
            .write((head + "Connection: close\r\n\r\n").getBytes(StandardCharsets.ISO_8859_1));
      } catch (SocketException closed) {
        assertThat(head.length()).as("only an endless request is cut off").isGreaterThan(100_000);
      }
      return read(socket.getInputStream());
    }
  }

  /** What came before the connection was closed, or cut off behind a refusal. */
  private static String read(InputStream in) throws IOException {
    StringBuilder answer = new StringBuilder();
    byte[] part = new byte[8192];
    try {
      for (int length = in.read(part); length > 0; length = in.read(part)) {
        answer.append(new String(part, 0, length, StandardCharsets.ISO_8859_1));
      }
    } catch (SocketException cut) {
      assertThat(answer).as("an answer before the cut").isNotEmpty();
    }
    return answer.toString();
  }
}
