package org.drillwright.schema;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.drillwright.check.jury.Rules;
import org.drillwright.model.School;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Line;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.read.ClassReader;
import org.drillwright.read.DrillReader;
import org.drillwright.read.RosterReader;
import org.drillwright.read.SchoolReader;
import org.drillwright.read.Shape;
import org.drillwright.read.TermReader;
import org.drillwright.reading.TermKind;
import org.drillwright.reading.TurnReader;
import org.drillwright.terms.Terms;
import org.drillwright.wording.ConstantName;
import org.drillwright.wording.Message;

/**
 * Schemas for editors, in figures and letters of ASCII alone, so that no console spoils them.
 *
 * <pre>{@code
 * String schema = JsonSchema.drill(School.DEFAULT, Map.of(), Locale.ENGLISH);
 * }</pre>
 */
public final class JsonSchema {

    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

    private static final JsonFactory FACTORY =
            JsonFactory.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

    private JsonSchema() {}

    /**
     * The schema of a drill file.
     *
     * @param school whose levels and fundamentals the drill may name
     * @param drills that it may refer to, each with its title
     */
    public static String drill(School school, Map<String, String> drills, Locale language) {
        return text("drill", new DrillReader(school).shape(), hintsOfDrill(drills), language);
    }

    /** @param drills that a drill may refer to, each with its title */
    static Hints hintsOfDrill(Map<String, String> drills) {
        Map<String, Map<String, Message>> offered = new HashMap<>();
        Map<String, Message> turns = Hints.untold(turns(TurnReader.standard()));
        offered.put("steps/*/leader", turns);
        offered.put("steps/*/follower", turns);
        offered.put("steps/*/leader/means", turns);
        offered.put("steps/*/follower/means", turns);
        offered.put("steps/*/distance", distances());
        offered.put("needs/*", Hints.titled(drills));
        offered.put("variant-of", Hints.titled(drills));
        offered.put(
                "gear/*",
                Hints.untold(List.of("mask", "jacket", "underarm protector", "glove", "sabre mask", "sabre glove")));
        return new Hints(Hints.load("drill."), offered, Map.of("accept", acceptable()));
    }

    /** The schema of a school's settings. */
    public static String school(Locale language) {
        return text("school", SchoolReader.shape(), hintsOfSchool(), language);
    }

    static Hints hintsOfSchool() {
        Map<String, Map<String, Message>> offered = new HashMap<>();
        Map<String, Map<String, Message>> keys = new HashMap<>();
        offered.put("words/*", Hints.untold(terms()));
        for (Weapon weapon : Weapon.values()) {
            keys.put("parries/" + weapon.word(), positions());
            offered.put("parries/" + weapon.word() + "/*", Hints.untold(lines()));
        }
        return new Hints(Hints.load("school."), offered, keys);
    }

    /**
     * The schema of a term.
     *
     * @param people who may stand in it
     * @param taught drills and sets that a group may be taught, each with its title
     */
    public static String term(List<String> people, Map<String, String> taught, Locale language) {
        return text("term", TermReader.shape(), hintsOfTerm(people, taught), language);
    }

    static Hints hintsOfTerm(List<String> people, Map<String, String> taught) {
        Map<String, Message> names = Hints.untold(people);
        Map<String, Map<String, Message>> offered = Map.of(
                "groups/*/people/*", names,
                "dates/*/away/*", names,
                "groups/*/drills/*", Hints.titled(taught),
                "fundamentals/drills/*", Hints.titled(taught),
                "exam/drills/*", Hints.titled(taught));
        return new Hints(Hints.load("term."), offered, Map.of());
    }

    /**
     * The schema of a class.
     *
     * @param reader the school's own, which knows its drills, sets and people
     * @param drills that it may name, each with its title
     */
    public static String ofAClass(ClassReader reader, Map<String, String> drills, Locale language) {
        return text("class", reader.shape(), hintsOfClass(drills), language);
    }

    static Hints hintsOfClass(Map<String, String> drills) {
        return new Hints(
                Hints.load("class."),
                Map.of("drills/*", Hints.titled(drills)),
                Map.of("settings", Hints.titled(drills)));
    }

    /**
     * The schema of a roster.
     *
     * @param reader the school's own, which knows its levels
     * @param people who may be kept apart
     * @param taught drills and sets that somebody may know, each with its title
     */
    public static String roster(RosterReader reader, List<String> people, Map<String, String> taught, Locale language) {
        return text("roster", reader.shape(), hintsOfRoster(people, taught), language);
    }

    static Hints hintsOfRoster(List<String> people, Map<String, String> taught) {
        Map<String, Map<String, Message>> offered =
                Map.of("people/*/knows/*", Hints.titled(taught), "people/*/apart/*", Hints.untold(people));
        return new Hints(Hints.load("roster."), offered, Map.of());
    }

    private static List<String> terms() {
        return TurnReader.standard().glossary().items().stream()
                .map(item -> item.term().id())
                .distinct()
                .toList();
    }

    private static List<String> lines() {
        return Stream.of(Line.values()).map(ConstantName::hyphened).toList();
    }

    /** The rules whose warnings can be accepted. */
    private static Map<String, Message> acceptable() {
        Map<String, Message> rules = new LinkedHashMap<>();
        Rules.texts().stream()
                .filter(rule -> !rule.safety())
                .forEach(rule -> rules.put(rule.id(), Message.of(JsonSchema.class, "accepting", rule.asks())));
        return rules;
    }

    private static Map<String, Message> positions() {
        Map<String, Message> positions = new LinkedHashMap<>();
        for (Position position : Position.values()) {
            positions.put(position.word(), Message.of(JsonSchema.class, "closes", Terms.of(position)));
        }
        return positions;
    }

    /** Things to do, as English orders. */
    private static List<String> turns(TurnReader reader) {
        return reader.glossary().items().stream()
                .filter(item -> item.term().kind().isAction() && item.term().kind() != TermKind.COURTESY)
                .flatMap(item -> item.in("en").stream().limit(1))
                .map(words -> words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".")
                .distinct()
                .toList();
    }

    private static Map<String, Message> distances() {
        Map<String, Message> distances = new LinkedHashMap<>();
        for (Measure measure : Measure.values()) {
            distances.put(measure.word(), Message.of(JsonSchema.class, "distance." + measure.word()));
        }
        Message both = Message.of(JsonSchema.class, "distance.both");
        distances.put("advance-lunge to lunge", both);
        distances.put("lunge to advance-lunge", both);
        return distances;
    }

    private static String text(String name, Shape.Group shape, Hints hints, Locale language) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.useDefaultPrettyPrinter();
            SchemaWriter writer = new SchemaWriter(json, hints, language);
            json.writeStartObject();
            writer.put("$schema", DIALECT);
            writer.put("$id", "urn:drillwright:" + name);
            writer.put("title", Message.of(JsonSchema.class, "title." + name));
            writer.members(shape);
            json.writeEndObject();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
        return text + "\n";
    }
}
