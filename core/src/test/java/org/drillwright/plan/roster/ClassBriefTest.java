package org.drillwright.plan.roster;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What an instructor asks for one class. */
class ClassBriefTest {

    private static final ClassBrief USUAL = ClassBrief.on(LocalDate.of(2026, 9, 14));

    private static ClassBrief brief(Map<String, Wanted> settings, Set<String> away) {
        return new ClassBrief(
                USUAL.date(),
                USUAL.length(),
                USUAL.weapon(),
                USUAL.mode(),
                USUAL.drills(),
                USUAL.set(),
                settings,
                USUAL.rounds(),
                USUAL.movement(),
                USUAL.ways(),
                USUAL.instructor(),
                away,
                USUAL.solo(),
                USUAL.timing(),
                USUAL.hall(),
                USUAL.blocks());
    }

    /** Ash is here; Bo is away tonight, Cy for longer; Dee does solo work and is here too. */
    @Test
    void here_is_whoever_neither_the_roster_nor_the_class_says_is_away() {
        Person usual = Person.named("");
        Person cy = new Person(
                "Cy", usual.level(), usual.hand(), usual.skill(), usual.knows(), usual.days(), /* away= */ true, false);
        Person dee = new Person(
                "Dee",
                usual.level(),
                usual.hand(),
                usual.skill(),
                usual.knows(),
                usual.days(),
                false,
                /* solo= */ true);
        Roster roster = new Roster(List.of(Person.named("Ash"), Person.named("Bo"), cy, dee), List.of(), List.of());
        assertEquals(
                List.of(Person.named("Ash"), dee), brief(Map.of(), Set.of("Bo")).here(roster));
    }

    @Test
    void a_drill_of_which_nothing_is_asked_is_wanted_once_and_may_be_left_out() {
        Wanted must = new Wanted("thrust", 5, true, USUAL.rounds(), USUAL.rounds(), USUAL.length());
        ClassBrief brief = brief(Map.of("thrust", must), Set.of());
        assertEquals(must, brief.wanted("thrust"));
        assertEquals(Wanted.drill("parry"), brief.wanted("parry"));
    }

    /** The words that a class file may use, as its page names them. */
    @Test
    void each_choice_has_a_word() {
        assertEquals(
                List.of("threes", "solo", "both-new"),
                Arrays.stream(LeftOver.values()).map(LeftOver::word).toList());
        assertEquals(
                List.of("walk", "1", "2", "free"),
                Arrays.stream(Movement.values()).map(Movement::word).toList());
        assertEquals(
                List.of("learning", "training"),
                Arrays.stream(Mode.values()).map(Mode::word).toList());
        assertEquals(
                List.of("right", "left"),
                Arrays.stream(Hand.values()).map(Hand::word).toList());
    }
}
