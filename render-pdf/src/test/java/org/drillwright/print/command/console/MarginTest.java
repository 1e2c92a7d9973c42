package org.drillwright.print.command.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class MarginTest {

    private static final String SENTENCE = "The quick brown fox jumps over the lazy dog, and then it lies down again.";

    private static String at(int width, String text) {
        return new Margin(() -> width).within(text);
    }

    @Test
    void a_long_line_is_broken_at_a_space_and_goes_on_under_its_words() {
        assertEquals(
                "The quick brown fox jumps over the lazy\ndog, and then it lies down again.\n",
                at(40, SENTENCE + "\n"));
        assertEquals(
                "  The quick brown fox jumps over the lazy\n  dog, and then it lies down again.\n",
                at(42, "  " + SENTENCE + "\n"));
        assertEquals(
                "   1  The quick brown fox jumps over the lazy\n      dog, and then it lies down again.",
                at(46, "   1  " + SENTENCE));
    }

    @Test
    void what_fits_stays_as_it_is() {
        assertEquals("a  b   c\n\n", at(80, "a  b   c\n\n"));
        assertEquals(SENTENCE, at(80, SENTENCE));
    }

    /** A caret in the line below points into it. */
    @Test
    void a_quoted_line_of_a_file_stays_whole() {
        String quoted = "  14 |     follower: Parry octave and riposte straight to the high inside line.\n";
        assertEquals(quoted, at(40, quoted));
    }

    @Test
    void colours_take_no_room() {
        String painted = "\u001B[1mThe quick brown fox\u001B[0m jumps over the lazy dog";
        assertEquals(painted, at(43, painted));
    }

    @Test
    void a_questions_own_words_count_until_it_is_answered() {
        Margin margin = new Margin(() -> 39);
        margin.within("A question of some length: ");
        assertEquals("which is\nthis one", margin.within("which is this one"));
        margin.begin();
        assertEquals(
                "The quick brown fox jumps over the lazy\ndog, and then it lies down again.", margin.within(SENTENCE));
    }

    @Property(tries = 200)
    void no_word_is_lost_and_no_line_is_too_long(@ForAll @IntRange(min = 20, max = 90) int width) {
        String broken = at(width, "   2  " + SENTENCE);
        assertEquals("2 " + SENTENCE, words(broken));
        assertTrue(broken.lines().allMatch(line -> line.length() <= width), broken);
    }

    private static String words(String text) {
        return Arrays.stream(text.strip().split("\\s+")).collect(Collectors.joining(" "));
    }
}
