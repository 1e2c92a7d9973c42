package org.drillwright.print.command.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;
import org.drillwright.print.command.SchoolFiles;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptException;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The page as a person meets it, in a real browser. */
class BrowserTest extends InBrowser {

    private static final String PAYLOAD = "\"><img src=x onerror=\"window.got=1\"><script>window.got=1</script>";

    @Test
    void a_save_with_a_mistake_shows_the_finding_beside_the_line() {
        save(SchoolFiles.riposte().replace("Parry quarte", "Parry octave"));
        page.waitFor(() -> page.text("verdict").contains("error"));
        WebElement row = browser().findElement(By.xpath("//li[.//mark[text()='Parry octave']]"));
        assertTrue(row.getText().contains("Octave closes the low outside line"), row.getText());
        assertTrue(page.text("found").contains("Octave closes the low outside line"));
        page.waitFor(() -> page.text("cards").contains("DRAFT"));
        assertTrue(browser().getTitle().matches("[0-9]+ errors? – Parry of quarte, straight riposte – Drillwright"));
        WebElement entry = browser().findElement(By.cssSelector("#drills a[aria-current]"));
        assertTrue(entry.getText().matches("(?s)Parry of quarte.*error.*"), entry.getText());
        save(SchoolFiles.riposte());
        page.waitFor(() -> page.text("verdict").contains("nothing found"));
        assertEquals(List.of(), page.complaints());
    }

    @Test
    void stepping_shows_the_next_picture_and_back_the_one_before() {
        page.waitFor(() -> page.picture().matches("Leader .*thrust into .*high inside line.*"));
        assertEquals("Count 1", page.text("count"));
        String first = page.picture();
        page.at("step").click();
        page.waitFor(() -> page.picture().matches("Follower.*: riposte.*"));
        assertEquals("Count 2", page.text("count"));
        assertTrue(page.text("turns").contains("Hold the lunge and take the touch."));
        page.at("back").click();
        page.waitFor(() -> page.picture().equals(first));
        page.at("back").click();
        page.waitFor(() -> page.text("count").equals("Start"));
        assertEquals("true", page.at("back").getAttribute("aria-disabled"));
    }

    @Test
    void play_goes_on_at_the_drills_tempo_to_the_end() {
        save(SchoolFiles.riposte().replace("steps:", "tempo: 0.5\nsteps:"));
        page.waitFor(() -> page.text("tempo").equals("0.5 s a count, the drill's tempo"));
        page.at("play").click();
        assertEquals("Pause", page.text("play"));
        page.waitFor(() -> page.text("count").equals("Closing"));
        page.waitFor(() -> page.text("play").equals("Play"));
    }

    @Test
    void the_count_that_was_edited_is_shown() {
        save(SchoolFiles.riposte().replace("Return to guard in sixte.", "Return to guard in quarte."));
        page.waitFor(() -> page.text("count").equals("Count 3"));
        page.waitFor(() -> page.text("turns").contains("in quarte"));
    }

    @Test
    void the_keyboard_alone_does_it() {
        page.script("document.getElementById('back').focus()");
        page.press(Keys.TAB);
        page.press(Keys.TAB);
        assertEquals("step", page.focus());
        page.press(Keys.ENTER);
        page.waitFor(() -> page.text("count").equals("Count 2"));
        save(SchoolFiles.riposte().replace("Parry quarte", "Parry octave"));
        page.waitFor(() -> page.text("verdict").contains("error"));
        assertEquals("step", page.focus());
        page.script("document.getElementById('next').focus()");
        page.press(Keys.ENTER);
        assertTrue(page.focus().contains("line "), page.focus());
        String finding = page.focus();
        save(SchoolFiles.riposte().replace("Parry quarte", "Parry octave").replace("straight riposte", "riposte"));
        page.waitFor(() -> page.text("title").equals("Parry of quarte, riposte"));
        assertEquals(finding, page.focus());
    }

    @Test
    void the_focus_stays_in_the_list_and_in_the_filter() {
        page.script("document.querySelector('#drills a[href=\"#straight.yaml\"]').focus()");
        save(SchoolFiles.withoutSafety());
        page.waitFor(() -> page.text("verdict").contains("1 error"));
        assertEquals("Straight thrust with the lunge", page.focus());
        page.at("filter").sendKeys("steps");
        page.waitFor(() -> page.text("shown").equals("1 of 3"));
        save(SchoolFiles.riposte());
        page.waitFor(() -> page.text("verdict").contains("nothing found"));
        assertEquals("filter", page.focus());
        assertEquals("1 of 3", page.text("shown"));
    }

    @Test
    void parts_have_names_and_roles_for_who_hears_them() {
        assertEquals("navigation", browser().findElement(By.tagName("nav")).getAriaRole());
        assertEquals("main", page.at("main").getAriaRole());
        assertEquals("status", page.at("status").getAriaRole());
        assertEquals("Drills", page.at("filter").getAccessibleName());
        assertEquals("The phrase, count by count", page.at("phrase").getAccessibleName());
        assertEquals("polite", page.at("found").getAttribute("aria-live"));
        assertEquals("polite", page.at("called").getAttribute("aria-live"));
        for (WebElement button : browser().findElements(By.tagName("button"))) {
            if (button.isDisplayed()) {
                assertFalse(button.getAccessibleName().isBlank(), button.toString());
            }
        }
        page.waitFor(() -> !browser().findElements(By.cssSelector("#cards svg")).isEmpty());
        WebElement card = browser().findElement(By.cssSelector("#cards svg"));
        assertEquals("The card", card.getAccessibleName());
        assertEquals(4, card.findElements(By.cssSelector("[role=row]")).size());
    }

    @Test
    void what_is_unknown_looks_so() {
        save(SchoolFiles.riposte().replace("Parry quarte.", "Frobnicate the blade."));
        page.waitFor(() -> page.text("turns").contains("Frobnicate"));
        page.waitFor(() -> page.text("read").contains("Not judged"));
        WebElement unknown = browser().findElement(By.cssSelector("#read .unknown"));
        assertEquals("dashed", unknown.getCssValue("border-top-style"));
        page.waitFor(() -> !browser()
                .findElements(By.cssSelector("#picture [data-mark=unknown]"))
                .isEmpty());
    }

    @Test
    void payloads_in_a_drill_are_words_and_nothing_else() {
        String quoted = "'" + PAYLOAD + "'";
        save(SchoolFiles.riposte()
                .replace("Parry of quarte, straight riposte", quoted)
                .replace("Extend to the high inside line and lunge.", quoted)
                .replace("Parry quarte.", quoted)
                .replace("Stop the point on the jacket.", quoted));
        files.with("<img src=x onerror=window.got=1>.yaml", SchoolFiles.riposte());
        page.waitFor(() -> page.text("title").equals(PAYLOAD));
        page.waitFor(() -> page.text("turns").contains(PAYLOAD));
        page.waitFor(() -> page.text("drills").contains(PAYLOAD));
        page.waitFor(() -> page.card().contains("onerror"));
        assertEquals(1L, page.script("return document.scripts.length"));
        assertEquals(0L, page.script("return document.querySelectorAll('img, iframe, object, [onerror]').length"));
        assertEquals(true, page.script("return window.got === undefined"));
        assertEquals(List.of(), page.complaints());
    }

    @Test
    void even_our_own_script_cannot_make_markup_of_text() {
        assertThrows(
                JavascriptException.class, () -> page.script("document.body.innerHTML = '<b>' + arguments[0]", "x"));
    }

    @Test
    void nothing_comes_from_elsewhere() {
        page.at("step").click();
        page.script("document.querySelector('#words summary').focus()");
        page.press(Keys.ENTER);
        page.waitFor(() -> page.text("glossary").contains("disengage"));
        Object elsewhere = page.script("return performance.getEntriesByType('resource').map(one => one.name)"
                + ".filter(name => !name.startsWith(location.origin + '/'))");
        assertEquals(List.of(), elsewhere);
    }

    @Test
    void a_deleted_file_and_one_that_comes_back() throws Exception {
        Files.delete(folder.resolve("riposte.yaml"));
        page.waitFor(() -> page.text("title").equals("This drill is not there"));
        assertFalse(page.at("drill").isDisplayed());
        save(SchoolFiles.riposte());
        page.waitFor(() -> page.text("title").equals("Parry of quarte, straight riposte"));
        page.waitFor(() -> page.at("drill").isDisplayed());
    }

    @Test
    void a_half_written_file_keeps_its_card() {
        page.waitFor(() -> page.card().contains("Parryquarte."));
        save(SchoolFiles.riposte().substring(0, 400) + "  oops: [");
        page.waitFor(() -> page.at("kept").isDisplayed());
        assertTrue(page.text("kept").startsWith("This save could not be read."));
        assertTrue(page.card().contains("Parryquarte."));
        assertTrue(page.at("worst").isDisplayed());
    }

    @Test
    void two_hundred_drills() {
        for (int number = 0; number < 200; number++) {
            files.with(
                    "many/drill-" + number + ".yaml", SchoolFiles.riposte().replace("Parry of", number + ". Parry of"));
        }
        page.waitFor(() -> page.text("tally").startsWith("203 drills"));
        assertEquals(203, browser().findElements(By.cssSelector("#drills li")).size());
        page.at("filter").sendKeys("drill-177");
        page.waitFor(() -> page.text("shown").equals("1 of 203"));
        browser().findElement(By.cssSelector("#drills li:not([hidden]) a")).click();
        page.waitFor(() -> page.text("title").startsWith("177. Parry"));
        page.waitFor(() -> page.focus().equals("main"));
    }

    @Test
    void an_empty_folder_shows_a_drill_to_copy() throws Exception {
        for (String name : List.of("riposte.yaml", "straight.yaml", "feet/steps.yaml")) {
            Files.delete(folder.resolve(name));
        }
        page.waitFor(() -> page.text("title").equals("No drill yet"));
        page.waitFor(() -> page.text("sample").contains("title: My first drill"));
        files.with("mine.yaml", page.text("sample"));
        page.waitFor(() -> page.text("drills").contains("My first drill"));
    }

    /** The browser's own widths without the stated lengths: the card is seen in the type that it is printed in. */
    @Test
    void the_card_is_set_in_its_own_type() {
        page.waitFor(() -> page.card().contains("Parryquarte."));
        Object worst = page.script("return document.fonts.ready.then(() => Math.max(..."
                + "[...document.querySelectorAll('#cards text')].map(text => {"
                + "  const stated = Number(text.getAttribute('textLength'));"
                + "  text.removeAttribute('textLength');"
                + "  return Math.abs(text.getComputedTextLength() / stated - 1); })))");
        assertTrue(((Number) worst).doubleValue() < 0.01, String.valueOf(worst));
    }

    /** No sideways scrolling at 320 CSS pixels: WCAG 2.2, 1.4.10. */
    @Test
    void a_narrow_window_needs_no_sideways_scrolling() {
        page.screen(320, 800);
        assertEquals(
                true,
                page.script("return document.documentElement.scrollWidth <= document.documentElement.clientWidth"));
    }

    @Test
    void nothing_glides_for_who_wants_no_motion() {
        page.prefers("prefers-reduced-motion", "reduce");
        assertEquals("auto", page.script("return getComputedStyle(document.documentElement).scrollBehavior"));
        page.prefers("prefers-reduced-motion", "no-preference");
        assertNotEquals("auto", page.script("return getComputedStyle(document.documentElement).scrollBehavior"));
        assertEquals(0L, page.script("return document.getAnimations().length"));
    }

    @Test
    void the_end_of_the_program_is_said() {
        visit.close();
        page.waitFor(() -> page.text("status").startsWith("The program has ended"));
    }
}
