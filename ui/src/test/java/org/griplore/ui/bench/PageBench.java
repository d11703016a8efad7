package org.griplore.ui.bench;

import com.sun.net.httpserver.HttpServer;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.zip.GZIPInputStream;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.ui.web.Browser;
import org.griplore.ui.web.Explorer;

/**
 * The explorer's pages over a million results of 2,000 models in 200 lines: the time of a whole
 * request when warm, beside the JDK's own server that sends the same bytes ready made to the same
 * client; what a first visit loads; and 50 readers at once. Pages are kept while the archive stays
 * the same; {@code {another}} in an address is another model at each request, so its page is always
 * new.
 */
public final class PageBench {
  private static final int MODELS = 2000;
  private static final int LINES = 200;
  private static final int TIMES = 40;
  private static final int WARM = 5;
  private static final int READERS = 50;
  private static final int ROUNDS = 4;

  private static final List<String> PAGES =
      List.of(
          "/",
          "/placings?discipline=wet-braking",
          "/placings?model=Maker+17+Model+17&discipline=wet-braking",
          "/model?model=Maker+17+Model+417",
          "/model?model={another}",
          "/line?line=Maker+17+Line+17",
          "/standings?discipline=wet-braking",
          "/contrast?model=Maker+17+Model+417&model=Maker+17+Model+217",
          "/contrast?model=Maker+17+Model+417&model={another}",
          "/generations?line=Maker+17+Line+17",
          "/coverage",
          "/coverage?sort=gaps&limit=2000",
          "/tests",
          "/tests?model=Maker+17+Model+417",
          "/test?test=T00417",
          "/models",
          "/models?line=Maker+17+Line+17",
          "/holdings",
          "/search?text=maekr+17",
          "/search.json?text=model+4&limit=4",
          "/search.json?text={another}&limit=4",
          "/find?text=braking",
          "/origin?result=417",
          "/sources",
          "/findings");
  private static final List<String> FIRST_VISIT =
      List.of(
          "/static/griplore.css",
          "/static/palette.js",
          "/static/copy.js",
          "/static/charts.js",
          "/static/icon.svg");

  private final HttpClient client = HttpClient.newHttpClient();
  private final int port;

  private final AtomicInteger another = new AtomicInteger(500);

  private PageBench(int port) {
    this.port = port;
  }

  /** Arguments: the number of rows (1,000,000 when not given). */
  public static void main(String[] arguments) throws Exception {
    System.setProperty("sun.net.httpserver.nodelay", "true");
    int rows = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000_000;
    Path folder = Files.createTempDirectory("griplore-bench-");
    Path table = folder.resolve("long.csv");
    LongTableFile.write(table, rows, MODELS, 1);
    Path lineage = lineage(folder.resolve("lineage.csv"));
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"))) {
      new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC())
          .add(List.of(lineage, table), ReadOptions.NONE, (name, done, total) -> {});
      try (QueryContext queryContext = new QueryContext(archive, DisciplineCatalogue.standard());
          Explorer explorer = new Explorer(queryContext)) {
        PageBench bench = new PageBench(explorer.start(0));
        bench.pages();
        bench.firstVisit();
        bench.readers();
        bench.browser(folder.resolve("profile"));
      }
    }
    Folders.remove(folder);
  }

  /** Ten generations a line. */
  private static Path lineage(Path file) throws IOException {
    try (Writer out = Files.newBufferedWriter(file)) {
      out.write("maker,line,model,generation,launched,season,segment,follows,aliases\n");
      for (int model = 0; model < MODELS; model++) {
        String follows = model < LINES ? "" : name(model - LINES);
        out.write(
            "Maker %d,Line %d,%s,%d,%d,summer,touring,%s,%n"
                .formatted(
                    model % 40,
                    model % LINES,
                    name(model),
                    1 + model / LINES,
                    2005 + 2 * (model / LINES),
                    follows));
      }
    }
    return file;
  }

  private static String name(int model) {
    return "Maker " + model % 40 + " Model " + model;
  }

  private void pages() throws Exception {
    System.out.printf(
        "%-58s %9s %9s %9s %9s %9s%n",
        "page", "first ms", "p50 ms", "p95 ms", "peer p95", "kB sent");
    for (String page : PAGES) {
      long start = System.nanoTime();
      byte[] sent = sent(port, page);
      double first = (System.nanoTime() - start) / 1e6;
      double[] ours = timed(port, page);
      double[] peer = peer(sent);
      System.out.printf(
          "%-58s %9.0f %9.1f %9.1f %9.1f %9.1f%n",
          page, first, at(ours, 0.5), at(ours, 0.95), at(peer, 0.95), sent.length / 1e3);
    }
  }

  /** The same bytes from the JDK's server, ready made. */
  private double[] peer(byte[] body) throws Exception {
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/",
        exchange -> {
          if (isPacked(body)) {
            exchange.getResponseHeaders().add("Content-Encoding", "gzip");
          }
          exchange.sendResponseHeaders(200, body.length);
          exchange.getResponseBody().write(body);
          exchange.close();
        });
    server.start();
    try {
      return timed(server.getAddress().getPort(), "/");
    } finally {
      server.stop(0);
    }
  }

  private static boolean isPacked(byte[] body) {
    return body.length > 1 && (body[0] & 0xff) == 0x1f && (body[1] & 0xff) == 0x8b;
  }

  private double[] timed(int at, String page) throws Exception {
    for (int time = 0; time < WARM; time++) {
      sent(at, page);
    }
    double[] times = new double[TIMES];
    for (int time = 0; time < TIMES; time++) {
      long start = System.nanoTime();
      sent(at, page);
      times[time] = (System.nanoTime() - start) / 1e6;
    }
    return times;
  }

  private void firstVisit() throws Exception {
    long bytes = sent(port, "/").length;
    for (String file : FIRST_VISIT) {
      bytes += sent(port, file).length;
    }
    System.out.printf(
        "first visit of the start page, compressed, besides the charting library: %.1f kB%n",
        bytes / 1e3);
  }

  /** Readers who ask for all pages, each from another one on. */
  private void readers() throws Exception {
    ExecutorService readers = Executors.newFixedThreadPool(READERS);
    Map<String, String> errors = new ConcurrentHashMap<>();
    List<Double> times = java.util.Collections.synchronizedList(new ArrayList<>());
    List<Future<?>> all = new ArrayList<>();
    long start = System.nanoTime();
    for (int reader = 0; reader < READERS; reader++) {
      int from = reader;
      all.add(
          readers.submit(
              () -> {
                for (int i = 0; i < ROUNDS * PAGES.size(); i++) {
                  String page = PAGES.get((from + i) % PAGES.size());
                  long began = System.nanoTime();
                  try {
                    sent(port, page);
                    times.add((System.nanoTime() - began) / 1e6);
                  } catch (Exception e) {
                    errors.put(page, String.valueOf(e));
                  }
                }
              }));
    }
    for (Future<?> one : all) {
      one.get();
    }
    readers.shutdown();
    double seconds = (System.nanoTime() - start) / 1e9;
    double[] sorted = times.stream().mapToDouble(t -> t).toArray();
    System.out.printf(
        "%d readers: %d requests in %.1f s (%.0f a second), p95 %.0f ms, errors: %s%n",
        READERS, sorted.length, seconds, sorted.length / seconds, at(sorted, 0.95), errors);
  }

  /** How long a browser takes until a page and its plots are drawn, on each page's second visit. */
  private void browser(Path profile) {
    if (!Browser.isHere()) {
      System.out.println("no browser here: drawing was not measured");
      return;
    }
    double slowest = 0;
    String which = "";
    try (Browser browser = Browser.on(page -> "http://localhost:" + port + page, profile)) {
      for (String page : PAGES) {
        if (page.contains(".json") || page.contains("{")) {
          continue;
        }
        browser.open(page);
        browser.open("/findings");
        long start = System.nanoTime();
        browser.open(page);
        double took = (System.nanoTime() - start) / 1e6;
        System.out.printf("%-58s %9.0f ms drawn%n", page, took);
        if (took > slowest) {
          slowest = took;
          which = page;
        }
      }
    }
    System.out.printf("slowest to draw: %s, %.0f ms%n", which, slowest);
  }

  /** The bytes as sent; the page is unpacked, as a browser would. */
  private byte[] sent(int at, String page) throws IOException, InterruptedException {
    int model = another.getAndIncrement() % MODELS;
    String address = page.replace("{another}", name(model).replace(' ', '+'));
    HttpResponse<byte[]> answer =
        client.send(
            HttpRequest.newBuilder(URI.create("http://localhost:" + at + address))
                .header("Accept-Encoding", "gzip")
                .build(),
            HttpResponse.BodyHandlers.ofByteArray());
    if (answer.statusCode() != 200) {
      throw new IllegalStateException(page + " is answered with " + answer.statusCode());
    }
    if (answer.headers().firstValue("Content-Encoding").orElse("").equals("gzip")) {
      try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(answer.body()))) {
        in.readAllBytes();
      } catch (IOException e) {
        throw new UncheckedIOException(page, e);
      }
    }
    return answer.body();
  }

  private static double at(double[] times, double share) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  }
}
