package org.drillwright.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.drillwright.check.Corpus;
import org.drillwright.model.Level;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Roster;
import org.drillwright.read.ClassReader;
import org.drillwright.read.DrillReader;
import org.drillwright.read.RosterReader;
import org.drillwright.read.SchoolReader;
import org.drillwright.read.Shape;
import org.drillwright.read.TermReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class JsonSchemaTest {

    private static final Path DRILLS = Path.of("..", "drills");

    static List<Path> exampleDrills() {
        return Corpus.drillFiles(DRILLS);
    }

    @ParameterizedTest
    @MethodSource("exampleDrills")
    void takes_every_example_drill(Path file) throws IOException {
        String text = Files.readString(file);
        assertTrue(Verdicts.readerTakesDrill(text));
        assertEquals(Set.of(), Verdicts.schemaOfDrill(Verdicts.seen(text)));
    }

    @Test
    void there_are_example_drills() throws IOException {
        assertTrue(exampleDrills().size() >= 30);
    }

    @Test
    void takes_the_example_settings() throws IOException {
        String text = Files.readString(DRILLS.resolve("school.yaml"));
        assertTrue(Verdicts.readerTakesSchool(text));
        assertEquals(Set.of(), Verdicts.schemaOfSchool(Verdicts.seen(text)));
    }

    @Test
    void takes_the_example_term_and_no_mistyped_one() throws IOException {
        var schema = JsonSchemaFactory.getInstance(VersionFlag.V202012)
                .getSchema(Verdicts.JSON.readTree(
                        JsonSchema.term(List.of("Ash"), Map.of("parry", "A parry"), Locale.ENGLISH)));
        String text = Files.readString(DRILLS.resolve("terms/winter.yaml"));
        assertEquals(Set.of(), schema.validate(Verdicts.seen(text)));
        assertTrue(
                !schema.validate(Verdicts.seen(text.replace("19:00", "24:00"))).isEmpty());
        assertTrue(!schema.validate(Verdicts.seen(text.replace("key: w3,", "kye: w3,")))
                .isEmpty());
    }

    private static final ClassReader CLASSES = new ClassReader(
            School.DEFAULT, new Roster(List.of(), List.of("Ash"), List.of()), List.of("parry", "thrust"));
    private static final RosterReader ROSTERS = new RosterReader(School.DEFAULT, List.of("parry"));

    /** What the class of the guide says, and slips in it; a name of somebody who is not on the roster is one. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            true; {date: 2026-09-14, drills: [parry, thrust], minutes: 60, away: [Ash], settings: {parry: {rounds: 3, must: true}}}
            true; {date: 2026-09-14, set: beginner, left-over: both-new, hall: {length: 18, width: 10}}
            false; {date: 2026-09-14}
            false; {drills: [parry]}
            false; {date: 2026-09-14, drills: [parry], away: [Bo]}
            false; {date: 2026-09-14, drills: [pary]}
            false; {date: 2026-09-14, drills: [parry], left-over: watch}
            false; {date: 2026-09-14, drills: [parry], settings: {parry: {round: 3}}}
            """)
    void takes_a_class_and_refuses_slips(boolean right, String text) throws JsonProcessingException {
        var schema = JsonSchemaFactory.getInstance(VersionFlag.V202012)
                .getSchema(Verdicts.JSON.readTree(
                        JsonSchema.ofAClass(CLASSES, Map.of("parry", "A parry"), Locale.ENGLISH)));
        assertEquals(right, schema.validate(Verdicts.seen(text)).isEmpty());
        assertEquals(
                right,
                CLASSES.read("tonight.yaml", text.getBytes(StandardCharsets.UTF_8))
                        .value()
                        .isPresent());
    }

    @Test
    void takes_the_example_roster_and_refuses_slips() throws IOException {
        var schema = JsonSchemaFactory.getInstance(VersionFlag.V202012)
                .getSchema(Verdicts.JSON.readTree(
                        JsonSchema.roster(ROSTERS, List.of("Ash"), Map.of("parry", "A parry"), Locale.ENGLISH)));
        String text = Files.readString(DRILLS.resolve("roster.yaml"));
        assertEquals(Set.of(), schema.validate(Verdicts.seen(text)));
        for (String slip :
                List.of("people:,peple:", "level: beginner,level: begginer", "hand: left,hand: leftt", "name:,nam:")) {
            String slipped = text.replace(slip.split(",")[0], slip.split(",")[1]);
            assertTrue(!schema.validate(Verdicts.seen(slipped)).isEmpty(), slip);
        }
    }

    /** JSON Schema Core 2020-12, section 8.1.1: a schema is valid against its own meta-schema. */
    @Test
    void is_a_schema_of_its_dialect() throws JsonProcessingException {
        var dialect = JsonSchemaFactory.getInstance(VersionFlag.V202012)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        for (String schema : List.of(
                JsonSchema.drill(School.DEFAULT, Map.of("a", "A"), Locale.ENGLISH),
                JsonSchema.school(Locale.ENGLISH),
                JsonSchema.term(List.of("Ash"), Map.of("a", "A"), Locale.ENGLISH),
                JsonSchema.ofAClass(CLASSES, Map.of("a", "A"), Locale.ENGLISH),
                JsonSchema.roster(ROSTERS, List.of("Ash"), Map.of("a", ""), Locale.ENGLISH))) {
            assertEquals(Set.of(), dialect.validate(Verdicts.JSON.readTree(schema)));
            assertTrue(schema.chars().allMatch(unit -> unit < 0x80), "letters of ASCII alone");
        }
    }

    /** Every key is told of, and nothing is told of that is no key. */
    @Test
    void tells_of_every_key() {
        assertEquals(
                paths(new DrillReader(School.DEFAULT).shape()),
                Hints.load("drill.").keySet());
        assertEquals(paths(SchoolReader.shape()), Hints.load("school.").keySet());
        assertEquals(paths(TermReader.shape()), Hints.load("term.").keySet());
        assertEquals(paths(CLASSES.shape()), Hints.load("class.").keySet());
        assertEquals(paths(ROSTERS.shape()), Hints.load("roster.").keySet());
    }

    private static Set<String> paths(Shape.Group shape) {
        Set<String> paths = new TreeSet<>();
        gather(shape, "", paths);
        return paths;
    }

    private static void gather(Shape shape, String path, Set<String> paths) {
        if (shape instanceof Shape.Group group) {
            group.keys().forEach((key, inner) -> {
                paths.add(path + key);
                gather(inner, path + key + "/", paths);
            });
            group.others().ifPresent(inner -> {
                paths.add(path + "*");
                gather(inner, path + "*/", paths);
            });
        } else if (shape instanceof Shape.Either either) {
            gather(either.group(), path, paths);
        } else if (shape instanceof Shape.Items items) {
            gather(items.item(), path + "*/", paths);
        }
    }

    @Test
    void names_the_schools_own_levels_even_those_of_figures() throws JsonProcessingException {
        School school = new School(
                "",
                List.of(
                        new Level("1", Level.Turns.ONE, Level.Blades.NONE),
                        new Level("blue (a+b)", Level.Turns.FREE, Level.Blades.FREE)),
                List.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                List.of("line"),
                School.DEFAULT.card(),
                School.DEFAULT.sheet(),
                School.DEFAULT.language(),
                Optional.empty(),
                School.DEFAULT.classLength(),
                School.DEFAULT.count());
        JsonNode schema = Verdicts.JSON.readTree(JsonSchema.drill(school, Map.of("one", "The first"), Locale.ENGLISH));
        assertEquals(Verdicts.JSON.readTree("[1, \"blue (a+b)\"]"), schema.at("/properties/level/anyOf/0/enum"));
        JsonNode need = schema.at("/properties/needs/items/defaultSnippets/0");
        assertEquals("one", need.path("label").asText());
        assertEquals("The first", need.path("description").asText());
        var compiled = JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(schema);
        for (String level : List.of("1", "'1'", "blue (a+b)", "' blue (a+b) '")) {
            String text = "{title: x, form: solo, weapon: none, steps: [], level: " + level + "}";
            assertEquals(Set.of(), compiled.validate(Verdicts.seen(text)), level);
        }
    }

    @Test
    void offers_terms_and_rules() throws JsonProcessingException {
        JsonNode schema = Verdicts.JSON.readTree(JsonSchema.drill(School.DEFAULT, Map.of(), Locale.ENGLISH));
        JsonNode step = schema.at("/properties/steps/items/properties");
        assertTrue(
                step.at("/distance/defaultSnippets").findValuesAsText("label").contains("lunge"));
        assertTrue(step.at("/leader/defaultSnippets").findValuesAsText("label").contains("Advance."));
        assertTrue(schema.at("/properties/accept/properties").has("not-back-at-start"));
        assertTrue(
                !schema.at("/properties/accept/properties").has("safety-note-missing"),
                "safety cannot be accepted away");
    }

    /**
     * An editor offers true and false wherever a type lets them stand, and shows examples and enumerations whole to whoever
     * points at a key (seen in an editor's server for YAML): so neither stands where any text may.
     */
    @Test
    void no_text_is_offered_as_a_yes_nor_explained_by_a_long_list() throws JsonProcessingException {
        Map<String, String> many = new TreeMap<>();
        IntStream.range(0, 500).forEach(number -> many.put("drill-" + number, "The drill " + number));
        for (String text : List.of(
                JsonSchema.drill(School.DEFAULT, many, Locale.ENGLISH),
                JsonSchema.school(Locale.ENGLISH),
                JsonSchema.term(List.copyOf(many.keySet()), many, Locale.ENGLISH),
                JsonSchema.ofAClass(new ClassReader(School.DEFAULT, Roster.EMPTY, many.keySet()), many, Locale.ENGLISH),
                JsonSchema.roster(
                        new RosterReader(School.DEFAULT, List.copyOf(many.keySet())),
                        List.copyOf(many.keySet()),
                        many,
                        Locale.ENGLISH))) {
            JsonNode schema = Verdicts.JSON.readTree(text);
            assertEquals(List.of(), schema.findValues("examples"));
            schema.findValues("enum").forEach(words -> assertTrue(words.size() <= 12, words.toString()));
            schema.findParents("maxLength")
                    .forEach(any -> assertTrue(!any.path("type").toString().contains("boolean"), any.toString()));
            assertTrue(text.length() < 1_000_000, "characters: " + text.length());
        }
    }
}
