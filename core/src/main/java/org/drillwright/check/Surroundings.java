package org.drillwright.check;

import java.util.Map;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.notation.Vocabulary;

/**
 * The school around a drill.
 *
 * @param vocabulary the words of the trade with the school's own
 * @param drills all drills of the folder by their ids
 */
public record Surroundings(School school, Vocabulary vocabulary, Map<String, Drill> drills) {

    public Surroundings {
        drills = Map.copyOf(drills);
    }
}
