package org.drillwright.print.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Line;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Fact;
import org.drillwright.phrase.Fencer;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.Range;
import org.drillwright.phrase.State;
import org.drillwright.print.Example;
import org.drillwright.print.frame.Box;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What stands in a picture's shapes is what was played. */
class PicturesTest {

    private static Seen picture(Subject drill, int count) {
        return new Seen(
                Pictures.of(drill.replay(), Language.ENGLISH).get(count - 1).draw(30, 40, 50));
    }

    /**
     * By hand: the lines that positions close after Warford 1884, p. 10-16, and Encyclopaedia Britannica, 11th ed., p. 593;
     * quinte as sabre's head parry from memory; a direct riposte by the Technical Rules, t.11.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "parry-of-quarte          | 1 | follower | high inside line: closed, stroke",
                "parry-of-quarte          | 2 | leader   | high inside line: stroke",
                "parry-of-sixte           | 1 | follower | high outside line: closed, stroke",
                "parry-of-septime         | 1 | follower | low inside line: closed, stroke",
                "epee-parry-of-octave     | 1 | follower | low outside line: closed, stroke",
                "circular-parry-of-sixte  | 1 | follower | high inside line: stroke; high outside line: closed",
                "counter-riposte          | 2 | leader   | high outside line: closed, stroke",
                "counter-riposte          | 3 | follower | high outside line: stroke",
                "disengage                | 1 | follower | high inside line: closed; high outside line: stroke",
                "one-two                  | 1 | follower | high outside line: closed, feint",
                "sabre-cut-to-head        | 1 | follower | head: closed, stroke",
                "sabre-cut-to-head        | 2 | leader   | outside (cheek or flank): stroke",
                "sabre-feint-to-head      | 1 | follower | head: closed, feint",
                "sabre-feint-to-head      | 2 | follower | outside (cheek or flank): closed, stroke",
                "four-positions-of-the-hand | 3 | follower | low outside line: closed",
                "sabre-guards-by-name     | 1 | follower | inside (cheek or chest): closed"
            })
    void aHandWorkedCount(String drill, int count, String side, String lines) {
        assertEquals(sorted(lines), sorted(picture(Example.drill(drill), count).lines(side)));
    }

    private static Set<String> sorted(String lines) {
        return new TreeSet<>(List.of(lines.split("; ")));
    }

    static Stream<Arguments> everyCount() {
        return Example.drills().stream()
                .flatMap(drill -> Stream.iterate(1, count -> count + 1)
                        .limit(drill.replay().counts().size())
                        .map(count -> Arguments.of(drill.drill().id(), count)));
    }

    @ParameterizedTest(name = "{0}, count {1}")
    @MethodSource("everyCount")
    void theLinesInTheShapesAreThoseOfTheReplay(String id, int number) {
        Subject drill = Example.drill(id);
        Count count = drill.replay().counts().get(number - 1);
        Seen seen = picture(drill, number);
        for (Side side : Side.values()) {
            Map<String, TreeSet<String>> expected = new TreeMap<>();
            threats(count, side)
                    .forEach((line, marks) ->
                            marks.forEach(mark -> expected.computeIfAbsent(line, one -> new TreeSet<>())
                                    .add(mark)));
            if (!threats(count, side).isEmpty() || placed(count, side).isPresent()) {
                closed(drill, count, side)
                        .forEach(line -> expected.computeIfAbsent(line.words(), one -> new TreeSet<>())
                                .add("closed"));
            }
            String wanted = expected.entrySet().stream()
                    .map(line -> line.getKey() + ": " + String.join(", ", line.getValue()))
                    .collect(Collectors.joining("; "));
            assertEquals(sorted(wanted), sorted(seen.lines(side.word())), side.word());
        }
    }

    /** The strokes at one side that the states of the count show, by their lines. */
    private static Map<String, List<String>> threats(Count count, Side side) {
        List<State> states = new ArrayList<>(List.of(count.begin()));
        count.moves().forEach(played -> states.add(played.after()));
        Map<String, List<String>> threats = new TreeMap<>();
        for (State state : states) {
            state.attackOn(side).filter(attack -> !attack.drawn()).ifPresent(attack -> {
                threats.clear();
                attack.line()
                        .value()
                        .ifPresent(line -> threats.put(line.words(), List.of(attack.meant() ? "stroke" : "feint")));
                attack.feintLine()
                        .flatMap(Fact::value)
                        .filter(line -> !attack.line().is(line))
                        .ifPresent(line -> threats.put(line.words(), List.of("feint")));
            });
        }
        return threats;
    }

    /** The state after the last time that a hand parried or went to a position. */
    private static Optional<State> placed(Count count, Side side) {
        return count.moves().stream()
                .filter(played -> played.move().by() == side)
                .filter(played -> played.move().action() instanceof Action.Parry
                        || played.move().action() instanceof Action.Place)
                .map(Played::after)
                .reduce((first, last) -> last);
    }

    private static Set<Line> closed(Subject drill, Count count, Side side) {
        State arrived = count.begin();
        for (Played played : count.moves()) {
            Optional<Attack> attack = played.after().attackOn(side);
            if (played.move().by() != side && attack.isPresent()) {
                arrived = played.after();
            }
        }
        Fencer hand = placed(count, side).orElse(arrived).of(side);
        boolean closes = hand.covers().is(true) && hand.extended().is(false);
        Set<Line> lines = hand.hand()
                .value()
                .filter(position -> closes)
                .map(position ->
                        drill.replay().setting().parries().row(position).lines())
                .orElse(Set.of());
        return lines.size() == 1 ? lines : Set.of();
    }

    @ParameterizedTest(name = "{0}, count {1}")
    @MethodSource("everyCount")
    void theDotsUnderTheTwoAreTheFootActionsToTheTouch(String id, int number) {
        Subject drill = Example.drill(id);
        Count count = drill.replay().counts().get(number - 1);
        Seen seen = picture(drill, number);
        Range measure = count.end().measure();
        boolean drawn = drill.isPartnerDrill() && measure.isKnown();
        assertEquals(drawn ? Math.max(0, Math.min(3, measure.least())) : 0, seen.count("foot action"), measure.words());
        for (Side side : drill.isPartnerDrill() ? List.of(Side.values()) : List.of(Side.FOLLOWER)) {
            count.end()
                    .of(side)
                    .feet()
                    .value()
                    .ifPresent(feet -> assertTrue(
                            seen.has(feet.name()
                                    .toLowerCase(java.util.Locale.ROOT)
                                    .replace('_', ' ')),
                            () -> side + " is " + feet));
        }
    }

    /** As a partner sees a right-hander: high is above, the inside is on the right (Warford 1884, p. 10). */
    @Test
    void linesStandWhereAPartnerSeesThem() {
        Seen seen = picture(Example.drill("parry-of-quarte"), 1);
        Box highInside = seen.area("follower", "high inside line");
        Box highOutside = seen.area("follower", "high outside line");
        Box lowInside = seen.area("follower", "low inside line");
        Box lowOutside = seen.area("follower", "low outside line");
        assertTrue(highOutside.right() <= highInside.x() && lowOutside.right() <= lowInside.x());
        assertTrue(highInside.bottom() <= lowInside.y() && highOutside.bottom() <= lowOutside.y());
    }

    @Test
    void aSabresTargetsStandAsOnABody() {
        Seen seen = picture(Example.drill("sabre-cut-to-head"), 1);
        Box head = seen.area("follower", "head");
        Box inside = seen.area("follower", "inside (cheek or chest)");
        Box outside = seen.area("follower", "outside (cheek or flank)");
        Box arm = seen.area("follower", "arm");
        assertTrue(head.bottom() <= inside.y() && head.bottom() <= outside.y());
        assertTrue(arm.right() <= outside.x() && outside.right() <= inside.x());
    }

    @Test
    void thereAreCountsToJudge() {
        assertTrue(everyCount().count() > 100, "the example school has fewer counts than it had");
    }
}
