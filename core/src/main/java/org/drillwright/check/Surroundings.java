package org.drillwright.check;

import java.util.Map;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.notation.Vocabulary;

/**
 * The school around a drill.
 *
 * @param vocabulary the words of the trade with the school's own
 * @param drills all drills of the folder that could be read, by their ids
 * @param unread ids of files that are there and could not be read; nothing is said of what refers to them
 */
public record Surroundings(School school, Vocabulary vocabulary, Map<String, Drill> drills, Set<String> unread) {

    public Surroundings {
        drills = Map.copyOf(drills);
        unread = Set.copyOf(unread);
    }

    /** The surroundings of a folder in which every file could be read. */
    public Surroundings(School school, Vocabulary vocabulary, Map<String, Drill> drills) {
        this(school, vocabulary, drills, Set.of());
    }
}
