package org.drillwright.plan.evening;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.model.DrillSet;
import org.drillwright.model.School;
import org.drillwright.model.Weapon;
import org.drillwright.plan.roster.ClassBrief;

/**
 * The drills that a class names.
 *
 * @param drills in the wished order
 * @param absent ids that are named but that no readable drill has
 * @param otherWeapon ids of drills named one by one whose weapon isn't that of the class
 */
public record Wished(List<Drill> drills, List<String> absent, List<String> otherWeapon) {

    public Wished {
        drills = List.copyOf(drills);
        absent = List.copyOf(absent);
        otherWeapon = List.copyOf(otherWeapon);
    }

    /** @param all the school's drills by id, in the order of their files */
    public static Wished of(School school, ClassBrief brief, Map<String, Drill> all) {
        boolean listed = !brief.drills().isEmpty();
        List<String> ids = listed
                ? brief.drills().stream().distinct().toList()
                : brief.set().flatMap(school::set).map(set -> idsOf(set, all)).orElse(List.of());
        List<Drill> drills = new ArrayList<>();
        List<String> absent = new ArrayList<>();
        List<String> otherWeapon = new ArrayList<>();
        for (String id : ids) {
            Optional<Drill> drill = Optional.ofNullable(all.get(id));
            if (drill.isEmpty()) {
                absent.add(id);
            } else if (suits(drill.get(), brief)) {
                drills.add(drill.get());
            } else if (listed) {
                drills.add(drill.get());
                otherWeapon.add(id);
            }
        }
        return new Wished(drills, absent, otherWeapon);
    }

    private static List<String> idsOf(DrillSet set, Map<String, Drill> all) {
        return set.isListed()
                ? set.drills()
                : all.values().stream().filter(set::holds).map(Drill::id).toList();
    }

    private static boolean suits(Drill drill, ClassBrief brief) {
        return drill.weapon() == Weapon.NONE
                || brief.weapon().filter(weapon -> weapon != drill.weapon()).isEmpty();
    }
}
