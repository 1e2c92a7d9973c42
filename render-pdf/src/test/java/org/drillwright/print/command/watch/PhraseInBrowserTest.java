package org.drillwright.print.command.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.command.SchoolFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Going through the phrase on the page. */
class PhraseInBrowserTest extends InBrowser {

    private static final List<String> COUNTS = List.of("Start", "Count 1", "Count 2", "Count 3", "Closing");

    /** What the picture looks like: every place of every mark. */
    private String drawn() {
        return String.valueOf(
                page.script(
                        "return [...document.querySelectorAll('#picture [d], #picture line')]"
                                + ".map(one => one.getAttribute('d') ?? one.getAttribute('x1') + ' ' + one.getAttribute('y1')).join()"));
    }

    private boolean moves() {
        return Boolean.TRUE.equals(
                page.script("return document.getElementById('picture').hasAttribute('data-moving')"));
    }

    private void stand() {
        page.waitFor(() -> !moves() && !page.picture().isEmpty());
    }

    @Test
    void from_one_count_to_the_next_the_figures_are_on_their_way() {
        stand();
        String first = drawn();
        page.script("window.seen = new Set(); new MutationObserver(() => { const one = document.querySelector("
                + "'#picture [data-mark=leader] path'); if (one) window.seen.add(one.getAttribute('d')); })"
                + ".observe(document.getElementById('picture'), {attributes: true, subtree: true, childList: true})");
        page.at("step").click();
        page.waitFor(() -> !moves() && !drawn().equals(first));
        assertTrue(((Number) page.script("return window.seen.size")).intValue() > 3, "poses on the way");
        page.at("back").click();
        page.waitFor(() -> !moves() && drawn().equals(first));
    }

    /** "Motion animation triggered by interaction can be disabled": WCAG 2.2, 2.3.3. */
    @Test
    void who_wants_no_motion_sees_the_poses_alone() {
        page.prefers("prefers-reduced-motion", "reduce");
        stand();
        String first = drawn();
        page.script("window.moved = 0; new MutationObserver(() => window.moved++)"
                + ".observe(document.getElementById('picture'), {attributes: true})");
        page.at("step").click();
        page.waitFor(() -> !drawn().equals(first));
        assertEquals(0L, page.script("return window.moved"));
        assertFalse(moves());
    }

    /** First the parry, then the riposte: as on the back of the card and on the phone. */
    @ParameterizedTest
    @ValueSource(strings = {"no-preference", "reduce"})
    void of_a_count_with_two_strokes_both_are_seen(String motion) {
        page.prefers("prefers-reduced-motion", motion);
        stand();
        page.script("window.seen = []; new MutationObserver(() => { for (const sign of ['ticks', 'star']) {"
                + " if (document.querySelector(`#picture [data-mark=${sign}] :not([visibility=hidden]):not(g)`)"
                + " && window.seen.at(-1) !== sign) window.seen.push(sign); } })"
                + ".observe(document.getElementById('picture'), {attributes: true, subtree: true, childList: true})");
        save(SchoolFiles.riposte()
                .replace("Parry quarte.", "Parry quarte and riposte straight to the high inside line."));
        page.waitFor(() -> page.picture().contains("riposte") && !moves());
        assertEquals(List.of("ticks", "star"), page.script("return window.seen"));
    }

    @Test
    void who_steps_on_while_they_move_is_there_at_once() {
        stand();
        page.at("step").click();
        page.waitFor(this::moves);
        page.at("step").click();
        assertEquals("Count 3", page.text("count"));
        page.waitFor(() -> page.picture().contains("guard"));
        stand();
        String third = drawn();
        page.at("back").click();
        page.at("step").click();
        stand();
        assertEquals(third, drawn());
    }

    /** What is read aloud of the picture is the count that is shown, also while the figures are on their way to it. */
    @Test
    void the_picture_is_named_by_the_count_from_the_beginning() {
        stand();
        page.at("step").click();
        page.waitFor(this::moves);
        String named = page.picture();
        stand();
        assertEquals(page.picture(), named);
    }

    @Test
    void a_save_shows_the_pose_at_once() {
        stand();
        page.script("window.moved = 0; new MutationObserver(() => window.moved++)"
                + ".observe(document.getElementById('picture'), {attributes: true})");
        save(SchoolFiles.riposte().replace("Return to guard in sixte.", "Return to guard in quarte."));
        page.waitFor(() -> page.text("count").equals("Count 3"));
        stand();
        assertEquals(0L, page.script("return window.moved"));
    }

    @Test
    void the_arrow_keys_step() {
        List<String> seen = new ArrayList<>();
        page.script("document.getElementById('main').focus()");
        page.press(Keys.ARROW_LEFT);
        for (int press = 0; press <= COUNTS.size(); press++) {
            seen.add(page.text("count"));
            page.press(Keys.ARROW_RIGHT);
        }
        assertEquals(COUNTS, seen.subList(0, COUNTS.size()));
        assertEquals("Closing", page.text("count"));
        page.press(Keys.ARROW_LEFT);
        assertEquals("Count 3", page.text("count"));
    }

    @Test
    void in_a_field_the_arrow_keys_are_the_fields() {
        page.at("filter").sendKeys("parry", Keys.ARROW_LEFT, Keys.ARROW_LEFT, "x");
        assertEquals("Count 1", page.text("count"));
        assertEquals("parxry", page.script("return document.getElementById('filter').value"));
    }

    private List<Object> place(String id) {
        return List.of(
                page.at(id).getRect().getPoint(),
                page.at(id).getRect().getDimension(),
                String.valueOf(page.script("return scrollY")));
    }

    /** Also at the lower end of the page, which a picture or a text that shrinks would pull up. */
    @Test
    void the_buttons_stay_under_the_pointer() {
        for (int height : List.of(900, 500)) {
            page.screen(640, height);
            page.script("document.getElementById('step').scrollIntoView({block: 'center', behavior: 'instant'})");
            page.script("document.querySelectorAll('#counts button')[0].click()");
            List<List<Object>> before = List.of(place("back"), place("play"), place("step"));
            for (int press = 0; press < COUNTS.size(); press++) {
                page.at("step").click();
                assertEquals(before, List.of(place("back"), place("play"), place("step")), page.text("count"));
            }
            page.at("back").click();
            page.at("play").click();
            assertEquals(before, List.of(place("back"), place("play"), place("step")), "while it plays");
            page.at("play").click();
        }
    }

    @Test
    void at_either_end_the_button_looks_it() {
        WebElement back = page.at("back");
        String colour = back.getCssValue("color");
        assertEquals("solid", back.getCssValue("border-top-style"));
        page.at("back").click();
        assertEquals("dashed", back.getCssValue("border-top-style"));
        assertNotEquals(colour, back.getCssValue("color"));
        assertEquals("solid", page.at("step").getCssValue("border-top-style"));
        page.script("document.querySelector('#counts li:last-child button').click()");
        assertEquals("dashed", page.at("step").getCssValue("border-top-style"));
        assertEquals("solid", back.getCssValue("border-top-style"));
    }

    /** Where the system's colours are forced, our backgrounds are not shown; the current count has the system's own. */
    @Test
    void forced_colours_show_the_current_count() {
        page.prefers("forced-colors", "active");
        WebElement current = browser().findElement(By.cssSelector("#counts [aria-current]"));
        WebElement other = browser().findElement(By.cssSelector("#counts button:not([aria-current])"));
        assertNotEquals(other.getCssValue("background-color"), current.getCssValue("background-color"));
        assertNotEquals(other.getCssValue("color"), current.getCssValue("color"));
    }

    @Test
    void the_key_is_at_hand() {
        browser().findElement(By.cssSelector("#key summary")).click();
        page.waitFor(() -> !browser().findElements(By.cssSelector("#signs li")).isEmpty());
        List<WebElement> signs = browser().findElements(By.cssSelector("#signs li"));
        assertTrue(signs.size() > 4, signs.size() + " signs");
        for (WebElement sign : signs) {
            assertFalse(sign.getText().isBlank());
            assertEquals(1, sign.findElements(By.tagName("svg")).size());
        }
    }
}
