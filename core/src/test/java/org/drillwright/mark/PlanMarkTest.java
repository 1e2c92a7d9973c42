package org.drillwright.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A mark is short enough to be typed, and a slip in typing is seen. */
class PlanMarkTest {

    /** By hand: K 18, 7 6, Q 22, M 19; 18 + 2 x 6 + 3 x 22 + 4 x 19 = 172, by 31 leaves 17, which is J. */
    @ParameterizedTest
    @ValueSource(strings = {"K7QM-J", "k7qmj", " k7-qm j "})
    void it_is_read_however_it_is_typed(String typed) {
        assertEquals("K7QM-J", PlanMark.read(typed).orElseThrow().shown());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "K7QM-K | one of its signs is wrong, or two are swapped",
                "K7QO-J | 'O' stands in no mark of a plan",
                "K7Q    | a mark has 5 signs, such as K7QM-J",
                "''     | a mark has 5 signs, such as K7QM-J"
            })
    void what_is_wrong_is_said(String typed, String said) {
        assertEquals(Optional.empty(), PlanMark.read(typed));
        assertEquals(said, PlanMark.wrongWith(typed).english());
    }

    /** Every wrong sign and every swap of two different signs, in marks of both lengths. */
    @ParameterizedTest
    @ValueSource(ints = {PlanMark.SHORT, PlanMark.LONG})
    void every_wrong_sign_and_every_swap_is_seen(int length) {
        for (int plan = 0; plan < 50; plan++) {
            String signs = PlanMark.of("plan " + plan, length).signs();
            for (int at = 0; at < signs.length(); at++) {
                for (char sign : PlanMark.ALPHABET.toCharArray()) {
                    String wrong = signs.substring(0, at) + sign + signs.substring(at + 1);
                    assertEquals(sign == signs.charAt(at), PlanMark.read(wrong).isPresent(), wrong);
                }
                for (int other = at + 1; other < signs.length() - 1; other++) {
                    StringBuilder swapped = new StringBuilder(signs);
                    swapped.setCharAt(at, signs.charAt(other));
                    swapped.setCharAt(other, signs.charAt(at));
                    boolean same = signs.charAt(at) == signs.charAt(other);
                    assertEquals(same, PlanMark.read(swapped.toString()).isPresent(), swapped.toString());
                }
            }
        }
    }

    @Test
    void another_text_has_another_mark_and_the_same_has_the_same() {
        assertEquals(PlanMark.of("one", PlanMark.SHORT), PlanMark.of("one", PlanMark.SHORT));
        assertNotEquals(PlanMark.of("one", PlanMark.SHORT), PlanMark.of("two", PlanMark.SHORT));
        assertTrue(PlanMark.of("one", PlanMark.LONG).shown().matches("[1-9A-Z]{5}-[1-9A-Z]"));
    }
}
