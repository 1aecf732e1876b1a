package org.slugpeak.cli.page;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Objects;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** A real browser without a window, driven by Selenium. */
final class Chromium implements AutoCloseable {

    private static final Path BROWSER = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final Duration PATIENCE = Duration.ofSeconds(15);

    private final ChromeDriver driver;

    Chromium() {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(BROWSER.toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--hide-scrollbars",
                "--autoplay-policy=no-user-gesture-required");
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .withLogFile(new File("/dev/null"))
                .build();
        driver = new ChromeDriver(service, options);
        driver.manage().timeouts().scriptTimeout(PATIENCE);
    }

    static boolean isInstalled() {
        return Files.isExecutable(BROWSER) && Files.isExecutable(DRIVER);
    }

    Chromium open(String url) {
        driver.get(url);
        return this;
    }

    /** The size of what is shown, not of the window round it; narrower than a window may be, as a telephone is. */
    Chromium sized(int width, int height) {
        driver.manage().window().setSize(new Dimension(Math.max(500, width), height));
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
        return this;
    }

    /** Until what was changed is drawn. */
    void settle() {
        runAsync("const done = arguments[arguments.length - 1];"
                + "requestAnimationFrame(() => requestAnimationFrame(() => done('')));");
    }

    String text(String id) {
        return driver.findElement(By.id(id)).getText();
    }

    Object run(String script, Object... arguments) {
        return Objects.requireNonNullElse(driver.executeScript(script, arguments), "");
    }

    Object runAsync(String script) {
        return Objects.requireNonNullElse(driver.executeAsyncScript(script), "");
    }

    void click(String css) {
        driver.findElement(By.cssSelector(css)).click();
    }

    void awaitText(String id, String text) {
        awaitTrue("document.getElementById('" + id + "').innerText === '" + text.replace("'", "\\'") + "'");
    }

    /** Waits in the browser, which looks again and again. */
    void awaitTrue(String condition) {
        Object outcome =
                runAsync("const done = arguments[arguments.length - 1]; const endMs = performance.now() + 10000;"
                        + "(function look() {"
                        + " if (" + condition + ") { done(''); }"
                        + " else if (performance.now() > endMs) { done('in vain: ' + document.body.innerText); }"
                        + " else { setTimeout(look, 20); } })();");
        if (!outcome.equals("")) {
            throw new AssertionError(condition + " awaited " + outcome);
        }
    }

    void picture(Path file) throws IOException {
        Files.createDirectories(file.getParent());
        Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
    }

    /** What the checker of accessibility (axe-core) finds wrong: rule and place of each, one a line; contrast by WCAG AAA, 7 to 1. */
    String violations() throws IOException {
        try (InputStream script = Objects.requireNonNull(Chromium.class.getResourceAsStream("/axe.min.js"))) {
            driver.executeScript(new String(script.readAllBytes(), StandardCharsets.UTF_8));
        }
        return runAsync("const done = arguments[arguments.length - 1];"
                        + "axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag2aaa', 'wcag21a', 'wcag21aa', 'wcag22aa'],"
                        + " rules: {'color-contrast-enhanced': {enabled: true}}})"
                        + ".then(found => done(found.violations.flatMap(it =>"
                        + " it.nodes.map(node => it.id + ' ' + node.target)).join('\\n')));")
                .toString();
    }

    @Override
    public void close() {
        driver.quit();
    }
}
