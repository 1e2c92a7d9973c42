package org.drillwright.plan.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.List;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

/** Each drill after those it needs; worked by hand. */
class DrillOrderTest {

    private static DrillLoad load(String id, String... needs) {
        return new DrillLoad(
                id,
                1,
                Duration.ofSeconds(2),
                Duration.ofSeconds(3),
                1,
                1,
                1,
                Duration.ZERO,
                Duration.ZERO,
                Duration.ZERO,
                1,
                1,
                false,
                List.of(needs));
    }

    @Test
    void a_chain_that_stands_backwards_is_turned_round_and_every_move_is_told() {
        DrillOrder order = DrillOrder.of(List.of(load("A", "B"), load("B", "C"), load("C", "D"), load("D")));
        assertEquals(List.of("D", "C", "B", "A"), Larkspur.ids(order.drills()));
        assertEquals(
                List.of(
                        "D moved before A, which needs it.",
                        "C moved before A, which needs it.",
                        "B moved before A, which needs it."),
                Remark.sentences(order.moved()).stream().map(Message::english).toList());
    }

    /** While A waits for C, B and D come first; but A needs neither, though D needs B. */
    @Test
    void a_drill_that_only_goes_ahead_of_one_that_waits_is_not_told_as_moved() {
        DrillOrder order = DrillOrder.of(List.of(load("A", "C"), load("B"), load("D", "B"), load("C")));
        assertEquals(List.of("B", "D", "C", "A"), Larkspur.ids(order.drills()));
        assertEquals(
                List.of("C moved before A, which needs it."),
                Remark.sentences(order.moved()).stream().map(Message::english).toList());
    }
}
