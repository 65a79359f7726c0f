package clampwise.report;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** A headless Chromium that opens pages from files; it has no network to fetch from. */
final class Browser implements AutoCloseable {

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /** Whether pages can be tried here; on the machines of the build they must be. */
  static boolean isHere() {
    return System.getenv("CI") != null
        || found("chromium").isPresent() && found("chromedriver").isPresent();
  }

  static Browser open(String... more) {
    Logger.getLogger("org.openqa.selenium").setLevel(Level.SEVERE);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(found("chromium").orElseThrow().toString());
    options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--hide-scrollbars");
    options.addArguments("--disable-background-networking", "--disable-dev-shm-usage");
    options.addArguments(more);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(found("chromedriver").orElseThrow().toFile())
            .withSilent(true)
            .build();
    return new Browser(new ChromeDriver(service, options));
  }

  /** One in which no page may run a script. */
  static Browser withoutScript() {
    return open("--blink-settings=scriptEnabled=false");
  }

  private static Optional<Path> found(String program) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
        .map(folder -> Path.of(folder, program))
        .filter(path -> path.toFile().canExecute())
        .findFirst();
  }

  Browser sized(int width, int height) {
    driver.manage().window().setSize(new Dimension(width, height));
    return this;
  }

  void load(Path page) {
    driver.get(page.toUri().toString());
  }

  WebElement find(String css) {
    return driver.findElement(By.cssSelector(css));
  }

  List<WebElement> all(String css) {
    return driver.findElements(By.cssSelector(css));
  }

  Object run(String script, Object... arguments) {
    return ((JavascriptExecutor) driver).executeScript(script, arguments);
  }

  Object runLong(String script) {
    return driver.executeAsyncScript(script);
  }

  WebElement focused() {
    return driver.switchTo().activeElement();
  }

  /** What it would print, as a PDF in base 64. */
  String printed() {
    return (String) driver.executeCdpCommand("Page.printToPDF", Map.of()).get("data");
  }

  @Override
  public void close() {
    driver.quit();
  }
}
