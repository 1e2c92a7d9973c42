package org.drillwright.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShelvesTest {

    private static final List<Drill> DRILLS = drills();

    private static List<Drill> drills() {
        List<Drill> drills = new ArrayList<>();
        for (String level : List.of("beginner", "training")) {
            for (Weapon weapon : Weapon.values()) {
                for (List<String> tags :
                        List.of(List.<String>of(), List.of("spring"), List.of("team", "spring", "team"))) {
                    drills.add(drill("d" + drills.size() % 10, level, weapon, tags));
                }
            }
        }
        return drills;
    }

    private static Drill drill(String id, String level, Weapon weapon, List<String> tags) {
        return new Drill(
                id,
                id,
                level,
                Form.SOLO,
                weapon,
                Hands.SAME,
                List.of(),
                List.of(),
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
                tags,
                Optional.empty(),
                Map.of());
    }

    static Stream<DrillSet> sets() {
        Optional<String> none = Optional.empty();
        return Stream.of(
                new DrillSet("listed, an id twice", none, List.of("d7", "d2", "d7", "nothing")),
                new DrillSet("nothing said", none, List.of()),
                new DrillSet("level", Optional.of("training"), List.of()),
                new DrillSet("no such level", Optional.of("nothing"), List.of()),
                new DrillSet("weapon", none, Optional.of(Weapon.FOIL), none, List.of()),
                new DrillSet("tag", none, Optional.empty(), Optional.of("team"), List.of()),
                new DrillSet("no such tag", none, Optional.empty(), Optional.of("nothing"), List.of()),
                new DrillSet(
                        "all three",
                        Optional.of("beginner"),
                        Optional.of(Weapon.FOIL),
                        Optional.of("spring"),
                        List.of()));
    }

    /** What a set holds is said by the set alone; the shelves only find it sooner. */
    @ParameterizedTest
    @MethodSource("sets")
    void the_shelves_give_what_the_set_holds(DrillSet set) {
        assertEquals(DRILLS.stream().filter(set::holds).toList(), new Shelves(DRILLS).drills(set));
    }
}
