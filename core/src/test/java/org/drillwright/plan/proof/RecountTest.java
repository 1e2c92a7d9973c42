package org.drillwright.plan.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillwright.model.Hands;
import org.drillwright.plan.roster.Apart;
import org.drillwright.plan.roster.ClassPractice;
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Person;
import org.drillwright.register.Entry;
import org.drillwright.register.History;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plans counted by hand. */
class RecountTest {

    private static final LocalDate LAST = LocalDate.of(2026, 9, 7);
    private static final LocalDate BEFORE = LocalDate.of(2026, 8, 31);

    /** Ash and Bo met last week and the week before; Cy had a turn with the instructor. Ash and Dee are kept apart. */
    private static Recount.Asked asked(Mode mode) {
        List<Person> people = new ArrayList<>();
        String[] levels = {"beginner", "intermediate", "training", "beginner"};
        Hand[] hands = {Hand.RIGHT, Hand.LEFT, Hand.RIGHT, Hand.RIGHT};
        int[] skills = {10, 14, 30, 12};
        String[] names = {"Ash", "Bo", "Cy", "Dee"};
        for (int at = 0; at < names.length; at++) {
            people.add(new Person(
                    names[at],
                    Optional.of(levels[at]),
                    Optional.of(hands[at]),
                    OptionalInt.of(skills[at]),
                    Set.of(),
                    List.of(),
                    /* away= */ false,
                    /* solo= */ false));
        }
        return new Recount.Asked(
                people,
                List.of("instructor"),
                List.of(new Apart("Ash", "Dee")),
                List.of("beginner", "intermediate", "training"),
                mode,
                new Knowledge(Map.of(
                        "Ash",
                        Set.of("thrust"),
                        "Bo",
                        Set.of("thrust"),
                        "Cy",
                        Set.of("thrust"),
                        "Dee",
                        Set.of("thrust"))),
                Map.of("thrust", Hands.SAME, "opposed", Hands.OPPOSITE),
                ClassPractice.USUAL,
                new History(List.of(
                        Entry.workedWith(LAST, "Bo", "thrust", "Ash"),
                        Entry.workedWith(BEFORE, "Ash", "thrust", "Bo"),
                        Entry.workedWith(BEFORE, "Cy", "thrust", "instructor"))));
    }

    /** {@code Ash-Bo Cy-instructor Dee}. */
    private static Recount.Sitting sitting(String text) {
        return new Recount.Sitting(
                "thrust",
                Arrays.stream(text.split(" "))
                        .map(group -> {
                            List<String> names = new ArrayList<>(List.of(group.split("-")));
                            boolean helped = names.remove("instructor");
                            return new Recount.Together(
                                    names, helped ? Optional.of("instructor") : Optional.empty(), Optional.empty());
                        })
                        .toList());
    }

    /** Hands asked for, repeats, helped, third, alone, watched, gaps, widest, past, levels, hands. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // last week counts 4, the week before 3; a level apart; another hand
                "LEARNING | ''      | Ash-Bo Cy-Dee                 | 0 0 0 0 0 0 0 0 7 3 1",
                "LEARNING | ''      | Ash-Cy Bo-Dee, Ash-Cy Bo-Dee  | 0 2 0 0 0 0 0 0 0 6 2",
                "LEARNING | Ash-Cy Bo-Dee | Ash-Cy Bo-Dee           | 0 2 0 0 0 0 0 0 0 3 1",
                // Cy had the one turn of a class of three, two thirds too much; the others a third too little: 1, and
                // then 2
                "LEARNING | ''      | Cy-instructor Ash-Bo Dee, Cy-instructor Ash-Bo Dee | 0 1 3 0 1 0 0 0 14 2 2",
                // Ash works with both others; the second time Dee is the third, it costs 1
                "LEARNING | ''      | Bo-Ash-Dee Cy-instructor, Bo-Ash-Dee Cy | 0 2 1 1 0 0 0 0 14 4 4",
                "TRAINING | ''      | Ash-Cy Bo-Dee                 | 0 0 0 0 0 0 404 20 0 0 1"
            })
    void a_plan_costs_what_it_costs(Mode mode, String played, String planned, String row) {
        List<Recount.Sitting> before = played.isEmpty() ? List.of() : List.of(sitting(played));
        List<Recount.Sitting> rounds =
                Arrays.stream(planned.split(", ")).map(RecountTest::sitting).toList();
        assertEquals(
                Arrays.stream(row.split(" ")).map(Long::valueOf).toList(), Recount.row(asked(mode), before, rounds));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Ash-Bo Cy-Dee                 | []",
                "Ash-Bo Cy                     | [Dee lost]",
                "Ash-Bo Cy-Dee Ash             | [Ash twice]",
                "Ash-Dee Bo-Cy                 | [Ash and Dee are kept apart]",
                "Ash-instructor Bo-instructor Cy-Dee | [instructor twice]"
            })
    void what_may_not_be_is_seen(String round, String faults) {
        assertEquals(
                faults, Recount.faults(asked(Mode.LEARNING), sitting(round)).toString());
    }

    /** In a drill for left against right Bo is the only one for the others: Ash and Cy, Cy and Dee are alike. */
    @Test
    void hands_count_by_what_each_drill_asks() {
        Recount.Sitting thrust = sitting("Ash-Bo Cy-Dee");
        Recount.Sitting opposed =
                new Recount.Sitting("opposed", sitting("Ash-Cy Bo-Dee").groups());
        List<Long> row = Recount.row(asked(Mode.LEARNING), List.of(), List.of(thrust, opposed));
        assertEquals(List.of(1L, 1L), List.of(row.get(0), row.get(10)));
    }

    /** Nobody knows it: Ash and Bo are watched twice each, which costs 1 and 1; the others once. */
    @Test
    void who_is_watched_counts_and_who_is_not_is_a_fault() {
        Recount.Together watched =
                new Recount.Together(List.of("Ash", "Bo"), Optional.empty(), Optional.of("instructor"));
        Recount.Sitting first = new Recount.Sitting("new", List.of(watched));
        assertEquals(
                2L,
                Recount.row(asked(Mode.LEARNING), List.of(first), List.of(first))
                        .get(5));
        assertEquals(List.of(0, 0, 0, 1), Recount.kinds(asked(Mode.LEARNING), first));
        Recount.Together unseen = new Recount.Together(List.of("Cy", "Dee"), Optional.empty(), Optional.empty());
        assertEquals(
                List.of("Cy and Dee are new, and nobody watches"),
                Recount.faults(asked(Mode.LEARNING), new Recount.Sitting("new", List.of(watched, unseen))));
    }

    /** Whoever works with somebody watches nobody. */
    @Test
    void who_works_with_one_watches_no_other() {
        Recount.Together watched =
                new Recount.Together(List.of("Ash", "Bo"), Optional.empty(), Optional.of("instructor"));
        List<Recount.Together> groups =
                new ArrayList<>(sitting("Cy-instructor Dee").groups());
        groups.add(watched);
        assertEquals(
                List.of("instructor can't watch 1"),
                Recount.faults(asked(Mode.LEARNING), new Recount.Sitting("new", groups)));
    }
}
