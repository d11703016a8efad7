package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.net.URLDecoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.query.Questions;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.TestQuestion.TyreRow;
import org.griplore.ui.render.OutputFormat;
import org.griplore.ui.render.TerminalStyle;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The explorer's pages")
class ExplorerPagesTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final DemoExplorer DEMO = DemoExplorer.get();

  @ParameterizedTest(name = "{0} is the same answer as a page, JSON, CSV, Markdown and text")
  @ValueSource(
      strings = {
        "/placings",
        "/placings?model=Velmora+Aurelis+4",
        "/placings?discipline=wet-braking&top=2&from=2018&source=own&source=independent",
        "/model?model=Velmora+Aurelis+4",
        "/model?model=Velmora+Aurelis+4&discipline=wet-braking&from=2018",
        "/line?line=Velmora+Aurelis",
        "/standings?discipline=wet-braking&season=summer",
        "/standings?discipline=wet-braking&by=places",
        "/contrast?model=Velmora+Aurelis+5&model=Velmora+Aurelis+4",
        "/generations?line=Velmora+Aurelis",
        "/outlook?models=Velmora+Aurelis+6&models=Kirazumi+Hayari+S-300&size=205%2F55+R16",
        "/backtest?discipline=wet-braking",
        "/reweigh?model=Velmora+Aurelis+4&weights=wet-braking%3D3%2Cwear%3D1",
        "/tradeoff?discipline=wet-braking&discipline=rolling-resistance&season=summer",
        "/depends?contrast=all-season&contrast=summer&on=temperature",
        "/depends?contrast=Velmora+Aurelis&contrast=Quillarn+Tarvion",
        "/runs",
        "/coverage?season=winter&limit=5",
        "/search?text=velmroa+4",
        "/tests?season=winter",
        "/test?test=own-2021-2&reference=Velmora+Aurelis+4",
        "/log?test=own-2021-2",
        "/models",
        "/models?line=Velmora+Aurelis",
        "/find?text=aquaplaning&from=2018",
        "/find?text=braking&count=yes",
        "/holdings",
        "/origin?result=752",
        "/sources",
        "/findings"
      })
  void sameAnswer(String address) {
    Answer<?> answer = inProcess(address);
    assertThat(answer.rows()).isNotEmpty();

    String page = body(address);
    assertThat(page).contains(escaped(answer.summary())).contains("<h1>");
    for (OutputFormat format : OutputFormat.values()) {
      HttpResponse<byte[]> other = Reader.bytes(DEMO.address(form(address, format.ending())));
      ByteArrayOutputStream expected = new ByteArrayOutputStream();
      format.write(answer, expected, TerminalStyle.PLAIN);
      assertThat(other.statusCode()).isEqualTo(200);
      assertThat(other.headers().firstValue("Content-Type")).contains(format.contentType());
      assertThat(other.body()).isEqualTo(expected.toByteArray());
      assertThat(page).contains("href=\"" + escaped(form(address, format.ending())) + "\"");
    }
  }

  @Test
  @DisplayName("has a page for every question, that the start page leads to")
  void everyQuestion() {
    String start = body("/");
    Questions.all()
        .forEach(
            question -> {
              assertThat(start).contains("href=\"/" + question.kind() + "\"");
              assertThat(Reader.get(DEMO.address("/" + question.kind())).statusCode())
                  .as(question.kind())
                  .isEqualTo(200);
            });
  }

  @Test
  @DisplayName("an address of the version before leads to that of now")
  void formerAddresses() {
    HttpResponse<String> led = Reader.get(DEMO.address("/tally.json?text=braking"));
    assertThat(led.statusCode()).isEqualTo(302);
    assertThat(led.headers().firstValue("Location").orElseThrow())
        .endsWith("/find.json?text=braking&count=yes");
  }

  @Test
  @DisplayName("every link on the main pages leads to a page")
  void linksLead() {
    for (String address :
        List.of(
            "/",
            "/placings?model=Velmora+Aurelis+4",
            "/model?model=Velmora+Aurelis+4",
            "/line?line=Velmora+Aurelis",
            "/standings",
            "/contrast?model=Velmora+Aurelis+5&model=Velmora+Aurelis+4&from=2016",
            "/generations?line=Velmora+Aurelis&source=own",
            "/coverage?limit=8",
            "/test?test=own-2021-2",
            "/models")) {
      List<String> links = links(body(address));
      assertThat(links).hasSizeGreaterThan(10);
      links.stream()
          .distinct()
          .limit(60)
          .forEach(
              link ->
                  assertThat(Reader.get(DEMO.address(link)).statusCode()).as(link).isEqualTo(200));
    }
  }

  @Test
  @DisplayName("each plot's specification is JSON with the answer's own figures")
  void specifications() throws Exception {
    List<JsonNode> specifications = specifications(body("/placings"));
    assertThat(specifications).hasSize(1);
    JsonNode values = specifications.get(0).at("/data/values");
    JsonNode rows = JSON.readTree(body("/placings.json")).get("rows");
    assertThat(values).hasSameSizeAs(rows);
    for (int i = 0; i < rows.size(); i++) {
      assertThat(values.get(i).get("low")).isEqualTo(rows.get(i).get("shareLow"));
      assertThat(values.get(i).get("high")).isEqualTo(rows.get(i).get("shareHigh"));
      assertThat(values.get(i).get("chance")).isEqualTo(rows.get(i).get("expectedByChance"));
    }
    assertThat(specifications(body("/placings?model=Velmora+Aurelis+4"))).hasSize(2);
    assertThat(specifications(body("/"))).hasSize(1);
  }

  @Test
  @DisplayName("a test's page leads from each figure to its cell, and shows the test's notes")
  void testPage() {
    String page = body("/test?test=own-2021-2");
    assertThat(page)
        .contains("<dt>Vehicle</dt><dd>compact crossover</dd>")
        .contains("<option value=\"Velmora Aurelis 4\"")
        .contains("wet-braking-runs.csv");
    List<String> figures =
        inProcess("/test?test=own-2021-2").rows().stream()
            .flatMap(tyre -> ((TyreRow) tyre).figures().values().stream())
            .map(figure -> "/origin?result=" + figure.result())
            .toList();
    assertThat(figures).hasSizeGreaterThan(70);
    assertThat(links(page).stream().filter(link -> link.startsWith("/origin?result=")))
        .containsExactlyInAnyOrderElementsOf(figures);
  }

  @Test
  @DisplayName("a test's page shows its runs in order, the reference's trace and the limits")
  void testRuns() throws Exception {
    String page = body("/test?test=own-2022-2");
    assertThat(page)
        .contains("<h3>wet-braking, wet-braking-runs.csv</h3>")
        .contains("as on the average of all reference measurements (3 in the log)")
        .contains("a trend explains the reference best; trend")
        .contains("cycle 1, sequence 1 to 5, R-T1-T2-T3-R: the reference changes by")
        .contains("a reference that breaks it voids the cycles beside it, a candidate only itself")
        .contains("<summary>All runs in order</summary>");
    List<JsonNode> traces = specifications(page);
    assertThat(traces).hasSize(3);
    JsonNode rows = JSON.readTree(body("/log.json?test=own-2022-2")).get("rows");
    int dots = 0;
    for (JsonNode row : rows) {
      dots += 1;
      for (JsonNode run : row.get("runs")) {
        dots += run.get("figure").isNull() ? 0 : 1;
      }
    }
    assertThat(traces.stream().mapToInt(trace -> trace.at("/data/values").size()).sum())
        .isEqualTo(dots);
    assertThat(body("/log?test=own-2022-2")).contains("All runs in order");
  }

  @Test
  @DisplayName("a figure's page marks its cell among its neighbours in the original")
  void originPage() {
    String page = body("/origin?result=752");
    assertThat(page)
        .contains("<td class=\"here\"><mark>9.17</mark></td>")
        .contains("Rolling resistance (N/kN)");
  }

  @Test
  @DisplayName("a reduced figure's page shows its runs in their cells and every step to it")
  void reducedFigure() {
    String page =
        inProcess("/test?test=own-2021-2").rows().stream()
            .map(row -> ((TyreRow) row).figures().get("wet-braking"))
            .filter(figure -> figure != null && Integer.valueOf(6).equals(figure.runs()))
            .map(figure -> body("/origin?result=" + figure.result()))
            .filter(body -> body.contains("wet-braking-runs.csv"))
            .findFirst()
            .orElseThrow();
    String ladder = page.substring(page.indexOf("<ol class=\"ladder\">"), page.indexOf("</ol>"));
    assertThat(ladder.split("<li>", -1)).hasSizeGreaterThanOrEqualTo(1 + 6 + 5);
    assertThat(ladder)
        .contains("mean of 6 runs (mean deceleration), CV", "reference interpolated by position")
        .contains("from memory, check the official text", "standard error");
    assertThat(page.split("<mark>", -1)).hasSize(1 + 6);
  }

  @Test
  @DisplayName("models stand in their lines in the order of their descent")
  void lineage() {
    String page = body("/models?line=Velmora+Aurelis");
    String strip = page.substring(page.indexOf("class=\"strip\""), page.indexOf("</ol>"));
    Matcher names = Pattern.compile("title=\"([^\"]+)\"").matcher(strip);
    assertThat(names.results().map(found -> found.group(1)))
        .containsExactly(
            "Velmora Aurelis 3", "Velmora Aurelis 4", "Velmora Aurelis 5", "Velmora Aurelis 6");
    assertThat(strip.split("class=\"linked\"", -1)).hasSize(4);
  }

  @Test
  @DisplayName("an empty form field leaves no trace in the address")
  void cleanAddress() {
    HttpResponse<String> answer =
        Reader.get(DEMO.address("/placings?model=Velmora+Aurelis+4&model=&top=&season="));
    assertThat(answer.statusCode()).isEqualTo(302);
    assertThat(answer.headers().firstValue("Location").orElseThrow())
        .endsWith("/placings?model=Velmora+Aurelis+4");
  }

  @Test
  @DisplayName("facets narrow a search to what they count")
  void facets() {
    String page = body("/find?text=braking");
    Matcher facet =
        Pattern.compile(
                "<a href=\"(/find[^\"]*discipline=wet-braking)\">wet-braking</a><span class=\"count\">(\\d+)")
            .matcher(page);
    assertThat(facet.find()).isTrue();
    assertThat(body(facet.group(1).replace("&amp;", "&")))
        .contains(facet.group(2) + " notes match");
  }

  private static Answer<?> inProcess(String address) {
    String[] parts = address.substring(1).split("\\?");
    Map<String, List<String>> given = new LinkedHashMap<>();
    if (parts.length > 1) {
      for (String option : parts[1].split("&")) {
        String[] pair = option.split("=");
        given
            .computeIfAbsent(pair[0], name -> new ArrayList<>())
            .add(URLDecoder.decode(pair[1], StandardCharsets.UTF_8));
      }
    }
    return Questions.ask(Questions.of(parts[0]).orElseThrow(), DEMO.queryContext(), given);
  }

  private static String form(String address, String ending) {
    int query = address.indexOf('?');
    return query < 0
        ? address + "." + ending
        : address.substring(0, query) + "." + ending + address.substring(query);
  }

  private static String body(String address) {
    HttpResponse<String> answer = Reader.get(DEMO.address(address));
    assertThat(answer.statusCode()).as(address).isEqualTo(200);
    return answer.body();
  }

  private static List<String> links(String page) {
    return Pattern.compile("<a href=\"(/[^\"]*)\"")
        .matcher(page)
        .results()
        .map(found -> found.group(1).replace("&amp;", "&"))
        .toList();
  }

  private static List<JsonNode> specifications(String page) throws Exception {
    List<JsonNode> specifications = new ArrayList<>();
    Matcher found = Pattern.compile("data-specification=\"([^\"]*)\"").matcher(page);
    while (found.find()) {
      specifications.add(
          JSON.readTree(
              found
                  .group(1)
                  .replace("&#34;", "\"")
                  .replace("&#39;", "'")
                  .replace("&lt;", "<")
                  .replace("&amp;", "&")));
    }
    return specifications;
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
