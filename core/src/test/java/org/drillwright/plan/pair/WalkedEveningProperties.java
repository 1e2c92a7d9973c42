package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.kept.KeptText;
import org.drillwright.plan.kept.Worked;
import org.drillwright.plan.roster.LeftOver;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.roster.Person;
import org.drillwright.read.PlanReader;

/** What holds of every evening that is walked, whoever comes. */
class WalkedEveningProperties {

    private static final List<String> DRILLS = List.of("cut", "thrust", "parry");
    private static final LocalDate DAY = LocalDate.of(2026, 12, 2);

    /** Each drill is new to some, the later the more; a few are kept apart. */
    private static Classes drawn(int people, Random chance, Set<Set<String>> apart) {
        List<Person> drawn = new ArrayList<>();
        int[] fresh = {chance.nextInt(people), chance.nextInt(people), chance.nextInt(people)};
        for (int at = 0; at < people; at++) {
            Set<String> knows = new HashSet<>();
            for (int drill = 0; drill < DRILLS.size(); drill++) {
                if (chance.nextInt(people) >= fresh[drill] / 2) {
                    knows.add(DRILLS.get(drill));
                }
            }
            drawn.add(Person.named("P" + at).withKnown(knows));
        }
        List<String> drills = new ArrayList<>();
        for (String drill : DRILLS) {
            for (int round = 1 + chance.nextInt(4); round > 0; round--) {
                drills.add(drill);
            }
        }
        Classes classes = Classes.of(drawn)
                .drills(drills.toArray(String[]::new))
                .leftOver(chance.nextBoolean() ? LeftOver.SOLO : LeftOver.THREES);
        if (chance.nextBoolean()) {
            classes.assistants("Marlow");
        }
        for (int pair = chance.nextInt(3); pair > 0; pair--) {
            String one = "P" + chance.nextInt(people);
            String other = chance.nextInt(4) == 0 ? "instructor" : "P" + chance.nextInt(people);
            if (!one.equals(other) && apart.add(Set.of(one, other))) {
                classes.apart(one, other);
            }
        }
        return classes;
    }

    @Property(tries = 60)
    void every_walked_evening_is_sound(
            @ForAll @IntRange(min = 2, max = 14) int people, @ForAll Movement movement, @ForAll long seed) {
        Set<Set<String>> apart = new HashSet<>();
        PairingRequest request =
                drawn(people, new Random(seed), apart).request().moving(movement);
        PairingPlan plan = Pairing.of(request).plan();
        for (Round round : plan.rounds()) {
            Set<String> seen = new HashSet<>();
            for (Group group : round.groups()) {
                List<String> all = group.everyone();
                assertTrue(all.stream().allMatch(seen::add), "twice in " + round);
                assertTrue(
                        apart.stream().noneMatch(all::containsAll)
                                || group.people().size() == 0,
                        "apart in " + round);
                boolean knows = group.people().stream().anyMatch(name -> !request.isNew(name, round.drill()));
                assertTrue(
                        knows
                                || group.helper().isPresent()
                                || group.eyes().isPresent()
                                || group.people().size() == 1,
                        "nobody knows it in " + group);
            }
            request.students().forEach(student -> assertTrue(seen.contains(student.name()), "lost"));
        }
        plan.walks().forEach(walk -> steps(walk, plan));
        isKept(request, plan);
    }

    /** Whoever stays is at one post in all rounds, whoever moves one post further in each, and the two there are together. */
    private static void steps(Walk walk, PairingPlan plan) {
        int length = walk.stays().size();
        assertEquals(length, walk.moves().size());
        for (int round = walk.from(); round <= walk.to(); round++) {
            for (int post = 1; post <= length; post++) {
                int place = post;
                String stays = walk.stays().get(post - 1);
                String moves = walk.moves().get(Math.floorMod(post - 1 - (round - walk.from()), length));
                Round worked = plan.rounds().get(round - 1);
                if (!moves.equals(Walk.REST)) {
                    assertEquals(post, walk.post(moves, round));
                    assertTrue(
                            worked.groups().stream()
                                    .filter(group -> group.everyone().containsAll(List.of(stays, moves)))
                                    .anyMatch(group -> group.place() == place),
                            stays + " and " + moves + " in " + worked);
                } else {
                    Group group = worked.groupOf(stays).orElseThrow();
                    assertFalse(group.everyone().size() == 2, "not at rest in " + group);
                }
            }
        }
    }

    /** Kept, read and recorded it is what was printed. */
    private static void isKept(PairingRequest request, PairingPlan plan) {
        KeptPlan said = new KeptPlan(
                "tonight",
                DAY,
                Optional.empty(),
                0,
                Map.of(),
                request.students().stream().map(Person::name).toList(),
                request.helpers(),
                plan.rounds(),
                plan.walks());
        String text = KeptText.file(new Kept(said.mark(PlanMark.SHORT), said, Map.of()));
        Kept read = PlanReader.read("plan.yaml", text.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow();
        assertTrue(read.plan().fits(read.mark()));
        assertEquals(said, read.plan());
        assertEquals(Worked.of(said).entries(DAY), Worked.of(read.plan()).entries(DAY));
    }
}
