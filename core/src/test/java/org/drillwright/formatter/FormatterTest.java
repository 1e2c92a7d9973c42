package org.drillwright.formatter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.check.Corpus;
import org.drillwright.read.ReadDrill;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The layout as the page of formats describes it, worked by hand. */
class FormatterTest {

    @Test
    void order_parts_quotes_lists_and_remarks() {
        String untidy = """
                # yaml-language-server: $schema=drill.schema.json

                # The name on the card.
                title:   "Parry of quarte"
                level: "intermediate"
                swap: "true"   # they change over
                weapon: 'foil'
                form: partner
                # Who wears what.
                gear:
                - mask
                - 'jacket'
                works-on: [ line,
                   timing ]   # both


                steps:
                    - follower: "Parry: quarte."
                      leader: {say: Parez, means: "Hold."}   # by the count
                      number: '1'

                    # Now back.
                    - leader: Recover.   # slow
                      # nobody hurries

                # The end.
                closing: Salute.
                start: >
                    On guard
                    in sixte.
                cautions: [Masks stay on.]
                call-me: x
                # bye
                """.replace("call-me: x\n", "").replace("Recover.   # slow", "Recover.");
        assertEquals("""
                # yaml-language-server: $schema=drill.schema.json

                # The name on the card.
                title: Parry of quarte
                level: intermediate
                form: partner
                weapon: foil
                works-on: [line, timing] # both

                # Who wears what.
                gear: [mask, jacket]

                start: On guard in sixte.
                steps:
                  - number: 1
                    leader: {say: Parez, means: Hold.} # by the count
                    follower: "Parry: quarte."
                  # Now back.
                  - leader: Recover.
                    # nobody hurries

                # The end.
                closing: Salute.

                swap: true # they change over
                cautions:
                  - Masks stay on.

                # bye
                """, Tidying.of(untidy));
    }

    private static String with(String lines) {
        return "title: x\nlevel: beginner\nform: solo\nweapon: none\nsteps: []\n" + lines;
    }

    private static String laid(String lines) {
        String tidied = Tidying.of(with(lines));
        return tidied.substring(tidied.lastIndexOf("\n\n") + 2);
    }

    private static String counts(String steps) {
        String tidied = Tidying.of("title: x\nlevel: beginner\nform: solo\nweapon: none\n" + steps);
        return tidied.substring(tidied.indexOf("\n\n") + 2);
    }

    @Test
    void a_remark_stays_with_its_count() {
        assertEquals("""
                steps:
                  # above one
                  - leader: "On guard." # beside one
                    # before the follower
                    follower: Hold.
                    # at the end of one
                  # above two
                  # two waits
                  - leader: Hold.
                    follower: Advance.
                  # in the line of the dash
                  - leader: Hold.
                    follower: Hold.
                    # at the end of three
                  # at the end of all
                """, counts("""
                steps:
                 # above one
                 - leader: "On guard." # beside one
                   # before the follower
                   follower: Hold.
                   # at the end of one
                 # above two
                 - follower: Advance.
                   # two waits
                   leader: Hold.
                 -    # in the line of the dash
                   leader: Hold.
                   follower: Hold.
                   # at the end of three
                 # at the end of all
                """));
    }

    @Test
    void a_remark_stays_with_its_count_when_brackets_go() {
        assertEquals("""
                steps: # both are slow
                  # above one
                  # beside one
                  - leader: Advance.
                    follower: Retreat. # in one
                  # above two
                  # beside two
                  - leader: Retreat.
                    # before the follower
                    follower: Advance.
                  # at the end of all
                """, counts("""
                steps: [ # both are slow
                  # above one
                  {follower: "Retreat.", # in one
                   leader: Advance.}, # beside one
                      # above two
                  {leader: Retreat.,
                # before the follower
                   follower: Advance.} # beside two
                  # at the end of all
                ]
                """));
        assertEquals("""
                steps:
                  # beside one
                  - leader: Advance.
                    follower: Retreat.
                    # at the end of one
                  # above two
                  - leader: Retreat.
                    follower: Advance.
                """, counts("""
                steps:
                  - {leader: Advance., follower: Retreat.} # beside one
                    # at the end of one
                  # above two
                  - {leader: Retreat., follower: Advance.}
                """));
    }

    /** 'note: ' and 94 characters are 100 columns; one more is folded, at 98 columns behind two blanks. */
    @Test
    void a_text_is_folded_beyond_100_columns() {
        String word = "abcdefghi ";
        String fits = word.repeat(9) + "abcd";
        assertEquals("note: " + fits + "\n", laid("note: >-\n  " + fits + "\n"));
        String over = word.repeat(9) + "abcde";
        assertEquals("note: >-\n  " + over + "\n", laid("note: " + over + "\n"));
        String two = word.repeat(12) + "z";
        assertEquals(
                "note: >-\n  " + word.repeat(9).strip() + "\n  " + word.repeat(3) + "z\n", laid("note: " + two + "\n"));
    }

    @Test
    void lines_of_the_authors_stay_lines() {
        assertTrue(Tidying.of(with("note: \"First slowly,\\n\\n  then less so.\"\n"))
                .endsWith("\n\nnote: |-\n  First slowly,\n\n    then less so.\n"));
    }

    @Test
    void a_remark_beside_several_words_needs_quotes() {
        assertEquals("note: \"two words\" # why\n", laid("note: 'two words' # why\n"));
        assertEquals("note: word # why\n", laid("note: 'word' # why\n"));
        String lines = "word ".repeat(18) + "word";
        assertEquals(
                "note: >- # why\n  " + lines + "\n  word word\n", laid("note: > # why\n  " + lines + " word word\n"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "null",
                "~",
                "yes",
                "1:30",
                "007",
                "2026-09-01",
                "1e3",
                "- x",
                "a: b",
                "a #b",
                "*a",
                "[x",
                "x:",
                "#x",
                "? x",
                "@x",
                "'x"
            })
    void quotes_stay_where_they_are_needed(String text) {
        assertEquals("note: \"" + text + "\"\n", laid("note: \"" + text + "\"\n"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"a:b", "a#b", "-x", "x, y", "it's", "a [b] {c}", "\u00e9p\u00e9e", "x - y", "100 %", "1. e4"})
    void quotes_go_where_they_are_not(String text) {
        assertEquals("note: " + text + "\n", laid("note: \"" + text + "\"\n"));
    }

    @Test
    void a_text_with_double_quotes_takes_single_ones() {
        assertEquals("note: '\"a\": it''s'\n", laid("note: \"\\\"a\\\": it's\"\n"));
    }

    @Test
    void the_files_own_line_ends_stay() {
        assertTrue(Tidying.of(with("note: 'x'\n").replace("\n", "\r\n")).endsWith("\r\n\r\nnote: x\r\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"%YAML 1.1\n---\n", "# first\n%TAG ! tag:invented.example,2026:\n# then\n---\n"})
    void a_file_with_directives_is_left_alone(String head) {
        assertEquals(
                "LeftAlone[why=It begins with a line for YAML itself ('%'), which the one layout has no place for.]",
                Tidying.of(head + with("note: 'x'\n")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"note: a text # lost", "titel: x", "note: [", "\ufefftags: []"})
    void a_file_with_findings_is_left_alone(String line) {
        String text = line.startsWith("\ufeff") ? "\ufeff" + with(line.substring(1)) : with(line + "\n");
        assertEquals("LeftAlone[why=It has findings; 'check' shows them.]", Tidying.of(text));
    }

    static Stream<Path> exampleDrills() {
        return Stream.of(Path.of("..", "drills"), Path.of("src", "test", "resources", "correct"))
                .flatMap(folder -> Corpus.drillFiles(folder).stream());
    }

    @ParameterizedTest
    @MethodSource("exampleDrills")
    void example_drills_keep_what_they_mean(Path file) throws IOException {
        String text = Files.readString(file);
        assertTrue(Tidying.isTaken(text), file.toString());
        Tidying.assertKept(text, List.of());
    }

    @Test
    void there_are_example_drills() throws IOException {
        assertTrue(exampleDrills().count() >= 60);
    }

    @Test
    void the_authors_letters_stay_as_they_were_typed() {
        String apart = "e\u0301pe\u0301e";
        assertEquals("note: " + apart + "\n", laid("note: '" + apart + "'\n"));
        ReadDrill drill =
                Tidying.read(Tidying.of(with("note: " + apart + "\n"))).value().orElseThrow();
        assertEquals("\u00e9p\u00e9e", drill.drill().note());
    }
}
