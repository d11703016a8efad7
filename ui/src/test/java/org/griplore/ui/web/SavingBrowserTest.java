package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.w3c.dom.Document;

@DisplayName("What a reader takes along")
class SavingBrowserTest extends BrowserWalk {
  private static Path downloads;

  @BeforeAll
  static void keepDownloads(@TempDir Path folder) {
    downloads = folder;
    browser
        .driver()
        .executeCdpCommand(
            "Browser.setDownloadBehavior",
            Map.of("behavior", "allow", "downloadPath", downloads.toString()));
    browser
        .driver()
        .executeCdpCommand(
            "Browser.grantPermissions",
            Map.of(
                "permissions", java.util.List.of("clipboardReadWrite", "clipboardSanitizedWrite")));
  }

  @BeforeEach
  void darkStandings() {
    browser.window(1280, 900, true);
    browser.open("/standings?discipline=wet-braking&season=summer");
  }

  private static void press(String way) {
    browser.find(".save summary").click();
    browser.find(".save button[data-way=" + way + "]").click();
  }

  private static File saved(String ending) {
    return browser.await(
        page -> {
          File[] files = downloads.toFile().listFiles((at, name) -> name.endsWith(ending));
          return files != null && files.length == 1 && files[0].length() > 0 ? files[0] : null;
        });
  }

  @Test
  @DisplayName("a plot is saved as an SVG that stands alone, in the colours of print")
  void svg() throws Exception {
    press("svg");
    File file = saved(".svg");
    assertThat(file.getName()).startsWith("how-do-models-stand-in-wet-braking");
    String text = Files.readString(file.toPath());
    assertThat(text).doesNotContain("var(--").contains("#1f5f6b").contains("Griplore archive");
    Document parsed = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file);
    assertThat(parsed.getDocumentElement().getTagName()).isEqualTo("svg");
    assertThat(parsed.getElementsByTagName("path").getLength()).isGreaterThan(20);
  }

  @Test
  @DisplayName("and as a PNG, twice as sharp, on white paper though the page is dark")
  void png() throws IOException {
    press("png");
    BufferedImage image = ImageIO.read(saved(".png"));
    assertThat(image.getWidth()).isGreaterThan(1500);
    assertThat(image.getRGB(0, 0) & 0xffffff).isEqualTo(0xffffff);
    long ink = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y += 5) {
        ink += (image.getRGB(x, y) & 0xffffff) == 0xffffff ? 0 : 1;
      }
    }
    assertThat(ink).isGreaterThan(1000);
  }

  @Test
  @DisplayName("its specification is copied whole")
  void specification() throws IOException {
    press("specification");
    browser.await(
        page -> browser.find(".save button[data-way=specification]").getText().equals("Copied"));
    JsonNode copied = new ObjectMapper().readTree(clipboard());
    assertThat(copied.get("$schema").asText()).contains("vega-lite/v6");
    assertThat(copied.at("/data/values").size()).isGreaterThan(10);
    assertThat(copied.toString()).doesNotContain("var(--");
  }

  @Test
  @DisplayName("the line to cite a page by is copied: sentence, archive, state, date, address")
  void citation() {
    WebElement button = browser.find(".cite button");
    button.click();
    browser.await(page -> button.getText().equals("Copied"));
    assertThat(clipboard())
        .matches(
            "\u201cHow do models stand in wet-braking, summer tyres\\?\u201d Griplore archive archive,"
                + " state \\d+, last added to on 2025-01-01\\."
                + " /standings\\?discipline=wet-braking&season=summer");
  }

  @Test
  @DisplayName("a table is exported as CSV with every row of the page")
  void table() throws IOException {
    browser.driver().findElements(By.cssSelector(".forms a")).stream()
        .filter(link -> link.getText().equals("CSV"))
        .findFirst()
        .orElseThrow();
    int rows = browser.driver().findElements(By.cssSelector("tbody tr")).size();
    String csv =
        Reader.get(
                DemoExplorer.get().address("/standings.csv?discipline=wet-braking&season=summer"))
            .body();
    assertThat(csv.lines()).hasSize(rows + 1);
  }

  private static String clipboard() {
    return (String)
        browser
            .driver()
            .executeAsyncScript(
                "const done = arguments[0]; navigator.clipboard.readText().then(done, e => done('' + e));");
  }
}
