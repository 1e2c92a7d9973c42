package org.drillwright.plan.evening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.plan.lesson.DrillLoad;
import org.drillwright.plan.pair.PairingRequest;
import org.drillwright.plan.roster.Apart;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.roster.Timing;
import org.drillwright.plan.roster.Wanted;
import org.drillwright.read.DrillReader;
import org.drillwright.register.History;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * As many rounds as there are new partners to be had. With nobody new, n people meet everyone in n - 1 rounds (one more place, the
 * instructor's, where n is odd); else one for each who knows the drill, or for each who is new if those are more. All
 * people are invented.
 */
class MostRoundsTest {

    private static final ClassBrief LEARNING = ClassBrief.on(LocalDate.of(2026, 9, 14));

    private static Drill drill(String form) {
        String text = "title: thrust\nlevel: intermediate\nform: " + form
                + "\nweapon: foil\nsteps: [{leader: Hold., follower: Hold.}]\n";
        return new DrillReader(School.DEFAULT)
                .read("thrust", "thrust.yaml", text.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow()
                .drill();
    }

    private static int most(ClassBrief brief, String form, int present, int fresh) {
        List<Person> people = new ArrayList<>();
        for (int at = 0; at < present; at++) {
            people.add(Person.named("P" + at).withKnown(at < fresh ? Set.of() : Set.of("thrust")));
        }
        return most(brief, form, new Roster(people, List.of(), List.of()));
    }

    private static int most(ClassBrief brief, String form, Roster roster) {
        Drill drill = drill(form);
        DrillLoad load = DrillLoad.of(
                drill, brief.wanted("thrust"), Duration.ofSeconds(2), Timing.USUAL, 9, Duration.ZERO, List.of());
        PairingRequest request = PairingRequest.of(School.DEFAULT, roster, brief, History.NONE, List.of());
        return new MostRounds(brief, List.of(drill), request).of(load);
    }

    @ParameterizedTest(name = "{0} people, {1} new: {2} rounds")
    @CsvSource({
        "4,2,2", "6,0,5", "6,2,4", "6,3,3", "8,0,7", "8,2,6", "8,4,4", "6,4,4", "5,0,5", "5,2,4", "2,1,1", "6,6,5",
        "5,5,5"
    })
    void as_many_as_there_are_new_partners(int present, int fresh, int rounds) {
        assertEquals(rounds, most(LEARNING, "partner", present, fresh));
    }

    /**
     * Six who know it, one of whom is kept apart from three: two partners for that one, so two rounds. Four new and four who
     * know it, one of the new apart from two of these: two rounds.
     */
    @ParameterizedTest(name = "{0} people, {1} new, 0 apart from {2}: {3} rounds")
    @CsvSource({"6,0,1 2 3,2", "8,4,4 5,2", "8,4,4,3", "6,0,1 2 3 4,1"})
    void those_kept_apart_are_no_partners(int present, int fresh, String apart, int rounds) {
        List<Person> people = new ArrayList<>();
        for (int at = 0; at < present; at++) {
            people.add(Person.named("P" + at).withKnown(at < fresh ? Set.of() : Set.of("thrust")));
        }
        List<Apart> kept = Arrays.stream(apart.split(" "))
                .map(other -> new Apart("P0", "P" + other))
                .toList();
        assertEquals(rounds, most(LEARNING, "partner", new Roster(people, List.of(), kept)));
    }

    @Test
    void alone_there_is_still_one_round() {
        assertEquals(1, most(LEARNING, "partner", 1, 1));
        assertEquals(1, most(LEARNING, "partner", 0, 0));
    }

    @Test
    void without_partners_it_is_one_round() {
        assertEquals(1, most(LEARNING, "solo", 6, 0));
    }

    /** In a training session nobody counts as new. */
    @Test
    void in_training_everyone_can_meet_everyone() {
        assertEquals(5, most(with(Mode.TRAINING, Map.of(), OptionalInt.empty()), "partner", 6, 3));
    }

    @Test
    void what_was_asked_for_is_kept() {
        Wanted two = new Wanted("thrust", 1, false, OptionalInt.empty(), OptionalInt.of(2), Optional.empty());
        assertEquals(2, most(with(Mode.LEARNING, Map.of("thrust", two), OptionalInt.empty()), "partner", 6, 0));
        assertEquals(9, most(with(Mode.LEARNING, Map.of(), OptionalInt.of(9)), "partner", 6, 0));
    }

    private static ClassBrief with(Mode mode, Map<String, Wanted> settings, OptionalInt rounds) {
        return new ClassBrief(
                LEARNING.date(),
                LEARNING.length(),
                LEARNING.weapon(),
                mode,
                List.of("thrust"),
                LEARNING.set(),
                settings,
                rounds,
                LEARNING.movement(),
                LEARNING.ways(),
                LEARNING.instructor(),
                LEARNING.away(),
                LEARNING.solo(),
                LEARNING.timing(),
                LEARNING.hall(),
                LEARNING.blocks());
    }
}
