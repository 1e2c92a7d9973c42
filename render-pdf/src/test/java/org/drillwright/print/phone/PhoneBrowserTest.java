package org.drillwright.print.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.print.Example;
import org.drillwright.print.browser.Axe;
import org.drillwright.print.browser.Chromium;
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
        screen(WIDTH, HEIGHT);
        emulate("", Map.of());
        open(page);
        if (!script("return localStorage.length").equals(0L)) {
            script("localStorage.clear()");
            open(page);
        }
    }

    private static void open(Path file) {
        browser.get("about:blank");
        browser.manage().logs().get("browser");
        browser.get(file.toUri().toString());
    }

    private static void screen(int width, int height) {
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", true));
    }

    private static void emulate(String medium, Map<String, String> features) {
        browser.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "media",
                        medium,
                        "features",
                        features.entrySet().stream()
                                .map(one -> Map.of("name", one.getKey(), "value", one.getValue()))
                                .toList()));
    }

    private static Object script(String script, Object... arguments) {
        return browser.executeScript(script, arguments);
    }

    private static String text(String id) {
        return String.valueOf(script("return document.getElementById(arguments[0]).textContent", id));
    }

    private static WebElement at(String id) {
        return browser.findElement(By.id(id));
    }

    private static void go(String view) {
        script("location.hash = arguments[0]", view);
        String name = view.endsWith(".play") ? "play" : view.startsWith("#drill-") ? "card" : view.substring(1);
        waitFor(() -> name.equals(script("return document.documentElement.dataset.view")));
    }

    private static void waitFor(BooleanSupplier wanted) {
        long until = System.nanoTime() + Duration.ofSeconds(20).toNanos();
        while (!wanted.getAsBoolean()) {
            assertTrue(
                    System.nanoTime() < until,
                    () -> "it did not come; the page says:\n"
                            + browser.findElement(By.tagName("body")).getText());
            try {
                Thread.sleep(20);
            } catch (InterruptedException ended) {
                throw new AssertionError(ended);
            }
        }
    }

    private static List<String> complaints() {
        return browser.manage().logs().get("browser").getAll().stream()
                .map(entry -> entry.getMessage())
                .toList();
    }

    private static String step() {
        return String.valueOf(script("return document.querySelector('.shown .now').dataset.name"));
    }

    private static void press(CharSequence key) {
        browser.switchTo().activeElement().sendKeys(key);
    }

    private static Subject third() {
        return Example.drill("parry-of-quarte");
    }

    // What judges of other houses say.

    @ParameterizedTest
    @ValueSource(ints = {320, 1200})
    void axeFindsNothingInAnyView(int width) {
        screen(width, HEIGHT);
        for (String view : VIEWS) {
            go(view);
            assertEquals(List.of(), Axe.findings(browser), view);
        }
        script("document.querySelector('[data-drill]').click()");
        go("#drills");
        assertEquals(List.of(), Axe.findings(browser), "ticked");
        go("#drill-3.play");
        at("next").click();
        assertEquals(List.of(), Axe.findings(browser), "at a count");
    }

    @Test
    void axeFindsNothingWithoutTheScript() throws IOException {
        open(withoutScript());
        assertEquals(List.of(), Axe.findings(browser));
    }

    /** If axe found nothing anywhere, its silence would say nothing. */
    @Test
    void axeFindsWhatIsWrong() {
        script("document.querySelector('.shown h2').replaceChildren();"
                + "document.documentElement.removeAttribute('lang')");
        assertTrue(Axe.findings(browser).size() >= 2);
    }

    @ParameterizedTest
    @EnabledIf("chromium")
    @ValueSource(strings = {"it", "fr", "es"})
    void axeFindsNothingInOtherLanguages(Language language) throws IOException {
        SchoolFiles.sound(folder.resolve(language.word()))
                .with("school.yaml", SchoolFiles.SETTINGS + "language: " + language.word() + "\n");
        Trial trial = Trial.run(folder.resolve(language.word()), "handout", "thrusts", "--html");
        assertEquals(0, trial.code(), trial.out() + trial.err());
        open(folder.resolve(language.word()).resolve("handout.html"));
        assertEquals(language.word(), script("return document.documentElement.lang"));
        assertEquals("en", script("return document.querySelector('.turn [lang]').lang"));
        for (String view : List.of("#safety", "#drills", "#drill-1", "#drill-1.play")) {
            go(view);
            assertEquals(List.of(), Axe.findings(browser), view);
        }
    }

    // What the hand and the eye need.

    /** 44 CSS pixels: WCAG 2.2, 2.5.5; a link within a line of words would be excepted, there is none. */
    @ParameterizedTest
    @ValueSource(ints = {320, WIDTH})
    void everyTargetIsLargeEnoughForAThumb(int width) {
        screen(width, HEIGHT);
        script("document.querySelector('[data-drill]').click()");
        for (String view : VIEWS) {
            go(view);
            assertEquals(
                    List.of(),
                    script(
                            "return [...document.querySelectorAll('a, button, select, textarea, input[type=search], label')]"
                                    + ".map(one => [one, one.getBoundingClientRect()])"
                                    + ".filter(([one, box]) => box.width > 0 && (box.width < 44 || box.height < 44))"
                                    + ".map(([one, box]) => one.outerHTML + ' ' + box.width + ' ' + box.height)"),
                    view);
        }
    }

    /** No sideways scrolling at 320 CSS pixels: WCAG 2.2, 1.4.10. */
    @Test
    void aNarrowScreenNeedsNoSidewaysScrolling() {
        screen(320, 640);
        for (String view : VIEWS) {
            go(view);
            assertEquals(
                    true,
                    script("return document.documentElement.scrollWidth <= document.documentElement.clientWidth"),
                    view);
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
    void typeHasTheSizesOfTheDesign(String view, String part, String size, String leading) {
        go(view);
        at("next").isDisplayed();
        WebElement words = browser.findElement(By.cssSelector(part));
        assertEquals(size, words.getCssValue("font-size"));
        assertEquals(leading, words.getCssValue("line-height"));
    }

    @Test
    void picturesAndButtonsHaveTheSizesOfTheDesign() {
        go("#drill-3");
        assertEquals(172, width(".shown .picture"), 1);
        assertEquals(76, height("#by-count"), 1);
        go("#drill-3.play");
        at("next").click();
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
    void theBarIsAtTheFootAndCoversNothingForGood() {
        for (String view : VIEWS) {
            go(view);
            assertEquals(
                    (long) HEIGHT,
                    script("return Math.round(document.querySelector('.bar').getBoundingClientRect().bottom)"));
            script("scrollTo(0, document.body.scrollHeight)");
            assertEquals(
                    true,
                    script(
                            "const last = [...document.querySelectorAll('.shown *')].map(one => one.getBoundingClientRect().bottom);"
                                    + "return Math.max(...last) <= document.querySelector('.bar').getBoundingClientRect().top + 1"),
                    view);
        }
    }

    /** WCAG 2.2, 2.4.11: focus not obscured. */
    @Test
    void whatHasTheFocusIsNotUnderTheBar() {
        script("document.querySelector('[data-drill]').click()");
        for (String view : VIEWS) {
            go(view);
            assertEquals(
                    List.of(),
                    script("const bar = document.querySelector('.bar').getBoundingClientRect().top;"
                            + "return [...document.querySelectorAll('.shown :is(a, button, input, textarea)')].filter(one => {"
                            + "  one.focus();"
                            + "  return document.activeElement === one && one.getBoundingClientRect().bottom > bar + 1;"
                            + "}).map(one => one.outerHTML)"),
                    view);
        }
    }

    @Test
    void itStaysWhiteInTheDark() {
        emulate("", Map.of("prefers-color-scheme", "dark"));
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
        assertEquals("rgba(255, 255, 255, 1)", at("search").getCssValue("background-color"));
    }

    @Test
    void wordsAreSetInTheFontsThatThePageCarries() {
        assertEquals(
                List.of("400 loaded", "700 loaded"),
                browser.executeAsyncScript("const done = arguments[0]; document.fonts.ready.then(() =>"
                        + " done([...document.fonts].map(face => face.weight + ' ' + face.status).sort()))"));
        assertEquals(List.of(), complaints());
    }

    // The cards.

    @Test
    void theSafetyCardComesFirst() {
        assertTrue(browser.findElement(By.cssSelector(".shown h2")).getText().equals("Safety and conduct"));
        assertEquals("safety", script("return document.querySelector('main > :first-child').id"));
        browser.findElement(By.cssSelector(".on-safety a")).click();
        waitFor(() -> "drills".equals(script("return document.documentElement.dataset.view")));
        assertEquals("title-drills", script("return document.activeElement.id"));
    }

    /** All that is on the cards, one under the other, for a browser that runs nothing. */
    @Test
    void withoutTheScriptAllCardsAreReadInOrder() throws IOException {
        open(withoutScript());
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
    void picturesSayWhatTheyShow() {
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
    void thePhraseIsGoneThroughCountByCount() {
        go("#drill-3");
        at("by-count").click();
        waitFor(() -> "play".equals(script("return document.documentElement.dataset.view")));
        assertEquals("Open", step());
        assertEquals("Next: 1", at("next").getText());
        at("next").click();
        assertEquals("1", step());
        assertEquals("Time 1 of 8", text("time"));
        assertEquals(
                "Count 1. "
                        + Pictures.of(third().replay(), Language.ENGLISH).get(0).gist(),
                text("said"));
        assertEquals("status", at("said").getAriaRole());
        at("next").click();
        assertEquals(
                "2",
                browser.findElement(By.cssSelector("#cells [aria-current=step]"))
                        .getText());
        at("back").click();
        assertEquals("1", step());
        at("next").click();
        at("next").click();
        assertEquals("Next: 1", at("next").getText());
        at("next").click();
        assertEquals("Time 2 of 8", text("time"));
        at("back").click();
        assertEquals("3", step());
        assertEquals("Time 1 of 8", text("time"));
        browser.findElement(By.xpath("//*[@id='cells']/button[text()='Close']")).click();
        assertEquals("Close", step());
        assertEquals("All drills", at("next").getText());
        at("next").click();
        waitFor(() -> "drills".equals(script("return document.documentElement.dataset.view")));
        assertTrue(String.valueOf(script("return document.activeElement.hash")).equals("#drill-3"));
    }

    @Test
    void theLastTimeEndsWithTheClosing() {
        go("#drill-3.play");
        for (int press = 0; press < 1 + 8 * 3; press++) {
            assertFalse(step().equals("Close"), "after " + press);
            at("next").click();
        }
        assertEquals("Close", step());
    }

    @Test
    void keysDoIt() {
        go("#drill-3.play");
        press(Keys.ARROW_RIGHT);
        assertEquals("1", step());
        press(Keys.SPACE);
        assertEquals("2", step());
        press(Keys.ARROW_LEFT);
        assertEquals("1", step());
        script("document.getElementById('next').focus()");
        press(Keys.SPACE);
        assertEquals("2", step());
        press(Keys.ESCAPE);
        waitFor(() -> "card".equals(script("return document.documentElement.dataset.view")));
        browser.navigate().back();
        waitFor(() -> "play".equals(script("return document.documentElement.dataset.view")));
    }

    @Test
    void itRunsByItselfAtTheDrillsTempoToTheEnd() {
        go("#drill-3.play");
        assertEquals("Run by itself, 2 s a count", at("run").getText());
        script("const card = document.getElementById('drill-3'); card.dataset.tempo = 150; card.dataset.times = 2");
        at("run").click();
        assertEquals("1", step());
        assertEquals("Stop", at("run").getText());
        waitFor(() -> text("time").equals("Time 2 of 2"));
        waitFor(() -> step().equals("Close"));
        assertTrue(at("run").getText().startsWith("Run by itself"));
    }

    @Test
    void whatRunsCanBeStopped() throws InterruptedException {
        go("#drill-3.play");
        script("document.getElementById('drill-3').dataset.tempo = 200");
        at("run").click();
        waitFor(() -> step().equals("2"));
        at("run").click();
        String stopped = step();
        Thread.sleep(600);
        assertEquals(stopped, step());
    }

    @Test
    void nothingMovesForWhoWantsNoMotion() {
        emulate("", Map.of("prefers-reduced-motion", "reduce"));
        go("#drill-3.play");
        at("run").click();
        assertEquals(0L, script("return document.getAnimations().length"));
        at("run").click();
        emulate("", Map.of("prefers-reduced-motion", "no-preference"));
        at("run").click();
        assertEquals(1L, script("return document.getAnimations().length"));
    }

    // The list.

    @Test
    void theFieldFindsDrillsByTheirWords() {
        go("#drills");
        at("search").sendKeys("epee OCTAVE");
        assertEquals("1 of 5 have “epee OCTAVE” in their words", text("found"));
        List<String> shown = browser.findElements(By.cssSelector("[data-row]")).stream()
                .filter(WebElement::isDisplayed)
                .map(WebElement::getText)
                .toList();
        assertEquals(1, shown.size());
        assertTrue(shown.get(0).startsWith("Épée: parry of octave"), shown.get(0));
        at("search").clear();
        at("search").sendKeys("<b>");
        assertEquals("0 of 5 have “<b>” in their words", text("found"));
        at("search").clear();
        at("search").sendKeys(" ", Keys.BACK_SPACE);
        assertEquals("5 drills", text("found"));
    }

    @Test
    void ticksGiveALineForTheRecordAndStayUntilTheyAreCleared() {
        go("#drills");
        assertFalse(at("done").isDisplayed());
        browser.findElement(By.cssSelector("[data-row=drill-3] label")).click();
        browser.findElement(By.cssSelector("[data-row=drill-1] label")).click();
        String line = "drillwright record CLASS --only keeping-distance-with-a-partner --only parry-of-quarte";
        assertEquals(line, at("record").getDomProperty("value"));
        open(page);
        go("#drills");
        assertEquals(line, at("record").getDomProperty("value"));
        script("document.getElementById('copy').click()");
        waitFor(() -> !text("copied").isEmpty());
        script("document.getElementById('clear').focus()");
        press(Keys.ENTER);
        assertFalse(at("done").isDisplayed());
        open(page);
        go("#drills");
        assertEquals(0L, script("return document.querySelectorAll('[data-drill]:checked').length"));
    }

    /** Some browsers refuse storage to pages that are files, and say so by an exception. */
    @Test
    void whereNothingCanBeKeptTicksWorkAndThePageSaysSo() {
        Object id = browser.executeCdpCommand(
                        "Page.addScriptToEvaluateOnNewDocument",
                        Map.of(
                                "source",
                                "Object.defineProperty(window, 'localStorage',"
                                        + " {get() { throw new DOMException('refused', 'SecurityError'); }})"))
                .get("identifier");
        try {
            open(page);
            go("#drills");
            browser.findElement(By.cssSelector("[data-row=drill-3] label")).click();
            assertEquals(
                    "drillwright record CLASS --only parry-of-quarte",
                    at("record").getDomProperty("value"));
            assertTrue(text("stays").startsWith("This browser keeps nothing"), text("stays"));
            assertEquals(List.of(), complaints());
        } finally {
            browser.executeCdpCommand("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", id));
        }
    }

    // Strangers' words, and strangers' places.

    @Test
    void payloadsInADrillAreWordsAndNothingElse() {
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
        open(files.root().resolve("handout.html"));
        assertEquals(
                "Safety and conduct",
                browser.findElement(By.cssSelector(".shown h2")).getText(),
                trial.out());
        go("#drills");
        assertTrue(text("drills").contains(payload));
        go("#drill-1.play");
        assertTrue(text("drill-1").contains(payload));
        assertEquals(1L, script("return document.scripts.length"));
        assertEquals(0L, script("return document.querySelectorAll('img, iframe, object, [onerror]').length"));
        assertEquals(true, script("return window.got === undefined"));
        assertEquals(List.of(), complaints());
    }

    /** Whatever markup came in all the same would not be run: the policy names what may be. */
    @Test
    void thePolicyForbidsWhatIsNotThePagesOwn() throws IOException {
        String spoilt = Files.readString(page)
                .replace(
                        "<main>", "<main><script>window.got=1</script><p onclick=\"window.got=1\" id=\"spoilt\">x</p>");
        open(Files.writeString(folder.resolve("spoilt.html"), spoilt));
        script("document.getElementById('spoilt').click()");
        assertEquals(true, script("return window.got === undefined"));
        assertFalse(complaints().isEmpty());
    }

    @Test
    void nothingComesFromElsewhere() {
        for (String view : VIEWS) {
            go(view);
        }
        assertEquals(
                List.of(),
                script("return performance.getEntriesByType('resource').map(one => one.name)"
                        + ".filter(name => !name.startsWith('data:'))"));
        assertEquals(List.of(), complaints());
    }

    // Paper.

    /** From whichever view it is printed. */
    @ParameterizedTest
    @ValueSource(strings = {"#safety", "#drills", "#drill-3.play"})
    void onPaperAllCardsStandInOrder(String view) throws IOException {
        go(view);
        Map<String, Object> printed = browser.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true));
        byte[] pdf = Base64.getDecoder().decode((String) printed.get("data"));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            int at = text.indexOf("Safety and conduct");
            assertTrue(at >= 0, text);
            for (WebElement title : browser.findElements(By.cssSelector(".card h2"))) {
                String words = String.valueOf(script("return arguments[0].textContent", title));
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
