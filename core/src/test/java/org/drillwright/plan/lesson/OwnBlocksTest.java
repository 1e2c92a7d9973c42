package org.drillwright.plan.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.drillwright.plan.roster.OwnBlock;
import org.drillwright.plan.roster.OwnBlock.Place;
import org.drillwright.register.Entry;
import org.drillwright.register.Event;
import org.drillwright.register.History;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Parts of a lesson that are the school's own, by hand. Opening, plain warm-up and closing take 120, 480 and 300 s, a
 * changeover 60; D1 and D3 take 410 s each, D2 774.
 */
class OwnBlocksTest {

    private static final LocalDate WEDNESDAY = LocalDate.of(2026, 12, 2);

    private static OwnBlock block(String name, int minutes, Place place) {
        return new OwnBlock(name, Duration.ofMinutes(minutes), place, "");
    }

    private static LessonPlan plan(int minutes, List<DrillLoad> drills, int turn, OwnBlock... blocks) {
        return new Lesson(Duration.ofMinutes(minutes), Larkspur.TIMING, new OwnBlocks(List.of(blocks), turn))
                .plan(drills);
    }

    private static String clock(LessonPlan plan) {
        return String.join(
                ", ",
                plan.blocks().stream()
                        .map(block -> block.name() + " " + block.start().toSeconds())
                        .toList());
    }

    private static List<String> told(LessonPlan plan) {
        return Remark.sentences(plan.advice()).stream()
                .map(Message::english)
                .filter(one -> !one.startsWith("Only"))
                .toList();
    }

    @Test
    void each_stands_in_its_place() {
        assertEquals(
                "opening 0, Rings 120, Masks 420, D1 540, D3 1010, Water 1420, D2 1660, Talk 2434, closing 2614",
                clock(plan(
                        60,
                        List.of(Larkspur.THRUST, Larkspur.STEP, Larkspur.PARRY),
                        0,
                        block("Talk", 3, Place.AFTER),
                        block("Water", 3, Place.BETWEEN),
                        block("Masks", 2, Place.BEFORE),
                        block("Rings", 5, Place.WARM_UP))));
    }

    /** Of three drills two breaks stand behind the first and the second; of one they stand behind it. */
    @ParameterizedTest(name = "{0} drills, {1} breaks")
    @CsvSource({
        "3, 2, D B D B D",
        "4, 1, D D B D D",
        "5, 1, D D D B D D",
        "2, 3, D B B B D",
        "1, 2, D B B",
        "0, 1, B",
        "5, 2, D D B D D B D"
    })
    void breaks_part_the_drills_evenly(int drills, int breaks, String laid) {
        OwnBlock[] between = IntStream.range(0, breaks)
                .mapToObj(at -> block("B", 1, Place.BETWEEN))
                .toArray(OwnBlock[]::new);
        LessonPlan plan = plan(500, Larkspur.ALL.subList(0, drills), 0, between);
        assertEquals(
                laid,
                String.join(
                        " ",
                        plan.blocks().stream()
                                .filter(block -> block.kind() == LessonPart.Kind.DRILL
                                        || block.kind() == LessonPart.Kind.BETWEEN)
                                .map(block -> block.name().substring(0, 1))
                                .toList()));
    }

    /** 900 + 410 s of 1800: 490 s, 8:10 min, are left; a game of 6 min fits, another one of 4 no more. */
    @Test
    void what_is_left_is_filled_in_turn() {
        OwnBlock game = block("Game", 6, Place.SPARE);
        OwnBlock tag = block("Tag", 4, Place.SPARE);
        OwnBlock long_ = block("Relay", 9, Place.SPARE);
        LessonPlan first = plan(30, List.of(Larkspur.THRUST), 0, game, tag, long_);
        assertEquals("opening 0, warm-up 120, D1 600, Game 1010, closing 1370", clock(first));
        assertEquals(List.of(), told(first), "the others' turn comes");
        assertEquals(Duration.ofSeconds(130), first.spare());
        assertEquals(
                "opening 0, warm-up 120, D1 600, Tag 1010, closing 1250",
                clock(plan(30, List.of(Larkspur.THRUST), 1, game, tag, long_)));
        LessonPlan third = plan(30, List.of(Larkspur.THRUST), 5, game, tag, long_);
        assertEquals("opening 0, warm-up 120, D1 600, Game 1010, closing 1370", clock(third));
        assertEquals(List.of("No room for Relay (9:00 min)."), told(third));
    }

    @Test
    void all_that_fit_are_laid_and_those_before_the_closing_come_behind_them() {
        assertEquals(
                "opening 0, warm-up 120, D1 600, Tag 1010, Game 1130, Cool 1370, closing 1430",
                clock(plan(
                        30,
                        List.of(Larkspur.THRUST),
                        1,
                        block("Game", 4, Place.SPARE),
                        block("Tag", 2, Place.SPARE),
                        block("Cool", 1, Place.AFTER))));
    }

    @Test
    void where_none_fits_it_is_told_as_well() {
        LessonPlan full =
                plan(23, List.of(Larkspur.THRUST), 1, block("Game", 6, Place.SPARE), block("Tag", 2, Place.SPARE));
        assertEquals(List.of("No room for Tag (2:00 min), Game (6:00 min)."), told(full));
    }

    /** 12 rounds of D1 take 900 + 120 + 12 x 130 + 11 x 30 = 2910 s of 3000: 90 s are left for a minute. */
    @Test
    void partners_come_first() {
        LessonPlan plan = new Lesson(
                        Duration.ofMinutes(50),
                        Larkspur.TIMING,
                        new OwnBlocks(List.of(block("Tag", 1, Place.SPARE), block("Game", 5, Place.SPARE)), 0))
                .planWithRounds(List.of(Larkspur.THRUST), 40);
        assertEquals(12, plan.drills().get(0).rounds());
        assertEquals(Duration.ofSeconds(30), plan.spare());
        assertEquals("SPARE", plan.blocks().get(3).kind().name());
    }

    /** 900 + 410 s and 300 of a talk are 1610 s; 1500 leave no room for D1, and 110 s, 1:50, too many for all. */
    @Test
    void it_is_told_which_block_would_have_to_go() {
        OwnBlock talk = block("Talk", 5, Place.AFTER);
        LessonPlan short_ = plan(25, List.of(Larkspur.THRUST), 0, talk, block("Masks", 1, Place.BEFORE));
        assertEquals(List.of(), short_.drills());
        assertTrue(
                Remark.sentences(short_.advice()).stream()
                        .map(Message::english)
                        .toList()
                        .contains("Without Talk (5:00 min) they would all fit."),
                short_.advice()::toString);
        LessonPlan must = plan(25, List.of(Larkspur.required(Larkspur.THRUST)), 0, talk);
        assertTrue(
                Remark.sentences(must.advice()).stream()
                        .map(Message::english)
                        .toList()
                        .contains("Without Talk (5:00 min) they would fit."),
                must.advice()::toString);
    }

    private static Entry attended(LocalDate day, String who) {
        return new Entry(day, who, "", Event.ATTENDED, "");
    }

    /** Two Wednesdays and a Monday before; the Wednesday itself and the next one don't count. */
    @Test
    void the_turn_goes_on_with_each_class_on_that_day_of_the_week() {
        History history = new History(List.of(
                attended(WEDNESDAY.minusWeeks(2), "Ash"),
                attended(WEDNESDAY.minusWeeks(1), "Ash"),
                attended(WEDNESDAY.minusWeeks(1), "Bo"),
                attended(WEDNESDAY.minusDays(2), "Ash"),
                attended(WEDNESDAY, "Ash"),
                attended(WEDNESDAY.plusWeeks(1), "Ash")));
        assertEquals(2, OwnBlocks.on(WEDNESDAY, List.of(), history).turn());
        assertEquals(3, OwnBlocks.on(WEDNESDAY.plusWeeks(1), List.of(), history).turn());
    }

    @Test
    void where_nothing_is_on_record_it_goes_on_with_the_weeks() {
        int turn = OwnBlocks.on(WEDNESDAY, List.of(), History.NONE).turn();
        assertEquals(
                turn + 1,
                OwnBlocks.on(WEDNESDAY.plusWeeks(1), List.of(), History.NONE).turn());
    }
}
