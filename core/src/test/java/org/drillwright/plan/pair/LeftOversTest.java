package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.plan.roster.LeftOver;
import org.junit.jupiter.api.Test;

/** What those do who have no partner in a round. The roster's order is Ash, Bo, Cy, Dee, Eli, Fay; all are invented. */
class LeftOversTest {

    private static final String HELPER = "instructor";

    private final Classes classes = Classes.of(Classes.named(Set.of(), "Ash", "Bo", "Cy", "Dee", "Eli", "Fay"));

    private static List<Group> groups(String text) {
        List<Group> groups = new ArrayList<>();
        for (String names : text.split(" ")) {
            List<String> people = Arrays.stream(names.split("-"))
                    .filter(name -> !name.equals(HELPER))
                    .toList();
            groups.add(
                    names.endsWith(HELPER)
                            ? new Group(Group.Kind.HELPED, groups.size() + 1, people, Optional.of(HELPER))
                            : new Group(Group.Kind.PAIR, groups.size() + 1, people, Optional.empty()));
        }
        return groups;
    }

    private String placed(LeftOver choice, String groups, String left, String... before) {
        List<Round> rounds = Arrays.stream(before)
                .map(round -> new Round(1, "thrust", groups(round)))
                .toList();
        List<String> names = left.isEmpty() ? List.of() : List.of(left.split(" "));
        return new LeftOvers(classes.leftOver(choice).request(), rounds)
                .placed(groups(groups), names).stream()
                        .map(group -> String.join("-", group.people()) + " " + group.kind() + " at " + group.place())
                        .collect(Collectors.joining(", "));
    }

    @Test
    void solo_work_needs_no_place() {
        assertEquals("Ash-Bo PAIR at 1, Cy SOLO at 0, Dee SOLO at 0", placed(LeftOver.SOLO, "Ash-Bo", "Cy Dee"));
    }

    @Test
    void nobody_left_changes_nothing() {
        for (LeftOver choice : LeftOver.values()) {
            assertEquals("Ash-Bo PAIR at 1", placed(choice, "Ash-Bo", ""));
        }
    }

    @Test
    void two_new_ones_work_together_where_it_was_asked_for() {
        assertEquals("Ash-Bo PAIR at 1, Cy-Dee BOTH_NEW at 0", placed(LeftOver.BOTH_NEW, "Ash-Bo", "Cy Dee"));
    }

    /** Cy may work with neither Dee nor Eli, so they work together. */
    @Test
    void of_three_new_ones_the_one_whom_nobody_may_join_is_alone() {
        classes.apart("Dee", "Cy").apart("Cy", "Eli");
        assertEquals(
                "Ash-Bo PAIR at 1, Dee-Eli BOTH_NEW at 0, Cy SOLO at 0",
                placed(LeftOver.BOTH_NEW, "Ash-Bo", "Cy Dee Eli"));
    }

    /** Of the three ways to pair four only Ash with Dee and Bo with Cy parts nobody who is kept apart. */
    @Test
    void four_new_ones_are_paired_round_those_kept_apart() {
        classes.apart("Ash", "Bo").apart("Ash", "Cy");
        assertEquals(
                "Eli-Fay PAIR at 1, Ash-Dee BOTH_NEW at 0, Bo-Cy BOTH_NEW at 0",
                placed(LeftOver.BOTH_NEW, "Eli-Fay", "Ash Bo Cy Dee"));
    }

    @Test
    void two_new_ones_kept_apart_are_alone() {
        classes.apart("Cy", "Dee");
        assertEquals("Ash-Bo PAIR at 1, Cy SOLO at 0, Dee SOLO at 0", placed(LeftOver.BOTH_NEW, "Ash-Bo", "Cy Dee"));
    }

    @Test
    void a_third_joins_a_pair_at_its_place_in_the_rosters_order() {
        assertEquals("Ash-Bo-Cy THREE at 1", placed(LeftOver.THREES, "Ash-Cy", "Bo"));
    }

    @Test
    void each_pair_takes_one_and_the_rest_are_alone() {
        String placed = placed(LeftOver.THREES, "Ash-Bo", "Cy Dee");
        assertTrue(
                Set.of("Ash-Bo-Cy THREE at 1, Dee SOLO at 0", "Ash-Bo-Dee THREE at 1, Cy SOLO at 0")
                        .contains(placed),
                placed);
    }

    @Test
    void a_third_joins_those_met_least_today() {
        assertEquals(
                "Ash-Bo PAIR at 1, Cy-Dee-Eli THREE at 2",
                placed(LeftOver.THREES, "Ash-Bo Cy-Dee", "Eli", "Ash-Eli Bo-Cy"));
        assertEquals(
                "Ash-Bo-Eli THREE at 1, Cy-Dee PAIR at 2",
                placed(LeftOver.THREES, "Ash-Bo Cy-Dee", "Eli", "Ash-Eli Bo-Cy", "Dee-Eli Ash-Bo", "Cy-Eli Ash-Bo"));
    }

    @Test
    void a_third_joins_a_helper_before_a_pair() {
        assertEquals("Ash-Bo PAIR at 1, Cy-Dee THREE at 2", placed(LeftOver.THREES, "Ash-Bo Cy-instructor", "Dee"));
        assertEquals("Ash-Dee THREE at 1, Bo-Cy PAIR at 2", placed(LeftOver.THREES, "Ash-instructor Bo-Cy", "Dee"));
    }

    @Test
    void a_helper_is_no_reason_to_meet_someone_again() {
        assertEquals(
                "Ash-Bo-Dee THREE at 1, Cy HELPED at 2",
                placed(LeftOver.THREES, "Ash-Bo Cy-instructor", "Dee", "Cy-Dee Ash-Bo"));
    }

    @Test
    void a_third_joins_nobody_from_whom_it_is_kept_apart() {
        classes.apart("Eli", "Bo");
        assertEquals(
                "Ash-Bo PAIR at 1, Cy-Dee-Eli THREE at 2",
                placed(LeftOver.THREES, "Ash-Bo Cy-Dee", "Eli", "Cy-Eli Ash-Bo"));
    }

    @Test
    void a_third_joins_no_helper_from_whom_it_is_kept_apart() {
        classes.apart(HELPER, "Dee");
        assertEquals("Ash-Bo-Dee THREE at 1, Cy HELPED at 2", placed(LeftOver.THREES, "Ash-Bo Cy-instructor", "Dee"));
    }

    @Test
    void whoever_may_join_nobody_is_alone() {
        classes.apart("Cy", "Ash");
        assertEquals("Ash-Bo PAIR at 1, Cy SOLO at 0", placed(LeftOver.THREES, "Ash-Bo", "Cy"));
    }
}
