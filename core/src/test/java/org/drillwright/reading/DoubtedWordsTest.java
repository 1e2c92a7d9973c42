package org.drillwright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Doubt;
import org.drillwright.notation.Utterance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What words that are not known leave in doubt, as anybody who reads the sentence would say; common practice, no source.
 * {@code frobly} and its like are no words of any language.
 */
class DoubtedWordsTest {

    private static final TurnReader READER = TurnReader.standard();

    private static Set<Doubt> doubts(Utterance utterance) {
        return utterance.clauses().stream()
                .flatMap(clause -> clause.doubts().stream())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Doubt.class)));
    }

    /** Who formed the parry, and who made the attack, is not said, and each may be either of the two. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Feint a cut at the head and, the parry of quinte being formed, cut at the flank.",
                "A beat in quarte being made, a straight thrust is made."
            })
    void what_is_told_as_done_by_nobody_before_something_else_is_not_taken_for_ones_own(String text) {
        assertFalse(READER.read(text).isRead(), text);
    }

    /** An action that is not known at all leaves everything open. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Gorble the lunge.                      | DONE",
                "Pretend to lunge.                      | DONE",
                "Hardly lunge.                          | DONE",
                "Barely parry quarte.                   | DONE",
                "Parry quarte frobly.                   | MANNER",
                "Parry quarte with the left hand.       | MANNER",
                "Lunge frobly.                          | MANNER",
                "Thrust to the frob.                    | MANNER",
                "Advance frobly.                        | STEPS",
                "Retreat seventeen.                     | STEPS",
                "Masks frobly on.                       | DONE",
                "Masks on frobly.                       | MASK",
                "Parry quarte or sixte.                 | CHOICE",
                "Advance if he retreats.                | CHOICE",
                "You may lunge.                         | CHOICE"
            })
    void an_unread_word_puts_the_action_beside_it_in_doubt(String text, Doubt doubt) {
        Utterance utterance = READER.read(text);
        assertFalse(utterance.isRead(), text);
        boolean whole = utterance.clauses().stream().anyMatch(clause -> clause.action() instanceof Action.Unread);
        assertTrue(whole || doubts(utterance).contains(doubt), () -> text + " " + utterance);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Parry quarte softly.",
                "Lunge at once.",
                "Advance, knees bent.",
                "Recover on guard in sixte, front foot first.",
                "Retreat two steps."
            })
    void what_can_change_nothing_leaves_nothing_in_doubt(String text) {
        Utterance utterance = READER.read(text);
        assertTrue(utterance.isRead(), () -> text + " " + utterance);
        assertEquals(Set.of(), doubts(utterance), text);
    }

    /** No ending of a word makes it harmless. */
    @ParameterizedTest
    @ValueSource(strings = {"Lunge hardly.", "Lunge frobly.", "Fendez-vous frobement.", "Affondo frobamente."})
    void no_ending_is_read_as_manner(String text) {
        assertFalse(READER.read(text).isRead(), text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Retreat two steps.     | RETREAT 2",
                "Take three steps back. | RETREAT 3",
                "Two steps forward.     | ADVANCE 2",
                "Retreat one step.      | RETREAT 1",
                "Advance.               | ADVANCE 1"
            })
    void steps_are_counted(String text, String steps) {
        List<String> read = READER.read(text).clauses().stream()
                .map(Clause::action)
                .map(action -> action instanceof Action.Step step ? step.foot() + " " + step.times() : "" + action)
                .toList();
        assertEquals(List.of(steps), read);
    }

    /** What somebody else is to do, or nobody, is not one's own. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Do not parry quarte.",
                "Never lunge.",
                "Make your partner parry quarte.",
                "Make him parry quarte and riposte."
            })
    void what_is_not_ones_own_is_not_played(String text) {
        List<Action> own = READER.read(text).clauses().stream()
                .filter(Clause::isCertain)
                .map(Clause::action)
                .filter(action -> !(action instanceof Action.Unread || action instanceof Action.Aside))
                .toList();
        assertEquals(List.of(), own);
    }

    @Test
    void a_sentence_of_which_nothing_is_known_is_an_action_that_is_not_known() {
        List<Clause> clauses = READER.read("Wobble frobly.").clauses();
        assertEquals(1, clauses.size());
        assertTrue(clauses.get(0).action() instanceof Action.Unread);
    }
}
