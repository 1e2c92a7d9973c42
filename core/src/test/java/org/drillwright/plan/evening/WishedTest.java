package org.drillwright.plan.evening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.model.DrillSet;
import org.drillwright.model.School;
import org.drillwright.model.Weapon;
import org.drillwright.plan.roster.ClassBrief;
import org.junit.jupiter.api.Test;

/** What a class file's words drills, set and weapon ask for; the files stand in the order cut, parry, salute, thrust. */
class WishedTest {

    private static final Optional<Weapon> ANY = Optional.empty();
    private static final Optional<String> NO_SET = Optional.empty();

    private final Map<String, Drill> all = Larks.all(
            Larks.drill("cut", "training", "partner", "sabre", "edge"),
            Larks.drill("parry", "intermediate", "partner", "foil", "point"),
            Larks.drill("salute", "beginner", "solo", "none"),
            Larks.drill("thrust", "intermediate", "partner", "foil"));
    private final School school = Larks.school(
            new DrillSet("first evening", Optional.empty(), List.of("thrust", "salute", "lost")),
            new DrillSet("foil drills", Optional.empty(), Optional.of(Weapon.FOIL), Optional.empty(), List.of()),
            new DrillSet("of the edge", Optional.empty(), Optional.empty(), Optional.of("edge"), List.of()),
            new DrillSet("points", Optional.of("intermediate"), ANY, Optional.of("point"), List.of()));

    private Wished wished(ClassBrief brief) {
        return Wished.of(school, brief, all);
    }

    private static List<String> ids(Wished wished) {
        return wished.drills().stream().map(Drill::id).toList();
    }

    @Test
    void drills_named_one_by_one_keep_their_order_and_come_once() {
        Wished wished = wished(Larks.wishing(ANY, NO_SET, "thrust", "cut", "thrust"));
        assertEquals(List.of("thrust", "cut"), ids(wished));
        assertEquals(List.of(), wished.absent());
        assertEquals(List.of(), wished.otherWeapon());
    }

    @Test
    void drills_named_one_by_one_go_before_a_set() {
        assertEquals(List.of("cut"), ids(wished(Larks.wishing(ANY, Optional.of("first evening"), "cut"))));
    }

    @Test
    void a_set_that_lists_drills_keeps_their_order_and_tells_which_are_absent() {
        Wished wished = wished(Larks.wishing(ANY, Optional.of("first evening")));
        assertEquals(List.of("thrust", "salute"), ids(wished));
        assertEquals(List.of("lost"), wished.absent());
    }

    @Test
    void a_level_is_a_set_of_its_drills_in_the_order_of_their_files() {
        assertEquals(List.of("parry", "thrust"), ids(wished(Larks.wishing(ANY, Optional.of("intermediate")))));
    }

    @Test
    void a_set_may_be_named_by_weapon_by_tag_or_by_several() {
        assertEquals(List.of("parry", "thrust"), ids(wished(Larks.wishing(ANY, Optional.of("foil drills")))));
        assertEquals(List.of("cut"), ids(wished(Larks.wishing(ANY, Optional.of("of the edge")))));
        assertEquals(List.of("parry"), ids(wished(Larks.wishing(ANY, Optional.of("points")))));
    }

    /** Whoever named a drill wants it; so it stays, and the other weapon is told. */
    @Test
    void a_drill_named_itself_stays_though_it_is_for_another_weapon() {
        Wished wished = wished(Larks.wishing(Optional.of(Weapon.SABRE), NO_SET, "parry", "salute", "cut"));
        assertEquals(List.of("parry", "salute", "cut"), ids(wished));
        assertEquals(List.of("parry"), wished.otherWeapon());
    }

    /** The salute is for no weapon, so it suits any. */
    @Test
    void of_a_set_only_the_drills_for_the_weapon_of_the_class_are_taken() {
        Wished wished = wished(Larks.wishing(Optional.of(Weapon.SABRE), Optional.of("first evening")));
        assertEquals(List.of("salute"), ids(wished));
        assertEquals(List.of(), wished.otherWeapon());
    }

    @Test
    void a_class_that_names_nothing_or_an_unknown_set_wishes_nothing() {
        assertEquals(List.of(), ids(wished(Larks.wishing(ANY, NO_SET))));
        assertEquals(List.of(), ids(wished(Larks.wishing(ANY, Optional.of("no such set")))));
    }
}
