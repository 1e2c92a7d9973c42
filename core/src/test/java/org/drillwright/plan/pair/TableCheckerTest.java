package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The checker accepts published tables and rejects each of them with one cell changed. */
class TableCheckerTest {

    /** The published Berger tables for 6 and for 8 players. */
    private static final List<String> BERGER_6 =
            List.of("1-6 2-5 3-4", "6-4 5-3 1-2", "2-6 3-1 4-5", "6-5 1-4 2-3", "3-6 4-2 5-1");

    private static final List<String> BERGER_8 = List.of(
            "1-8 2-7 3-6 4-5",
            "8-5 6-4 7-3 1-2",
            "2-8 3-1 4-7 5-6",
            "8-6 7-5 1-4 2-3",
            "3-8 4-2 5-1 6-7",
            "8-7 1-6 2-5 3-4",
            "4-8 5-3 6-2 7-1");

    private static Set<String> numbers(int people) {
        return IntStream.rangeClosed(1, people)
                .mapToObj(Integer::toString)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static TableChecker checked(List<String> table, int people) {
        return new TableChecker(numbers(people), Set.of()).rounds(table.toArray(String[]::new));
    }

    @ParameterizedTest
    @ValueSource(ints = {6, 8})
    void published_tables_are_accepted(int people) {
        TableChecker checker = checked(people == 6 ? BERGER_6 : BERGER_8, people);
        assertEquals(List.of(), checker.faults());
        assertEquals(0, checker.repeats());
        assertEquals(people * (people - 1) / 2, checker.pairs());
    }

    @ParameterizedTest
    @ValueSource(ints = {6, 8})
    void every_table_with_one_cell_changed_is_rejected(int people) {
        List<String> table = people == 6 ? BERGER_6 : BERGER_8;
        for (int round = 0; round < table.size(); round++) {
            String[] cells = table.get(round).split("[ -]");
            for (int cell = 0; cell < cells.length; cell++) {
                for (String name : numbers(people)) {
                    if (!name.equals(cells[cell])) {
                        String[] changed = cells.clone();
                        changed[cell] = name;
                        List<String> mutant = new java.util.ArrayList<>(table);
                        mutant.set(round, joined(changed));
                        assertFalse(checked(mutant, people).faults().isEmpty(), mutant::toString);
                    }
                }
            }
        }
    }

    private static String joined(String[] cells) {
        return IntStream.range(0, cells.length / 2)
                .mapToObj(pair -> cells[2 * pair] + "-" + cells[2 * pair + 1])
                .collect(Collectors.joining(" "));
    }

    @Test
    void two_new_ones_those_kept_apart_and_strangers_are_seen() {
        assertEquals(
                List.of("all new: 1-2", "kept apart: [3, 4]", "9 isn't here"),
                new TableChecker(Set.of("1", "2", "3", "4"), Set.of("1", "2"), "3-4")
                        .round("1-2 3-4 9").faults().stream()
                                .map(fault -> fault.replace("[4, 3]", "[3, 4]"))
                                .toList());
    }

    @Test
    void a_meeting_counts_more_each_time() {
        TableChecker checker = new TableChecker(Set.of("1", "2"), Set.of());
        checker.rounds("1-2", "2-1", "1-2");
        assertEquals(3, checker.repeats());
        assertEquals(3, checker.met("2", "1"));
        assertEquals(Arrays.asList(), checker.faults());
    }
}
