package org.drillwright.print.booklet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.print.Drills;
import org.drillwright.print.layout.words.CardSubject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reckoned by hand from: a drill's step is one more than the highest step of what it needs. */
class StepsTest {

    private static List<BookletEntry> entries(String needs) {
        List<BookletEntry> entries = new ArrayList<>();
        for (String one : needs.split(" ")) {
            String[] parts = one.split("<");
            List<String> needed = parts.length == 1 ? List.of() : Arrays.asList(parts[1].split(","));
            Drill drill = Drills.needing(Drills.riposte(), parts[0], needed);
            entries.add(new BookletEntry(new CardSubject(drill, Drills.SCHOOL, Optional.empty(), false, List.of())));
        }
        return entries;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a b                       | [[a, b]]",
                "a b<a c<b                 | [[a], [b], [c]]",
                "c<a,b b<a a               | [[a], [b], [c]]",
                "a b<a c<a d<c,b e<a       | [[a], [b, c, e], [d]]",
                "a b<a,elsewhere           | [[a], [b]]",
                "a<a                       | [[a]]",
            })
    void a_drill_stands_one_step_above_what_it_needs(String needs, String steps) {
        List<List<String>> named = Steps.of(entries(needs)).stream()
                .map(step -> step.stream().map(BookletEntry::id).toList())
                .toList();
        assertEquals(steps, named.toString());
    }

    @Test
    void needs_that_go_in_a_circle_end_somewhere() {
        assertEquals(
                Map.of("a", 1, "b", 1),
                Map.of(
                        "a", count(entries("a<b b<a"), "a"),
                        "b", count(entries("a<b b<a"), "b")));
    }

    private static int count(List<BookletEntry> entries, String id) {
        return (int) Steps.of(entries).stream()
                .flatMap(List::stream)
                .filter(entry -> entry.id().equals(id))
                .count();
    }
}
