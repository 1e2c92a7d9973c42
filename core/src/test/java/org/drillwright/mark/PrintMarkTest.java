package org.drillwright.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.drillwright.check.Example;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.read.DrillReader;
import org.drillwright.read.SchoolReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PrintMarkTest {

    private static final String STEPS = """
            steps:
              - leader: Advance.
                follower: Retreat, slowly.
                distance: out
            """;

    private static School school(String settings) {
        return SchoolReader.read("school.yaml", settings.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow()
                .school();
    }

    private static String mark(String lines, School school) {
        byte[] text = Example.complete(lines).getBytes(StandardCharsets.UTF_8);
        var read = new DrillReader(school).read("example", "example.yaml", text);
        return PrintMark.of(read.value().orElseThrow().drill(), school).shown();
    }

    private static String mark(String lines) {
        return mark(lines, School.DEFAULT);
    }

    /** The form was written out by hand; its SHA-256 was taken, and put to base 18, in another language. */
    @Test
    void is_the_hash_of_the_form_in_eighteen_signs() {
        assertEquals("M3YN-KMX4", mark("steps: []\n"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "# a remark\n",
                "tags: [spring]\n",
                "works-on: [line]\n",
                "needs: []\n",
                "accept: {not-back-at-start: it ends elsewhere}\n"
            })
    void doesNotChangeWithWhatNoCardSays(String line) {
        assertEquals(mark(STEPS), mark(line + STEPS));
    }

    @Test
    void does_not_change_with_the_order_of_keys_nor_the_way_a_word_is_written() {
        String other = """
                steps:
                  - distance: "out"
                    follower: >-
                      Retreat,
                      slowly.
                    leader: 'Advance.'
                title: An   example
                """;
        assertEquals(mark("title: An example\n" + STEPS), mark(other));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "title: Another\n",
                "gear: [mask, jacket, glove]\n",
                "repeat: 6\n",
                "swap: true\n",
                "hands: opposite\n",
                "purpose: To go on.\n",
                "cautions: [Slowly.]\n",
                "revised: 2026-09-01\n",
                "note: Slowly.\n"
            })
    void changes_with_what_a_card_says(String line) {
        assertNotEquals(mark(STEPS), mark(line + STEPS));
    }

    @Test
    void changes_with_a_word_of_a_turn_and_with_a_number() {
        assertNotEquals(mark(STEPS), mark(STEPS.replace("slowly", "quickly")));
        assertNotEquals(mark(STEPS), mark(STEPS + "    number: 2\n"));
        assertEquals(mark(STEPS), mark(STEPS + "    number: 1\n"));
    }

    @Test
    void changes_with_the_gear_in_force_and_the_language_of_the_labels() {
        School usual = school("name: Ours\n");
        // What a drill lists itself is in force; elsewhere the school's own list is.
        assertEquals(mark(STEPS, usual), mark(STEPS, school("gear: {foil: [mask]}\n")));
        assertNotEquals(mark(STEPS, usual), mark(STEPS, school("language: fr\n")));
        assertEquals(Language.ENGLISH, usual.language());
    }

    @Test
    void has_no_signs_that_are_easily_confused() {
        for (String alike : List.of("0OQD", "1IL", "2Z", "5S", "8B", "6G", "UV")) {
            long there = alike.chars()
                    .filter(sign -> PrintMark.ALPHABET.indexOf(sign) >= 0)
                    .count();
            assertTrue(there <= 1, alike);
        }
        assertEquals(
                PrintMark.ALPHABET.length(),
                PrintMark.ALPHABET.chars().distinct().count());
    }

    @Test
    void is_read_whatever_its_case_and_gaps() {
        Optional<PrintMark> mark = Optional.of(new PrintMark("7K3MP9RX"));
        assertEquals(mark, PrintMark.read("7K3M-P9RX"));
        assertEquals(mark, PrintMark.read(" 7k3m p9rx "));
        assertEquals(mark, PrintMark.read("7K3M\u2013P9RX"));
    }

    @Test
    void what_is_none_is_said_to_be_none() {
        assertEquals(Optional.empty(), PrintMark.read("7K3M"));
        assertEquals(
                "A mark has 8 signs; '7K3M' has 4.", PrintMark.wrongWith("7K3M").english());
        assertTrue(PrintMark.wrongWith("0K3M-P9RX").english().startsWith("'0' stands in no mark"));
    }
}
