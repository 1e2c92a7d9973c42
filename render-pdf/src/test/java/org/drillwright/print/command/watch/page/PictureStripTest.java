package org.drillwright.print.command.watch.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.phrase.Replay;
import org.drillwright.print.Example;
import org.drillwright.print.Told;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.diagram.Pictures;
import org.drillwright.print.diagram.curve.InkedArea;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pictures of the example school's drills on one floor. */
class PictureStripTest {

    static Stream<Subject> drills() {
        return Example.drills().stream();
    }

    private static List<Picture> pictures(Subject drill) {
        Replay replay = drill.replay();
        List<Picture> pictures = new ArrayList<>();
        pictures.add(Pictures.standing(replay, replay.start(), Language.ENGLISH));
        pictures.addAll(Pictures.of(replay, Language.ENGLISH));
        return pictures;
    }

    private static Node.Figure figure(Frame frame) {
        return (Node.Figure) frame.content().get(0);
    }

    private static Mark.Line ground(Frame frame) {
        return figure(frame).marks().stream()
                .filter(mark -> mark instanceof Mark.Named named && named.name().equals("ground"))
                .map(mark -> (Mark.Line) ((Mark.Named) mark).marks().get(0))
                .findFirst()
                .orElseThrow();
    }

    private static Optional<Mark> part(Frame frame, String name) {
        return figure(frame).marks().stream()
                .filter(mark -> mark instanceof Mark.Named named && named.name().equals(name))
                .findFirst();
    }

    private static List<Frame> frames(PictureStrip reel) {
        List<Integer> between = reel.between();
        return IntStream.range(0, between.size())
                .boxed()
                .flatMap(at -> Stream.concat(
                        reel.picture(at).stream(),
                        IntStream.rangeClosed(1, between.get(at))
                                .mapToObj(number -> reel.between(at, number).orElseThrow())))
                .toList();
    }

    /** One size and one floor, from edge to edge; and nothing outside. */
    @ParameterizedTest
    @MethodSource("drills")
    void all_stand_on_one_floor(Subject drill) {
        List<Frame> frames = frames(new PictureStrip(pictures(drill)));
        Frame first = frames.get(0);
        for (Frame frame : frames) {
            assertEquals(first.width(), frame.width());
            assertEquals(first.height(), frame.height());
            assertEquals(ground(first).y1(), ground(frame).y1(), 0.02);
            assertEquals(ground(first).x1(), ground(frame).x1(), 0.02);
            assertEquals(ground(first).x2(), ground(frame).x2(), 0.02);
            var box = InkedArea.of(figure(frame).marks()).box();
            assertTrue(box.x() >= 0 && box.y() >= 0, box.toString());
            assertTrue(box.right() <= frame.width() && box.bottom() <= frame.height(), box.toString());
        }
    }

    /** The follower parries where the follower stood, while the leader lunges. */
    @Test
    void who_parries_stays_while_the_other_lunges() {
        PictureStrip reel = new PictureStrip(pictures(Example.drill("parry-of-quarte")));
        Frame start = reel.picture(0).orElseThrow();
        Frame lunge = reel.picture(1).orElseThrow();
        assertEquals(right(start, "follower"), right(lunge, "follower"), 0.5);
        assertTrue(right(lunge, "leader") - right(start, "leader") > 20);
    }

    private static double right(Frame frame, String who) {
        return InkedArea.of(List.of(part(frame, who).orElseThrow())).box().right();
    }

    /** A stroke's end is shown where it ends. */
    @Test
    void on_the_way_there_are_no_signs() {
        PictureStrip reel = new PictureStrip(pictures(Example.drill("parry-of-quarte")));
        for (int number = 1; number <= reel.between().get(1); number++) {
            Frame between = reel.between(1, number).orElseThrow();
            assertEquals(Optional.empty(), part(between, "star"));
            assertEquals(Optional.empty(), part(between, "ticks"));
            assertEquals(Optional.empty(), part(between, "lines of the leader"));
            assertTrue(part(between, "leader").isPresent()
                    && part(between, "follower").isPresent());
        }
        assertTrue(part(reel.picture(2).orElseThrow(), "star").isPresent());
    }

    /** Thrust, parry and riposte on one count: first the parry, then the riposte, which says all of it. */
    @Test
    void of_a_count_with_two_strokes_each_is_shown() {
        Replay replay = Told.count(
                "foil",
                "On guard in sixte, blades apart, at lunge distance.",
                "Straight thrust to the high inside line with a lunge.",
                "Parry quarte and riposte straight to the high inside line.");
        PictureStrip reel = new PictureStrip(Pictures.of(replay, Language.ENGLISH));
        assertEquals(List.of(2), reel.shots());
        assertEquals(2, reel.between().size());
        Frame parried = reel.picture(0).orElseThrow();
        Frame riposte = reel.picture(1).orElseThrow();
        assertTrue(part(parried, "ticks").isPresent() && part(parried, "star").isEmpty());
        assertTrue(part(riposte, "star").isPresent() && part(riposte, "ticks").isEmpty());
        assertTrue(figure(riposte).alternative().contains("parried by quarte"));
    }

    @Test
    void what_is_not_there_is_not_drawn() {
        List<Picture> pictures = pictures(Example.drill("parry-of-quarte"));
        PictureStrip reel = new PictureStrip(pictures);
        assertEquals(List.of(1, 1, 1, 1), reel.shots());
        assertEquals(0, reel.between().get(pictures.size() - 1));
        assertEquals(Optional.empty(), reel.between(pictures.size() - 1, 1));
        assertEquals(Optional.empty(), reel.between(0, 0));
        assertEquals(Optional.empty(), reel.between(0, PictureStrip.BETWEEN + 1));
        assertEquals(Optional.empty(), reel.picture(pictures.size()));
        assertEquals(Optional.empty(), new PictureStrip(List.of()).picture(0));
    }
}
