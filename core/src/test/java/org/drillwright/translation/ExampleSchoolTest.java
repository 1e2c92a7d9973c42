package org.drillwright.translation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.drillwright.check.Fault;
import org.drillwright.check.Subject;
import org.drillwright.check.Surroundings;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Language;
import org.drillwright.model.Side;
import org.drillwright.model.Translations;
import org.drillwright.notation.Action;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.Count;
import org.drillwright.reading.TurnReader;
import org.drillwright.school.SchoolFolder;
import org.drillwright.source.FieldPath;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The example school in each language: what is said of it, read as if somebody had written it so, means the same. */
class ExampleSchoolTest {

    private static final SchoolFolder SCHOOL = open();

    private static SchoolFolder open() {
        try {
            return SchoolFolder.open(Path.of("..", "drills"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static Stream<String> tags() {
        return TurnReader.standard().tags().stream();
    }

    /**
     * A drill said in another language.
     *
     * @param anew read from what was said, see {@link #readAnew}
     */
    private record Said(Rendering one, Subject anew) {}

    /** By the language: each test looks at another side of them. */
    private static final Map<String, List<Said>> SAID = new ConcurrentHashMap<>();

    private static List<Said> said(String tag) {
        return SAID.computeIfAbsent(tag, other -> {
            Interpreter interpreter = new Interpreter(SCHOOL.school(), new Language(other), Translations.NONE);
            return SCHOOL.entries().stream()
                    .flatMap(entry -> entry.subject().stream())
                    .map(interpreter::render)
                    .map(one -> new Said(one, readAnew(one)))
                    .toList();
        });
    }

    private static List<Rendering> renderings(String tag) {
        return said(tag).stream().map(Said::one).toList();
    }

    /** The drill read anew from its words in the other language, without those of the original behind, and played from these. */
    private static Subject readAnew(Rendering one) {
        Drill said = one.drill().drill();
        Drill drill = new Drill(
                said.id(),
                said.title(),
                said.level(),
                said.form(),
                said.weapon(),
                said.hands(),
                said.worksOn(),
                said.needs(),
                said.gear(),
                said.purpose(),
                own(one, "start", said.start()),
                own(one, "opening", said.opening()),
                said.steps(),
                own(one, "closing", said.closing()),
                said.repeat(),
                said.swap(),
                said.tempo(),
                said.note(),
                said.cautions(),
                said.variantOf(),
                said.tags(),
                said.revised(),
                said.accept(),
                said.language(),
                said.madeFrom());
        Map<String, Drill> all = new LinkedHashMap<>();
        SCHOOL.entries().stream()
                .flatMap(entry -> entry.subject().stream())
                .forEach(subject -> all.put(subject.drill().id(), subject.drill()));
        Surroundings around = new Surroundings(
                one.drill().school(), TurnReader.standard().with(SCHOOL.school().words()), all);
        return new Subject(drill, one.original().file(), one.original().places(), around);
    }

    private static String own(Rendering one, String part, String text) {
        return Optional.ofNullable(one.beside().get(FieldPath.of(part)))
                .map(words -> text.substring(
                        0, text.length() - Rendering.inBrackets(words).length()))
                .orElse(text);
    }

    private static List<Action> actions(Utterance read) {
        return read.actions();
    }

    /** What is found wrong: which refusal, of whose move, where. */
    private static List<String> faults(Subject drill) {
        return drill.faults().stream()
                .map((Fault fault) -> fault.refusal() + " " + fault.by() + " " + fault.where())
                .toList();
    }

    private static List<Object> states(Subject drill) {
        List<Object> states = new ArrayList<>();
        for (Count count : drill.replay().counts()) {
            states.add(count.begin());
            states.add(count.end());
        }
        states.add(drill.replay().closed());
        return states;
    }

    @ParameterizedTest
    @MethodSource("tags")
    void each_turn_that_is_said_does_the_same(String tag) {
        int said = 0;
        for (Said drill : said(tag)) {
            Rendering one = drill.one();
            Subject original = one.original();
            Subject anew = drill.anew();
            for (Subject.Place turn : original.turns()) {
                FieldPath place = Subject.stepPath(turn.step()).key(turn.side().word());
                boolean callers = original.drill().form() == Form.SOLO && turn.side() == Side.LEADER;
                if (!callers && !one.apart().containsKey(place)) {
                    assertEquals(
                            actions(original.turn(turn.step(), turn.side())),
                            actions(anew.turn(turn.step(), turn.side())),
                            () -> tag + " " + original.drill().id() + " " + place.text());
                    said++;
                }
            }
            for (String part : List.of("start", "opening", "closing")) {
                if (!one.apart().containsKey(FieldPath.of(part))) {
                    assertEquals(
                            actions(original.script().part(part)),
                            actions(anew.script().part(part)),
                            () -> tag + " " + original.drill().id() + " " + part);
                    said++;
                }
            }
        }
        int all = said;
        assertTrue(all > 250, () -> "only " + all + " turns were said");
    }

    @ParameterizedTest
    @MethodSource("tags")
    void each_drill_plays_the_same(String tag) {
        for (Said drill : said(tag)) {
            Rendering one = drill.one();
            Subject anew = drill.anew();
            assertEquals(
                    faults(one.original()),
                    faults(anew),
                    () -> tag + " " + anew.drill().id());
            assertEquals(
                    states(one.original()).toString(),
                    states(anew).toString(),
                    () -> tag + " " + anew.drill().id());
        }
    }

    @ParameterizedTest
    @MethodSource("tags")
    void the_drill_in_hand_is_played_as_its_original(String tag) {
        for (Rendering one : renderings(tag)) {
            assertEquals(one.original().replay(), one.drill().replay());
            assertEquals(one.original().coverage(), one.drill().coverage());
        }
    }

    /** Each distance names the same measures in the other language. */
    @ParameterizedTest
    @MethodSource("tags")
    void each_distance_is_the_same(String tag) {
        for (Rendering one : renderings(tag)) {
            for (int at = 0; at < one.original().drill().steps().size(); at++) {
                assertEquals(
                        cue(one.original(), one.original().drill(), at, "en"),
                        cue(one.original(), one.drill().drill(), at, tag));
            }
        }
    }

    private static Optional<?> cue(Subject subject, Drill drill, int at, String tag) {
        return subject.reader().cue(drill.steps().get(at).distance(), tag);
    }
}
