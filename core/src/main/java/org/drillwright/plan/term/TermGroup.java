package org.drillwright.plan.term;

import java.util.List;

/**
 * Those who are taught together.
 *
 * @param people names of the roster, in its order
 * @param drills ids in the order in which they are to be taught
 */
public record TermGroup(String name, List<String> people, List<String> drills) {

    public TermGroup {
        people = List.copyOf(people);
        drills = List.copyOf(drills);
    }
}
