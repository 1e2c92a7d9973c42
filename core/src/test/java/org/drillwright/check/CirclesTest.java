package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.read.DrillReader;
import org.junit.jupiter.api.Test;

class CirclesTest {

    private static Set<String> ledInto(Map<String, List<String>> needs) {
        Map<String, Drill> drills = new TreeMap<>();
        needs.forEach((id, needed) -> drills.put(id, drill(id, "needs: [" + String.join(", ", needed) + "]\n")));
        return Circles.ledInto(drills);
    }

    private static Drill drill(String id, String needs) {
        byte[] text = Example.complete(needs).getBytes(StandardCharsets.UTF_8);
        return new DrillReader(School.DEFAULT)
                .read(id, id, text)
                .value()
                .orElseThrow()
                .drill();
    }

    @Test
    void needs_that_come_to_an_end_lead_into_none() {
        assertEquals(
                Set.of(),
                ledInto(Map.of("a", List.of("b", "c"), "b", List.of("c"), "c", List.of(), "d", List.of("not-there"))));
    }

    @Test
    void those_in_a_circle_and_those_that_need_them_lead_into_it() {
        assertEquals(
                Set.of("a", "b", "before", "self"),
                ledInto(Map.of(
                        "a", List.of("b", "after"),
                        "b", List.of("a"),
                        "before", List.of("a"),
                        "after", List.of(),
                        "self", List.of("self"))));
    }
}
