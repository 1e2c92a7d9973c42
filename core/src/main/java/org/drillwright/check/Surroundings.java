package org.drillwright.check;

import java.util.Map;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.notation.Vocabulary;

/** The school around a drill. */
public final class Surroundings {

    private final School school;
    private final Vocabulary vocabulary;
    private final Map<String, Drill> drills;
    private final Set<String> unread;
    private final Set<String> circling;

    /**
     * @param vocabulary the words of the trade with the school's own
     * @param drills all drills of the folder that could be read, by their ids
     * @param unread ids of files that are there and could not be read; nothing is said of what refers to them
     */
    public Surroundings(School school, Vocabulary vocabulary, Map<String, Drill> drills, Set<String> unread) {
        this.school = school;
        this.vocabulary = vocabulary;
        this.drills = Map.copyOf(drills);
        this.unread = Set.copyOf(unread);
        this.circling = Circles.ledInto(this.drills);
    }

    /** The surroundings of a folder in which every file could be read. */
    public Surroundings(School school, Vocabulary vocabulary, Map<String, Drill> drills) {
        this(school, vocabulary, drills, Set.of());
    }

    public School school() {
        return school;
    }

    public Vocabulary vocabulary() {
        return vocabulary;
    }

    public Map<String, Drill> drills() {
        return drills;
    }

    public Set<String> unread() {
        return unread;
    }

    /** Ids of drills whose needs lead into a circle. */
    Set<String> circling() {
        return circling;
    }
}
