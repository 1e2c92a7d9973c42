package org.drillwright.print.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Position;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Feet;
import org.drillwright.phrase.Replay;
import org.drillwright.print.Example;
import org.drillwright.print.Told;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pose.Gesture;
import org.drillwright.print.pose.Scene;
import org.drillwright.print.pose.SceneReader;
import org.drillwright.print.text.GlyphCoverage;
import org.drillwright.print.wording.Written;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pictures are spoken in every language of the labels, and wholly. */
class WordsTest {

    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void every_word_can_be_printed(Language language) {
        GlyphCoverage coverage = new GlyphCoverage(Family.dejaVu());
        Written.texts(Caption.class, "words", language)
                .forEach(text -> assertEquals(List.of(), coverage.missing(text)));
    }

    /** Every kind of end there is, known by its key. */
    private static List<String> endKeys() {
        return List.of(
                        new AttackEnd.Parried(Optional.empty()),
                        new AttackEnd.PastTheParry(Position.QUARTE),
                        new AttackEnd.Received(),
                        new AttackEnd.FallsShort(),
                        new AttackEnd.Evaded(Action.Displacement.UNSTATED),
                        new AttackEnd.Stopped(),
                        new AttackEnd.NotMet(),
                        new AttackEnd.Withdrawn(),
                        new AttackEnd.DrewParry(),
                        new AttackEnd.Threat(),
                        new AttackEnd.UnderWay(),
                        new AttackEnd.Unknown())
                .stream()
                .map(AttackEnd::key)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void whatever_can_be_played_has_its_word(Language language) {
        List.of(Action.Role.values()).forEach(one -> said("role", one, language));
        said("way.cut", language);
        List.of(Gesture.values()).forEach(one -> said("gesture", one, language));
        endKeys().forEach(key -> said("fate." + key, language));
        List.of(Feet.values()).forEach(one -> said("feet", one, language));
        assertEquals(9, Legend.in(language).size());
    }

    private static String said(String key, Language language) {
        return Message.of(Caption.class, key, Terms.of(Position.QUARTE)).in(language.locale());
    }

    private static String said(String kind, Enum<?> one, Language language) {
        return said(kind + "." + one.name().toLowerCase(Locale.ROOT).replace('_', '.'), language);
    }

    /** What is new in a count is said; nothing is said twice in a drill. */
    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void no_caption_stands_twice_in_a_drill(Language language) {
        for (Subject drill : Example.drills()) {
            List<Picture> pictures = Pictures.of(drill.replay(), language);
            for (Function<Picture, String> words :
                    List.<Function<Picture, String>>of(Picture::gist, Picture::alternative)) {
                List<String> said = pictures.stream().map(words).toList();
                assertFalse(said.stream().anyMatch(String::isBlank));
                assertEquals(
                        said.stream().distinct().toList(), said, drill.drill().id());
            }
        }
    }

    @Test
    void a_count_that_repeats_one_says_which() {
        assertEquals(
                List.of("Class on guard.", "As in count 2: Class on guard."),
                Pictures.of(Example.drill("advance-and-retreat").replay(), Language.ENGLISH).stream()
                        .map(Picture::gist)
                        .filter(said -> said.endsWith("Class on guard."))
                        .toList());
    }

    @Test
    void several_strokes_of_a_count_are_told_in_their_order() {
        Replay replay = Told.count(
                "foil",
                "On guard in sixte, blades apart, at lunge distance.",
                "Straight thrust to the high inside line with a lunge.",
                "Parry quarte and riposte straight to the high inside line.");
        Picture picture = Pictures.of(replay, Language.ENGLISH).get(0);
        assertEquals(
                "Leader lunges: straight thrust into the follower’s high inside line, parried by quarte; the blades"
                        + " cross, the point misses. Follower, arm alone: riposte by straight thrust into the leader’s"
                        + " high inside line, not met.",
                picture.gist());
        assertEquals(2, picture.strokes().size());
    }

    /** Every stroke is told with who, line, end and measure. */
    @Test
    void a_stroke_is_told_with_who_line_end_and_measure() {
        for (Subject drill : Example.drills()) {
            List<Picture> pictures = Pictures.of(drill.replay(), Language.ENGLISH);
            for (int at = 0; at < pictures.size(); at++) {
                String said = pictures.get(at).alternative();
                Scene scene = SceneReader.read(
                        drill.replay().setting(), drill.replay().counts().get(at));
                if (scene.partner()) {
                    assertTrue(said.contains("distance"), said);
                }
                scene.stroke().filter(stroke -> scene.partner()).ifPresent(stroke -> {
                    String who = stroke.by() == Side.LEADER ? "Leader" : "Follower";
                    String whose = stroke.by() == Side.LEADER ? "the follower’s" : "the leader’s";
                    assertTrue(said.contains(who) && said.contains(whose), said);
                    stroke.threat()
                            .line()
                            .value()
                            .ifPresent(line -> assertTrue(
                                    said.contains(Terms.of(line).english().replace(" line", "")),
                                    () -> line + " is not in: " + said));
                });
            }
        }
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void every_count_of_the_example_school_is_spoken_without_a_gap(Language language) {
        for (Subject drill : Example.drills()) {
            for (Picture picture : Pictures.of(drill.replay(), language)) {
                String said = picture.alternative();
                assertTrue(said.endsWith(".") && !said.contains("{") && !said.contains("  "), said);
            }
        }
    }

    @Test
    void a_parry_is_spoken_from_the_state() {
        String said = Pictures.of(Example.drill("parry-of-quarte").replay(), Language.ENGLISH)
                .get(0)
                .alternative();
        assertEquals(
                "Leader lunges: straight thrust into the follower’s high inside line, parried by quarte; the blades"
                        + " cross, the point misses. Leader in the lunge with the arm extended, follower on guard, at"
                        + " extension distance.",
                said);
    }

    @Test
    void the_same_in_french() {
        String said = Pictures.of(Example.drill("parry-of-quarte").replay(), new Language("fr"))
                .get(0)
                .alternative();
        assertTrue(
                said.startsWith(
                        "Meneur, fente\u00a0: coup droit dans la ligne haute du dedans du suiveur, ligne fermée par la"
                                + " parade de quarte\u00a0; les fers se croisent"),
                said);
    }
}
