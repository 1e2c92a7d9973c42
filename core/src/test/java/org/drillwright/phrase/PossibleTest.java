package org.drillwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drillwright.check.Corpus;
import org.drillwright.check.Example;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Line;
import org.drillwright.notation.Move;
import org.drillwright.oracle.Enumeration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the program holds possible is what the handbooks' tables hold possible, move by move to the fourth, from each guard,
 * with blades apart and engaged: foil, same hands, lunge distance.
 */
class PossibleTest {

    private static final int DEPTH = 4;
    private static final Path PAGE = Path.of("docs", "possible.md");

    /** A guard and whether the blades touch. */
    record Start(String guard, boolean engaged) {

        Replay replay() {
            String blades = engaged ? "blades engaged" : "blades apart";
            return CORPUS.judge("example", Example.complete("""
                            start: Both on guard in %s, %s, at lunge distance.
                            opening: Salute. Masks on. Both on guard in %s.
                            """.formatted(guard, blades, guard)))
                    .subject()
                    .replay();
        }

        Enumeration.Node oracle() {
            return Enumeration.start(guard, engaged);
        }

        @Override
        public String toString() {
            return guard + (engaged ? ", engaged" : ", apart");
        }
    }

    private static final Corpus CORPUS = Corpus.correct();

    static List<Start> starts() {
        return Stream.of("quarte", "sixte", "septime", "octave")
                .flatMap(guard -> Stream.of(new Start(guard, false), new Start(guard, true)))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("starts")
    void the_program_and_the_tables_agree_on_every_move(Start start) {
        Replay replay = start.replay();
        agree(new ArrayList<>(), replay.start(), replay.setting(), start.oracle(), DEPTH);
    }

    private static void agree(List<String> path, State state, Setting setting, Enumeration.Node node, int depth) {
        if (depth == 0) {
            return;
        }
        Map<String, State> ours = moves(state, setting);
        Map<String, Enumeration.Node> theirs = node.moves();
        assertEquals(new TreeSet<>(theirs.keySet()), new TreeSet<>(ours.keySet()), () -> "after " + path);
        ours.forEach((move, next) -> {
            path.add(move);
            agree(path, next, setting, theirs.get(move), depth - 1);
            path.remove(path.size() - 1);
        });
    }

    /** The program's moves, in the oracle's words. */
    static Map<String, State> moves(State state, Setting setting) {
        Map<String, State> moves = new LinkedHashMap<>();
        for (Possible.Open open : Possible.in(state, setting)) {
            State twice = moves.put(words(open.move(), state, setting), open.next());
            assertEquals(null, twice, "a move is listed twice");
        }
        return moves;
    }

    private static String words(Move move, State state, Setting setting) {
        String lunge = move.lunge().isPresent() ? "lunge " : "";
        return (move.by() == Side.LEADER ? "L " : "F ")
                + lunge
                + words(move.action(), new Here(state, setting, move.by()));
    }

    /** Where a move is made, and by whom. */
    private record Here(State state, Setting setting, Side by) {

        String lineOf(Action.Strike strike) {
            return line(new Sighting(state, setting, by, strike).line().value().orElseThrow());
        }
    }

    private static String words(Action action, Here here) {
        if (action instanceof Action.Step step) {
            return step.foot() == Action.Foot.ADVANCE ? "forward" : "back";
        }
        if (action instanceof Action.Recover recover) {
            return recover.way() == Action.Way.BACK ? "recover back" : "recover forward";
        }
        if (action instanceof Action.Place place) {
            return "to " + place.position().word();
        }
        if (action instanceof Action.Parry parry) {
            String kind = parry.kind() == Action.ParryKind.CIRCULAR ? "circular-" : "parry-";
            return kind + parry.position().orElseThrow().word();
        }
        if (action instanceof Action.Strike strike) {
            return way(strike.path()) + here.lineOf(strike);
        }
        return "touched";
    }

    private static String way(Action.Path path) {
        return switch (path) {
            case DISENGAGE -> "disengage ";
            case CUT_OVER -> "cut-over ";
            default -> "";
        };
    }

    static String line(Line line) {
        return switch (line) {
            case HIGH_INSIDE -> "HI";
            case HIGH_OUTSIDE -> "HO";
            case LOW_INSIDE -> "LI";
            case LOW_OUTSIDE -> "LO";
            default -> line.name();
        };
    }

    private static long phrases(State state, Setting setting, int depth) {
        if (depth == 0) {
            return 1;
        }
        return Possible.in(state, setting).stream()
                .mapToLong(open -> phrases(open.next(), setting, depth - 1))
                .sum();
    }

    @Test
    void the_page_gives_the_numbers_of_both() throws IOException {
        StringBuilder page = new StringBuilder(INTRO);
        for (Start start : starts()) {
            Replay replay = start.replay();
            page.append("| ").append(start);
            for (int depth = 1; depth <= DEPTH; depth++) {
                long ours = phrases(replay.start(), replay.setting(), depth);
                assertEquals(start.oracle().phrases(depth), ours, start + " to " + depth);
                page.append(" | ").append(ours);
            }
            page.append(" |\n");
        }
        if (System.getProperty("update") != null) {
            Files.createDirectories(PAGE.getParent());
            Files.writeString(PAGE, page.toString());
        }
        assertEquals(page.toString(), Files.readString(PAGE), "run the test with -Dupdate to write the page anew");
    }

    private static final String INTRO = """
            # Possible phrases

            How many sequences of one to four moves are open to two foil fencers of the same hand who stand on guard in
            one position at lunge distance. The alphabet of moves is that of `Possible`. Each number is counted twice: by the
            program, and by an enumeration in the tests that knows only the handbooks' tables (which line each position
            protects, which parry meets which line, where a disengage ends); the two agree on every single move. Twenty-two
            positions are written out by hand in `HandCountedTest`.

            | start | 1 move | 2 moves | 3 moves | 4 moves |
            |---|---|---|---|---|
            """;

    @Test
    void the_tables_know_nothing_of_the_program() {
        var oracle = new ClassFileImporter().importPackages("org.drillwright.oracle");
        assertTrue(oracle.size() >= 4);
        ArchRuleDefinition.noClasses()
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "the program",
                        (JavaClass one) -> one.getPackageName().startsWith("org.drillwright")
                                && !one.getPackageName().equals("org.drillwright.oracle")))
                .check(oracle);
    }
}
