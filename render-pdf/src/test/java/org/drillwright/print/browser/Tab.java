package org.drillwright.print.browser;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;

/** A page that was opened from a file, on a screen of any size. */
public record Tab(ChromeDriver browser) {

    /** Afresh, with nothing said of the page before. */
    public void open(Path file) {
        browser.get("about:blank");
        browser.manage().logs().get("browser");
        browser.get(file.toUri().toString());
    }

    /** As on a phone that never had it: nothing that a page from a file has kept is there any more. */
    public void openForTheFirstTime(Path file) {
        browser.executeCdpCommand(
                "Storage.clearDataForOrigin", Map.of("origin", "file://", "storageTypes", "local_storage"));
        open(file);
    }

    /** In CSS pixels. */
    public void screen(int width, int height) {
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", true));
    }

    /** What the page asks of medium and wishes, such as {@code prefers-color-scheme}. */
    public void emulate(String medium, Map<String, String> features) {
        browser.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "media",
                        medium,
                        "features",
                        features.entrySet().stream()
                                .map(one -> Map.of("name", one.getKey(), "value", one.getValue()))
                                .toList()));
    }

    public Object script(String script, Object... arguments) {
        return browser.executeScript(script, arguments);
    }

    /** All that an element holds, seen or not. */
    public String text(String id) {
        return String.valueOf(script("return document.getElementById(arguments[0]).textContent", id));
    }

    public WebElement at(String id) {
        return browser.findElement(By.id(id));
    }

    /** To another view of the page, by its address. */
    public void go(String view, String name) {
        script("location.hash = arguments[0]", view);
        waitFor(() -> name.equals(script("return document.documentElement.dataset.view")));
    }

    /** A finger on an element, as soon as it is seen. */
    public void click(WebElement element) {
        waitFor(element::isDisplayed);
        element.click();
    }

    public void waitFor(BooleanSupplier wanted) {
        long until = System.nanoTime() + Duration.ofSeconds(20).toNanos();
        while (!wanted.getAsBoolean()) {
            assertTrue(
                    System.nanoTime() < until,
                    () -> "it did not come; the page says:\n"
                            + browser.findElement(By.tagName("body")).getText());
            try {
                Thread.sleep(20);
            } catch (InterruptedException ended) {
                throw new AssertionError(ended);
            }
        }
    }

    public void press(CharSequence key) {
        browser.switchTo().activeElement().sendKeys(key);
    }

    /** What the browser has complained of since the page was opened. */
    public List<String> complaints() {
        return browser.manage().logs().get("browser").getAll().stream()
                .map(entry -> entry.getMessage())
                .toList();
    }

    /**
     * Runs something in a browser that keeps nothing for the page: some refuse storage to pages that are files, and say so
     * by an exception.
     */
    public void refusingStorage(Runnable tried) {
        Object id = browser.executeCdpCommand(
                        "Page.addScriptToEvaluateOnNewDocument",
                        Map.of(
                                "source",
                                "Object.defineProperty(window, 'localStorage',"
                                        + " {get() { throw new DOMException('refused', 'SecurityError'); }})"))
                .get("identifier");
        try {
            tried.run();
        } finally {
            browser.executeCdpCommand("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", id));
        }
    }

    /** Whether all of the page is seen without scrolling sideways: WCAG 2.2, 1.4.10. */
    public boolean fitsItsWidth() {
        return Boolean.TRUE.equals(
                script("return document.documentElement.scrollWidth <= document.documentElement.clientWidth"));
    }

    /** What can be tapped and is smaller than 44 CSS pixels: WCAG 2.2, 2.5.5. */
    public Object smallTargets() {
        return script("return [...document.querySelectorAll('a, button, select, textarea, label:has(input),"
                + " input:not([type=checkbox])')]"
                + ".map(one => [one, one.getBoundingClientRect()])"
                + ".filter(([one, box]) => box.width > 0 && (box.width < 44 || box.height < 44))"
                + ".map(([one, box]) => one.outerHTML + ' ' + box.width + ' ' + box.height)");
    }
}
