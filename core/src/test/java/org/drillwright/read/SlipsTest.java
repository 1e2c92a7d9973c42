package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.source.Finding;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The slips that people make who write no programs. Each row: what the author meant, what was written, and the sentence
 * that says so. The mended line is put in as the finding advises; then the file reads, and as the drill that was meant.
 */
class SlipsTest {

    private static final String FOLLOWER = "    follower: Parry quarte.\n";

    static Stream<Arguments> slips() {
        return Stream.of(
                slip(
                        "title: \"Quarte: the parry\"",
                        "title: Quarte: the parry",
                        "A sentence with a colon in it needs quotation marks"),
                slip(
                        "follower: \"Note: parry\"",
                        "follower: Note: parry",
                        "A sentence with a colon in it needs" + " quotation marks"),
                slip(
                        "follower: \"Parry now:\"",
                        "follower: Parry now:",
                        "A sentence with a colon in it needs" + " quotation marks"),
                slip(
                        "follower: 'Say \"now\": parry'",
                        "follower: Say \"now\": parry",
                        "A sentence with a colon in it needs quotation marks"),
                slip(FOLLOWER, "\tfollower: Parry quarte.\n", "This line begins with a tab"),
                slip(FOLLOWER, "  \t follower: Parry quarte.\n", "This line begins with a tab"),
                slip("level: intermediate", "\tlevel: intermediate", "This line begins with a tab"),
                slip("follower: Parry quarte.", "follower:\tParry quarte.", "There is a tab here"),
                slip("  - leader: Extend", "  -\tleader: Extend", "There is a tab here"),
                slip("  - leader: Extend", "    leader: Extend", "A dash is missing"),
                slip("  - leader: Extend", "  leader: Extend", "A dash is missing"),
                slip("  - leader: Recover", "  leader: Recover", "A dash is missing"),
                slip("  - leader: Recover", "    leader: Recover", "'leader' is here a second time (first on line 7)."),
                slip("  - leader: Extend", "  -leader: Extend", "A space is missing after the dash"),
                slip("  - leader: Recover", "  -leader: Recover", "A space is missing after the dash"),
                slip(
                        "  - leader: Recover",
                        "  \u2013 leader: Recover",
                        "A list item begins with a plain hyphen, not with '\u2013'"),
                slip(
                        "  - leader: Recover",
                        "  \u2022 leader: Recover",
                        "A list item begins with a plain hyphen, not with '\u2022'"),
                slip(
                        "  - leader: Recover",
                        "  * leader: Recover",
                        "A list item begins with a plain hyphen, not with '*'"),
                slip(
                        "title: Parry of quarte",
                        "title: \"Parry of quarte",
                        "A quotation mark is opened here and" + " never closed"),
                slip(
                        "follower: Parry quarte.",
                        "follower: 'Parry quarte.",
                        "A quotation mark is opened here" + " and never closed"),
                slip("closing: Salute.", "closing: \"Salute.", "A quotation mark is opened here and never closed"),
                slip(
                        "follower: \"Parry: quarte.\"",
                        "follower: \u201cParry: quarte.\u201d",
                        "YAML needs straight quotation marks"),
                slip(
                        "follower: \"Parez: quarte.\"",
                        "follower: \u00abParez: quarte.\u00bb",
                        "YAML needs straight quotation marks"),
                slip(
                        "follower: \"\u201cParry\u201d: quarte.\"",
                        "follower: \u201cParry\u201d: quarte.",
                        "YAML needs straight quotation marks"),
                slip("title: Parry of quarte", "title:\u00a0Parry of quarte", "There is a no-break space here"),
                slip("  - leader: Recover", "  -\u00a0leader: Recover", "There is a no-break space here"),
                slip(FOLLOWER, "\u00a0\u00a0\u00a0\u00a0follower: Parry quarte.\n", "There is a no-break space here"),
                slip(FOLLOWER, "   \u00a0follower: Parry quarte.\n", "There is a no-break space here"),
                slip(
                        FOLLOWER,
                        "   follower: Parry quarte.\n",
                        "This line is not lined up with the lines it belongs to"),
                slip(
                        FOLLOWER,
                        "     follower: Parry quarte.\n",
                        "This line is not lined up with the lines it belongs to"),
                slip(
                        "level: intermediate",
                        " level: intermediate",
                        "This line is not lined up with the lines it belongs to"),
                slip("title: Parry", " title: Parry", "This line is not lined up with the lines it belongs to"),
                slip(
                        "  - leader: Recover",
                        " - leader: Recover",
                        "This line is not lined up with the lines it belongs to"),
                slip(
                        "  - leader: Recover",
                        "   - leader: Recover",
                        "This line is not lined up with the lines it belongs to"),
                slip(
                        "blade bend.",
                        "blade\n      bend.",
                        "blade\nbend.",
                        "A sentence that continues on a new line must be indented further"),
                slip("follower: Parry quarte.", "follower:Parry quarte.", "A space is missing after the colon"),
                slip("level: intermediate", "level:intermediate", "A space is missing after the colon"),
                slip("weapon: foil", "weapon foil", "A colon is missing after 'weapon'"),
                slip("weapon: foil", "weapon; foil", "A colon is missing after 'weapon'"),
                slip("weapon: foil", "weapon = foil", "A colon is missing after 'weapon'"),
                slip("follower: Parry quarte.", "follower\uff1aParry quarte.", "A colon is missing after 'follower'"),
                slip("steps:", "steps", "A colon is missing after 'steps'"),
                slip("follower: Parry quarte.", "follower -> Parry quarte.", "A colon is missing after 'follower'"),
                slip("  - leader: Recover", "  - Leader Recover", "A colon is missing after 'Leader'"),
                slip("steps:", "steps -", "A colon is missing after 'steps'"),
                slip(
                        "steps:\n  - leader: Extend",
                        "  - leader: Extend",
                        "The line 'steps:' is missing before the first count"),
                slip("steps:", "# steps:", "The line 'steps:' is missing before the first count"),
                slip("steps:\n  - leader", "steps: - leader", "A list with dashes begins on the line below its key"),
                slip("steps:", "stpes:", "The key 'stpes' is unknown here"),
                slip("steps:", "STEPS:", "The key 'STEPS' is unknown here"),
                slip("steps:", "counts:", "The key 'counts' is unknown here"),
                slip("  - leader: Recover", "  1. leader: Recover", "A count begins with a dash, not with its number"),
                slip("  - leader: Extend", "  1) Leader: Extend", "A count begins with a dash, not with its number"),
                slip("  - leader: Recover", "  - **leader:** Recover", "A key is written without marks for bold type"),
                slip(
                        "level: intermediate",
                        "\"level\": \"intermediate\",",
                        "No comma is needed at the end of this line"),
                slip(
                        "closing: Salute.",
                        "  closing: Salute.",
                        "This line is not lined up with the lines it belongs to"),
                slip("closing: Salute.", "    closing: Salute.", "'closing' is indented too far"),
                slip(
                        "\n    follower: Parry quarte.",
                        " follower: Parry quarte.",
                        "The key 'follower' needs a line of its own"),
                slip(
                        "title: \"Parry of quarte\"",
                        "title: \"Parry of quarte\u201d",
                        "A quotation mark is opened here and never closed"),
                slip("gear: [mask, jacket]", "gear: [mask,\n  jacket", "The list that begins on line 5 with '['"),
                slip("gear: [mask, jacket]", "gear: [mask, jacket]]", "This list is closed once more"),
                slip("gear: [mask, jacket]", "gear: (mask, jacket)", "'gear' needs a list, but this is a text."),
                slip(
                        "gear: [mask, jacket]",
                        "gear: {mask, jacket}",
                        "'gear' needs a list, but this is a group" + " of keys"),
                slip("gear: [mask, jacket]", "gear: [\"mask, jacket]", "A quotation mark is opened in this list"),
                slip("steps:", "steps: [", "A list with dashes takes no bracket"),
                slip("steps:", "# -----\nsteps:", "-----\nsteps:", "A remark begins with '#'"),
                slip("steps:", "# counts\nsteps:", "// counts\nsteps:", "A remark begins with '#'"),
                slip("title: Parry of quarte", "Parry of quarte", "This line has no key. Is it the title?"),
                slip("title: Parry of quarte", "- title: Parry of quarte", "The key 'title' takes no dash"),
                slip("weapon: foil", "weapon\u2236 foil", "A colon is missing after 'weapon'"),
                slip("weapon: foil", "weapon: [foil]", "'weapon' needs a text, but this is a list."),
                slip("  - leader: Recover", "\t- leader: Recover", "This line begins with a tab"),
                slip(
                        "follower: '\"Parry\" quarte.'",
                        "follower: \"Parry\" quarte.",
                        "There is text after the closing quotation mark"),
                slip("follower: 'say \"now\", parry'", "follower: \"say \"now\", parry\"", "The quotation ends here"),
                slip("follower: \"don't move\"", "follower: 'don't move'", "The quotation ends here"),
                slip("gear: [mask, jacket]", "gear: [mask, jacket", "A list is opened here with '[' and never closed"),
                slip("gear: [mask, jacket]", "gear: mask, jacket", "'gear' needs a list, but this is a text."),
                slip("title: \"[Quarte]\"", "title: [Quarte]", "'title' needs a text, but this is a list."),
                slip("title: \"{Quarte}\"", "title: {Quarte}", "'title' needs a text, but this is a group of keys."));
    }

    private static Arguments slip(String meant, String written, String sentence) {
        return slip(firstOf(meant), meant, written, sentence);
    }

    /** What stands in the good drill where the two forms of a row stand. */
    private static String firstOf(String meant) {
        if (Files.GOOD.contains(meant)) {
            return meant;
        }
        String key = meant.substring(0, meant.indexOf(':') + 1);
        return Files.GOOD
                .lines()
                .filter(line -> line.strip().startsWith(key))
                .findFirst()
                .orElseThrow()
                .strip();
    }

    private static Arguments slip(String stretch, String meant, String written, String sentence) {
        return arguments(written, replaceFirst(stretch, meant), replaceFirst(stretch, written), sentence);
    }

    private static String replaceFirst(String stretch, String other) {
        return Files.GOOD.replaceFirst(Pattern.quote(stretch), Matcher.quoteReplacement(other));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("slips")
    void a_slip_is_said_and_mended(String written, String meant, String slipped, String sentence) {
        Finding finding = Files.onlyError(slipped);
        assertTrue(finding.what().english().startsWith(sentence), finding.what().english());
        assertTrue(Files.read(slipped).whole().isEmpty());
        assertEquals(Files.drill(meant), Files.drill(mended(finding)));
    }

    @ParameterizedTest(name = "a text that begins with {0}")
    @MethodSource("signs")
    void a_text_that_begins_with_a_sign_of_yaml_is_said_and_mended(String sign) {
        for (String between : List.of("", " ")) {
            String text = sign + between + "Parry quarte.";
            Finding finding = Files.onlyError(Files.with("follower: Parry quarte.", "follower: " + text));
            assertTrue(
                    finding.what().english().contains("begin")
                            && finding.what().english().contains("'" + sign + "'"),
                    finding.what().english());
            assertEquals(
                    text,
                    Files.drill(mended(finding))
                            .steps()
                            .get(0)
                            .follower()
                            .orElseThrow()
                            .say());
        }
    }

    static Stream<String> signs() {
        return Stream.of("[", "{", "*", "&", "@", "%", "`", "!", "|", ">");
    }

    @ParameterizedTest
    @MethodSource("dashesAndQuestions")
    void a_dash_or_a_question_mark_with_a_space_is_said_and_mended(String text) {
        Finding finding = Files.onlyError(Files.with("follower: Parry quarte.", "follower: " + text));
        assertEquals(
                text,
                Files.drill(mended(finding))
                        .steps()
                        .get(0)
                        .follower()
                        .orElseThrow()
                        .say());
    }

    static Stream<String> dashesAndQuestions() {
        return Stream.of("- Parry quarte.", "? Parry quarte.");
    }

    @Test
    void two_slips_are_mended_one_after_the_other() {
        String first =
                Files.with("title: Parry", "title: One: Parry").replace("    follower: Hold", "\tfollower: Hold");
        Finding colon = Files.onlyError(first);
        assertEquals(1, colon.position().line());
        Finding tab = Files.onlyError(mended(colon));
        assertEquals(12, tab.position().line());
        Files.drill(mended(tab));
    }

    @Test
    void two_slips_in_one_line_are_mended_one_after_the_other() {
        Finding first = Files.onlyError(Files.with(FOLLOWER, "\tfollower: Note: parry.\n"));
        Finding second = Files.onlyError(mended(first));
        assertEquals(
                "Note: parry.",
                Files.drill(mended(second))
                        .steps()
                        .get(0)
                        .follower()
                        .orElseThrow()
                        .say());
    }

    @Test
    void a_list_in_one_count_without_its_dash_is_mended() {
        String text = Files.GOOD.substring(0, Files.GOOD.indexOf("  - leader: Recover"));
        Finding finding = Files.onlyError(text.replace("  - leader", "    leader"));
        assertEquals(
                "'steps' needs a list, but this is a group of keys.",
                finding.what().english());
        String way =
                finding.wayOut().english().substring(finding.wayOut().english().indexOf("Write"));
        assertEquals("Write, with 2 spaces in front: - leader: Extend and lunge.", way);
    }

    @Test
    void a_missing_dash_is_one_finding_however_many_keys_come_twice() {
        assertEquals(
                List.of("error key-twice 11:5 'leader'"),
                Files.shown(Files.read(Files.with("  - leader: Recover", "    leader: Recover"))
                        .findings()));
    }

    @Test
    void text_lost_behind_a_number_sign_is_shown() {
        String text = Files.with("follower: Parry quarte.", "follower: Parry quarte #4 firmly.");
        Reading<ReadDrill> reading = Files.read(text);
        assertEquals(List.of("warning lost-text 8:28 '#4 firmly.'"), Files.shown(reading.findings()));
        Finding finding = reading.findings().get(0);
        assertEquals(
                "Everything after ' #' is left out: '#4 firmly.'.",
                finding.what().english());
        assertEquals(
                "Parry quarte #4 firmly.",
                Files.drill(mended(finding))
                        .steps()
                        .get(0)
                        .follower()
                        .orElseThrow()
                        .say());
    }

    @Test
    void a_remark_behind_a_single_word_or_behind_quotes_is_a_remark() {
        assertEquals(
                List.of(),
                Files.read(Files.with("weapon: foil", "weapon: foil # or dry")).findings());
        assertEquals(
                List.of(),
                Files.read(Files.with("closing: Salute.", "closing: \"Salute your partner.\" # both"))
                        .findings());
        assertEquals(List.of(), Files.read("# the first line\n" + Files.GOOD).findings());
    }

    @Test
    void lines_that_end_as_on_other_systems_are_read_alike() {
        assertEquals(Files.drill(Files.GOOD), Files.drill(Files.GOOD.replace("\n", "\r\n")));
        assertEquals(Files.drill(Files.GOOD), Files.drill(Files.GOOD.replace("\n", "\r")));
        assertEquals(List.of(), Files.read(Files.GOOD.replace("\n", "\r\n")).findings());
    }

    @Test
    void a_slip_that_nobody_foresaw_names_its_line() {
        Finding finding = Files.onlyError(Files.GOOD + "] ] :\n");
        assertEquals(15, finding.position().line());
        assertTrue(
                finding.what().english().endsWith("Nothing in this file was read."),
                finding.what().english());
    }

    private static String inTwoLines(Finding finding) {
        Matcher advice = Pattern.compile("'(.*?)' with (no|\\d+) spaces? in front")
                .matcher(finding.wayOut().english());
        String lines = advice.results()
                .map(line ->
                        (line.group(2).equals("no") ? "" : " ".repeat(Integer.parseInt(line.group(2)))) + line.group(1))
                .collect(Collectors.joining("\n"));
        Span line = finding.file().line(finding.position().line());
        return finding.file().text().substring(0, line.start())
                + lines
                + finding.file().text().substring(line.end());
    }

    /** The file with the line of the finding as its advice says. */
    private static String mended(Finding finding) {
        Matcher advice = Pattern.compile("(?s)Write(?:, with (no space|\\d+ spaces?) in front)?: (.*)$")
                .matcher(finding.wayOut().english());
        if (finding.wayOut().english().contains("Write two lines: ")) {
            return inTwoLines(finding);
        }
        assertTrue(advice.find(), finding.wayOut().english());
        SourceFile file = finding.file();
        int number = finding.position().line();
        String line = file.slice(file.line(number));
        String indent = advice.group(1) == null
                ? line.substring(0, line.length() - line.stripLeading().length())
                : advice.group(1).equals("no space")
                        ? ""
                        : " ".repeat(Integer.parseInt(advice.group(1).split(" ")[0]));
        return file.text().substring(0, file.line(number).start())
                + indent
                + advice.group(2)
                + file.text().substring(file.line(number).end());
    }
}
