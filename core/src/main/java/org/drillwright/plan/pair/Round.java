package org.drillwright.plan.pair;

import java.util.List;
import java.util.Optional;

/**
 * One round of partners.
 *
 * @param number counted from 1 over the whole class
 * @param drill the id of the drill worked
 * @param groups by their place; solo work comes last
 */
public record Round(int number, String drill, List<Group> groups) {

    public Round {
        groups = List.copyOf(groups);
    }

    /** The group in which a person works, if the person is there. */
    public Optional<Group> groupOf(String person) {
        return groups.stream().filter(group -> group.holds(person)).findFirst();
    }

    /** Whether two are partners, in a pair or in a three. */
    public boolean joins(String one, String other) {
        return groups.stream().anyMatch(group -> group.joins(one, other));
    }
}
