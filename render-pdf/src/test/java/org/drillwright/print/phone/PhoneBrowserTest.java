package org.drillwright.print.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.print.Example;
import org.drillwright.print.browser.Axe;
import org.drillwright.print.browser.Chromium;
import org.drillwright.print.browser.Tab;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.Trial;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.diagram.Pictures;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;

/** The page as a person meets it: opened from a file, in a real browser as wide as a phone. */
@EnabledIf("chromium")
class PhoneBrowserTest {

    /** As the design has it: the width of most phones, in CSS pixels. */
    private static final int WIDTH = 390;

    private static final int HEIGHT = 844;

    private static final List<String> VIEWS = List.of("#safety", "#drills", "#drill-3", "#drill-3.play");

    @TempDir
    static Path folder;

    private static ChromeDriver browser;
    private static Tab tab;
    private static Path page;

    static boolean chromium() {
        return Chromium.isThere();
    }

    @BeforeAll
    static void start() throws IOException {
        page = folder.resolve("handout.html");
        Trial trial = Trial.run(school(), "handout", "five", "--html", "--out", page.toString());
        assertEquals(0, trial.code(), trial.out() + trial.err());
        browser = Chromium.open();
        tab = new Tab(browser);
    }

    /** What holds of a view holds of it however many drills the page has; a browser needs long for many. */
    private static Path school() throws IOException {
        Path school = Example.copyTo(folder.resolve("school"));
        Path settings = school.resolve("school.yaml");
        String five = "sets:\n  five:\n    drills: [keeping-distance-with-a-partner, straight-thrust-with-lunge, "
                + "parry-of-quarte, epee-parry-of-octave, one-two]\n";
        Files.writeString(settings, Files.readString(settings).replace("sets:\n", five));
        return school;
    }

    @AfterAll
    static void stop() {
        browser.quit();
    }

    @BeforeEach
    void phone() {
        tab.screen(WIDTH, HEIGHT);
        tab.emulate("", Map.of());
        tab.openForTheFirstTime(page);
    }

    private static void go(String view) {
        String name = view.endsWith(".play") ? "play" : view.startsWith("#drill-") ? "card" : view.substring(1);
        tab.go(view, name);
    }

    private static String step() {
        return String.valueOf(tab.script("return document.querySelector('.shown .now').dataset.name"));
    }

    private static Subject third() {
        return Example.drill("parry-of-quarte");
    }

    // What judges of other houses say.

    @ParameterizedTest
    @ValueSource(ints = {320, 1200})
    void axe_finds_nothing_in_any_view(int width) {
        tab.screen(width, HEIGHT);
        for (String view : VIEWS) {
            go(view);
            assertEquals(List.of(), Axe.findings(browser), view);
        }
        tab.script("document.querySelector('[data-drill]').click()");
        go("#drills");
        assertEquals(List.of(), Axe.findings(browser), "ticked");
        go("#drill-3.play");
        tab.at("next").click();
        assertEquals(List.of(), Axe.findings(browser), "at a count");
    }

    @Test
    void axe_finds_nothing_without_the_script() throws IOException {
        tab.open(withoutScript());
        assertEquals(List.of(), Axe.findings(browser));
    }

    /** If axe found nothing anywhere, its silence would say nothing. */
    @Test
    void axe_finds_what_is_wrong() {
        tab.script("document.querySelector('.shown h2').replaceChildren();"
                + "document.documentElement.removeAttribute('lang')");
        assertTrue(Axe.findings(browser).size() >= 2);
    }

    @ParameterizedTest
    @EnabledIf("chromium")
    @ValueSource(strings = {"it", "fr", "es"})
    void axe_finds_nothing_in_other_languages(Language language) throws IOException {
        SchoolFiles.sound(folder.resolve(language.word()))
                .with("school.yaml", SchoolFiles.SETTINGS + "language: " + language.word() + "\n");
        Trial trial = Trial.run(folder.resolve(language.word()), "handout", "thrusts", "--html");
        assertEquals(0, trial.code(), trial.out() + trial.err());
        tab.open(folder.resolve(language.word()).resolve("handout.html"));
        assertEquals(language.word(), tab.script("return document.documentElement.lang"));
        assertEquals("en", tab.script("return document.querySelector('.turn [lang]').lang"));
        for (String view : List.of("#safety", "#drills", "#drill-1", "#drill-1.play")) {
            go(view);
            assertEquals(List.of(), Axe.findings(browser), view);
        }
    }

    // What the hand and the eye need.

    /** 44 CSS pixels: WCAG 2.2, 2.5.5; a link within a line of words would be excepted, there is none. */
    @ParameterizedTest
    @ValueSource(ints = {320, WIDTH})
    void every_target_is_large_enough_for_a_thumb(int width) {
        tab.screen(width, HEIGHT);
        tab.script("document.querySelector('[data-drill]').click()");
        for (String view : VIEWS) {
            go(view);
            assertEquals(List.of(), tab.smallTargets(), view);
        }
    }

    /** No sideways scrolling at 320 CSS pixels: WCAG 2.2, 1.4.10. */
    @Test
    void a_narrow_screen_needs_no_sideways_scrolling() {
        tab.screen(320, 640);
        for (String view : VIEWS) {
            go(view);
            assertTrue(tab.fitsItsWidth(), view);
        }
    }

    /** Section 13 of the design of the printed family: size and leading, in CSS pixels. */
    @ParameterizedTest
    @CsvSource({
        "#drill-3, .shown .turn, 20px, 25px",
        "#drill-3, .shown .number, 34px, 34px",
        "#drill-3, .shown .warning, 16px, 20px",
        "#drill-3, .shown .before, 17px, 22px",
        "#drill-3.play, .shown .turn, 25px, 31px",
        "#drill-3.play, .shown .warning, 19px, 24px"
    })
    void type_has_the_sizes_of_the_design(String view, String part, String size, String leading) {
        go(view);
        tab.at("next").isDisplayed();
        WebElement words = browser.findElement(By.cssSelector(part));
        assertEquals(size, words.getCssValue("font-size"));
        assertEquals(leading, words.getCssValue("line-height"));
    }

    @Test
    void pictures_and_buttons_have_the_sizes_of_the_design() {
        go("#drill-3");
        assertEquals(172, width(".shown .picture"), 1);
        assertEquals(76, height("#by-count"), 1);
        go("#drill-3.play");
        tab.at("next").click();
        assertTrue(width(".now .picture") >= 340, () -> "picture " + width(".now .picture"));
        assertEquals(108, height("#next"), 1);
        assertEquals("64px", browser.findElement(By.cssSelector(".now .number")).getCssValue("font-size"));
    }

    private static double width(String part) {
        return browser.findElement(By.cssSelector(part)).getRect().getWidth();
    }

    private static double height(String part) {
        return browser.findElement(By.cssSelector(part)).getRect().getHeight();
    }

    @Test
    void the_bar_is_at_the_foot_and_covers_nothing_for_good() {
        for (String view : VIEWS) {
            go(view);
            assertEquals(
                    (long) HEIGHT,
                    tab.script("return Math.round(document.querySelector('.bar').getBoundingClientRect().bottom)"));
            tab.script("scrollTo(0, document.body.scrollHeight)");
            assertEquals(
                    true,
                    tab.script(
                            "const last = [...document.querySelectorAll('.shown *')].map(one => one.getBoundingClientRect().bottom);"
                                    + "return Math.max(...last) <= document.querySelector('.bar').getBoundingClientRect().top + 1"),
                    view);
        }
    }

    /** WCAG 2.2, 2.4.11: focus not obscured. */
    @Test
    void what_has_the_focus_is_not_under_the_bar() {
        tab.script("document.querySelector('[data-drill]').click()");
        for (String view : VIEWS) {
            go(view);
            assertEquals(
                    List.of(),
                    tab.script("const bar = document.querySelector('.bar').getBoundingClientRect().top;"
                            + "return [...document.querySelectorAll('.shown :is(a, button, input, textarea)')].filter(one => {"
                            + "  one.focus();"
                            + "  return document.activeElement === one && one.getBoundingClientRect().bottom > bar + 1;"
                            + "}).map(one => one.outerHTML)"),
                    view);
        }
    }

    @Test
    void it_stays_white_in_the_dark() {
        tab.emulate("", Map.of("prefers-color-scheme", "dark"));
        for (String view : VIEWS) {
            go(view);
            for (String part : List.of("html", "body", ".shown", ".shown h2")) {
                WebElement one = browser.findElement(By.cssSelector(part));
                assertTrue(
                        List.of("rgba(255, 255, 255, 1)", "rgba(0, 0, 0, 0)")
                                .contains(one.getCssValue("background-color")),
                        view + " " + part);
                assertEquals("rgba(0, 0, 0, 1)", one.getCssValue("color"), view + " " + part);
            }
        }
        go("#drills");
        assertEquals("rgba(255, 255, 255, 1)", tab.at("search").getCssValue("background-color"));
    }

    @Test
    void words_are_set_in_the_fonts_that_the_page_carries() {
        assertEquals(
                List.of("400 loaded", "700 loaded"),
                browser.executeAsyncScript("const done = arguments[0]; document.fonts.ready.then(() =>"
                        + " done([...document.fonts].map(face => face.weight + ' ' + face.status).sort()))"));
        assertEquals(List.of(), tab.complaints());
    }

    // The cards.

    @Test
    void the_safety_card_comes_first() {
        assertTrue(browser.findElement(By.cssSelector(".shown h2")).getText().equals("Safety and conduct"));
        assertEquals("safety", tab.script("return document.querySelector('main > :first-child').id"));
        browser.findElement(By.cssSelector(".on-safety a")).click();
        tab.waitFor(() -> "drills".equals(tab.script("return document.documentElement.dataset.view")));
        assertEquals("title-drills", tab.script("return document.activeElement.id"));
    }

    /** All that is on the cards, one under the other, for a browser that runs nothing. */
    @Test
    void without_the_script_all_cards_are_read_in_order() throws IOException {
        tab.open(withoutScript());
        List<String> titles = browser.findElements(By.cssSelector("article h2")).stream()
                .filter(WebElement::isDisplayed)
                .map(WebElement::getText)
                .toList();
        assertEquals(6, titles.size());
        assertEquals("Safety and conduct", titles.get(0));
        assertEquals(third().drill().title(), titles.get(3));
        for (WebElement step : browser.findElements(By.cssSelector(".step, .scene svg, .warning"))) {
            assertTrue(step.isDisplayed());
        }
        for (WebElement tool : browser.findElements(By.cssSelector(".live"))) {
            assertFalse(tool.isDisplayed());
        }
        WebElement row = browser.findElement(By.linkText(third().drill().title() + "\nintermediate · foil · 3 counts"));
        assertTrue(row.getAttribute("href").endsWith("#drill-3"));
    }

    private static Path withoutScript() throws IOException {
        String plain = Files.readString(page).replaceAll("(?s)<script>.*?</script>", "");
        return Files.writeString(folder.resolve("plain.html"), plain);
    }

    @Test
    void pictures_say_what_they_show() {
        go("#drill-3");
        List<String> said = Pictures.of(third().replay(), Language.ENGLISH).stream()
                .map(Picture::alternative)
                .toList();
        assertEquals(
                said,
                browser.findElements(By.cssSelector(".shown .picture")).stream()
                        .map(WebElement::getAccessibleName)
                        .toList());
    }

    // Count by count.

    @Test
    void the_phrase_is_gone_through_count_by_count() {
        go("#drill-3");
        tab.at("by-count").click();
        tab.waitFor(() -> "play".equals(tab.script("return document.documentElement.dataset.view")));
        assertEquals("Open", step());
        assertEquals("Next: 1", tab.at("next").getText());
        tab.at("next").click();
        assertEquals("1", step());
        assertEquals("Time 1 of 8", tab.text("time"));
        assertEquals(
                "Count 1. "
                        + Pictures.of(third().replay(), Language.ENGLISH).get(0).gist(),
                tab.text("said"));
        assertEquals("status", tab.at("said").getAriaRole());
        tab.at("next").click();
        assertEquals(
                "2",
                browser.findElement(By.cssSelector("#cells [aria-current=step]"))
                        .getText());
        tab.at("back").click();
        assertEquals("1", step());
        tab.at("next").click();
        tab.at("next").click();
        assertEquals("Next: 1", tab.at("next").getText());
        tab.at("next").click();
        assertEquals("Time 2 of 8", tab.text("time"));
        tab.at("back").click();
        assertEquals("3", step());
        assertEquals("Time 1 of 8", tab.text("time"));
        browser.findElement(By.xpath("//*[@id='cells']/button[text()='Close']")).click();
        assertEquals("Close", step());
        assertEquals("All drills", tab.at("next").getText());
        tab.at("next").click();
        tab.waitFor(() -> "drills".equals(tab.script("return document.documentElement.dataset.view")));
        assertTrue(
                String.valueOf(tab.script("return document.activeElement.hash")).equals("#drill-3"));
    }

    @Test
    void the_last_time_ends_with_the_closing() {
        go("#drill-3.play");
        for (int press = 0; press < 1 + 8 * 3; press++) {
            assertFalse(step().equals("Close"), "after " + press);
            tab.at("next").click();
        }
        assertEquals("Close", step());
    }

    @Test
    void keys_do_it() {
        go("#drill-3.play");
        tab.press(Keys.ARROW_RIGHT);
        assertEquals("1", step());
        tab.press(Keys.SPACE);
        assertEquals("2", step());
        tab.press(Keys.ARROW_LEFT);
        assertEquals("1", step());
        tab.script("document.getElementById('next').focus()");
        tab.press(Keys.SPACE);
        assertEquals("2", step());
        tab.press(Keys.ESCAPE);
        tab.waitFor(() -> "card".equals(tab.script("return document.documentElement.dataset.view")));
        browser.navigate().back();
        tab.waitFor(() -> "play".equals(tab.script("return document.documentElement.dataset.view")));
    }

    @Test
    void it_runs_by_itself_at_the_drills_tempo_to_the_end() {
        go("#drill-3.play");
        assertEquals("Run by itself, 2 s a count", tab.at("run").getText());
        // What the click did is noted in the page: whoever asks from outside may be later than a count of 150 ms.
        tab.script("const card = document.getElementById('drill-3'); card.dataset.tempo = 150; card.dataset.times = 2;"
                + "const run = document.getElementById('run');"
                + "run.addEventListener('click', () => setTimeout(() => window.begun ="
                + " [document.querySelector('.shown .now').dataset.name, run.innerText]), {once: true})");
        tab.at("run").click();
        tab.waitFor(() -> tab.script("return window.begun") != null);
        assertEquals(List.of("1", "Stop"), tab.script("return window.begun"));
        tab.waitFor(() -> tab.text("time").equals("Time 2 of 2"));
        tab.waitFor(() -> step().equals("Close"));
        assertTrue(tab.at("run").getText().startsWith("Run by itself"));
    }

    @Test
    void what_runs_can_be_stopped() throws InterruptedException {
        go("#drill-3.play");
        tab.script("document.getElementById('drill-3').dataset.tempo = 200");
        tab.at("run").click();
        tab.waitFor(() -> step().equals("2"));
        tab.at("run").click();
        String stopped = step();
        Thread.sleep(600);
        assertEquals(stopped, step());
    }

    @Test
    void nothing_moves_for_who_wants_no_motion() {
        tab.emulate("", Map.of("prefers-reduced-motion", "reduce"));
        go("#drill-3.play");
        tab.at("run").click();
        assertEquals(0L, tab.script("return document.getAnimations().length"));
        tab.at("run").click();
        tab.emulate("", Map.of("prefers-reduced-motion", "no-preference"));
        tab.at("run").click();
        assertEquals(1L, tab.script("return document.getAnimations().length"));
    }

    // The list.

    @Test
    void the_field_finds_drills_by_their_words() {
        go("#drills");
        tab.at("search").sendKeys("epee OCTAVE");
        assertEquals("1 of 5 have “epee OCTAVE” in their words", tab.text("found"));
        List<String> shown = browser.findElements(By.cssSelector("[data-row]")).stream()
                .filter(WebElement::isDisplayed)
                .map(WebElement::getText)
                .toList();
        assertEquals(1, shown.size());
        assertTrue(shown.get(0).startsWith("Épée: parry of octave"), shown.get(0));
        tab.at("search").clear();
        tab.at("search").sendKeys("<b>");
        assertEquals("0 of 5 have “<b>” in their words", tab.text("found"));
        tab.at("search").clear();
        tab.at("search").sendKeys(" ", Keys.BACK_SPACE);
        assertEquals("5 drills", tab.text("found"));
    }

    @Test
    void ticks_give_a_line_for_the_record_and_stay_until_they_are_cleared() {
        go("#drills");
        assertFalse(tab.at("done").isDisplayed());
        browser.findElement(By.cssSelector("[data-row=drill-3] label")).click();
        browser.findElement(By.cssSelector("[data-row=drill-1] label")).click();
        String line = "drillwright record CLASS --only keeping-distance-with-a-partner --only parry-of-quarte";
        assertEquals(line, tab.at("record").getDomProperty("value"));
        tab.open(page);
        go("#drills");
        assertEquals(line, tab.at("record").getDomProperty("value"));
        tab.script("document.getElementById('copy').click()");
        tab.waitFor(() -> !tab.text("copied").isEmpty());
        tab.script("document.getElementById('clear').focus()");
        tab.press(Keys.ENTER);
        assertFalse(tab.at("done").isDisplayed());
        tab.open(page);
        go("#drills");
        assertEquals(0L, tab.script("return document.querySelectorAll('[data-drill]:checked').length"));
    }

    @Test
    void where_nothing_can_be_kept_ticks_work_and_the_page_says_so() {
        tab.refusingStorage(() -> {
            tab.open(page);
            go("#drills");
            browser.findElement(By.cssSelector("[data-row=drill-3] label")).click();
            assertEquals(
                    "drillwright record CLASS --only parry-of-quarte",
                    tab.at("record").getDomProperty("value"));
            assertTrue(tab.text("stays").startsWith("This browser keeps nothing"), tab.text("stays"));
            assertEquals(List.of(), tab.complaints());
        });
    }

    // Strangers' words, and strangers' places.

    @Test
    void payloads_in_a_drill_are_words_and_nothing_else() {
        String payload = "</script></style><img src=x onerror=\"window.got=1\"><script>window.got=1</script>";
        String quoted = "'" + payload + "'";
        SchoolFiles files = SchoolFiles.sound(folder.resolve("hostile"));
        files.with("school.yaml", SchoolFiles.SETTINGS.replace("Saltmarsh Hall (invented)", quoted));
        files.with(
                "riposte.yaml",
                SchoolFiles.riposte()
                        .replace("Parry of quarte, straight riposte", quoted)
                        .replace("Stop the point on the jacket.", quoted)
                        .replace("underarm protector", quoted)
                        .replace("closing: ", "purpose: " + quoted + "\nclosing: "));
        Trial trial = Trial.run(files.root(), "handout", "thrusts", "--html", "--draft");
        tab.open(files.root().resolve("handout.html"));
        assertEquals(
                "Safety and conduct",
                browser.findElement(By.cssSelector(".shown h2")).getText(),
                trial.out());
        go("#drills");
        assertTrue(tab.text("drills").contains(payload));
        go("#drill-1.play");
        assertTrue(tab.text("drill-1").contains(payload));
        assertEquals(1L, tab.script("return document.scripts.length"));
        assertEquals(0L, tab.script("return document.querySelectorAll('img, iframe, object, [onerror]').length"));
        assertEquals(true, tab.script("return window.got === undefined"));
        assertEquals(List.of(), tab.complaints());
    }

    /** Whatever markup came in all the same would not be run: the policy names what may be. */
    @Test
    void the_policy_forbids_what_is_not_the_pages_own() throws IOException {
        String spoilt = Files.readString(page)
                .replace(
                        "<main>", "<main><script>window.got=1</script><p onclick=\"window.got=1\" id=\"spoilt\">x</p>");
        tab.open(Files.writeString(folder.resolve("spoilt.html"), spoilt));
        tab.script("document.getElementById('spoilt').click()");
        assertEquals(true, tab.script("return window.got === undefined"));
        assertFalse(tab.complaints().isEmpty());
    }

    @Test
    void nothing_comes_from_elsewhere() {
        for (String view : VIEWS) {
            go(view);
        }
        assertEquals(
                List.of(),
                tab.script("return performance.getEntriesByType('resource').map(one => one.name)"
                        + ".filter(name => !name.startsWith('data:'))"));
        assertEquals(List.of(), tab.complaints());
    }

    // Paper.

    /** From whichever view it is printed. */
    @ParameterizedTest
    @ValueSource(strings = {"#safety", "#drills", "#drill-3.play"})
    void on_paper_all_cards_stand_in_order(String view) throws IOException {
        go(view);
        Map<String, Object> printed = browser.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true));
        byte[] pdf = Base64.getDecoder().decode((String) printed.get("data"));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            int at = text.indexOf("Safety and conduct");
            assertTrue(at >= 0, text);
            for (WebElement title : browser.findElements(By.cssSelector(".card h2"))) {
                String words = String.valueOf(tab.script("return arguments[0].textContent", title));
                int next = text.indexOf(words, at);
                assertTrue(next > at, () -> words + " in " + text);
                at = next;
            }
            assertTrue(text.contains("Stay on the lunge and take the touch."), text);
            assertFalse(text.contains("All drills"), text);
            assertTrue(document.getNumberOfPages() >= 6, () -> "pages: " + document.getNumberOfPages());
        }
    }
}
