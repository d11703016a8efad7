package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;

/** A walk through the demo explorer in a real browser, which must not complain of any page. */
@Tag("browser")
abstract class BrowserWalk {
  static Browser browser;

  @BeforeAll
  static void openBrowser(@TempDir Path profile) {
    browser = Browser.open(DemoExplorer.get(), profile);
    browser.driver().manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
  }

  @AfterAll
  static void closeBrowser() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void deskWindow() {
    browser.window(1280, 900, false);
  }

  @AfterEach
  void noComplaints() {
    assertThat(browser.complaints()).as("console").isEmpty();
  }
}
