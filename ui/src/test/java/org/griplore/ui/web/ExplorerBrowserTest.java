package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

@DisplayName("In a browser")
class ExplorerBrowserTest extends BrowserWalk {
  @Test
  @DisplayName("one asks how an old generation ranked and follows a figure to its cell")
  void fromStartToCell() {
    browser.open("/");
    WebElement model = browser.find("#start-model");
    model.sendKeys("Velmora Aurelis 4", Keys.ENTER);
    browser.await(page -> browser.heading().startsWith("How often was Velmora Aurelis 4"));
    browser.await(page -> browser.allDrawn());
    assertThat(browser.find(".summary").getText()).contains("10 of 12 tests");
    assertThat(browser.driver().findElements(By.cssSelector(".plot svg path"))).isNotEmpty();

    browser.link("own-2019-2").click();
    browser.await(page -> browser.heading().contains("own-2019-2"));
    browser.link("9.2").click();
    browser.await(page -> browser.heading().startsWith("Where does this figure"));
    assertThat(browser.driver().findElements(By.cssSelector("td.here mark")))
        .extracting(WebElement::getText)
        .contains("9.17");
    browser.picture("cell");
    browser.driver().navigate().back();
    browser.await(page -> browser.heading().contains("own-2019-2"));
  }

  @Test
  @DisplayName("one finds a note by a misspelt word")
  void misspelt() {
    browser.open("/");
    browser.find("#start-text").sendKeys("aquaplanning", Keys.ENTER);
    browser.await(page -> browser.heading().startsWith("What do notes say"));
    assertThat(browser.driver().findElements(By.cssSelector(".note mark"))).isNotEmpty();
    browser.picture("notes");
  }

  @Test
  @DisplayName("a mark in a plot leads to its page")
  void markLeads() {
    browser.open("/placings");
    WebElement dot =
        browser.driver().findElements(By.cssSelector("#chart-shares .mark-symbol path")).get(1);
    new org.openqa.selenium.interactions.Actions(browser.driver())
        .moveToElement(dot)
        .click()
        .perform();
    browser.await(page -> browser.driver().getCurrentUrl().contains("model="));
    assertThat(browser.heading()).contains("Velmora Aurelis 4");
  }

  @Test
  @DisplayName("one spots the models that break a trade-off: a frame over dots keeps their rows")
  void frame() {
    browser.open("/tradeoff?discipline=wet-braking&discipline=rolling-resistance&season=summer");
    browser.picture("tradeoff");
    int all = shownRows();
    assertThat(all).isGreaterThan(15);
    WebElement plot = browser.find("#chart-tradeoff svg");
    int half = plot.getSize().getWidth() / 2;
    // offsets count from the middle; the upper right quarter is good in both
    new org.openqa.selenium.interactions.Actions(browser.driver())
        .moveToElement(plot, 5, -5)
        .clickAndHold()
        .moveToElement(plot, half - 20, 25 - plot.getSize().getHeight() / 2)
        .release()
        .perform();
    browser.await(page -> shownRows() < all);
    assertThat(browser.find(".framed").getText()).contains("models are in the frame");
    assertThat(browser.driver().findElements(By.cssSelector("tbody tr:not([hidden]) th")))
        .extracting(WebElement::getText)
        .contains("Velmora Aurelis 6")
        .doesNotContain("Drevanox Fervaro Sport");
    browser.picture("tradeoff-framed");
    browser.find(".framed button").click();
    browser.await(page -> shownRows() == all);
    assertThat(browser.find(".framed button").isDisplayed()).isFalse();
  }

  private static int shownRows() {
    return browser.driver().findElements(By.cssSelector("tbody tr:not([hidden])")).size();
  }

  @Test
  @DisplayName("dark mode darkens the page and its plots")
  void dark() {
    browser.window(1280, 900, true);
    browser.open("/placings?model=Velmora+Aurelis+4");
    assertThat(browser.brightness("body", "backgroundColor")).isLessThan(40);
    assertThat(browser.brightness(".plot .role-axis-label text", "fill")).isGreaterThan(130);
    browser.picture("dark");
    browser.media("print", true);
    assertThat(browser.brightness("body", "backgroundColor")).isEqualTo(255);
    assertThat(browser.brightness(".plot .role-axis-label text", "fill")).isLessThan(90);
    assertThat(browser.find(".top nav").isDisplayed()).isFalse();
  }

  @ParameterizedTest(name = "{0} does not scroll sideways on a telephone")
  @ValueSource(
      strings = {
        "/",
        "/placings",
        "/placings?model=Velmora+Aurelis+4&model=Velmora+Aurelis+5",
        "/model?model=Velmora+Aurelis+4",
        "/line?line=Velmora+Aurelis",
        "/standings",
        "/tradeoff?discipline=wet-braking&discipline=rolling-resistance",
        "/depends?contrast=all-season&contrast=summer",
        "/generations?line=Velmora+Aurelis",
        "/coverage",
        "/tests",
        "/test?test=own-2021-2",
        "/test?test=2023-06-01-summer-tyres-195-65-r15-2023-compact-hatchback",
        "/models",
        "/find",
        "/find?text=braking",
        "/origin?result=752",
        "/sources",
        "/settle",
        "/lineage?model=Velmora+Aurelis+4",
        "/search?text=velmroa",
        "/findings"
      })
  void narrow(String address) {
    browser.window(390, 800, false);
    browser.open(address);
    browser.picture("narrow" + address.replaceAll("\\W+", "-"));
    assertThat(browser.width()).isLessThanOrEqualTo(390);
  }

  @Test
  @DisplayName("a wide table is printed whole, within the page")
  void print() {
    browser.window(1000, 900, false);
    browser.media("print", false);
    browser.open("/tests");
    assertThat(browser.width()).isLessThanOrEqualTo(1000);
    browser.picture("print");
  }

  @Test
  @DisplayName("the plots keep their room free before they are drawn")
  void noJump() {
    browser.open("/");
    Object shift =
        browser
            .driver()
            .executeAsyncScript(
                """
                const done = arguments[arguments.length - 1];
                new PerformanceObserver(list => {
                  done(list.getEntries().reduce((sum, entry) => sum + entry.value, 0));
                }).observe({type: 'layout-shift', buffered: true});
                setTimeout(() => done(0), 1000);
                """);
    assertThat(((Number) shift).doubleValue()).isLessThan(0.02);
  }

  @Test
  @DisplayName("the keyboard reaches the answer at once")
  void keyboard() {
    browser.open("/placings?model=Velmora+Aurelis+4");
    WebElement first = focusAfterTab();
    assertThat(first.getText()).isEqualTo("Skip to the answer");
    first.sendKeys(Keys.ENTER);
    browser.await(page -> page.switchTo().activeElement().getDomAttribute("id") != null);
    assertThat(browser.driver().switchTo().activeElement().getDomAttribute("id"))
        .isEqualTo("answer");
    WebElement next = focusAfterTab();
    assertThat(next.getText()).isEqualTo("Ask differently");
    assertThat(next.getCssValue("outline-style")).isEqualTo("solid");
  }

  private static WebElement focusAfterTab() {
    browser.driver().switchTo().activeElement().sendKeys(Keys.TAB);
    return browser.driver().switchTo().activeElement();
  }

  @ParameterizedTest(name = "{0} breaks no rule of accessibility, dark: {1}")
  @CsvSource({
    "/, false",
    "/, true",
    "/placings?model=Velmora+Aurelis+4, true",
    "/model?model=Velmora+Aurelis+4, false",
    "/model?model=Velmora+Aurelis+4, true",
    "/line?line=Velmora+Aurelis, false",
    "/standings, true",
    "/contrast?model=Velmora+Aurelis+5&model=Velmora+Aurelis+4, false",
    "/generations?line=Velmora+Aurelis, true",
    "/coverage, false",
    "/coverage, true",
    "/search?text=velmroa, false",
    "/find, false",
    "/tradeoff?discipline=wet-braking&discipline=rolling-resistance, true",
    "/depends?contrast=all-season&contrast=summer, false",
    "/tests, false",
    "/test?test=own-2021-2, true",
    "/models, false",
    "/settle, false",
    "/lineage?model=Velmora+Aurelis+4, true",
    "/find?text=braking, true",
    "/origin?result=752, true",
    "/findings, false"
  })
  void accessible(String address, boolean dark) throws IOException {
    browser.window(1280, 900, dark);
    browser.open(address);
    browser.picture((dark ? "dark" : "light") + address.replaceAll("\\W+", "-"));
    try (InputStream in = getClass().getResourceAsStream("/vendor/axe.min.js")) {
      String axe = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(browser.violations(axe)).isEmpty();
    }
  }
}
