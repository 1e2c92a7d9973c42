package org.drillwright.plan.kept;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Round;
import org.drillwright.register.Entry;
import org.drillwright.register.Event;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a class leaves in the record: who was there, then who worked with whom on what, once for each round. */
class WorkedTest {

    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);

    private static Group group(Group.Kind kind, String... people) {
        return new Group(kind, 1, List.of(people), Optional.empty());
    }

    private static Group helped(Group.Kind kind, String... people) {
        return new Group(kind, 2, List.of(people), Optional.of("instructor"));
    }

    private static List<Entry> met(Round... rounds) {
        return new Worked(List.of(), Arrays.asList(rounds)).entries(DAY);
    }

    private static Entry met(String one, String drill, String other) {
        return Entry.workedWith(DAY, one, drill, other);
    }

    @Test
    void pairs_and_turns_with_the_instructor_are_meetings() {
        assertEquals(
                List.of(met("Ash", "thrust", "Bo"), met("Cy", "thrust", "instructor")),
                met(new Round(
                        1, "thrust", List.of(group(Group.Kind.PAIR, "Ash", "Bo"), helped(Group.Kind.HELPED, "Cy")))));
    }

    @Test
    void in_a_three_each_meets_both_others_and_a_helper_too() {
        assertEquals(
                List.of(met("Ash", "thrust", "Bo"), met("Ash", "thrust", "Cy"), met("Bo", "thrust", "Cy")),
                met(new Round(1, "thrust", List.of(group(Group.Kind.THREE, "Ash", "Bo", "Cy")))));
        assertEquals(
                List.of(
                        met("Ash", "thrust", "Bo"),
                        met("Ash", "thrust", "instructor"),
                        met("Bo", "thrust", "instructor")),
                met(new Round(1, "thrust", List.of(helped(Group.Kind.THREE, "Ash", "Bo")))));
    }

    @Test
    void two_rounds_of_the_same_two_are_two_meetings() {
        Group pair = group(Group.Kind.PAIR, "Ash", "Bo");
        assertEquals(
                List.of(met("Ash", "thrust", "Bo"), met("Ash", "thrust", "Bo"), met("Ash", "parry", "Bo")),
                met(
                        new Round(1, "thrust", List.of(pair)),
                        new Round(2, "thrust", List.of(pair)),
                        new Round(3, "parry", List.of(pair))));
    }

    private static Absence gone(String[] words, Optional<String> instead, int at) {
        int until = words.length > at + 1 ? Integer.parseInt(words[at + 1]) : Absence.NEVER;
        return new Absence(words[1], Integer.parseInt(words[at]), until, instead, words[0].equals("helping"));
    }

    /** Whoever stands in for a helper trains with who is there; two who stand in by turns leave nobody out. */
    @Test
    void places_of_helpers_are_taken_too() {
        Worked all = new Worked(
                List.of("Ash", "Cy"),
                List.of(
                        new Round(1, "thrust", List.of(helped(Group.Kind.HELPED, "Ash"))),
                        new Round(2, "thrust", List.of(helped(Group.Kind.HELPED, "Ash")))));
        Absence first = new Absence("instructor", 1, 2, Optional.of("Cy"), false);
        Absence then = new Absence("instructor", 2, Absence.NEVER, Optional.of("Zoe"), true);
        assertEquals(
                List.of(
                        Entry.attended(DAY, "Ash"),
                        Entry.attended(DAY, "Cy"),
                        met("Ash", "thrust", "Cy"),
                        met("Ash", "thrust", "Zoe")),
                all.after(List.of(first, then)).entries(DAY));
    }

    /** Round 1 Ash-Max Bo-Oz, round 2 Ash-Oz Bo-Max: what is said changes just that. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "nothing           | Ash Bo Max Oz     | Ash-Max Bo-Oz Ash-Oz Bo-Max",
                "first 1           | Ash Bo Max Oz     | Ash-Max Bo-Oz",
                "first 0           | Ash Bo Max Oz     | ''",
                "without Oz 2      | Ash Bo Max Oz     | Ash-Max Bo-Oz Bo-Max",
                "without Oz 1      | Ash Bo Max        | Ash-Max Bo-Max",
                "without Oz 1 2    | Ash Bo Max Oz     | Ash-Max Ash-Oz Bo-Max",
                "skipping 1        | Ash Bo Max Oz     | Ash-Oz Bo-Max",
                "instead Oz Cy 2   | Ash Bo Max Oz Cy  | Ash-Max Bo-Oz Ash-Cy Bo-Max",
                "instead Oz Cy 1   | Ash Bo Max Cy     | Ash-Max Bo-Cy Ash-Cy Bo-Max",
                "instead Oz Cy 1 2 | Ash Bo Max Oz Cy  | Ash-Max Bo-Cy Ash-Oz Bo-Max",
                "instead Oz Max 2  | Ash Bo Max Oz     | Ash-Max Bo-Oz Ash-Max",
                "helping Oz Zoe 2  | Ash Bo Max Oz     | Ash-Max Bo-Oz Ash-Zoe Bo-Max",
                "helping Cy Zoe 2  | Ash Bo Max Oz     | Ash-Max Bo-Oz Ash-Oz Bo-Max",
                "with Cy           | Ash Bo Max Oz Cy  | Ash-Max Bo-Oz Ash-Oz Bo-Max",
                "swapped 2 Ash Bo  | Ash Bo Max Oz     | Ash-Max Bo-Oz Bo-Oz Ash-Max"
            })
    void what_is_said_otherwise(String said, String there, String met) {
        Worked all = new Worked(
                List.of("Ash", "Bo", "Max", "Oz"),
                List.of(
                        new Round(
                                1,
                                "thrust",
                                List.of(group(Group.Kind.PAIR, "Ash", "Max"), group(Group.Kind.PAIR, "Bo", "Oz"))),
                        new Round(
                                2,
                                "thrust",
                                List.of(group(Group.Kind.PAIR, "Ash", "Oz"), group(Group.Kind.PAIR, "Bo", "Max")))));
        String[] words = said.split(" ");
        Worked worked = switch (words[0]) {
            case "first" -> all.first(Integer.parseInt(words[1]));
            case "without" -> all.after(List.of(gone(words, Optional.empty(), 2)));
            case "instead", "helping" -> all.after(List.of(gone(words, Optional.of(words[2]), 3)));
            case "skipping" -> all.skipping(List.of(Integer.parseInt(words[1])));
            case "with" -> all.with(words[1]);
            case "swapped" -> all.swapped(Integer.parseInt(words[1]), words[2], words[3]);
            default -> all;
        };
        List<Entry> entries = worked.entries(DAY);
        assertEquals(
                there,
                entries.stream()
                        .filter(entry -> entry.event() == Event.ATTENDED)
                        .map(Entry::person)
                        .collect(Collectors.joining(" ")));
        assertEquals(
                met,
                entries.stream()
                        .filter(entry -> entry.event() == Event.WORKED_WITH)
                        .map(entry -> entry.person() + "-" + entry.with())
                        .collect(Collectors.joining(" ")));
    }
}
