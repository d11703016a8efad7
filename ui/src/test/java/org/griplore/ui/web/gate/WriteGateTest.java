package org.griplore.ui.web.gate;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.Javalin;
import java.io.ByteArrayInputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.griplore.store.archive.Archive;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A form that would change the archive")
class WriteGateTest {
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private final AtomicInteger changes = new AtomicInteger();
  private final CountDownLatch changing = new CountDownLatch(1);
  private final CountDownLatch mayEnd = new CountDownLatch(1);
  private Archive archive;
  private WriteGate gate;
  private Javalin server;

  @BeforeEach
  void open(@TempDir Path folder) {
    archive = Archive.openOrCreate(folder.resolve("archive"));
    gate = WriteGate.of(archive);
    server = serve(gate);
  }

  @AfterEach
  void close() {
    mayEnd.countDown();
    server.stop();
    archive.close();
  }

  private Javalin serve(WriteGate writing) {
    return Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.startup.showOldJavalinVersionWarning = false;
              WriteGate.limit(config);
              config.routes.before(context -> Gate.pass(context, writing));
              config.routes.get("/change", context -> context.result("a form"));
              writing.write(
                  config.routes,
                  "/change",
                  context -> {
                    if ("yes".equals(context.formParam("slow"))) {
                      changing.countDown();
                      mayEnd.await();
                    }
                    changes.incrementAndGet();
                    WriteGate.lead(context, "/changed");
                  });
              config.routes.exception(
                  Gate.TurnedAway.class,
                  (turned, context) ->
                      context.status(turned.status()).result(turned.refusal().sentence()));
            })
        .start("127.0.0.1", 0);
  }

  private String base() {
    return "http://localhost:" + server.port();
  }

  private HttpRequest.Builder form(BodyPublisher body) {
    return HttpRequest.newBuilder(URI.create(base() + "/change"))
        .header("Content-Type", "application/x-www-form-urlencoded")
        .timeout(Duration.ofSeconds(20))
        .POST(body);
  }

  private HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
    return CLIENT.send(request.build(), BodyHandlers.ofString());
  }

  private BodyPublisher withToken() {
    return BodyPublishers.ofString("token=" + gate.token());
  }

  @Test
  @DisplayName("is taken from a page of the explorer, and leads to a page to look at")
  void taken() throws Exception {
    HttpResponse<String> answer =
        send(form(withToken()).header("Origin", base()).header("Sec-Fetch-Site", "same-origin"));
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(answer.headers().firstValue("Location")).contains("/changed");
    assertThat(changes).hasValue(1);
  }

  @Test
  @DisplayName("is taken in parts too, as with a file")
  void parts() throws Exception {
    String body =
        "--edge\r\nContent-Disposition: form-data; name=\"token\"\r\n\r\n"
            + gate.token()
            + "\r\n--edge\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.csv\"\r\n"
            + "Content-Type: text/csv\r\n\r\nTyre;Place\r\n--edge--\r\n";
    HttpResponse<String> answer =
        send(
            HttpRequest.newBuilder(URI.create(base() + "/change"))
                .header("Content-Type", "multipart/form-data; boundary=edge")
                .header("Origin", base())
                .POST(BodyPublishers.ofString(body)));
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(changes).hasValue(1);
  }

  @ParameterizedTest(name = "is turned away from origin {0}, site {1}")
  @CsvSource({
    "http://elsewhere.example, ",
    "http://elsewhere.example, cross-site",
    "null, ",
    "http://localhost:1, ",
    "https://localhost:PORT, ",
    "http://127.0.0.1:PORT, same-site",
    "http://localhost:PORT, cross-site",
    "http://localhost:PORT, none",
    " , cross-site",
    " , "
  })
  void crossSite(String origin, String site) throws Exception {
    HttpRequest.Builder request = form(withToken());
    if (origin != null) {
      request.header("Origin", origin.replace("PORT", String.valueOf(server.port())));
    }
    if (site != null) {
      request.header("Sec-Fetch-Site", site);
    }
    HttpResponse<String> answer = send(request);
    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(answer.body()).contains("nothing was changed");
    assertThat(changes).hasValue(0);
  }

  @ParameterizedTest(name = "is turned away with the body \"{0}\"")
  @ValueSource(strings = {"", "token=", "token=0000", "other=1", "token=%F0%28", "=&&&=%"})
  void wrongToken(String body) throws Exception {
    HttpResponse<String> answer =
        send(form(BodyPublishers.ofString(body)).header("Origin", base()));
    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(answer.body()).contains("load its page anew");
    assertThat(changes).hasValue(0);
  }

  @Test
  @DisplayName("is turned away as JSON or with the token in the address only")
  void tokenElsewhere() throws Exception {
    HttpRequest.Builder json =
        HttpRequest.newBuilder(URI.create(base() + "/change?token=" + gate.token()))
            .header("Content-Type", "application/json")
            .header("Origin", base())
            .POST(withToken());
    assertThat(send(json).statusCode()).isEqualTo(403);
    assertThat(changes).hasValue(0);
  }

  @Test
  @DisplayName("is turned away when its parts are cut off")
  void brokenParts() throws Exception {
    HttpResponse<String> answer =
        send(
            HttpRequest.newBuilder(URI.create(base() + "/change"))
                .header("Content-Type", "multipart/form-data; boundary=edge")
                .header("Origin", base())
                .POST(BodyPublishers.ofString("--edge\r\nContent-Disp")));
    assertThat(answer.statusCode()).isBetween(400, 403);
    assertThat(answer.body()).doesNotContain("Exception");
    assertThat(changes).hasValue(0);
  }

  @Test
  @DisplayName("is turned away under another machine's name, as after DNS rebinding")
  void rebinding() throws Exception {
    String body = "token=" + gate.token();
    assertThat(raw("elsewhere.example:" + server.port(), body.length(), body))
        .startsWith("HTTP/1.1 403")
        .contains("answers on localhost only");
    assertThat(changes).hasValue(0);
  }

  /** What is answered to a form sent to a host by a page of that host. */
  private String raw(String host, int length, String body) throws Exception {
    String request =
        ("POST /change HTTP/1.1\r\nHost: %s\r\nOrigin: http://%s\r\nSec-Fetch-Site: same-origin\r\n"
                + "Connection: close\r\nContent-Type: application/x-www-form-urlencoded\r\n"
                + "Content-Length: %d\r\n\r\n%s")
            .formatted(host, host, length, body);
    try (Socket socket = new Socket("127.0.0.1", server.port())) {
      socket.setSoTimeout(20_000);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      byte[] answer = new byte[4096];
      int read = socket.getInputStream().readNBytes(answer, 0, answer.length);
      return new String(answer, 0, read, StandardCharsets.ISO_8859_1);
    }
  }

  @Test
  @DisplayName("is turned away when it is too long, or does not say how long it is")
  void tooLong() throws Exception {
    assertThat(raw("localhost:" + server.port(), WriteGate.MOST_BYTES + 1, ""))
        .startsWith("HTTP/1.1 413")
        .contains("21 MB")
        .contains("at most 20 MB")
        .contains("griplore add");
    BodyPublisher unmeasured =
        BodyPublishers.ofInputStream(
            () ->
                new ByteArrayInputStream(
                    ("token=" + gate.token()).getBytes(StandardCharsets.UTF_8)));
    assertThat(send(form(unmeasured).header("Origin", base())).statusCode()).isEqualTo(411);
    assertThat(changes).hasValue(0);
  }

  @Test
  @DisplayName("is turned away while another one is being worked on")
  void second() throws Exception {
    CompletableFuture<HttpResponse<String>> first =
        CLIENT.sendAsync(
            form(BodyPublishers.ofString("slow=yes&token=" + gate.token()))
                .header("Origin", base())
                .build(),
            BodyHandlers.ofString());
    assertThat(changing.await(20, TimeUnit.SECONDS)).isTrue();
    HttpResponse<String> answer = send(form(withToken()).header("Origin", base()));
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("when it is done; nothing was changed.");
    assertThat(changes).hasValue(0);
    mayEnd.countDown();
    assertThat(first.get(20, TimeUnit.SECONDS).statusCode()).isEqualTo(303);
    assertThat(send(form(withToken()).header("Origin", base())).statusCode()).isEqualTo(303);
    assertThat(changes).hasValue(2);
  }

  @Test
  @DisplayName("is turned away where the explorer only reads")
  void readOnly() throws Exception {
    server.stop();
    WriteGate closed = WriteGate.closed("Opened for reading only.");
    server = serve(closed);
    assertThat(closed.isOpen()).isFalse();
    HttpResponse<String> answer =
        send(form(BodyPublishers.ofString("token=")).header("Origin", base()));
    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(answer.body()).isEqualTo("Opened for reading only.");
    assertThat(changes).hasValue(0);
  }

  @Test
  @DisplayName("needs a token that no other explorer has")
  void ownToken() {
    assertThat(gate.token()).hasSize(64).isNotEqualTo(WriteGate.of(archive).token());
  }
}
