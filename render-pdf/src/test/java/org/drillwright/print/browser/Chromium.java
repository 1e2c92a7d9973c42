package org.drillwright.print.browser;

import java.io.File;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** The system's own Chromium (of Debian: the packages chromium and chromium-driver), without a window. */
public final class Chromium {

    private static final List<String> BROWSERS = List.of("/usr/bin/chromium", "/usr/bin/chromium-browser");
    private static final List<String> DRIVERS = List.of("/usr/bin/chromedriver", "/usr/lib/chromium/chromedriver");

    /** Held, or it would be forgotten. Selenium warns of every browser that is newer than itself. */
    private static final Logger LOG = Logger.getLogger("org.openqa.selenium");

    private Chromium() {}

    /** Used by name in a condition of tests: without a browser they are skipped. */
    public static boolean isThere() {
        return first(BROWSERS).isPresent() && first(DRIVERS).isPresent();
    }

    public static ChromeDriver open(String... more) {
        LOG.setLevel(Level.SEVERE);
        ChromeOptions options = new ChromeOptions()
                .setBinary(first(BROWSERS).orElseThrow())
                .addArguments(Stream.concat(
                                Stream.of("--headless=new", "--no-sandbox", "--disable-gpu", "--lang=en"),
                                Stream.of(more))
                        .toList());
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(new File(first(DRIVERS).orElseThrow()))
                .usingAnyFreePort()
                .withSilent(true)
                .build();
        ChromeDriver browser = new ChromeDriver(service, options);
        browser.manage().timeouts().scriptTimeout(Duration.ofSeconds(20));
        return browser;
    }

    private static Optional<String> first(List<String> paths) {
        return paths.stream().filter(path -> new File(path).canExecute()).findFirst();
    }
}
