package org.drillwright.print.command.watch;

import java.nio.file.Path;
import org.drillwright.print.browser.Chromium;
import org.drillwright.print.command.SchoolFiles;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.chrome.ChromeDriver;

/** Each test begins with the page open on the riposte, in a browser that all of a class share. */
@Tag("deep")
@EnabledIf("chromium")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class InBrowser {

    @TempDir
    Path folder;

    SchoolFiles files;
    Visit visit;
    Reader page;

    private ChromeDriver browser;

    static boolean chromium() {
        return Chromium.isThere();
    }

    @BeforeAll
    void start() {
        browser = Chromium.open();
    }

    @AfterAll
    void stop() {
        browser.quit();
    }

    @BeforeEach
    void open() {
        files = SchoolFiles.sound(folder);
        visit = new Visit(folder);
        page = new Reader(browser);
        page.screen(1300, 900);
        page.prefers("prefers-reduced-motion", "no-preference");
        page.open(visit, "riposte.yaml");
    }

    @AfterEach
    void close() {
        visit.close();
    }

    ChromeDriver browser() {
        return browser;
    }

    void save(String text) {
        files.with("riposte.yaml", text);
    }
}
