package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is said where not everyone has a partner. With k new to a drill and m who know it there are at most m safe pairs
 * where k is more than m, and k - m remain.
 */
class ShortageTest {

    @ParameterizedTest(name = "{0} students, helped {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | 1 | One student alone works with the instructor.",
                "1 | 0 | One student alone does solo work.",
                "5 | 1 | 5 students is an odd number: one is left over in each round and works with the"
                        + " instructor, in turn.",
                "5 | 0 | 5 students is an odd number: one is left over in each round."
            })
    void an_odd_number(int students, int helped, String sentence) {
        for (int fresh = 0; fresh <= students; fresh++) {
            Shortage shortage = shortage(fresh, students - fresh, students / 2, helped, Extras.NONE, Extras.NONE);
            assertEquals(sentence, shortage.sentence().english());
            assertEquals(List.of(), shortage.choices());
        }
    }

    @ParameterizedTest(name = "{0} new, {1} who know it")
    @CsvSource(
            delimiter = '|',
            value = {
                "3 | 1 | 3 are new to this drill and 1 knows it: at most 1 safe pair; 2 remain.",
                "6 | 2 | 6 are new to this drill and 2 know it: at most 2 safe pairs; 4 remain.",
                "2 | 0 | 2 are new to this drill and nobody knows it: no safe pair; 2 remain."
            })
    void more_are_new_than_know_the_drill(int fresh, int knowing, String sentence) {
        assertEquals(sentence, shortage(fresh, knowing).sentence().english());
    }

    private static Shortage shortage(int fresh, int knowing) {
        return shortage(fresh, knowing, knowing, 0, Extras.NONE, Extras.NONE);
    }

    private static Shortage shortage(int fresh, int knowing, int pairs, int helped, Extras threes, Extras bothNew) {
        int left = fresh + knowing - 2 * pairs;
        return new Shortage(
                "thrust",
                fresh,
                knowing,
                new Extras(helped, 0, 0, left - helped),
                List.of("instructor", "Marlow").subList(0, Math.min(2, helped)),
                threes,
                bothNew);
    }

    /** With as many who know it as are new, only those kept apart can be the reason. */
    @ParameterizedTest(name = "{0} new, {1} who know it, {2} pairs")
    @CsvSource(
            delimiter = '|',
            value = {
                "0 | 3 | 0 | With the people kept apart, no safe pair can be made of 3 students; 3 remain.",
                "2 | 2 | 1 | With the people kept apart, at most 1 safe pair can be made of 4 students; 2 remain.",
                "2 | 6 | 2 | With the people kept apart, at most 2 safe pairs can be made of 8 students; 4 remain."
            })
    void some_are_kept_apart(int fresh, int knowing, int pairs, String sentence) {
        assertEquals(
                sentence,
                shortage(fresh, knowing, pairs, 0, Extras.NONE, Extras.NONE)
                        .sentence()
                        .english());
    }

    /** Three new and one who knows it: of two left one joins the pair, or the two work together. */
    @Test
    void two_left_and_nobody_to_help() {
        assertEquals(
                List.of(
                        "solo: all 2 do solo work or watch.",
                        "threes: 1 three, each with one who knows the drill; 1 does solo work.",
                        "both-new: 1 pair of two who are both new."),
                shortage(3, 1, 1, 0, new Extras(0, 1, 0, 1), new Extras(0, 0, 1, 0)).choices().stream()
                        .map(Message::english)
                        .toList());
    }

    @Test
    void two_left_and_one_helper() {
        assertEquals(
                List.of(
                        "solo: 1 works with the instructor, 1 does solo work or watches.",
                        "threes: 1 three, each with one who knows the drill, and 1 works with the instructor:"
                                + " everyone works with someone who knows it."),
                shortage(3, 1, 1, 1, new Extras(1, 1, 0, 0), new Extras(1, 0, 0, 1)).choices().stream()
                        .map(Message::english)
                        .toList());
    }

    /** Of seven left two are taken; of the other five two join the two pairs, and three are alone. */
    @Test
    void more_left_than_helpers_and_pairs_can_take() {
        assertEquals(
                List.of(
                        "solo: 2 work with the instructor or Marlow, 5 do solo work or watch.",
                        "threes: 2 threes, each with one who knows the drill, and 2 work with the instructor or"
                                + " Marlow; 3 do"
                                + " solo work.",
                        "both-new: 2 pairs of two who are both new, and 2 work with the instructor or Marlow; 1"
                                + " does solo"
                                + " work."),
                shortage(9, 2, 2, 2, new Extras(2, 2, 0, 3), new Extras(2, 0, 2, 1)).choices().stream()
                        .map(Message::english)
                        .toList());
    }
}
