package org.drillwright.print.command.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.print.browser.Axe;
import org.drillwright.print.command.SchoolFiles;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;

/** The page judged by the success criteria of WCAG 2.0 to 2.2 that a program can judge, by axe-core. */
class JudgedInBrowserTest extends InBrowser {

    private void judge() {
        page.waitFor(() -> !browser().findElements(By.cssSelector("#cards svg")).isEmpty());
        assertEquals(List.of(), Axe.findings(browser()));
    }

    @Test
    void a_drill_without_findings() {
        judge();
    }

    @Test
    void a_drill_with_findings_and_everything_open() {
        save(SchoolFiles.withoutSafety());
        page.waitFor(() -> page.text("verdict").contains("1 error"));
        page.script("document.querySelectorAll('details').forEach(one => one.open = true)");
        page.waitFor(() -> page.text("glossary").contains("disengage"));
        page.waitFor(() -> !browser().findElements(By.cssSelector("#signs svg")).isEmpty());
        judge();
    }

    @Test
    void settings_that_cannot_be_used_at_the_end_of_the_phrase() {
        page.script("document.querySelector('#counts li:last-child button').click()");
        files.with("school.yaml", SchoolFiles.SETTINGS + "sheeet: a4\n");
        page.waitFor(() -> page.at("kept").isDisplayed());
        judge();
    }

    @Test
    void a_narrow_window() {
        page.screen(320, 700);
        judge();
    }
}
