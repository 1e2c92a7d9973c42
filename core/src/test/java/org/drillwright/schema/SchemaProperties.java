package org.drillwright.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ObjectNode;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;

/** What the reader takes the schema takes, and the other way round, file by file; both outcomes come up often. */
class SchemaProperties {

    private static final String DRILL = """
            title: Parry of quarte
            level: intermediate
            form: partner
            weapon: foil
            hands: same
            works-on: [line]
            needs: [another]
            gear: [mask, jacket]
            purpose: To parry.
            start: On guard.
            opening: Salute.
            steps:
              - number: 1
                call: One!
                leader: Extend and lunge.
                follower: {say: "Parez!", means: Parry quarte.}
                distance: lunge
                safety: Arrive softly.
                note: Slowly.
              - leader: Recover on guard.
                follower: Hold on guard.
            closing: Salute.
            repeat: 6
            swap: true
            tempo: 1.5
            note: None.
            cautions: [Masks stay on.]
            variant-of: another
            tags: [autumn]
            revised: "2026-09-01"
            accept: {not-back-at-start: it goes on}
            """;

    private static final String SCHOOL = """
            name: An invented hall
            levels:
              - {name: beginner, turns: one, blades: none}
              - {name: other}
            works-on: [line]
            sets:
              thrusts: {drills: [a, b]}
            gear:
              sabre: [mask]
            words: {coule: glide}
            parries:
              foil: {quinte: high-inside}
              none: {}
            card: a6
            sheet: letter
            language: fr
            class-minutes: 60
            seconds-a-count: 2
            """;

    @Property(tries = 3000)
    void drills(@ForAll long seed, @ForAll boolean block) throws JsonProcessingException {
        ObjectNode drill = new Mutilation(seed).of((ObjectNode) Verdicts.seen(DRILL));
        String text = written(drill, block);
        boolean taken = Verdicts.readerTakesDrill(text);
        Statistics.collect(taken);
        Statistics.coverage(check -> check.check(true).percentage(share -> share > 15 && share < 85));
        assertEquals(taken, Verdicts.schemaOfDrill(drill).isEmpty(), () -> text + Verdicts.schemaOfDrill(drill));
    }

    @Property(tries = 2000)
    void settings(@ForAll long seed, @ForAll boolean block) throws JsonProcessingException {
        ObjectNode school = new Mutilation(seed).of((ObjectNode) Verdicts.seen(SCHOOL));
        // Whether a set's level is among the file's own levels is beyond a schema; the limits are tried by hand.
        Assume.that(!school.path("sets").findParents("level").stream().anyMatch(set -> true));
        String text = written(school, block);
        boolean taken = Verdicts.readerTakesSchool(text);
        Statistics.collect(taken);
        Statistics.coverage(check -> check.check(true).percentage(share -> share > 15 && share < 85));
        assertEquals(taken, Verdicts.schemaOfSchool(school).isEmpty(), () -> text + Verdicts.schemaOfSchool(school));
    }

    /** JSON is YAML, too. */
    private static String written(ObjectNode tree, boolean block) throws JsonProcessingException {
        return block
                ? Verdicts.YAML.writeValueAsString(tree).replaceFirst("^---", "---")
                : Verdicts.JSON.writeValueAsString(tree);
    }
}
