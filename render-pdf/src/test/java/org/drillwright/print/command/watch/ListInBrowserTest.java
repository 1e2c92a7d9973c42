package org.drillwright.print.command.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;
import org.drillwright.print.command.SchoolFiles;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;

/** The list of drills on the page, and what is said where. */
class ListInBrowserTest extends InBrowser {

    /** The texts of what is displayed, read at one moment. */
    private List<?> seen(String css) {
        return (List<?>) page.script(
                "return [...document.querySelectorAll(arguments[0])].filter(one => one.offsetParent !== null)"
                        + ".map(one => one.textContent)",
                css);
    }

    @Test
    void the_list_has_levels() {
        assertEquals(List.of("beginner", "intermediate"), seen("#drills h2"));
        assertEquals(List.of("Steps by the call"), seen("#drills .level:first-child li"));
        files.with("feet/steps.yaml", SchoolFiles.steps().replace("level: beginner", "level: training"));
        page.waitFor(() -> seen("#drills h2").equals(List.of("intermediate", "training")));
        page.at("filter").sendKeys("steps");
        assertEquals(List.of("training"), seen("#drills h2"));
    }

    @Test
    void with_findings_only() {
        save(SchoolFiles.withoutSafety());
        page.waitFor(() -> page.text("verdict").contains("1 error"));
        page.at("found-only").click();
        assertEquals(1, seen("#drills li").size());
        assertEquals("1 of 3", page.text("shown"));
        save(SchoolFiles.riposte());
        page.waitFor(() -> page.text("verdict").contains("nothing found"));
        assertEquals(1, seen("#drills li").size(), "the drill that is shown stays");
        page.at("found-only").click();
        assertEquals(3, seen("#drills li").size());
    }

    @Test
    void the_way_out_stands_in_the_banner() {
        save(SchoolFiles.riposte().replace("level: intermediate", "level: intermediat"));
        page.waitFor(() -> page.at("worst").isDisplayed());
        assertTrue(page.text("worst").contains("Did you mean 'intermediate'?"), page.text("worst"));
        assertTrue(page.text("found").contains("Did you mean 'intermediate'?"), page.text("found"));
    }

    @Test
    void a_slip_of_the_settings_is_not_laid_at_a_drills_door() {
        files.with("school.yaml", SchoolFiles.SETTINGS + "sheeet: a4\n");
        page.waitFor(() -> page.text("trouble").contains("sheeet"));
        page.waitFor(() -> page.at("kept").isDisplayed());
        assertTrue(page.text("kept").contains("nothing wrong with this drill"), page.text("kept"));
        assertFalse(page.at("worst").isDisplayed());
        assertFalse(page.text("drills").contains("not read"));
        assertEquals("", page.text("found"));
        assertTrue(page.at("drill").isDisplayed() && page.at("text").isDisplayed());
        page.waitFor(() -> page.text("status").endsWith("the settings changed."));
        files.with("school.yaml", SchoolFiles.SETTINGS);
        page.waitFor(() -> !page.at("kept").isDisplayed());
        assertEquals("", page.text("trouble"));
    }

    @Test
    void a_drill_with_another_name_is_followed() throws Exception {
        page.at("step").click();
        page.script("document.querySelector('#drills a[href=\"#riposte.yaml\"]').focus()");
        String focus = page.focus();
        Files.move(folder.resolve("riposte.yaml"), folder.resolve("parry and riposte.yaml"));
        page.waitFor(() -> page.text("verdict").startsWith("parry and riposte.yaml"));
        page.waitFor(() -> page.text("status").endsWith("riposte.yaml is now parry and riposte.yaml."));
        assertTrue(String.valueOf(page.script("return location.hash")).equals("#parry%20and%20riposte.yaml"));
        assertEquals("Count 2", page.text("count"));
        assertTrue(page.focus().startsWith(focus), page.focus());
        assertEquals(
                1,
                browser().findElements(By.cssSelector("#drills [aria-current]")).size());
        files.with("parry and riposte.yaml", SchoolFiles.withoutSafety());
        page.waitFor(() -> page.text("verdict").contains("1 error"));
    }

    /** A page that nobody sees hears no news, and finds the new name when it is seen again. */
    @Test
    void a_drill_renamed_behind_the_pages_back_is_followed() throws Exception {
        Files.move(folder.resolve("riposte.yaml"), folder.resolve("other.yaml"));
        page.waitFor(() -> page.text("verdict").startsWith("other.yaml"));
        page.script("location.hash = '#riposte.yaml'; location.reload()");
        page.waitFor(() -> page.text("verdict").startsWith("other.yaml"));
    }
}
