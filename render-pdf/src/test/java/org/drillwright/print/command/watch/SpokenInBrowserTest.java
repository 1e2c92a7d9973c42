package org.drillwright.print.command.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Locale;
import org.drillwright.print.browser.Axe;
import org.drillwright.print.command.SchoolFiles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;

/** The page in other languages than English. */
class SpokenInBrowserTest extends InBrowser {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | 1 avertissement | Temps 2  | 0,5 s par temps
            it | 1 avviso        | Tempo 2  | 0,5 s per tempo
            es | 1 advertencia   | Tiempo 2 | 0,5 s por tiempo
            de | 1 Warnung       | Zahl 2   | 0,5 s je Zahl
            """)
    void all_of_it_is_said_and_nothing_sticks_out(String language, String found, String count, String tempo) {
        save(SchoolFiles.riposte()
                .replace("Parry quarte.", "Frobnicate the blade.")
                .replace("steps:", "tempo: 0.5\nsteps:"));
        try (Visit there = new Visit(folder, Locale.forLanguageTag(language))) {
            browser().get(there.address() + "#riposte.yaml");
            page.waitFor(() -> page.text("tempo").startsWith(tempo));
            page.waitFor(() -> page.text("drills").contains(found));
            page.at("step").click();
            page.waitFor(() -> page.text("count").equals(count));
            page.waitFor(() -> !browser()
                    .findElements(By.cssSelector("#read dd > .unknown"))
                    .isEmpty());
            page.script("document.querySelectorAll('details').forEach(one => one.open = true)");
            page.waitFor(() -> page.text("glossary").contains("disengage"));
            String all = String.valueOf(page.script("return document.body.textContent"));
            assertFalse(all.matches("(?s).*(undefined|\\bnull\\b|\\{\\d\\}|\\bunknown\\b|Count \\d).*"), all);
            assertEquals(List.of(), Axe.findings(browser()));
            page.screen(320, 800);
            assertEquals(
                    true,
                    page.script("return document.documentElement.scrollWidth <= document.documentElement.clientWidth"));
        }
    }
}
