package org.drillwright.schema;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.School;
import org.drillwright.read.ClassReader;
import org.drillwright.read.DrillReader;
import org.drillwright.read.RosterReader;
import org.drillwright.read.SchoolReader;
import org.drillwright.read.Shape;
import org.drillwright.read.TermReader;
import org.drillwright.source.FieldPath;
import org.drillwright.wording.Message;

/** What a kind of file may hold, and what its author is told of it and offered, looked up by the way to a value. */
public final class FileForm {

    private final Shape.Group shape;
    private final Hints hints;

    /** @param path as {@link Hints} have it, with stars for items and for the author's own keys */
    private record Found(String path, Shape shape) {}

    private FileForm(Shape.Group shape, Hints hints) {
        this.shape = shape;
        this.hints = hints;
    }

    /** @param drills that the drill may refer to, each with its title */
    public static FileForm ofDrill(School school, Map<String, String> drills) {
        return new FileForm(new DrillReader(school).shape(), JsonSchema.hintsOfDrill(drills));
    }

    public static FileForm ofSettings() {
        return new FileForm(SchoolReader.shape(), JsonSchema.hintsOfSchool());
    }

    /**
     * The form of a term.
     *
     * @param people who may stand in it
     * @param taught drills and sets that a group may be taught, each with its title
     */
    public static FileForm ofTerm(List<String> people, Map<String, String> taught) {
        return new FileForm(TermReader.shape(), JsonSchema.hintsOfTerm(people, taught));
    }

    /**
     * The form of a class.
     *
     * @param reader the school's own, which knows its drills, sets and people
     * @param drills that it may name, each with its title
     */
    public static FileForm ofClass(ClassReader reader, Map<String, String> drills) {
        return new FileForm(reader.shape(), JsonSchema.hintsOfClass(drills));
    }

    /**
     * The form of a roster.
     *
     * @param reader the school's own, which knows its levels
     * @param people who may be kept apart
     * @param taught drills and sets that somebody may know, each with its title
     */
    public static FileForm ofRoster(RosterReader reader, List<String> people, Map<String, String> taught) {
        return new FileForm(reader.shape(), JsonSchema.hintsOfRoster(people, taught));
    }

    /** What may stand at a place; nothing where no file has one. */
    public Optional<Shape> shape(FieldPath path) {
        return find(path).map(Found::shape);
    }

    /** What the value at a place is for. */
    public Optional<Message> told(FieldPath path) {
        return find(path).flatMap(found -> hints.tells(found.path()));
    }

    /** Texts that may be taken over as the value at a place, each with what it stands for, if that is told. */
    public Map<String, Message> offered(FieldPath path) {
        return find(path).map(found -> hints.offers(found.path())).orElse(Map.of());
    }

    /** Keys that the author may choose for what stands at a place, with what each is for. */
    public Map<String, Message> chosen(FieldPath path) {
        return find(path).map(found -> hints.keys(found.path())).orElse(Map.of());
    }

    private Optional<Found> find(FieldPath path) {
        Optional<Found> found = Optional.of(new Found("", shape));
        if (path.text().isEmpty()) {
            return found;
        }
        for (String key : path.text().split("/")) {
            found = found.flatMap(at -> below(at, key));
        }
        return found;
    }

    private static Optional<Found> below(Found at, String key) {
        String way = at.path().isEmpty() ? "" : at.path() + "/";
        if (at.shape() instanceof Shape.Items items) {
            return Optional.of(new Found(way + "*", items.item()));
        }
        Optional<Shape.Group> group = group(at.shape());
        Optional<Shape> known = group.map(keys -> keys.keys().get(key));
        return known.map(shape -> new Found(way + key, shape))
                .or(() -> group.flatMap(Shape.Group::others).map(shape -> new Found(way + "*", shape)));
    }

    /** The keys that a shape may have. */
    public static Optional<Shape.Group> group(Shape shape) {
        if (shape instanceof Shape.Either either) {
            return Optional.of(either.group());
        }
        return shape instanceof Shape.Group group ? Optional.of(group) : Optional.empty();
    }
}
