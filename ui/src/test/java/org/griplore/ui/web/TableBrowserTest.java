package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

@DisplayName("In a browser, a comparison table")
class TableBrowserTest extends BrowserWalk {
  private static final String TABLE =
      "/table?models=Velmora+Aurelis+5&with=predecessors&with=rivals&size=205%2F55+R16&mass=1400";

  @BeforeEach
  void tallWindow() {
    browser.window(1280, 1000, false);
  }

  private static List<WebElement> all(String selector) {
    return browser.driver().findElements(By.cssSelector(selector));
  }

  private static List<String> tyres() {
    return all(".comparison tbody th > a").stream().map(WebElement::getText).toList();
  }

  @Test
  @DisplayName("is built choice by choice and exported")
  void buildAndExport() throws IOException {
    browser.open("/table");
    browser.find("#add-tyre").sendKeys("Velmora Aurelis 5", Keys.ENTER);
    browser.await(page -> tyres().size() == 1);
    browser.find("#add-tyre").sendKeys("Kirazumi Hayari S-300", Keys.ENTER);
    browser.await(page -> tyres().size() == 2);
    browser.find("input[value=predecessors]").click();
    browser.await(page -> tyres().contains("Velmora Aurelis 4"));
    browser.find("#table-size").sendKeys("205/55 R16", Keys.TAB);
    browser.await(page -> browser.heading().contains("in 205/55 R16"));
    assertThat(all(".comparison td.measured")).isNotEmpty();
    assertThat(all(".comparison td.expected .about")).isNotEmpty();
    assertThat(browser.find(".bases").getText()).contains("measured", "expected", "nothing");

    new Select(browser.find("#table-reference")).selectByValue("Velmora Aurelis 4");
    browser.await(page -> browser.driver().getCurrentUrl().contains("reference=Velmora"));
    browser.await(page -> tyres().size() == 4);
    assertThat(browser.driver().getCurrentUrl()).doesNotContain("mass=", "weights=");
    // what the demo's test own-2020-2 holds, beside the value on the column's level
    assertThat(browser.find(".comparison tbody td").getText())
        .contains("29.2 measured")
        .containsPattern("[+\u2212][0-9.]+ %");

    String workbook = browser.find(".takeaway a[href^='/table.xlsx']").getDomAttribute("href");
    HttpResponse<byte[]> file = Reader.bytes(DemoExplorer.get().address(workbook));
    assertThat(file.headers().firstValue("Content-Disposition"))
        .contains("attachment; filename=\"griplore-table.xlsx\"");
    try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(file.body()))) {
      List<Row> rows = book.getFirstSheet().read();
      assertThat(rows).hasSize(5);
      assertThat(rows.get(1).getCell(0).asString()).isEqualTo("Velmora Aurelis 5");
      assertThat(rows.get(1).getCell(2).getType()).isEqualTo(CellType.NUMBER);
    }

    browser.find(".chips a[aria-label='Remove Kirazumi Hayari S-300']").click();
    browser.await(page -> tyres().equals(List.of("Velmora Aurelis 5", "Velmora Aurelis 4")));
    browser.driver().navigate().back();
    browser.await(page -> tyres().size() == 4);
  }

  @Test
  @DisplayName("leads from a figure to its evidence")
  void evidence() {
    browser.open(TABLE + "&reference=Velmora+Aurelis+4");
    browser.picture("table");
    browser.find(".comparison td.measured > a[href^='/origin']").click();
    browser.await(page -> browser.heading().startsWith("Where does this figure"));
    browser.driver().navigate().back();
    browser.await(page -> !tyres().isEmpty());
    browser.find(".comparison td.expected > a[href^='/contrast']").click();
    browser.await(page -> browser.heading().startsWith("How does"));
    assertThat(browser.heading()).contains("Velmora Aurelis 4");
  }

  @Test
  @DisplayName("keeps its first column in view on a telephone and fits the window")
  void telephone() {
    browser.window(390, 844, false);
    browser.open(TABLE);
    assertThat(browser.width()).isLessThanOrEqualTo(390);
    browser.driver().executeScript("document.querySelector('.scroll').scrollLeft = 300");
    Number left =
        (Number)
            browser
                .driver()
                .executeScript(
                    "return document.querySelector('.comparison tbody th')"
                        + ".getBoundingClientRect().left");
    assertThat(left.doubleValue()).isBetween(0.0, 40.0);
    browser.driver().executeScript("document.querySelector('.comparison').scrollIntoView()");
    browser.picture("table-telephone");
  }

  @Test
  @DisplayName("breaks no accessibility rule, light or dark")
  void accessible() throws IOException {
    try (InputStream in = getClass().getResourceAsStream("/vendor/axe.min.js")) {
      String axe = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      for (boolean dark : new boolean[] {false, true}) {
        browser.window(1280, 1000, dark);
        for (String address :
            List.of("/table", TABLE + "&weights=wet-braking%3D2%2Csnow-braking%3D1")) {
          browser.open(address);
          assertThat(browser.violations(axe)).as(address).isEmpty();
          browser.picture("table-" + (dark ? "dark" : "light"));
        }
      }
    }
  }
}
