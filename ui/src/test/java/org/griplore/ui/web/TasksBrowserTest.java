package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

@DisplayName("A tester in a browser")
class TasksBrowserTest extends BrowserWalk {
  private static WebElement row(String first) {
    return browser.driver().findElements(By.cssSelector("main tbody tr")).stream()
        .filter(row -> row.getText().startsWith(first))
        .findFirst()
        .orElseThrow();
  }

  private static WebElement linkIn(WebElement row, String text) {
    return row.findElement(By.linkText(text));
  }

  @Test
  @DisplayName("follows a standing to the model's results, and one of them to its cell")
  void standingToCell() {
    browser.open("/standings?discipline=wet-braking&season=summer");
    WebElement row = row("Velmora Aurelis 6");
    String effect = row.findElements(By.cssSelector("td.number a")).get(0).getText();
    linkIn(row, effect).click();
    browser.await(page -> browser.heading().contains("Velmora Aurelis 6 in wet-braking"));
    assertThat(browser.heading()).contains("summer tyres");
    assertThat(browser.find(".summary").getText()).contains(effect);
    WebElement result =
        browser
            .driver()
            .findElements(By.cssSelector("main table"))
            .get(1)
            .findElement(By.cssSelector("tbody tr"));
    String value = result.findElements(By.cssSelector("td.number a")).get(0).getText();
    linkIn(result, value).click();
    browser.await(page -> browser.heading().startsWith("Where does this figure"));
    assertThat(browser.driver().findElements(By.cssSelector("td.here mark"))).isNotEmpty();
    browser.driver().navigate().back();
    browser.await(page -> browser.heading().contains("in wet-braking"));
  }

  @Test
  @DisplayName("follows a generation step to the tests that held both, and on to their cells")
  void stepToCells() {
    browser.open("/generations?line=Velmora+Aurelis&discipline=wet-braking");
    WebElement step = row("Velmora Aurelis 4");
    String size = step.findElements(By.cssSelector("td.number a")).get(0).getText();
    linkIn(step, size).click();
    browser.await(page -> browser.heading().startsWith("How does Velmora Aurelis 5 compare"));
    assertThat(browser.find(".summary").getText()).contains("3 tests with both");
    linkIn(row("own-2021-2"), "25.76").click();
    browser.await(page -> browser.heading().startsWith("Where does this figure"));
    assertThat(browser.find("main").getText()).contains("25.7565");
  }

  @Test
  @DisplayName("sees what was never tested, and which models alone lack it")
  void coverage() {
    browser.open("/coverage?season=winter");
    int all = browser.driver().findElements(By.cssSelector("tbody tr")).size();
    assertThat(browser.driver().findElements(By.cssSelector("td.gap"))).isNotEmpty();
    browser.find("th.turned a[href*=\"missing=wear\"]").click();
    browser.await(page -> browser.driver().getCurrentUrl().contains("missing=wear"));
    List<WebElement> rows = browser.driver().findElements(By.cssSelector("tbody tr"));
    assertThat(rows).isNotEmpty().hasSizeLessThan(all);
    browser.picture("coverage-missing");
  }

  @Test
  @DisplayName("does all of it by the keyboard: finds, opens, follows a figure, goes back")
  void keyboardOnly() {
    browser.open("/");
    active().sendKeys("/");
    active().sendKeys("aurelis 4");
    browser.await(page -> "true".equals(active().getDomAttribute("aria-expanded")));
    active().sendKeys(Keys.ARROW_DOWN);
    active().sendKeys(Keys.ENTER);
    browser.await(page -> browser.heading().contains("on record of Velmora Aurelis 4"));
    tabTo("wet-braking").sendKeys(Keys.ENTER);
    browser.await(page -> browser.heading().contains("in wet-braking"));
    tabTo("26.06").sendKeys(Keys.ENTER);
    browser.await(page -> browser.heading().startsWith("Where does this figure"));
    active().sendKeys(Keys.chord(Keys.ALT, Keys.ARROW_LEFT));
    browser.driver().navigate().back();
    browser.await(page -> browser.heading().contains("in wet-braking"));
  }

  private static WebElement active() {
    return browser.driver().switchTo().activeElement();
  }

  /** Tabs on until the focus is on a link of this text; every stop shows where it is. */
  private static WebElement tabTo(String text) {
    for (int i = 0; i < 250; i++) {
      active().sendKeys(Keys.TAB);
      WebElement at = active();
      if (at.getTagName().equals("a") && at.getText().equals(text)) {
        assertThat(at.getCssValue("outline-style")).isEqualTo("solid");
        return at;
      }
    }
    throw new AssertionError("the keyboard does not reach " + text);
  }

  @Test
  @DisplayName("prints a record: black on white, within the sheet, without forms")
  void prints() {
    browser.window(1280, 900, true);
    browser.open("/model?model=Velmora+Aurelis+4&discipline=wet-braking");
    Object pdf =
        browser
            .driver()
            .executeCdpCommand("Page.printToPDF", Map.of("paperWidth", 8.27, "paperHeight", 11.69))
            .get("data");
    byte[] bytes = Base64.getDecoder().decode((String) pdf);
    assertThat(new String(bytes, 0, 5, StandardCharsets.ISO_8859_1)).isEqualTo("%PDF-");
    assertThat(bytes.length).isGreaterThan(20_000);
    browser.window(760, 900, true);
    browser.media("print", true);
    assertThat(browser.width()).isLessThanOrEqualTo(760);
    assertThat(browser.brightness("body", "backgroundColor")).isEqualTo(255);
    for (String gone : List.of(".search", ".ask", ".save", ".ways", ".cite button")) {
      assertThat(browser.find(gone).isDisplayed()).as(gone).isFalse();
    }
    assertThat(browser.find("#citation").isDisplayed()).isTrue();
    browser.picture("print-record");
  }

  @Test
  @DisplayName("is offered the nearest names when one is not known")
  void nearest() {
    browser.open("/model?model=Velmroa+Aurelis+4");
    assertThat(browser.heading()).isEqualTo("Not answered");
    assertThat(browser.complaints()).allMatch(told -> told.contains("400 (Bad Request)"));
    browser.link("Velmora Aurelis 4").click();
    browser.await(page -> browser.heading().contains("on record of Velmora Aurelis 4"));
  }
}
