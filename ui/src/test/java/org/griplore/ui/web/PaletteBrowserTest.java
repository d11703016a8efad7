package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

@DisplayName("The search box")
class PaletteBrowserTest extends BrowserWalk {
  @BeforeEach
  void start() {
    browser.open("/sources");
  }

  private static WebElement focused() {
    return browser.driver().switchTo().activeElement();
  }

  private static List<String> offered() {
    return browser.driver().findElements(By.cssSelector("#sought li .title")).stream()
        .map(WebElement::getText)
        .toList();
  }

  private static void type(String text) {
    focused().sendKeys(text);
    browser.await(page -> "true".equals(focused().getDomAttribute("aria-expanded")));
  }

  @Test
  @DisplayName("opens by a key, finds a misspelt model as one types, and goes there by keys alone")
  void byKeys() {
    browser.find("body").sendKeys("/");
    assertThat(focused().getDomAttribute("id")).isEqualTo("search");
    type("velmroa aurelis 4");
    browser.await(page -> offered().contains("Velmora Aurelis 4"));
    assertThat(offered()).startsWith("Velmora Aurelis 4");
    focused().sendKeys(Keys.ARROW_DOWN);
    String active = focused().getDomAttribute("aria-activedescendant");
    assertThat(browser.find("#" + active).getDomAttribute("aria-selected")).isEqualTo("true");
    browser.picture("palette");
    focused().sendKeys(Keys.ENTER);
    browser.await(page -> browser.heading().equals("What is on record of Velmora Aurelis 4?"));
  }

  @ParameterizedTest(name = "\"{0}\" is found")
  @ValueSource(strings = {"solvanne", "own-2021-2", "rolling", "coverage", "aquaplanning"})
  @DisplayName("finds lines, tests, disciplines, pages and misspelt notes")
  void everyKind(String text) {
    browser.find("#search").click();
    type(text);
    assertThat(offered()).isNotEmpty();
    browser.find("#sought li").click();
    browser.await(page -> !browser.driver().getCurrentUrl().endsWith("/sources"));
    assertThat(browser.find("h1").getText()).isNotEqualTo("Not answered");
  }

  @Test
  @DisplayName("closes by Escape, and without a choice leads to the page of all that was found")
  void escapeAndSubmit() {
    browser.find("body").sendKeys(Keys.chord(Keys.CONTROL, "k"));
    type("hayari");
    focused().sendKeys(Keys.ESCAPE);
    assertThat(browser.find("#search").getDomAttribute("aria-expanded")).isEqualTo("false");
    assertThat(browser.find("#sought").isDisplayed()).isFalse();
    focused().sendKeys(Keys.ENTER);
    browser.await(page -> browser.heading().equals("Where is: hayari?"));
    browser.link("Kirazumi Hayari S-200").click();
    browser.await(page -> browser.heading().contains("Kirazumi Hayari S-200"));
  }

  @Test
  @DisplayName("breaks no rule of accessibility while it is open, in light and in dark")
  void accessible() throws IOException {
    for (boolean dark : new boolean[] {false, true}) {
      browser.window(1280, 900, dark);
      browser.open("/sources");
      browser.find("#search").click();
      type("velmora");
      focused().sendKeys(Keys.ARROW_DOWN);
      try (InputStream in = getClass().getResourceAsStream("/vendor/axe.min.js")) {
        String axe = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        assertThat(browser.violations(axe)).isEmpty();
      }
    }
  }

  @Test
  @DisplayName("stays inside a telephone's window")
  void narrow() {
    browser.window(390, 800, false);
    browser.open("/sources");
    browser.find("#search").click();
    type("velmora");
    assertThat(browser.width()).isLessThanOrEqualTo(390);
    assertThat(browser.find("#sought").getRect().getX()).isNotNegative();
    browser.picture("palette-phone");
  }
}
