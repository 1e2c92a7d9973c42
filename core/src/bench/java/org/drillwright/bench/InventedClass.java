package org.drillwright.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.drillwright.plan.pair.PairingRequest;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.ClassPractice;
import org.drillwright.register.Entry;
import org.drillwright.register.History;

/** Classes for measuring: invented people, four drills, and three weeks of four past rounds each. */
final class InventedClass {

    private static final int WEEKS = 3;
    private static final int PAST_ROUNDS = 4;
    private static final LocalDate DAY = LocalDate.of(2026, 12, 2);

    private InventedClass() {}

    /**
     * A request.
     *
     * @param people how many, a third of them new to each drill
     * @param rounds on four drills in turn, or on one
     */
    static PairingRequest of(int people, int rounds, Mode mode, boolean oneDrill) {
        Random random = new Random(people * 1_000L + rounds);
        List<Person> roster = new ArrayList<>();
        Map<String, Set<String>> known = new HashMap<>();
        for (int at = 0; at < people; at++) {
            String name = "P" + at;
            roster.add(Person.named(name).withSkill(1 + random.nextInt(20)));
            known.put(name, knows(at, people, random));
        }
        List<String> drills = IntStream.range(0, rounds)
                .mapToObj(round -> oneDrill ? "drill-0" : "drill-" + round * 4 / rounds)
                .toList();
        return new PairingRequest(
                roster,
                List.of(),
                List.of(History.INSTRUCTOR),
                List.of(),
                List.of("beginner", "intermediate"),
                mode,
                Movement.FREE,
                ClassPractice.USUAL,
                new Knowledge(known),
                Map.of(),
                drills,
                past(people, random),
                List.of());
    }

    private static Set<String> knows(int at, int people, Random random) {
        int learned = at < people / 3 ? random.nextInt(3) : 4;
        return Set.copyOf(IntStream.range(0, learned).mapToObj(drill -> "drill-" + drill).toList());
    }

    private static History past(int people, Random random) {
        List<Entry> entries = new ArrayList<>();
        for (int round = 0; round < WEEKS * PAST_ROUNDS; round++) {
            List<Integer> order = new ArrayList<>(IntStream.range(0, people).boxed().toList());
            Collections.shuffle(order, random);
            for (int at = 0; at + 1 < people; at += 2) {
                entries.add(Entry.workedWith(
                        DAY.minusWeeks(1 + round / PAST_ROUNDS),
                        "P" + order.get(at),
                        "drill-0",
                        "P" + order.get(at + 1)));
            }
        }
        return new History(entries);
    }
}
