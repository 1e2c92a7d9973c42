package org.drillwright.school;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Hands;
import org.drillwright.model.Weapon;
import org.junit.jupiter.api.Test;

class TeachingOrderTest {

    private static Drill drill(String id, List<String> needs) {
        return new Drill(
                id,
                id,
                "beginner",
                Form.SOLO,
                Weapon.NONE,
                Hands.SAME,
                List.of(),
                needs,
                List.of(),
                "",
                "",
                "",
                List.of(),
                "",
                1,
                false,
                Optional.empty(),
                "",
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Map.of());
    }

    private static Map<String, Drill> drills(Map<String, List<String>> needs) {
        Map<String, Drill> drills = new LinkedHashMap<>();
        needs.forEach((id, needed) -> drills.put(id, drill(id, needed)));
        return drills;
    }

    @Test
    void each_comes_behind_what_it_needs_else_all_stay_in_order() {
        TeachingOrder order = new TeachingOrder(drills(Map.of(
                "a", List.of("c"), "b", List.of(), "c", List.of("between"), "between", List.of("d"), "d", List.of())));
        assertEquals(List.of("b", "d", "c", "a"), order.of(List.of("a", "b", "c", "d")));
        assertEquals(List.of("nothing", "c", "a"), order.of(List.of("a", "nothing", "c", "a")));
    }

    @Test
    void a_drill_in_a_circle_stays_behind_the_others() {
        TeachingOrder order = new TeachingOrder(
                drills(Map.of("a", List.of("b"), "b", List.of("a"), "c", List.of(), "d", List.of("c"))));
        assertEquals(List.of("d", "a", "b"), order.of(List.of("a", "d", "b")));
    }

    /** Both ways of putting in order are the same where there is no circle; the slow one is the definition. */
    @Test
    void the_quick_way_gives_what_the_slow_one_gives() {
        Random random = new Random(11);
        for (int round = 0; round < 200; round++) {
            Map<String, List<String>> needs = new LinkedHashMap<>();
            for (int drill = 0; drill < 12; drill++) {
                int number = drill;
                needs.put(
                        "d" + drill,
                        IntStream.range(0, random.nextInt(3))
                                .filter(none -> number > 0)
                                .mapToObj(need -> "d" + random.nextInt(number))
                                .toList());
            }
            List<String> wanted = new ArrayList<>(needs.keySet());
            Collections.shuffle(wanted, random);
            wanted = wanted.subList(0, 8);
            TeachingOrder order = new TeachingOrder(drills(needs));
            assertEquals(order.withCircles(wanted), order.of(wanted), needs::toString);
        }
    }

    /** A ceiling against explosion: a fraction of a second is what it takes. */
    @Test
    void a_chain_of_ten_thousand_is_put_in_order() {
        Map<String, List<String>> needs = new LinkedHashMap<>();
        IntStream.range(0, 10_000).forEach(drill -> needs.put("d" + drill, List.of("d" + (drill + 1))));
        List<String> order = assertTimeoutPreemptively(
                Duration.ofSeconds(30), () -> new TeachingOrder(drills(needs)).of(List.copyOf(needs.keySet())));
        assertEquals("d9999", order.get(0));
        assertEquals("d0", order.get(9_999));
    }
}
