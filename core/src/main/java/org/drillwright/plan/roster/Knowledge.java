package org.drillwright.plan.roster;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.drillwright.register.History;

/**
 * Which drills each person knows: those that the roster states, and those signed off since.
 *
 * @param drills ids by the person's name
 */
public record Knowledge(Map<String, Set<String>> drills) {

    public Knowledge {
        drills = Map.copyOf(drills);
    }

    public static Knowledge of(Roster roster, History history) {
        Map<String, Set<String>> drills = new HashMap<>();
        for (Person person : roster.people()) {
            Set<String> known = new HashSet<>(person.knows());
            known.addAll(history.signedOff(person.name()));
            drills.put(person.name(), Set.copyOf(known));
        }
        return new Knowledge(drills);
    }

    /** The drills that a person knows. */
    public Set<String> of(String person) {
        return drills.getOrDefault(person, Set.of());
    }

    public boolean knows(String person, String drill) {
        return of(person).contains(drill);
    }
}
