package org.drillwright.register;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import org.drillwright.table.TableSettings;

/**
 * What a record is read beside.
 *
 * @param people everyone on the roster, assistants too; lines about others are kept, with a warning
 * @param former names that the roster says somebody had, each with the present one
 * @param drills the ids of the school's drills
 * @param tables what the school says of its tables
 */
public record RecordAround(Set<String> people, Map<String, String> former, Set<String> drills, TableSettings tables) {

    public RecordAround {
        people = Set.copyOf(people);
        former = Map.copyOf(former);
        drills = Set.copyOf(drills);
    }

    /** A school of which only these are known. */
    public static RecordAround of(Collection<String> people, Collection<String> drills) {
        return new RecordAround(Set.copyOf(people), Map.of(), Set.copyOf(drills), TableSettings.NONE);
    }
}
