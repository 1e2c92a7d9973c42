package org.drillwright.print.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.openqa.selenium.chrome.ChromeDriver;

/** Deque's axe-core: judges a page in a browser by those success criteria of WCAG 2.0 to 2.2 that a program can judge. */
public final class Axe {

    /**
     * All of its rules but the experimental ones; those of best practice too. It works out no selectors, and nothing of what
     * is right: nobody looks at these.
     */
    private static final String RUN = """
            const done = arguments[arguments.length - 1];
            axe.run(document, {
                runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
                resultTypes: ['violations'],
                selectors: false,
            })
                .then(found => done(found.violations.flatMap(rule => rule.nodes.map(
                    node => rule.id + ': ' + node.html.slice(0, 200) + ' ' + node.failureSummary))),
                    failed => done(['axe itself: ' + failed]));
            """;

    private Axe() {}

    /** What it finds wrong with the page as it stands, one line for each place; empty if nothing. */
    public static List<?> findings(ChromeDriver browser) {
        if (Boolean.FALSE.equals(browser.executeScript("return 'axe' in window"))) {
            browser.executeScript(script());
        }
        return (List<?>) browser.executeAsyncScript(RUN);
    }

    private static String script() {
        try (InputStream in = Axe.class.getResourceAsStream("/axe.min.js")) {
            if (in == null) {
                throw new IllegalStateException("axe-core is not on the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
