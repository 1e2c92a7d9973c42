package org.drillwright.print.command.watch;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;

/** Somebody in front of the page. */
record Reader(ChromeDriver browser) {

    private static final Duration PATIENCE = Duration.ofSeconds(20);

    /** Opens the page on a drill and waits until it is there. */
    Reader open(Visit visit, String drill) {
        browser.get("about:blank");
        complaints();
        browser.get(visit.address() + "#" + Visit.encoded(drill));
        waitFor(() -> text("verdict").startsWith(drill) && text("status").startsWith("Updated"));
        return this;
    }

    void waitFor(BooleanSupplier wanted) {
        long until = System.nanoTime() + PATIENCE.toNanos();
        while (!wanted.getAsBoolean()) {
            if (System.nanoTime() > until) {
                throw new AssertionError("it did not come; the page says:\n"
                        + browser.findElement(By.tagName("body")).getText());
            }
            try {
                Thread.sleep(50);
            } catch (InterruptedException ended) {
                throw new AssertionError(ended);
            }
        }
    }

    WebElement at(String id) {
        return browser.findElement(By.id(id));
    }

    /** What an element says, be it seen or only heard. */
    String text(String id) {
        return String.valueOf(script("return document.getElementById(arguments[0]).textContent", id));
    }

    Object script(String script, Object... arguments) {
        return browser.executeScript(script, arguments);
    }

    /** The words of the picture that is shown. */
    String picture() {
        return String.valueOf(
                script("return document.querySelector('#picture [role=img]')?.getAttribute('aria-label') ?? ''"));
    }

    /** The id of what has the focus, or its text. */
    String focus() {
        return String.valueOf(script("const one = document.activeElement; return one.id || one.textContent"));
    }

    void press(Keys key) {
        browser.switchTo().activeElement().sendKeys(key);
    }

    /** The letters of the cards, without the spaces between. */
    String card() {
        return text("cards").replaceAll("\\s", "");
    }

    /** What the browser itself had to complain of, but for files that are not there. */
    List<String> complaints() {
        return browser.manage().logs().get("browser").getAll().stream()
                .map(entry -> entry.getMessage())
                .filter(message -> !message.contains("404"))
                .toList();
    }

    void screen(int width, int height) {
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    void prefers(String feature, String value) {
        browser.executeCdpCommand(
                "Emulation.setEmulatedMedia", Map.of("features", List.of(Map.of("name", feature, "value", value))));
    }
}
