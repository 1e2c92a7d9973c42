package org.drillwright.check;

import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.model.Side;
import org.drillwright.model.Turn;
import org.drillwright.reading.TurnReader;

/** The school around a drill. */
public final class Surroundings {

    private final School school;
    private final TurnReader reader;
    private final Map<Language, TurnReader> readers = new ConcurrentHashMap<>();
    private final Map<String, Drill> drills;
    private final Set<String> unread;
    private final Set<String> circling;

    /**
     * @param reader reads turns, with the school's own words
     * @param drills all drills of the folder that could be read, by their ids
     * @param unread ids of files that are there and could not be read; nothing is said of what refers to them
     */
    public Surroundings(School school, TurnReader reader, Map<String, Drill> drills, Set<String> unread) {
        this(school, reader, Map.copyOf(drills), Set.copyOf(unread), Circles.ledInto(drills));
    }

    private Surroundings(
            School school, TurnReader reader, Map<String, Drill> drills, Set<String> unread, Set<String> circling) {
        this.school = school;
        this.reader = reader;
        this.drills = drills;
        this.unread = unread;
        this.circling = circling;
    }

    /** The same around a school whose levels and the like are called otherwise. */
    Surroundings called(School there) {
        return new Surroundings(there, reader, drills, unread, circling);
    }

    /** The surroundings of a folder in which every file could be read. */
    public Surroundings(School school, TurnReader reader, Map<String, Drill> drills) {
        this(school, reader, drills, Set.of());
    }

    public School school() {
        return school;
    }

    public TurnReader reader() {
        return reader;
    }

    /**
     * Reads the words of a drill: in the language that it states first, or else in its school's, if that accounts for all of them.
     * Where it does not, in the one that lists most words of its turns. What is not read whole in that, all languages are asked for.
     */
    TurnReader reader(Drill drill) {
        Language likely = drill.language().orElseGet(() -> likely(drill));
        return readers.computeIfAbsent(likely, one -> reader.at(one.word()));
    }

    private Language likely(Drill drill) {
        Language home = school.language();
        return reader.accountsFor(texts(drill), home.word())
                ? home
                : new Language(reader.at(home.word()).mostLikely(turns(drill).toList()));
    }

    /** A caller's words are not read. */
    private static Stream<String> texts(Drill drill) {
        return Stream.concat(Stream.of(drill.start(), drill.opening(), drill.closing()), turns(drill));
    }

    private static Stream<String> turns(Drill drill) {
        return drill.steps().stream()
                .flatMap(step -> Stream.of(Side.values())
                        .filter(side -> !(side == Side.LEADER && drill.form() == Form.SOLO))
                        .flatMap(side -> step.turn(side).stream()))
                .map(Turn::read);
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
