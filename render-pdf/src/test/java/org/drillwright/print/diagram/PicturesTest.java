package org.drillwright.print.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Range;
import org.drillwright.print.Example;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.pose.Scene;
import org.drillwright.print.pose.SceneReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What stands in a picture is what was played. */
class PicturesTest {

    private static final double WIDTH = Millimetres.toPoints(28);

    private static Node.Figure figure(Subject drill, int count) {
        return Pictures.of(drill.replay(), Language.ENGLISH).get(count - 1).draw(0, 0, WIDTH);
    }

    private static Seen picture(Subject drill, int count) {
        return new Seen(figure(drill, count));
    }

    /**
     * By hand: the lines that positions close after Warford 1884, p. 10-16, and Encyclopaedia Britannica, 11th ed., p. 593;
     * quinte as sabre's head parry from memory; a direct riposte by the Technical Rules, t.11. As a partner sees a
     * right-hander high is above and the inside is on the right (Warford 1884, p. 10).
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "parry-of-quarte          | 1 | follower | high right: closed; high right: point",
                "parry-of-quarte          | 2 | leader   | high right: star",
                "parry-of-sixte           | 1 | follower | high left: closed; high left: point",
                "parry-of-septime         | 1 | follower | low right: closed; low right: point",
                "epee-parry-of-octave     | 1 | follower | low left: closed; low left: point",
                "circular-parry-of-sixte  | 1 | follower | high right: point; high left: closed",
                "counter-riposte          | 2 | leader   | high left: closed; high left: point",
                "counter-riposte          | 3 | follower | high left: star",
                "disengage                | 1 | follower | high right: closed; high left: star",
                "one-two                  | 1 | follower | high left: closed; high left: ring",
                "sabre-cut-to-head        | 1 | follower | head: closed; head: point",
                "sabre-cut-to-head        | 2 | leader   | left: star",
                "sabre-feint-to-head      | 1 | follower | head: closed; head: ring",
                "sabre-feint-to-head      | 2 | follower | left: closed; left: point",
                "four-positions-of-the-hand | 3 | follower | low left: closed",
                "sabre-guards-by-name     | 1 | follower | right: closed"
            })
    void a_hand_worked_count(String drill, int count, String side, String lines) {
        Seen seen = picture(Example.drill(drill), count);
        assertEquals(Optional.of(side), seen.attacked());
        assertEquals(
                new TreeSet<>(List.of(lines.split("; "))),
                new TreeSet<>(List.of(seen.lines(drill.startsWith("sabre")).split("; "))));
    }

    static Stream<Arguments> everyCount() {
        return Example.drills().stream()
                .flatMap(drill -> Stream.iterate(1, count -> count + 1)
                        .limit(drill.replay().counts().size())
                        .map(count -> Arguments.of(drill.drill().id(), count)));
    }

    private static Scene scene(String id, int number) {
        Subject drill = Example.drill(id);
        return SceneReader.read(
                drill.replay().setting(), drill.replay().counts().get(number - 1));
    }

    /** A star is a touch, ticks are a parry, and no stroke has both. */
    @ParameterizedTest(name = "{0}, count {1}")
    @MethodSource("everyCount")
    void the_end_of_the_stroke_is_drawn_as_it_was_played(String id, int number) {
        Scene scene = scene(id, number);
        Seen seen = picture(Example.drill(id), number);
        String end = scene.stroke()
                .filter(stroke -> scene.partner())
                .map(stroke -> stroke.threat().end().key())
                .orElse("");
        boolean lands = List.of("received", "not.met", "past.parry").contains(end);
        if (scene.partner()) {
            assertEquals(lands, seen.inThePair("star").isPresent(), end);
            assertEquals(lands, seen.has("star"), end);
        }
        assertFalse(seen.has("star") && seen.has("ticks"), end);
        if ("parried".equals(end)) {
            assertTrue(seen.has("ticks"));
        }
    }

    /** The blade of a thrust that lands ends in the star: point against target, in millimetres on paper. */
    @ParameterizedTest(name = "{0}, count {1}")
    @MethodSource("everyCount")
    void the_point_is_on_the_target(String id, int number) {
        Scene scene = scene(id, number);
        Node.Figure figure = figure(Example.drill(id), number);
        Optional<Mark.Named> star = new Seen(figure).inThePair("star");
        boolean thrust = scene.partner()
                && scene.stroke().filter(stroke -> !stroke.cut()).isPresent();
        if (star.isEmpty() || !thrust) {
            return;
        }
        String by = scene.stroke().orElseThrow().by().word();
        Mark.Named sword = new Seen(figure).inThePair("sword of the " + by).orElseThrow();
        Mark.Named blade = (Mark.Named) sword.marks().stream()
                .filter(mark -> mark instanceof Mark.Named one && one.name().equals("blade"))
                .findFirst()
                .orElseThrow();
        Rectangle button = Seen.box(blade.marks().get(blade.marks().size() - 1));
        List<Mark> inks = star.get().marks();
        Rectangle rays = Seen.box(inks.get(inks.size() - 1));
        double off = Math.hypot(middleX(button) - middleX(rays), middleY(button) - middleY(rays));
        assertEquals(0, off * 25.4 / 72, 0.15);
    }

    private static double middleX(Rectangle box) {
        return box.x() + box.width() / 2;
    }

    private static double middleY(Rectangle box) {
        return box.y() + box.height() / 2;
    }

    /** One shoe for each foot action that it takes to touch; a bar from front toe to front toe. */
    @ParameterizedTest(name = "{0}, count {1}")
    @MethodSource("everyCount")
    void the_shoes_on_the_bar_are_the_foot_actions_to_the_touch(String id, int number) {
        Scene scene = scene(id, number);
        Seen seen = picture(Example.drill(id), number);
        Range measure = scene.moment().measure();
        boolean drawn = scene.partner() && measure.isKnown();
        assertEquals(
                drawn ? Math.max(0, Math.min(3, measure.least())) : 0,
                seen.count("foot action"),
                measure.words().english());
        assertEquals(scene.partner() ? 1 : 0, seen.count("measure"));
    }

    /** An arrow for every foot action up to the moment that is shown. */
    @ParameterizedTest(name = "{0}, count {1}")
    @MethodSource("everyCount")
    void feet_that_moved_have_their_arrows(String id, int number) {
        Scene scene = scene(id, number);
        Seen seen = picture(Example.drill(id), number);
        for (Side side : Side.values()) {
            long moved = scene.feet().stream()
                    .filter(footing -> footing.by() == side)
                    .count();
            assertEquals(moved, seen.count("feet of the " + side.word()), () -> side + " " + scene.feet());
        }
    }

    /** Who only holds has nothing new to show; feet, strokes and hands that move do. */
    @Test
    void a_count_in_which_nobody_moves_changes_nothing() {
        for (Subject drill : Example.drills()) {
            List<Picture> pictures = Pictures.of(drill.replay(), Language.ENGLISH);
            for (int at = 0; at < pictures.size(); at++) {
                Count count = drill.replay().counts().get(at);
                boolean steps = count.moves().stream()
                        .flatMap(played -> played.move().parts().stream())
                        .anyMatch(
                                part -> part.action() instanceof Action.Step step && step.foot() != Action.Foot.APPEL);
                if (steps
                        || count.moves().stream()
                                .anyMatch(played -> AttackEnd.of(
                                                count, count.moves().indexOf(played))
                                        .isPresent())) {
                    assertTrue(pictures.get(at).changes(), drill.drill().id() + " " + (at + 1));
                }
            }
        }
        List<Picture> held =
                Pictures.of(Example.drill("keeping-distance-from-the-caller").replay(), Language.ENGLISH);
        assertFalse(held.get(2).changes(), "hold, light on both feet");
        assertFalse(held.get(5).changes(), "wait on guard");
    }

    /** Two strokes that go elsewhere or end otherwise never give one picture. */
    @Test
    void different_ends_are_different_pictures() {
        Map<List<Mark>, String> ends = new HashMap<>();
        List<String> clashes = new ArrayList<>();
        for (Arguments one : everyCount().toList()) {
            String id = (String) one.get()[0];
            int number = (int) one.get()[1];
            String end = scene(id, number)
                    .stroke()
                    .map(stroke -> stroke.by() + " " + stroke.threat().line() + " "
                            + stroke.threat().end().key())
                    .orElse("none");
            String other = ends.putIfAbsent(figure(Example.drill(id), number).marks(), end);
            if (other != null && !other.equals(end)) {
                clashes.add(id + " " + number + ": " + end + " is drawn as " + other);
            }
        }
        assertEquals(List.of(), clashes);
    }

    /** Nobody fences a mirror image: a left-hander's inside is on the left of the paper. */
    @Test
    void a_left_handers_lines_are_seen_in_a_mirror() {
        Seen seen = picture(Example.drill("opposite-hands-circular-quarte"), 2);
        assertEquals(Optional.of("leader"), seen.attacked());
        assertEquals("high right: star", seen.lines(false), "the high outside line of the left-handed leader");
    }

    @Test
    void there_are_counts_to_judge() {
        assertTrue(everyCount().count() > 100, "the example school has fewer counts than it had");
    }
}
