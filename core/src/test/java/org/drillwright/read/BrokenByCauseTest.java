package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Faults by their cause, as the chapters of YAML 1.2.2 forbid them (5.7 escapes, 6.1 indents, 6.6 comments, 6.8 directives,
 * 7.3 and 7.4 quotations and brackets, 8.1 texts below their key, 9.1 documents): each is named, at its line, and never
 * as a line that just does not fit.
 */
class BrokenByCauseTest {

    private static final String GOOD = """
            title: Parry of quarte
            level: intermediate
            form: partner
            weapon: foil
            works-on: [blade]
            gear: [mask, jacket]
            start: On guard in sixte, at lunge distance.
            steps:
              - leader: Extend and lunge.
                follower: Parry quarte.
              - leader: Recover.
                follower: Straight riposte with the arm.
            closing: Salute.
            """;

    static Stream<Arguments> faults() {
        return Stream.of(
                // Tabs.
                slip(
                        "  - leader: Recover.",
                        "\t- leader: Recover.",
                        11,
                        "This line begins with a tab; YAML needs spaces."),
                slip("  - leader: Recover.", "  -\tleader: Recover.", 11, "There is a tab here; YAML needs spaces."),
                slip("works-on: [blade]", "works-on:\n\t- blade", 6, "This line begins with a tab; YAML needs spaces."),
                slip(
                        "gear: [mask, jacket]",
                        "gear: [mask,\n\tjacket]",
                        7,
                        "This line begins with a tab; YAML needs spaces."),
                slip(
                        "closing: Salute.",
                        "closing: |\n\tSalute.",
                        14,
                        "This line begins with a tab; YAML needs spaces."),
                slip("weapon: foil", "weapon: foil\n\t", 5, "This line begins with a tab; YAML needs spaces."),
                slip("weapon: foil", "weapon: foil\n\t# x", 5, "This line begins with a tab; YAML needs spaces."),
                // Quotation marks.
                slip(
                        "title: Parry of quarte",
                        "title: \"Parry of quarte",
                        1,
                        "A quotation mark is opened here and never closed."),
                slip(
                        "title: Parry of quarte",
                        "title: 'Parry of quarte",
                        1,
                        "A quotation mark is opened here and never closed."),
                slip(
                        "gear: [mask, jacket]",
                        "gear: [\"mask, jacket]",
                        6,
                        "A quotation mark is opened in this list and never closed."),
                slip(
                        "  - leader: Recover.",
                        "  - leader: \"Recover.",
                        11,
                        "A quotation mark is opened here and never closed."),
                slip("weapon: foil", "\"weapon: foil", 4, "A quotation mark is opened here and never closed."),
                slip(
                        "title: Parry of quarte",
                        "title: \"Parry\" of quarte",
                        1,
                        "There is text after the closing quotation mark."),
                slip(
                        "title: Parry of quarte",
                        "title: 'Parry' of quarte",
                        1,
                        "There is text after the closing quotation mark."),
                slip(
                        "title: Parry of quarte",
                        "title: \"Parry\" \"quarte\"",
                        1,
                        "The quotation ends here, at the same mark inside the text."),
                slip(
                        "title: Parry of quarte",
                        "title: 'It's a parry'",
                        1,
                        "The quotation ends here, at the same mark inside the text."),
                slip("weapon: foil", "\"weapon\" foil: x", 4, "There is no colon right behind the key."),
                // Colons and keys.
                slip("level: intermediate", "level intermediate", 2, "A colon is missing after 'level'."),
                slip("steps:", "steps", 8, "A colon is missing after 'steps'."),
                slip(
                        "    follower: Parry quarte.",
                        "    follower Parry quarte.",
                        10,
                        "A colon is missing after 'follower'."),
                slip(
                        "title: Parry of quarte",
                        "Parry of quarte\ntitle: Parry of quarte",
                        2,
                        "This key comes in the middle of a text: a line above has no key."),
                slip(
                        "title: Parry of quarte",
                        "title: Parry: of quarte",
                        1,
                        "A sentence with a colon in it needs quotation marks round the whole text."),
                slip(
                        "title: Parry of quarte",
                        "title: a: b: c",
                        1,
                        "A sentence with a colon in it needs quotation marks round the whole text."),
                slip(
                        "level: intermediate",
                        "level: intermediate form: partner",
                        2,
                        "The key 'form' needs a line of its own."),
                slip("weapon: foil", "weapon:foil", 4, "A space is missing after the colon."),
                slip("  - leader: Recover.", "  - leader:Recover.", 11, "A space is missing after the colon."),
                slip("weapon: foil", "weapon = foil", 4, "A colon is missing after 'weapon'."),
                slip("weapon: foil", "weapon: foil;\nform; partner", 5, "A colon is missing after 'form'."),
                slip("weapon: foil", ": foil", 4, "A key is missing before this colon."),
                // Indents and dashes.
                slip(
                        "  - leader: Recover.",
                        " - leader: Recover.",
                        11,
                        "This line is not lined up with the lines it belongs to."),
                slip(
                        "  - leader: Recover.",
                        "    - leader: Recover.",
                        11,
                        "This line is not lined up with the lines it belongs to."),
                slip(
                        "    follower: Parry quarte.",
                        "   follower: Parry quarte.",
                        10,
                        "This line is not lined up with the lines it belongs to."),
                slip(
                        "    follower: Parry quarte.",
                        "      follower: Parry quarte.",
                        10,
                        "This line is not lined up with the lines it belongs to."),
                slip(
                        "weapon: foil",
                        "weapon: foil\n  colour: red",
                        5,
                        "This line is not lined up with the lines it belongs to."),
                slip(
                        "works-on: [blade]",
                        "works-on: - blade",
                        5,
                        "A list with dashes begins on the line below its key."),
                slip("weapon: foil", "weapon: foil\n- mask", 5, "This item belongs to no list."),
                slip(
                        "  - leader: Recover.",
                        "    leader: Recover.",
                        11,
                        "'leader' is here a second time (first on line 9)."),
                slip("  - leader: Recover.", "  -leader: Recover.", 11, "A space is missing after the dash."),
                slip(
                        "  - leader: Recover.",
                        "  -- leader: Recover.",
                        11,
                        "A list item begins with a plain hyphen, not with '--'."),
                slip(
                        "  - leader: Recover.",
                        "  2. leader: Recover.",
                        11,
                        "A count begins with a dash, not with its number."),
                slip(
                        "title: Parry of quarte",
                        "title:\nParry of quarte",
                        2,
                        "A sentence that continues on a new line must be indented further than its key."),
                // Keys that come twice.
                slip(
                        "weapon: foil",
                        "weapon: foil\nweapon: epee",
                        5,
                        "'weapon' is here a second time (first on line 4)."),
                // Signs that mean something to YAML at the beginning of a text.
                slip(
                        "title: Parry of quarte",
                        "title: *parry",
                        1,
                        "Text that begins with '*' has a special meaning in YAML."),
                slip(
                        "closing: Salute.",
                        "closing: *Salute* the partner.",
                        13,
                        "Text that begins with '*' has a special meaning in YAML."),
                slip(
                        "title: Parry of quarte",
                        "title: &parry",
                        1,
                        "The words '&parry' are lost: text cannot begin with '&' in YAML."),
                slip(
                        "title: Parry of quarte",
                        "title: &a &b Parry",
                        1,
                        "Text that begins with '&' has a special meaning in YAML."),
                slip(
                        "title: Parry of quarte",
                        "title: & parry",
                        1,
                        "Text that begins with '&' has a special meaning in YAML."),
                slip(
                        "title: Parry of quarte",
                        "title: !<tag Parry",
                        1,
                        "Text that begins with '!' has a special meaning in YAML."),
                slip(
                        "title: Parry of quarte",
                        "title: !e!foo Parry",
                        1,
                        "Text that begins with '!' has a special meaning in YAML."),
                slip(
                        "title: Parry of quarte",
                        "title: @parry of quarte",
                        1,
                        "Text that begins with '@' has a special meaning in YAML."),
                slip(
                        "title: Parry of quarte",
                        "title: `parry` of quarte",
                        1,
                        "Text that begins with '`' has a special meaning in YAML."),
                slip(
                        "title: Parry of quarte",
                        "title: %parry",
                        1,
                        "Text that begins with '%' has a special meaning in YAML."),
                slip(
                        "title: Parry of quarte",
                        "title: ? Parry",
                        1,
                        "Text that begins with '?' has a special meaning in YAML."),
                slip(
                        "title: Parry of quarte",
                        "title: |Parry",
                        1,
                        "Text that begins with '|' has a special meaning in YAML."),
                slip(
                        "title: Parry of quarte",
                        "title: >Parry",
                        1,
                        "Text that begins with '>' has a special meaning in YAML."),
                slip(
                        "closing: Salute.",
                        "closing: | Salute.\n  Masks.",
                        13,
                        "Text that begins with '|' has a special meaning in YAML."),
                slip(
                        "closing: Salute.",
                        "closing: > Salute.\n  Masks.",
                        13,
                        "Text that begins with '>' has a special meaning in YAML."),
                slip(
                        "closing: Salute.",
                        "closing: |0\n  Salute.",
                        13,
                        "Text that begins with '|' has a special meaning in YAML."),
                slip(
                        "closing: Salute.",
                        "closing: |x\n  Salute.",
                        13,
                        "Text that begins with '|' has a special meaning in YAML."),
                // Brackets, braces and commas.
                slip(
                        "gear: [mask, jacket]",
                        "gear: [mask, jacket",
                        6,
                        "A list is opened here with '[' and never closed."),
                slip(
                        "  - leader: Recover.\n    follower: Straight riposte with the arm.",
                        "  - {leader: Recover., follower: Straight riposte",
                        11,
                        "Keys are opened here with '{' and never closed."),
                slip(
                        "gear: [mask, jacket]",
                        "gear: [mask, jacket]]",
                        6,
                        "This list is closed once more often than it was opened."),
                slip("gear: [mask, jacket]", "gear: [mask, jacket}", 6, "What is opened with '[' is closed with ']'."),
                slip(
                        "  - leader: Recover.\n    follower: Straight riposte with the arm.",
                        "  - {leader: Recover., follower: Straight riposte]",
                        11,
                        "What is opened with '{' is closed with '}'."),
                slip("gear: [mask, jacket]", "gear: [mask,, jacket]", 6, "There is nothing before this comma."),
                slip("gear: [mask, jacket]", "gear: [, mask, jacket]", 6, "There is nothing before this comma."),
                slip(
                        "gear: [mask, jacket]",
                        "gear: [\"mask\" \"jacket\"]",
                        6,
                        "A comma is missing here, between two items of the list."),
                slip(
                        "gear: [mask, jacket]",
                        "gear: [mask, jacket] for all",
                        6,
                        "There is text after the closing bracket."),
                slip(
                        "  - leader: Recover.\n    follower: Straight riposte with the arm.",
                        "  - {leader: Recover., follower: Straight riposte} twice",
                        11,
                        "There is text after the closing bracket."),
                slip(
                        "title: Parry of quarte",
                        "title: [Parry] of quarte",
                        1,
                        "There is text after the closing bracket."),
                slip(
                        "title: Parry of quarte",
                        "title: {Parry} of quarte",
                        1,
                        "There is text after the closing bracket."),
                slip(
                        "title: Parry of quarte",
                        "title: \"Parry of quarte\",",
                        1,
                        "No comma is needed at the end of this line."),
                slip("weapon: foil", "\"weapon\": \"foil\",", 4, "No comma is needed at the end of this line."),
                // Remarks.
                slip(
                        "closing: Salute.",
                        "closing: Salute\n  # remark\n  the partner.",
                        15,
                        "The remark above ends the text, which goes on here."),
                // Texts below their key.
                slip(
                        "closing: Salute.",
                        "closing: |\n    Salute.\n  Masks on.\n",
                        14,
                        "All lines of a text below '|' or '>' begin in the same column."),
                slip(
                        "closing: Salute.",
                        "closing: |\n     \n  Salute.\n",
                        15,
                        "An empty line in front of this text has more spaces than the text itself."),
                slip(
                        "closing: Salute.",
                        "closing: |\nSalute.",
                        14,
                        "A sentence that continues on a new line must be indented further than its key."),
                // Backslashes.
                slip(
                        "title: Parry of quarte",
                        "title: \"Parry \\of quarte\"",
                        1,
                        "Between double quotation marks a backslash stands for a special character, and this one for none."),
                slip(
                        "title: Parry of quarte",
                        "title: \"Parry \\'quarte\\'\"",
                        1,
                        "Between double quotation marks a backslash stands for a special character, and this one for none."),
                slip(
                        "title: Parry of quarte",
                        "title: \"Parry \\xZZ\"",
                        1,
                        "Between double quotation marks a backslash stands for a special character, and this one for none."),
                slip(
                        "title: Parry of quarte",
                        "title: \"Parry \\u12\"",
                        1,
                        "Between double quotation marks a backslash stands for a special character, and this one for none."),
                slip(
                        "title: Parry of quarte",
                        "title: \"C:\\Drills\\quarte\"",
                        1,
                        "Between double quotation marks a backslash stands for a special character, and this one for none."),
                // Lines that part documents.
                slip(
                        "title: Parry of quarte",
                        "title: \"Parry\n---\nof quarte\"",
                        2,
                        "A line of '---' or '...' ends the file in the middle of a quotation."),
                slip(
                        "title: Parry of quarte",
                        "title: 'Parry\n...\nof quarte'",
                        2,
                        "A line of '---' or '...' ends the file in the middle of a quotation."),
                slip(
                        "title: Parry of quarte",
                        "--- title: Parry of quarte",
                        1,
                        "'---' at the beginning of a line parts documents from one another, and a file holds one."),
                slip("weapon: foil", "weapon: foil\n---", 6, "A second document begins here (after a line of '---')."),
                slip(
                        "weapon: foil",
                        "weapon: foil\n...",
                        5,
                        "'...' at the beginning of a line parts documents from one another, and a file holds one."),
                slip(
                        "closing: Salute.",
                        "closing: Salute.\n... bye",
                        14,
                        "'...' at the beginning of a line parts documents from one another, and a file holds one."),
                slip(
                        "closing: Salute.",
                        "closing: Salute.\n---#x",
                        14,
                        "'---' at the beginning of a line parts documents from one another, and a file holds one."),
                // Lines for YAML itself.
                slip("weapon: foil", "%weapon: foil", 4, "A line that begins with '%' is meant for YAML itself."),
                slip(
                        "    follower: Straight riposte with the arm.",
                        "    follower: Straight riposte with the arm.\n% end",
                        13,
                        "A line that begins with '%' is meant for YAML itself."),
                slip(
                        "title: Parry of quarte",
                        "%YAML 1.x\n---\ntitle: Parry of quarte",
                        1,
                        "A line that begins with '%' is meant for YAML itself."),
                slip(
                        "title: Parry of quarte",
                        "%YAML 1.1\n%YAML 1.1\n---\ntitle: Parry of quarte",
                        2,
                        "A line that begins with '%' is meant for YAML itself."),
                slip(
                        "title: Parry of quarte",
                        "%YAML 1.1\ntitle: Parry of quarte",
                        1,
                        "A line that begins with '%' is meant for YAML itself."),
                slip(
                        "title: Parry of quarte",
                        "%YAML 2.0\n---\ntitle: Parry of quarte",
                        1,
                        "A line that begins with '%' is meant for YAML itself."));
    }

    private static Arguments slip(String good, String bad, int line, String sentence) {
        return arguments(good, bad, line, sentence);
    }

    @ParameterizedTest
    @MethodSource("faults")
    void a_fault_is_named_by_its_cause_at_its_line(String good, String bad, int line, String sentence) {
        Finding first = first(GOOD.replace(good, bad));
        assertEquals(
                line + ": " + sentence,
                first.position().line() + ": " + first.what().english().replace(" Nothing in this file was read.", ""));
    }

    /** In the reader's language as well, with a way out. */
    @ParameterizedTest
    @MethodSource("faults")
    void and_in_every_language(String good, String bad, int line, String sentence) {
        Finding first = first(GOOD.replace(good, bad));
        for (String language : List.of("fr", "it", "es", "de")) {
            Locale locale = Locale.forLanguageTag(language);
            assertFalse(first.what().in(locale).contains(sentence), first.what().in(locale));
            assertFalse(first.wayOut().in(locale).isBlank(), first.what().in(locale));
        }
    }

    private static Finding first(String text) {
        return Files.read(text).findings().stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .filter(finding -> List.of("broken-yaml", "lost-text", "several-in-one-file", "key-twice")
                        .contains(finding.rule()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing was found in:\n" + text));
    }
}
