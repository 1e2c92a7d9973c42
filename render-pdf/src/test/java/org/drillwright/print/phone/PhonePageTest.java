package org.drillwright.print.phone;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.drillwright.model.Drill;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.model.Step;
import org.drillwright.phrase.Replay;
import org.drillwright.print.Drills;
import org.drillwright.print.Example;
import org.drillwright.print.MadeUp;
import org.drillwright.print.Told;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.text.GlyphCoverage;
import org.drillwright.print.wording.Written;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page as a file: what it holds, and what it keeps out. */
class PhonePageTest {

    /** Written once, when first asked for. */
    private static final class Shared {
        private static final String EXAMPLE =
                new String(Pages.page(Example.drills().get(0).school(), Pages.example()), StandardCharsets.UTF_8);
    }

    private static String example() {
        return Shared.EXAMPLE;
    }

    private static List<String> all(String page, String pattern) {
        return Pattern.compile(pattern, Pattern.DOTALL)
                .matcher(page)
                .results()
                .map(one -> one.group(one.groupCount()))
                .toList();
    }

    private static String hash(String text) throws Exception {
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
    }

    /** CSP Level 3, section 8.4: a hash is of all that stands between the tags. */
    @Test
    void one_style_and_one_script_are_allowed_by_their_hashes_and_nothing_else() throws Exception {
        String page = example();
        List<String> scripts = all(page, "<script[^>]*>(.*?)</script>");
        List<String> styles = all(page, "<style[^>]*>(.*?)</style>");
        assertEquals(1, scripts.size());
        assertEquals(1, styles.size());
        String policy = all(page, "http-equiv=\"Content-Security-Policy\" content=\"([^\"]*)\"")
                .get(0)
                .replace("&#39;", "'");
        assertTrue(policy.startsWith("default-src 'none'; "), policy);
        assertTrue(policy.contains("script-src " + hash(scripts.get(0)) + ";"), policy);
        assertTrue(policy.contains("style-src " + hash(styles.get(0)) + ";"), policy);
        assertFalse(policy.contains("unsafe"), policy);
        assertTrue(page.indexOf("Content-Security-Policy") < page.indexOf("<style"));
        assertEquals(List.of(), all(page, "<[^>]*\\s(on\\w+|style)="));
    }

    @Test
    void nothing_is_asked_of_any_other_place() {
        String page = example();
        for (String address : all(page, "\\b(?:href|src|action|data|poster|srcset)=\"([^\"]*)\"")) {
            assertTrue(address.startsWith("#"), address);
        }
        for (String address : all(page, "url\\(([^)]{0,30})")) {
            assertTrue(address.startsWith("data:font/woff;base64,"), address);
        }
        assertFalse(page.contains("http://") || page.contains("https://") || page.contains("@import"));
    }

    /** Each drawing once; each name that is called is there, and once. */
    @Test
    void equal_pictures_stand_in_the_page_once() {
        String page = example();
        List<String> drawings = all(page, "<symbol id=\"[^\"]*\"[^>]*>(.*?)</symbol>");
        List<String> ids = all(page, "\\sid=\"([^\"]*)\"");
        List<String> called = all(page, "<use href=\"#([^\"]*)\"");
        assertEquals(drawings.size(), new HashSet<>(drawings).size());
        assertEquals(ids.size(), new HashSet<>(ids).size());
        assertTrue(new HashSet<>(ids).containsAll(called));
        long seen = called.stream().filter(name -> name.startsWith("drawing-")).count();
        assertTrue(seen > drawings.size(), seen + " of " + drawings.size());
    }

    /** So that fifty drills, all different, take less than a million bytes. */
    @Test
    void a_drill_takes_no_more_than_its_share_of_a_million_bytes() {
        int bytes = example().getBytes(StandardCharsets.UTF_8).length
                / Pages.example().size();
        assertTrue(bytes < 1_000_000 / 50, () -> "a drill takes " + bytes);
    }

    @Test
    void every_word_of_a_card_is_there_in_the_order_of_the_card() {
        String page = example();
        Example.drills().forEach(subject -> {
            var drill = subject.drill();
            int from = page.indexOf("<article", page.indexOf(">" + escaped(drill.title()) + "</h2>") - 500);
            List<String> said = new ArrayList<>(List.of(drill.title(), drill.opening(), drill.start()));
            drill.steps().forEach(step -> {
                said.add(step.call());
                step.leader().ifPresent(turn -> said.add(turn.say()));
                step.follower().ifPresent(turn -> said.add(turn.say()));
                said.add(step.safety());
                said.add(step.distance());
            });
            said.add(drill.closing());
            said.addAll(drill.cautions());
            said.add(drill.purpose());
            int at = from;
            for (String words : said) {
                int next = page.indexOf(escaped(words), at);
                assertTrue(next >= 0, () -> drill.id() + ": " + words);
                at = next + escaped(words).length();
            }
        });
    }

    private static String escaped(String words) {
        return words.strip()
                .replaceAll("\\s+", " ")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    @Test
    void the_same_drills_give_the_same_bytes() {
        List<PhoneDrill> some = Pages.example().subList(20, 26);
        assertArrayEquals(Pages.page(Drills.SCHOOL, some), Pages.page(Drills.SCHOOL, some));
    }

    @Test
    void a_count_of_two_strokes_shows_both() {
        Replay replay = Told.count(
                "foil",
                "On guard in sixte, blades apart, at lunge distance.",
                "Straight thrust to the high inside line with a lunge.",
                "Parry quarte and riposte straight to the high inside line.");
        CardSubject card = new CardSubject(
                Drills.riposte(), Drills.SCHOOL, Optional.empty(), false, List.of(), Optional.of(replay));
        String page =
                new String(Pages.page(Drills.SCHOOL, List.of(new PhoneDrill(card, "en"))), StandardCharsets.UTF_8);
        String strokes = all(page, "<div class=\"strokes\">(.*?)</div>").get(0);
        assertEquals(2, all(strokes, "role=\"img\" aria-label=\"([^\"]*)\"").size());
    }

    /** Hebrew is read from right to left: the Unicode Bidirectional Algorithm (UAX 9), class R. */
    @Test
    void a_drill_in_hebrew_is_read_from_right_to_left_and_the_page_stays_as_it_is() {
        Step step = Drills.step("דקירה ישרה.", "הדיפת קוורטה.", "lunge", "");
        Drill drill = Drills.drill("parry", "הדיפת קוורטה", List.of(step));
        CardSubject card = new CardSubject(drill, Drills.SCHOOL, Optional.empty(), false, List.of());
        String page = new String(
                Pages.page(
                        Drills.SCHOOL,
                        List.of(new PhoneDrill(card, "he"), Pages.example().get(0))),
                StandardCharsets.UTF_8);
        assertEquals(List.of("rtl", "ltr"), all(page, "<article id=\"drill-\\d+\"[^>]* dir=\"(\\w+)\""));
        assertEquals(
                List.of("הדיפת קוורטה", "הדיפת קוורטה", "דקירה ישרה.", "הדיפת קוורטה."),
                all(page, "<span lang=\"he\" dir=\"rtl\">([^<]*)</span>"));
        assertTrue(page.contains("<span lang=\"en\" dir=\"ltr\">lunge</span>"));
        assertTrue(page.contains("<html lang=\"en\" dir=\"ltr\">"));
    }

    /** Nothing of it says that it is read from the left, but what a shell is told. */
    @Test
    void a_page_in_a_language_from_the_right_is_read_from_the_right() {
        MadeUp language = MadeUp.FROM_THE_RIGHT;
        List<PhoneDrill> drills = Example.drills().stream()
                .limit(3)
                .map(drill ->
                        new PhoneDrill(language.card(drill), language.language().word()))
                .toList();
        School school = language.said(Drills.SCHOOL);
        String page = new String(Pages.page(school, drills), StandardCharsets.UTF_8);
        assertTrue(page.contains("<html lang=\"qar\" dir=\"rtl\">"));
        assertEquals(List.of("rtl", "rtl", "rtl"), all(page, "<article id=\"drill-\\d+\"[^>]* dir=\"(\\w+)\""));
        List<String> others = all(page, "<(\\w+)[^>]* dir=\"ltr\"");
        assertTrue(Set.of("textarea", "span").containsAll(others), others::toString);
    }

    /** WCAG 2.2, 3.1.2: the language of parts. */
    @Test
    void words_in_another_language_than_the_page_say_so() {
        List<PhoneDrill> french = Example.drills().stream()
                .limit(1)
                .map(drill -> Pages.drill(drill, "fr"))
                .toList();
        String page = new String(Pages.page(Drills.SCHOOL, french), StandardCharsets.UTF_8);
        String title = escaped(Example.drills().get(0).drill().title());
        assertTrue(page.contains("<html lang=\"en\" dir=\"ltr\">"));
        assertTrue(page.contains(
                "<h2 id=\"title-1\" tabindex=\"-1\"><span lang=\"fr\" dir=\"ltr\">" + title + "</span></h2>"));
        assertFalse(example().contains("<span lang="));
    }

    @Test
    void every_word_is_in_the_file_and_no_other() {
        assertEquals(
                Arrays.stream(PhoneText.values()).map(PhoneText::key).collect(Collectors.toCollection(TreeSet::new)),
                Written.keys(PhoneTexts.class, "words"));
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void every_word_can_be_printed(Language language) {
        GlyphCoverage coverage = new GlyphCoverage(Family.dejaVu());
        Written.texts(PhoneTexts.class, "words", language)
                .forEach(text -> assertEquals(List.of(), coverage.missing(text)));
    }
}
