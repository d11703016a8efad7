package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

@Tag("browser")
@DisplayName("In a browser, a pasted table")
class AddBrowserTest {
  private static Archive archive;
  private static QueryContext queryContext;
  private static Explorer explorer;
  private static String base;
  private static Browser browser;

  @BeforeAll
  static void open(@TempDir Path folder) {
    archive = Archive.openOrCreate(folder.resolve("archive"));
    queryContext = new QueryContext(archive, DisciplineCatalogue.standard());
    Clock clock = Clock.fixed(Instant.parse("2025-01-01T12:00:00Z"), ZoneOffset.UTC);
    explorer = new Explorer(queryContext, clock);
    base = "http://localhost:" + explorer.start(0);
    browser = Browser.open(DemoExplorer.get(), folder.resolve("profile"));
    browser.driver().manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
    explorer.close();
    queryContext.close();
    archive.close();
  }

  private static void press(String button) {
    browser.driver().findElement(By.xpath("//button[text()='" + button + "']")).click();
  }

  @Test
  @DisplayName("is corrected in one column, added, and seen in the standings")
  void pasted() throws IOException {
    browser.window(1280, 900, false);
    browser.driver().get(base + "/add");
    browser
        .find("#table")
        .sendKeys(
            "Date: 14.06.2021\n\nTyre;WB;Comfort\nOvrand One;31,2;7\nOvrand Two;30,1;8\n"
                + "Ovrand Three;33,9;6\n");
    press("Look at it");
    browser.await(page -> browser.heading().endsWith("is understood"));
    WebElement unread = browser.find(".understood .unread");
    assertThat(unread.getText()).startsWith("WB").contains("not understood");
    for (boolean dark : new boolean[] {false, true}) {
      browser.window(dark ? 390 : 1280, 900, dark);
      assertThat(browser.width()).isLessThanOrEqualTo(dark ? 390 : 1280);
      try (InputStream in = getClass().getResourceAsStream("/vendor/axe.min.js")) {
        String axe = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        assertThat(browser.violations(axe)).isEmpty();
      }
      browser.picture(dark ? "draft-dark" : "draft");
    }

    new Select(browser.find("#meaning-1")).selectByVisibleText("Wet braking");
    browser.find("#unit-1").sendKeys("m");
    press("Look again");
    browser.await(page -> browser.driver().getPageSource().contains("as was said"));
    assertThat(browser.driver().findElements(By.cssSelector(".understood .unread"))).isEmpty();
    assertThat(archive.stamp()).isZero();

    press("Add to the archive");
    browser.await(page -> browser.heading().endsWith("is in the archive"));
    browser.picture("added");
    assertThat(browser.complaints()).as("console").isEmpty();
    browser.link("Wet braking").click();
    browser.await(page -> browser.driver().getCurrentUrl().contains("/standings"));
    assertThat(browser.find("table").getText()).contains("Ovrand Two").contains("Ovrand Three");
  }
}
