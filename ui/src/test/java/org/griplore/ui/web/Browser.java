package org.griplore.ui.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.ExpectedCondition;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A headless browser that reads the explorer. */
public final class Browser implements AutoCloseable {
  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  /** It warns that it lacks the newest protocol, of which nothing here is used. */
  private static final Logger PROTOCOL = Logger.getLogger("org.openqa.selenium.devtools");

  static {
    PROTOCOL.setLevel(Level.SEVERE);
  }

  private final ChromeDriver driver;
  private final UnaryOperator<String> whole;

  private Browser(UnaryOperator<String> whole, Path profile) {
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM.toString());
    options.setCapability("goog:loggingPrefs", logs);
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--disable-dev-shm-usage",
        "--user-data-dir=" + profile);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(DRIVER.toFile())
            .usingAnyFreePort()
            .build();
    this.driver = new ChromeDriver(service, options);
    this.whole = whole;
  }

  /** Opens it; without a browser the test is skipped, unless one is required. */
  static Browser open(DemoExplorer demo, Path profile) {
    boolean there = isHere();
    if (!there && "true".equals(System.getenv("GRIPLORE_BROWSER_REQUIRED"))) {
      throw new AssertionError("GRIPLORE_BROWSER_REQUIRED is set, but there is no " + CHROMIUM);
    }
    Assumptions.assumeTrue(
        there, "skipped: " + CHROMIUM + " and " + DRIVER + " are needed for the browser tests");
    return new Browser(demo::address, profile);
  }

  /** Whether this machine has one. */
  public static boolean isHere() {
    return Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER);
  }

  /** Opens it on pages whose whole addresses are made from their paths. */
  public static Browser on(UnaryOperator<String> whole, Path profile) {
    return new Browser(whole, profile);
  }

  ChromeDriver driver() {
    return driver;
  }

  /** Opens a page and waits until its plots are drawn. */
  public void open(String address) {
    driver.get(whole.apply(address));
    await(page -> allDrawn());
  }

  <T> T await(ExpectedCondition<T> condition) {
    return new WebDriverWait(driver, PATIENCE)
        .ignoring(StaleElementReferenceException.class)
        .until(condition);
  }

  boolean allDrawn() {
    return driver.findElements(By.cssSelector(".plot:not([data-drawn])")).isEmpty()
        && "complete".equals(driver.executeScript("return document.readyState"));
  }

  WebElement find(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  WebElement link(String text) {
    return driver.findElement(By.linkText(text));
  }

  String heading() {
    return find("h1").getText();
  }

  /** A window of a size in CSS pixels, light or dark. */
  void window(int width, int height, boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    media("", dark);
  }

  void media(String medium, boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            medium,
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
  }

  /** What the browser complained of since it was last asked: nothing, in the explorer. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
        .map(LogEntry::getMessage)
        .toList();
  }

  /** How wide the page's content is, in CSS pixels. */
  int width() {
    return ((Number) driver.executeScript("return document.documentElement.scrollWidth"))
        .intValue();
  }

  /** How bright a colour of an element is, from 0 (black) to 255. */
  double brightness(String selector, String property) {
    return ((Number)
            driver.executeScript(
                "const m = getComputedStyle(document.querySelector(arguments[0]))[arguments[1]]"
                    + ".match(/[0-9.]+/g).map(Number); return (m[0] + m[1] + m[2]) / 3;",
                selector,
                property))
        .doubleValue();
  }

  /** Keeps a picture when a folder for them is named. */
  void picture(String name) {
    String folder = System.getenv("GRIPLORE_PICTURES");
    if (folder == null) {
      return;
    }
    try {
      Files.write(Path.of(folder).resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** The names of the accessibility rules that the page breaks, with the elements. */
  List<String> violations(String axe) {
    driver.executeScript(axe);
    Object found =
        driver.executeAsyncScript(
            """
            const done = arguments[arguments.length - 1];
            axe.run(document, {resultTypes: ['violations'], runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']})
              .then(r => done(r.violations.map(v => v.id + ': ' + v.nodes.map(n => n.target.join(' ') + ' ' + n.failureSummary).join('; '))),
                    e => done(['axe failed: ' + e]));
            """);
    assertThat(found).isInstanceOf(List.class);
    return ((List<?>) found).stream().map(String::valueOf).toList();
  }

  @Override
  public void close() {
    driver.quit();
  }
}
