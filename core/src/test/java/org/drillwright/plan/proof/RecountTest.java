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
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Person;
import org.drillwright.record.Entry;
import org.drillwright.record.History;
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
                new Knowledge(Map.of()),
                Map.of("thrust", Hands.SAME),
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
                            return new Recount.Together(names, helped ? Optional.of("instructor") : Optional.empty());
                        })
                        .toList());
    }

    /** Repeats, helped, alone, gaps, widest, past, levels, hands. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // last week counts 4, the week before 3; a level apart; another hand
                "LEARNING | ''      | Ash-Bo Cy-Dee                 | 0 0 0 0 0 7 3 1",
                "LEARNING | ''      | Ash-Cy Bo-Dee, Ash-Cy Bo-Dee  | 2 0 0 0 0 0 6 2",
                "LEARNING | Ash-Cy Bo-Dee | Ash-Cy Bo-Dee           | 2 0 0 0 0 0 3 1",
                // Cy had one turn: the second costs 1, the third 2
                "LEARNING | ''      | Cy-instructor Ash-Bo Dee, Cy-instructor Ash-Bo Dee | 1 3 1 0 0 14 2 2",
                "TRAINING | ''      | Ash-Cy Bo-Dee                 | 0 0 0 22 20 0 0 1"
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
}
