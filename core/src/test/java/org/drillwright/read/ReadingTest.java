package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.model.Form;
import org.drillwright.model.Turn;
import org.drillwright.model.Weapon;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What reading says of a file whose YAML is in order and whose content is not. */
class ReadingTest {

    private static List<String> found(String text) {
        return Files.shown(Files.read(text).findings());
    }

    private static String wayOut(String text) {
        return Files.onlyError(text).wayOut().english();
    }

    @ParameterizedTest(name = "{0} for {1}")
    @CsvSource({"leadr, leader, 7:5", "Follower, follower, 8:5", "distnace, distance, 9:5", "safty, safety, 10:5"})
    void an_unknown_key_of_a_count_is_named_with_the_nearest_known(String written, String meant, String place) {
        String text = Files.GOOD.replaceFirst("\\b" + meant + ":", written + ":");
        assertEquals(List.of("error unknown-key " + place + " '" + written + "'"), found(text));
        assertTrue(wayOut(text).startsWith("Did you mean '" + meant + "'? Write: "), wayOut(text));
        assertTrue(wayOut(text).contains(meant + ":"), wayOut(text));
    }

    @Test
    void an_unknown_key_that_is_near_to_nothing_is_told_what_is_known() {
        String text = Files.with("gear:", "xylophone:");
        assertEquals(List.of("error unknown-key 5:1 'xylophone'"), found(text));
        assertTrue(wayOut(text).startsWith("Known here: title, level, form,"), wayOut(text));
    }

    @Test
    void a_key_that_comes_twice_names_its_first_line() {
        String text = Files.with("form: partner", "form: partner\nform: solo");
        assertEquals(List.of("error key-twice 4:1 'form'"), found(text));
        assertEquals(
                "'form' is here a second time (first on line 3).",
                Files.onlyError(text).what().english());
    }

    @ParameterizedTest(name = "{1} in place of {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "title: Parry of quarte | title: {a: b}           | error wrong-kind 1:1 'title'",
                "title: Parry of quarte | title: [a]              | error wrong-kind 1:1 'title'",
                "gear: [mask, jacket]   | gear: mask              | error wrong-kind 5:1 'gear'",
                "gear: [mask, jacket]   | gear: {mask: yes}       | error wrong-kind 5:1 'gear'",
                "gear: [mask, jacket]   | gear: [[mask]]          | error wrong-kind 5:8 '[mask]'",
                "closing: Salute.       | repeat: six             | error wrong-kind 14:9 'six'",
                "closing: Salute.       | repeat: 0               | error wrong-kind 14:9 '0'",
                "closing: Salute.       | repeat: 1000            | error wrong-kind 14:9 '1000'",
                "closing: Salute.       | repeat: 1.5             | error wrong-kind 14:9 '1.5'",
                "closing: Salute.       | swap: perhaps           | error wrong-kind 14:7 'perhaps'",
                "closing: Salute.       | tempo: slow             | error wrong-kind 14:8 'slow'",
                "closing: Salute.       | tempo: 0                | error wrong-kind 14:8 '0'",
                "closing: Salute.       | tempo: 3601             | error wrong-kind 14:8 '3601'",
                "closing: Salute.       | revised: 1.9.2026       | error wrong-kind 14:10 '1.9.2026'",
                "closing: Salute.       | revised: 2026-02-30     | error wrong-kind 14:10 '2026-02-30'",
                "closing: Salute.       | accept: choice-left-open       | error wrong-kind 14:1 'accept'",
                "closing: Salute.       | accept: {a: [b]}        | error wrong-kind 14:10 'a'",
                "closing: Salute.       | needs: [a, {b: c}]      | error wrong-kind 14:12 '{b: c}'",
                "closing: Salute.       | ? [a, b]                | error wrong-kind 14:3 '[a, b]'",
            })
    void a_value_of_the_wrong_kind_is_found(String good, String bad, String finding) {
        assertEquals(List.of(finding), found(Files.with(good, bad)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"steps: now", "steps: {leader: a}", "steps: [Advance]", "steps: [[a]]"})
    void counts_that_are_no_counts_are_found(String steps) {
        String text = Files.GOOD.substring(0, Files.GOOD.indexOf("steps:")) + steps + "\n";
        Finding finding = Files.onlyError(text);
        assertEquals("wrong-kind", finding.rule());
        assertEquals(6, finding.position().line());
        assertTrue(
                finding.wayOut().english().contains("- leader: "),
                finding.wayOut().english());
    }

    @ParameterizedTest
    @ValueSource(strings = {"title:", "title: ''", "title: \"\"", "title: \"  \"", "title: |\n"})
    void an_empty_text_is_found(String title) {
        Finding finding = Files.onlyError(Files.with("title: Parry of quarte", title));
        assertEquals("text-empty-or-too-long", finding.rule());
        assertEquals("There is nothing after 'title'.", finding.what().english());
    }

    @Test
    void an_over_long_text_is_marked_where_it_becomes_too_long() {
        String text = Files.with("Parry of quarte", "Q".repeat(121));
        assertEquals(List.of("error text-empty-or-too-long 1:128 'Q'"), found(text));
        Files.drill(Files.with("Parry of quarte", "Q".repeat(120)));
    }

    @Test
    void too_many_counts_are_found() {
        String count = "  - {leader: Hold., follower: Hold., distance: out}\n";
        String head = Files.GOOD.substring(0, Files.GOOD.indexOf("  - leader"));
        assertEquals(200, Files.drill(head + count.repeat(200)).steps().size());
        assertEquals(List.of("error text-empty-or-too-long 6:1 'steps'"), found(head + count.repeat(201)));
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource({
        "level: intermediate, level: intermedate, Did you mean 'intermediate'? Known: beginner; intermediate;"
                + " training.",
        "level: intermediate, level: expert, Known: beginner; intermediate; training.",
        "weapon: foil, weapon: foyl, Did you mean 'foil'? Known: foil; epee; sabre; none.",
        "form: partner, form: parter, Did you mean 'partner'? Known: partner; solo.",
        "closing: Salute., hands: oposite, Did you mean 'opposite'? Known: same; opposite.",
        "closing: Salute., works-on: [lines], Did you mean 'line'? Known: stance; footwork; line; distance;"
                + " timing; attention; tactics."
    })
    void an_unknown_word_is_named_with_the_nearest_known(String good, String bad, String advice) {
        String text = Files.with(good, bad);
        assertEquals("unknown-word", Files.onlyError(text).rule());
        assertEquals(advice.replace(';', ','), wayOut(text));
    }

    @Test
    void a_choice_is_known_with_accents_and_capitals() {
        assertEquals(
                Weapon.EPEE,
                Files.drill(Files.with("weapon: foil", "weapon: \u00c9p\u00e9e"))
                        .weapon());
        assertEquals(
                Form.SOLO,
                Files.drill(Files.with("form: partner", "form: SOLO")).form());
    }

    @Test
    void what_is_missing_is_all_named() {
        assertEquals(
                List.of(
                        "'title' is missing.",
                        "'level' is missing.",
                        "'form' is missing.",
                        "'weapon' is missing.",
                        "'steps' is missing."),
                Files.read("note: a\n").findings().stream()
                        .map(finding -> finding.what().english())
                        .toList());
    }

    @ParameterizedTest(name = "{1} in place of {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "closing: Salute.    | works-on: [line, balance]  | works-on",
                "level: intermediate | level: expert              | level",
                "level: intermediate | note: no level             | level",
                "weapon: foil        | weapon: rapier             | weapon",
                "form: partner       | form: pairs                | form",
                "closing: Salute.    | hands: lefty               | hands",
                "closing: Salute.    | needs: another-drill       | needs",
                "gear: [mask, jacket]| gear: mask                 | gear",
                "closing: Salute.    | repeat: six                | repeat",
                "closing: Salute.    | revised: today             | revised",
                "closing: Salute.    | cautions:                  | cautions",
                "closing: Salute.    | author: somebody           | author",
            })
    void a_value_without_which_the_rest_can_be_judged_is_lost_alone(String good, String bad, String key) {
        Reading<ReadDrill> reading = Files.read(Files.with(good, bad));
        assertEquals(1, reading.findings().size());
        assertEquals(
                Set.of(FieldPath.of(key)),
                reading.value().orElseThrow().places().lost());
        assertTrue(reading.whole().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"leader:, leadr:", "title:, titel:", "Extend and lunge., [Extend]"})
    void what_a_count_does_is_never_read_by_halves(String good, String bad) {
        assertTrue(Files.read(Files.with(good, bad)).value().isEmpty());
    }

    @Test
    void a_needed_key_that_is_mistyped_is_one_finding() {
        assertEquals(List.of("error unknown-key 2:1 'levl'"), found(Files.with("level:", "levl:")));
        assertEquals(List.of("error unknown-key 6:1 'setps'"), found(Files.with("steps:", "setps:")));
    }

    @Test
    void words_that_yaml_takes_for_other_things_stay_the_text_that_was_written() {
        for (String word : List.of(
                "no", "on", "1:30", "007", "1e3", "null", "~", "2026-09-01", "0x1F", ".inf", "TRUE", "=", "<<")) {
            assertEquals(
                    word,
                    Files.drill(Files.with("title: Parry of quarte", "title: " + word))
                            .title());
        }
    }

    @Test
    void a_turn_may_be_split_into_what_is_printed_and_what_is_read() {
        String text = Files.with("follower: Parry quarte.", "follower: {say: Parez., means: Parry quarte.}");
        assertEquals(
                new Turn("Parez.", "Parry quarte."),
                Files.drill(text).steps().get(0).follower().orElseThrow());
        assertEquals(
                List.of("error key-missing 8:15 ''"),
                found(Files.with("follower: Parry quarte.", "follower: {say: Parez.}")));
        assertEquals(
                List.of("error unknown-key 8:44 'mean'"),
                found(Files.with("follower: Parry quarte.", "follower: {say: Parez., means: Parry., mean: x}")));
    }

    @Test
    void all_problems_of_a_file_come_in_one_pass_and_by_place() {
        String text = Files.with("intermediate", "intermedate")
                        .replace("foil", "foyl")
                        .replace("distance: lunge\n    safety", "distnace: lunge\n    safety")
                + "repeat: six\ntitle: again\n";
        assertEquals(
                List.of(
                        "error unknown-word 2:8 'intermedate'",
                        "error unknown-word 4:9 'foyl'",
                        "error unknown-key 9:5 'distnace'",
                        "error wrong-kind 15:9 'six'",
                        "error key-twice 16:1 'title'"),
                found(text));
        assertTrue(Files.read(text).value().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "# nothing but a remark\n", "   \n"})
    void an_empty_file_is_said_to_be_empty(String text) {
        assertEquals(
                "This file is empty, or has nothing but remarks in it.",
                Files.onlyError(text).what().english());
    }

    @ParameterizedTest
    @ValueSource(strings = {"- leader: a\n", "Just a sentence.\n", "---\n", "[a, b]\n"})
    void a_file_without_keys_is_said_to_have_none(String text) {
        assertEquals(
                "The file has no keys at the left edge.",
                Files.onlyError(text).what().english());
    }

    @Test
    void a_second_document_is_found_where_it_begins() {
        assertEquals(List.of("error several-in-one-file 16:1 ''"), found(Files.GOOD + "---\ntitle: b\n"));
    }

    /** YAML 1.2.2, 9.1.4: a directive stands before a document's {@code ---}, never behind its end. */
    @ParameterizedTest
    @ValueSource(strings = {"%YAML 1.1", "%TAG ! tag:invented.example,2026:", "%FOO bar"})
    void a_directive_behind_the_document_is_not_passed_over(String directive) {
        assertEquals(
                List.of("error lost-text 17:1 '" + directive + "'"),
                found(Files.GOOD + "...\n# end\n" + directive + "\n"));
        assertEquals(List.of(), found("%YAML 1.1\n---\n" + Files.GOOD + "...\n# 50 %\n"));
    }

    @Test
    void a_file_that_is_too_large_is_not_looked_at() {
        byte[] large = "#".repeat(256 * 1024 + 1).getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        Reading<ReadDrill> reading = Files.read(large);
        assertEquals(
                List.of("This file is larger than 256 KiB."),
                reading.findings().stream()
                        .map(finding -> finding.what().english())
                        .toList());
        Files.drill(Files.GOOD + "#".repeat(256 * 1024 - Files.GOOD.length()));
    }

    @Test
    void an_anchor_a_reference_or_a_tag_is_no_text() {
        assertEquals(
                List.of("error lost-text 1:8 '&t Parry of quarte'", "error wrong-kind 14:1 'closing'"),
                found(Files.with("title: P", "title: &t P").replace("closing: Salute.", "closing: *t")));
        assertEquals(
                List.of("error lost-text 1:8 '!!str Parry of quarte'"),
                found(Files.with("title: P", "title: !!str P")));
        assertEquals(List.of("error lost-text 5:7 '!x [mask, jacket]'"), found(Files.with("gear: [", "gear: !x [")));
        assertEquals(List.of("error lost-text 1:1 '&k title'"), found(Files.with("title: P", "&k title: P")));
    }

    @Test
    void a_reference_to_itself_ends() {
        assertTrue(Files.read("&a title: *a\n").value().isEmpty());
        assertTrue(Files.read("steps: &s [*s]\n").value().isEmpty());
        assertTrue(Files.read("accept: &s {a: *s}\n").value().isEmpty());
    }

    @Test
    void a_bomb_of_references_is_refused_at_once() {
        String bomb = "a: &a [x,x,x,x,x,x,x,x,x]\n"
                + IntStream.range(0, 12)
                        .mapToObj(at -> {
                            String of = "*" + (char) ('a' + at);
                            String name = Character.toString('b' + at);
                            return name + ": &" + name + " [" + String.join(",", java.util.Collections.nCopies(9, of))
                                    + "]\n";
                        })
                        .collect(Collectors.joining());
        assertTimeout(
                Duration.ofSeconds(10),
                () -> assertTrue(Files.read(bomb).value().isEmpty()));
    }

    @ParameterizedTest
    @ValueSource(ints = {13, 1000, 100_000})
    void deep_nesting_is_refused_at_once(int deep) {
        assertTimeout(
                Duration.ofSeconds(10),
                () -> assertTrue(Files.onlyError("title: " + "[".repeat(deep))
                        .what()
                        .english()
                        .startsWith("Lists and keys are nested")));
    }

    @Test
    void an_escape_of_no_character_is_found() {
        assertEquals(
                List.of("error broken-yaml 1:9 '\\UFFFFFFFF'"),
                found(Files.with("Parry of quarte", "\"\\UFFFFFFFF\"")));
    }

    /** Marks below go before marks above (canonical classes 220 and 230, Unicode standard section 3.11). */
    @Test
    void marks_without_a_letter_before_them_come_in_order() {
        assertEquals(
                "\u0316\u0300x",
                Files.drill(Files.with("Parry of quarte", "\u0300\u0316x")).title());
    }

    @Test
    void texts_come_in_normal_form_and_trimmed() {
        assertEquals(
                "\u00e9p\u00e9e",
                Files.drill(Files.with("Parry of quarte", "\"  e\u0301pe\u0301e \""))
                        .title());
        assertEquals(
                "\u00e9",
                Files.drill(Files.GOOD + "accept: {e\u0301: reason}\n")
                        .accept()
                        .keySet()
                        .iterator()
                        .next());
    }
}
