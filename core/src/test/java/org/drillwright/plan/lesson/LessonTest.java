package org.drillwright.plan.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The lesson worked out by hand, to the second. */
class LessonTest {

    private static LessonPlan plan(int minutes, List<DrillLoad> drills) {
        return new Lesson(Duration.ofMinutes(minutes), Larkspur.TIMING).plan(drills);
    }

    @Test
    void each_drill_takes_what_was_worked_out() {
        assertEquals(
                List.of(410L, 774L, 410L, 870L, 510L),
                Larkspur.ALL.stream().map(load -> load.total().toSeconds()).toList());
        assertEquals(
                List.of(40L, 84L, 48L, 120L, 90L),
                Larkspur.ALL.stream()
                        .map(load -> load.savedByOneLess().toSeconds())
                        .toList());
    }

    @ParameterizedTest(name = "{0} minutes")
    @CsvSource({
        "40, D1 D2, 1244",
        "50, D1 D2 D5, 1814",
        "60, D1 D2 D3 D4, 2644",
        "70, D1 D2 D3 D4 D5, 3214",
        "15, '', 0"
    })
    void the_drills_of_most_value_that_fit(int minutes, String chosen, long seconds) {
        LessonPlan plan = plan(minutes, Larkspur.ALL);
        assertEquals(chosen, String.join(" ", Larkspur.ids(plan.drills())));
        assertEquals(
                seconds, plan.needed().toSeconds() - Larkspur.TIMING.fixed().toSeconds());
        assertTrue(plan.fits());
    }

    /** What a solver that forgets the needs would answer: so the needs matter in this example. */
    @ParameterizedTest(name = "{0} minutes, needs forgotten")
    @CsvSource({"40, D4 D5", "50, D1 D4 D5", "60, D1 D2 D3 D4", "70, D1 D2 D3 D4 D5"})
    void without_needs_the_choice_is_another(int minutes, String chosen) {
        List<DrillLoad> free =
                Larkspur.ALL.stream().map(LessonTest::withoutNeeds).toList();
        assertEquals(chosen, String.join(" ", Larkspur.ids(plan(minutes, free).drills())));
    }

    private static DrillLoad withoutNeeds(DrillLoad load) {
        return new DrillLoad(
                load.drill(),
                load.counts(),
                load.perCount(),
                load.reset(),
                load.repetitions(),
                load.roles(),
                load.rounds(),
                load.explain(),
                load.swap(),
                load.change(),
                load.waves(),
                load.value(),
                load.must(),
                List.of());
    }

    @Test
    void the_clock_of_sixty_minutes() {
        LessonPlan plan = plan(60, Larkspur.ALL);
        assertEquals(
                List.of(
                        "opening 0:00-2:00",
                        "warm-up 2:00-10:00",
                        "D1 10:00-16:50",
                        "D2 17:50-30:44",
                        "D3 31:44-38:34",
                        "D4 39:34-54:04",
                        "closing 54:04-59:04"),
                plan.blocks().stream()
                        .map(block -> block.name() + " " + clock(block.start()) + "-" + clock(block.end()))
                        .toList());
        assertEquals("0:56", clock(plan.spare()));
        assertEquals(1584, plan.practice().toSeconds());
        assertEquals(44, Math.round(100 * plan.practiceShare()));
    }

    private static String clock(Duration at) {
        return at.toMinutes() + ":" + String.format("%02d", at.toSecondsPart());
    }

    @Test
    void what_could_be_cut_to_keep_all_five() {
        assertEquals(
                List.of(
                        "Together they take 8:34 min more than the class lasts; left out: D5.",
                        "To keep them all, cut repetitions: D1 2, D2 2, D3 2, D4 1, D5 1; that saves 9:14 min."),
                Remark.sentences(plan(60, Larkspur.ALL).advice()).stream()
                        .map(Message::english)
                        .toList());
    }

    @Test
    void what_must_be_there_is_never_dropped() {
        List<DrillLoad> drills = new ArrayList<>(Larkspur.ALL);
        DrillLoad free = Larkspur.VOID;
        drills.set(
                3,
                new DrillLoad(
                        free.drill(),
                        free.counts(),
                        free.perCount(),
                        free.reset(),
                        free.repetitions(),
                        free.roles(),
                        free.rounds(),
                        free.explain(),
                        free.swap(),
                        free.change(),
                        free.waves(),
                        free.value(),
                        true,
                        free.needs()));
        LessonPlan plan = plan(40, drills);
        assertEquals("D1 D2 D3 D4", String.join(" ", Larkspur.ids(plan.drills())));
        // 900 + 2644 seconds are 1144 more than 40 minutes.
        assertTrue(Remark.sentences(plan.advice()).stream()
                .map(Message::english)
                .toList()
                .contains("The drills that must be included take 19:04 min more than the class" + " lasts."));
        assertEquals(Duration.ofSeconds(-1144), plan.spare());
    }

    @Test
    void little_practice_is_told() {
        List<String> advice = Remark.sentences(plan(40, Larkspur.ALL).advice()).stream()
                .map(Message::english)
                .toList();
        // 240 + 504 seconds of 2400.
        assertEquals(
                "Only 31 % of the class is practice; aim for 50 %, and at least 40 %.", advice.get(advice.size() - 1));
    }

    @Test
    void a_drill_moves_before_the_one_that_needs_it() {
        DrillOrder order = DrillOrder.of(List.of(Larkspur.FREE, Larkspur.STEP, Larkspur.PARRY, Larkspur.THRUST));
        assertEquals(List.of("D3", "D1", "D2", "D5"), Larkspur.ids(order.drills()));
        assertEquals(
                List.of("D1 moved before D5, which needs it.", "D2 moved before D5, which needs it."),
                Remark.sentences(order.moved()).stream().map(Message::english).toList());
    }

    @Test
    void a_circle_is_named() {
        DrillLoad circle = Larkspur.needing(Larkspur.THRUST, "D2");
        LessonPlan plan = plan(60, List.of(Larkspur.STEP, circle, Larkspur.PARRY));
        assertEquals(
                List.of("These need one another in a circle: D1, D2."),
                Remark.sentences(plan.advice()).stream().map(Message::english).toList());
        assertEquals(List.of(), plan.drills());
    }

    @Test
    void time_left_is_filled_with_rounds() {
        LessonPlan plan =
                new Lesson(Duration.ofMinutes(60), Larkspur.TIMING).planWithRounds(List.of(Larkspur.THRUST), 12);
        // 900 + 120 seconds, then 130 a round and 30 between: 16 would fit, and 12 are wanted at most.
        assertEquals(12, plan.drills().get(0).rounds());
        assertEquals(120 + 12 * 130 + 11 * 30, plan.drills().get(0).total().toSeconds());
    }

    @Test
    void too_few_lanes_make_waves() {
        assertEquals(
                120 + 2 * 2 * 130 + 30, Larkspur.THRUST.withWaves(2).total().toSeconds());
    }

    /** Two rounds of two roles, six times ten seconds: 240, of which nobody gets more by waiting for a lane. */
    @Test
    void waiting_for_a_lane_is_no_practice() {
        assertEquals(240, Larkspur.THRUST.own().toSeconds());
        assertEquals(240, Larkspur.THRUST.withWaves(2).own().toSeconds());
        assertEquals(480, Larkspur.THRUST.withWaves(2).practice().toSeconds());
    }

    @Test
    void the_blocks_follow_one_another() {
        String kinds = plan(60, Larkspur.ALL).blocks().stream()
                .map(block -> block.kind().name())
                .collect(Collectors.joining(" "));
        assertEquals("OPENING WARM_UP DRILL DRILL DRILL DRILL CLOSING", kinds);
    }
}
