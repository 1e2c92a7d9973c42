package org.drillwright.print.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.drillwright.model.Language;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.print.browser.Axe;
import org.drillwright.print.browser.Chromium;
import org.drillwright.print.browser.Tab;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.Trial;
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

/** An evening's page as people and whoever teaches meet it; and what comes of its line when that is run. */
@EnabledIf("chromium")
class EveningBrowserTest {

    private static final List<String> VIEWS = List.of("#names", "#person-1", "#rounds", "#round-2");

    @TempDir
    static Path folder;

    private static ChromeDriver browser;
    private static Tab tab;
    private static EveningSchool school;
    private static KeptPlan plan;
    private static Path page;

    static boolean chromium() {
        return Chromium.isThere();
    }

    /** People with hard names, in two lines of six. */
    @BeforeAll
    static void start() throws IOException {
        school = EveningSchool.of(folder.resolve("hard"), EveningSchool.HARD);
        page = school.page();
        plan = school.kept().plan();
        browser = Chromium.open();
        tab = new Tab(browser);
    }

    @AfterAll
    static void stop() {
        browser.quit();
    }

    @BeforeEach
    void phone() throws IOException {
        Files.deleteIfExists(school.root().resolve("record.csv"));
        tab.screen(390, 844);
        tab.emulate("", Map.of());
        tab.openForTheFirstTime(page);
    }

    private static void go(String view) {
        String name = view.substring(1).replaceFirst("-.*", "");
        tab.go(view, name);
    }

    /** A name as it stands in a round. */
    private static WebElement who(String person, int round) {
        go("#round-" + round);
        return browser.findElements(By.cssSelector("#round-" + round + " .who")).stream()
                .filter(one -> person.equals(one.findElement(By.tagName("bdi")).getText()))
                .findFirst()
                .orElseThrow();
    }

    private static void ask(String person, int round) {
        tab.script("arguments[0].scrollIntoView({block: 'center'})", who(person, round));
        tab.click(who(person, round));
        assertTrue(tab.at("change").isDisplayed());
    }

    private static void gone(String person, int round) {
        ask(person, round);
        tab.click(tab.at("gone"));
    }

    private static void instead(String person, int round, String other) {
        ask(person, round);
        tab.script(
                "const other = document.getElementById('other');"
                        + "const found = [...other.options].find(one => one.textContent === arguments[0]);"
                        + "other.value = found ? found.value : '';"
                        + "other.dispatchEvent(new Event('change'))",
                other);
        if (tab.at("named").isDisplayed()) {
            tab.at("named").sendKeys(other);
        }
        tab.click(tab.at("instead"));
    }

    private static void tick(int... rounds) {
        go("#rounds");
        for (int round : rounds) {
            WebElement box = browser.findElement(By.cssSelector("[data-worked='" + round + "']"));
            tab.script("arguments[0].scrollIntoView({block: 'center'})", box);
            tab.click(box);
        }
    }

    private static String line() {
        return tab.at("record").getDomProperty("value");
    }

    private static String partner(String person, int round) {
        List<String> people =
                plan.rounds().get(round - 1).groupOf(person).orElseThrow().everyone();
        assertEquals(2, people.size());
        return people.get(people.get(0).equals(person) ? 1 : 0);
    }

    // What judges of other houses say.

    @ParameterizedTest
    @CsvSource({"320, light", "1200, light", "320, dark", "1200, dark"})
    void axe_finds_nothing_in_any_view(int width, String scheme) {
        tab.screen(width, 844);
        tab.emulate("", Map.of("prefers-color-scheme", scheme));
        for (String view : VIEWS) {
            go(view);
            assertEquals(List.of(), Axe.findings(browser), view);
        }
        tick(1, 2);
        gone("Smith, Jan", 2);
        assertEquals(List.of(), Axe.findings(browser), "somebody gone");
        go("#rounds");
        assertEquals(List.of(), Axe.findings(browser), "ticked");
        ask("O'Neil", 2);
        assertEquals(List.of(), Axe.findings(browser), "asked");
    }

    @ParameterizedTest
    @ValueSource(strings = {"de", "fr", "it", "es"})
    void axe_finds_nothing_in_other_languages(Language language) {
        EveningSchool other = EveningSchool.of(folder.resolve(language.word()), List.of("Ash", "Bo", "Cy", "Dee"))
                .with("school.yaml", SchoolFiles.SETTINGS + "language: " + language.word() + "\n");
        tab.openForTheFirstTime(other.page());
        assertEquals(language.word(), tab.script("return document.documentElement.lang"));
        assertEquals("en", tab.script("return document.querySelector('h3 [lang]').lang"));
        for (String view : VIEWS) {
            go(view);
            assertTrue(tab.fitsItsWidth(), view);
            assertEquals(List.of(), Axe.findings(browser), view);
        }
    }

    // What the hand and the eye need.

    @ParameterizedTest
    @ValueSource(ints = {320, 390})
    void every_target_is_large_enough_and_nothing_is_too_wide(int width) {
        tab.screen(width, 640);
        tick(1);
        gone("Zoë \"Zed\" Kraus", 2);
        for (String view : VIEWS) {
            go(view);
            assertEquals(List.of(), tab.smallTargets(), view);
            assertTrue(tab.fitsItsWidth(), view);
        }
        ask("Жанна Ёлкина", 2);
        assertEquals(List.of(), tab.smallTargets(), "asked");
    }

    @ParameterizedTest
    @CsvSource({"light, 'rgb(255, 255, 255)'", "dark, 'rgb(17, 17, 17)'"})
    void it_is_dark_in_the_dark(String scheme, String paper) {
        tab.emulate("", Map.of("prefers-color-scheme", scheme));
        for (String part : List.of("html", "body", ".bar", "textarea", "dialog")) {
            assertEquals(
                    paper,
                    tab.script("return getComputedStyle(document.querySelector(arguments[0])).backgroundColor", part),
                    part);
        }
    }

    @Test
    void names_read_from_right_to_left_keep_that_to_themselves() {
        go("#names");
        for (WebElement name : browser.findElements(By.cssSelector("#names bdi"))) {
            boolean turned = name.getText().equals("עדי לוי") || name.getText().equals("علي حسن");
            assertEquals(turned ? "rtl" : "ltr", name.getCssValue("direction"), name.getText());
        }
        assertEquals("ltr", browser.findElement(By.tagName("body")).getCssValue("direction"));
    }

    @Test
    void nothing_comes_from_elsewhere_and_nothing_is_complained_of() throws IOException {
        for (String view : VIEWS) {
            go(view);
        }
        assertEquals(
                List.of(),
                tab.script("return performance.getEntriesByType('resource').map(one => one.name)"
                        + ".filter(name => !name.startsWith('data:'))"));
        assertEquals(List.of(), tab.complaints());
        String spoilt = Files.readString(page).replace("<main>", "<main><script>window.got=1</script>");
        tab.open(Files.writeString(folder.resolve("spoilt.html"), spoilt));
        assertEquals(true, tab.script("return window.got === undefined"));
        assertFalse(tab.complaints().isEmpty());
    }

    @Test
    void without_the_script_all_is_read_in_order() throws IOException {
        String plain = Files.readString(page).replaceAll("(?s)<script>.*?</script>", "");
        tab.open(Files.writeString(folder.resolve("plain.html"), plain));
        assertEquals(List.of(), Axe.findings(browser));
        for (WebElement part : browser.findElements(By.cssSelector(".view, .turns li, .groups li"))) {
            assertTrue(part.isDisplayed());
        }
        for (WebElement tool : browser.findElements(By.cssSelector(".live, dialog"))) {
            assertFalse(tool.isDisplayed());
        }
    }

    // Each person.

    @Test
    void whoever_has_found_their_name_is_shown_their_rounds_next_time() {
        assertEquals("names", tab.script("return document.documentElement.dataset.view"));
        WebElement name = browser.findElements(By.cssSelector("#names a")).stream()
                .filter(one -> one.getText().equals("Αθηνά"))
                .findFirst()
                .orElseThrow();
        tab.click(name);
        tab.waitFor(() -> "person".equals(tab.script("return document.documentElement.dataset.view")));
        assertEquals("Αθηνά", browser.findElement(By.cssSelector(".shown h2")).getText());
        List<String> partners = browser.findElements(By.cssSelector(".shown .with b")).stream()
                .map(WebElement::getText)
                .toList();
        for (int round = 1; round <= plan.rounds().size(); round++) {
            assertEquals(partner("Αθηνά", round), partners.get(round - 1));
        }
        tab.open(page);
        assertEquals("Αθηνά", browser.findElement(By.cssSelector(".shown h2")).getText());
        tab.click(browser.findElement(By.cssSelector(".on-person .forget")));
        tab.waitFor(() -> "names".equals(tab.script("return document.documentElement.dataset.view")));
        tab.open(page);
        assertEquals("names", tab.script("return document.documentElement.dataset.view"));
    }

    // Whoever teaches.

    @Test
    void keys_do_it() {
        go("#round-1");
        tab.press(Keys.ARROW_RIGHT);
        tab.waitFor(() -> "Round 2"
                .equals(browser.findElement(By.cssSelector(".shown h2")).getText()));
        tab.press(Keys.ARROW_LEFT);
        tab.waitFor(() -> "Round 1"
                .equals(browser.findElement(By.cssSelector(".shown h2")).getText()));
        tab.press(Keys.ARROW_LEFT);
        assertEquals("Round 1", browser.findElement(By.cssSelector(".shown h2")).getText());
        tab.script("document.getElementById('worked').focus()");
        tab.press(Keys.SPACE);
        assertEquals("true", tab.at("worked").getDomAttribute("aria-pressed"));
        WebElement first = browser.findElement(By.cssSelector("#round-1 .who"));
        tab.script("arguments[0].focus()", first);
        tab.press(Keys.ENTER);
        assertTrue(tab.at("change").isDisplayed());
        tab.press(Keys.ESCAPE);
        assertFalse(tab.at("change").isDisplayed());
        assertEquals(first, browser.switchTo().activeElement());
        assertTrue(line().endsWith("--rounds 1"), line());
    }

    @Test
    void ticks_stay_until_they_are_cleared_and_the_line_is_copied() {
        go("#rounds");
        assertFalse(tab.at("done").isDisplayed());
        tick(1, 2);
        instead("O'Neil", 2, "Marlow");
        String said = line();
        tab.open(page);
        go("#rounds");
        assertEquals(said, line());
        assertTrue(tab.at("changes").getText().contains("Marlow"));
        tab.script("document.getElementById('copy').click()");
        tab.waitFor(() -> !tab.text("copied").isEmpty());
        tab.script("document.querySelector('#changes button').click()");
        assertFalse(line().contains("Marlow"), line());
        tab.script("document.getElementById('clear').click()");
        assertFalse(tab.at("done").isDisplayed());
        tab.open(page);
        go("#rounds");
        assertFalse(tab.at("done").isDisplayed());
    }

    @Test
    void where_nothing_can_be_kept_it_works_and_the_page_says_so() {
        tab.refusingStorage(() -> {
            tab.open(page);
            tick(1);
            assertTrue(line().endsWith(" --rounds 1"), line());
            assertTrue(tab.text("stays").startsWith("This browser keeps nothing"), tab.text("stays"));
            assertEquals(List.of(), tab.complaints());
        });
    }

    /** What somebody, or another page, has put into the browser's store is no reason to fail. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{",
                "null",
                "[]",
                "{\"worked\":\"x\",\"changes\":7,\"me\":999}",
                "{\"worked\":[99,\"1\",null],\"changes\":[null,{\"round\":1,\"kind\":\"toString\",\"who\":1},{\"round\":1,\"kind\":\"gone\",\"who\":999}]}"
            })
    void whatIsSpoiltInTheStoreIsPassedOver(String spoilt) {
        tab.script("localStorage.setItem(document.body.dataset.kept, arguments[0])", spoilt);
        tab.open(page);
        go("#rounds");
        assertFalse(tab.at("done").isDisplayed());
        tick(1);
        assertTrue(line().endsWith(" --rounds 1"), line());
        assertEquals(List.of(), tab.complaints());
    }

    @Test
    void whoever_is_back_in_the_same_round_was_never_gone() {
        gone("-dash", 3);
        assertTrue(who("-dash", 4).getText().contains("gone"), who("-dash", 4).getText());
        assertFalse(who("-dash", 2).getText().contains("gone"));
        ask("-dash", 3);
        assertFalse(tab.at("gone").isDisplayed());
        tab.click(tab.at("returned"));
        assertFalse(who("-dash", 4).getText().contains("gone"));
        go("#rounds");
        assertFalse(tab.at("done").isDisplayed());
    }

    /** Gone from round 2, back in round 4; what says the first is taken back, and nothing is left of the second. */
    @Test
    void who_was_never_gone_is_not_back_either() {
        gone("-dash", 2);
        ask("-dash", 4);
        tab.click(tab.at("returned"));
        go("#rounds");
        WebElement undo = browser.findElement(By.cssSelector("#changes li:first-child button"));
        tab.script("arguments[0].scrollIntoView({block: 'center'})", undo);
        tab.click(undo);
        assertEquals(List.of(), browser.findElements(By.cssSelector("#changes li")));
        assertFalse(tab.at("done").isDisplayed());
    }

    @Test
    void who_stands_in_is_shown_at_both_places() {
        instead("-dash", 2, "@home");
        assertTrue(
                who("-dash", 3).getText().contains("→ \u2068@home\u2069"),
                who("-dash", 3).getText());
        assertTrue(
                who("@home", 3).getText().contains("for \u2068-dash\u2069"),
                who("@home", 3).getText());
        assertEquals("@home", who("@home", 1).getText().replace("● ", ""));
        instead("-dash", 3, "Marlow");
        assertEquals("@home", who("@home", 3).getText().replace("● ", ""));
    }

    /**
     * All of it by hand: rounds 1, 2 and 4 were worked; the line is read by a shell and run, and what stands in the record
     * is compared with the plan, pair by pair.
     */
    @Test
    void the_line_is_run_and_records_what_was_ticked() throws IOException {
        school.with(
                "roster.yaml",
                Files.readString(school.root().resolve("roster.yaml"))
                        .replace("assistants:", "  - {name: 'Late ''Lou'' L.'}\n  - {name: New Nora}\nassistants:"));
        tick(1, 2, 4);
        gone("O'Neil", 2);
        ask("O'Neil", 4);
        tab.click(tab.at("returned"));
        instead("Zoë \"Zed\" Kraus", 2, "Late 'Lou' L.");
        instead("Smith, Jan", 4, "the instructor");
        instead("עדי לוי", 1, "Marlow");
        go("#rounds");
        tab.at("too").sendKeys("New Nora");
        tab.click(tab.at("add-too"));
        String line = line();
        Trial trial = school.run(Shell.arguments(line));
        assertEquals(0, trial.code(), line + ": " + trial.err());
        List<String> wanted = new ArrayList<>();
        List<String> there = new ArrayList<>(EveningSchool.HARD);
        there.remove("עדי לוי");
        there.addAll(List.of("Late 'Lou' L.", "New Nora"));
        there.forEach(person -> wanted.add(cell(person) + ",,attended,"));
        for (int round : List.of(1, 2, 4)) {
            for (var group : plan.rounds().get(round - 1).groups()) {
                List<String> now = new ArrayList<>(group.people());
                if (round == 2) {
                    now.remove("O'Neil");
                }
                if (round >= 2) {
                    Collections.replaceAll(now, "Zoë \"Zed\" Kraus", "Late 'Lou' L.");
                }
                if (round == 4) {
                    Collections.replaceAll(now, "Smith, Jan", "instructor");
                }
                Collections.replaceAll(now, "עדי לוי", "Marlow");
                if (now.size() == 2) {
                    wanted.add(met(now, plan.rounds().get(round - 1).drill()));
                }
            }
        }
        List<String> recorded = school.recorded().stream()
                .map(EveningBrowserTest::sorted)
                .sorted()
                .toList();
        assertEquals(wanted.stream().sorted().toList(), recorded, line);
        assertEquals(
                "The record already says all of this.\n",
                school.run(Shell.arguments(line)).out());
    }

    private static String cell(String name) {
        String safe = name.matches("[=+@-].*") ? "'" + name : name;
        return safe.matches(".*[\",;].*") ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }

    private static String met(List<String> two, String drill) {
        List<String> cells = two.stream().map(EveningBrowserTest::cell).sorted().toList();
        return cells.get(0) + "," + drill + ",worked with," + cells.get(1);
    }

    /** A meeting told from either side is the same. */
    private static String sorted(String line) {
        String[] sides = line.split(",(straight|riposte),worked with,");
        if (sides.length < 2) {
            return line;
        }
        String drill = line.contains(",straight,worked") ? "straight" : "riposte";
        boolean inOrder = sides[0].compareTo(sides[1]) <= 0;
        return sides[inOrder ? 0 : 1] + "," + drill + ",worked with," + sides[inOrder ? 1 : 0];
    }

    @Test
    void with_initials_the_line_says_that_it_lacks_names() {
        EveningSchool other =
                EveningSchool.of(folder.resolve("initials"), List.of("Ann Oak", "Ben Elm", "Cy Ash", "Di Fir"));
        tab.openForTheFirstTime(other.page("--initials"));
        tick(1);
        assertFalse(tab.at("unsaid").isDisplayed());
        String before = line();
        gone("AO", 1);
        go("#rounds");
        assertTrue(tab.at("unsaid").isDisplayed());
        assertEquals(before, line());
        assertNotEquals("", tab.at("changes").getText());
    }
}
