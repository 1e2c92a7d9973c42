package org.drillwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drillwright.check.Corpus;
import org.drillwright.check.Example;
import org.drillwright.oracle.Enumeration;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the program holds possible with engagements, takings of the blade and renewals, between two of the same hand and of
 * opposite hands, is what the handbooks' tables hold possible, move by move: to the second from every start and to the third
 * from one of them; in the profile {@code deep} to the third from all.
 */
class WiderPossibleTest {

    private static final int DEPTH = 3;
    private static final Path PAGE = Path.of("docs", "possible-wide.md");

    private static final Corpus CORPUS = Corpus.correct();

    /** A guard of the leader's, whether the blades touch, and whether the two have opposite hands. */
    record Start(String guard, boolean engaged, boolean opposite) {

        Wider wider() {
            String other = opposite ? Enumeration.facing(guard) : guard;
            String guards = "Leader on guard in %s. Follower on guard in %s.".formatted(guard, other);
            String blades = engaged ? "Blades engaged" : "Blades apart";
            Replay replay = CORPUS.judge("example", Example.complete("""
                            hands: %s
                            start: %s %s, at lunge distance.
                            opening: Salute. Masks on. %s
                            """.formatted(
                                    opposite ? "opposite" : "same", guards, blades, guards)))
                    .subject()
                    .replay();
            return new Wider(replay.start(), replay.setting(), Set.of());
        }

        Enumeration.Node oracle() {
            return Enumeration.wide(guard, engaged, opposite);
        }

        @Override
        public String toString() {
            return guard
                    + (opposite ? " against " + Enumeration.facing(guard) : "")
                    + (engaged ? ", engaged" : ", apart");
        }
    }

    static List<Start> starts() {
        return Stream.of("quarte", "sixte", "septime", "octave")
                .flatMap(guard -> Stream.of(false, true)
                        .flatMap(
                                engaged -> Stream.of(false, true).map(opposite -> new Start(guard, engaged, opposite))))
                .toList();
    }

    static List<Start> one() {
        return List.of(new Start("sixte", true, true));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("starts")
    void program_and_tables_agree_to_the_second_move(Start start) {
        agree(new ArrayList<>(), start.wider(), start.oracle(), 2);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("one")
    void they_agree_to_the_third_from_one(Start start) {
        agree(new ArrayList<>(), start.wider(), start.oracle(), DEPTH);
    }

    @Tag("deep")
    @ParameterizedTest(name = "{0}")
    @MethodSource("starts")
    void they_agree_to_the_third_from_all(Start start) {
        agree(new ArrayList<>(), start.wider(), start.oracle(), DEPTH);
    }

    @Test
    void the_page_gives_the_numbers_of_both_to_the_second_move() throws IOException {
        if (System.getProperty("update") != null) {
            Files.writeString(PAGE, page());
        }
        List<String> rows = Files.readAllLines(PAGE);
        for (Start start : starts()) {
            String row = "| " + start + " | " + start.oracle().phrases(1) + " | "
                    + start.oracle().phrases(2) + " | ";
            assertEquals(1, rows.stream().filter(one -> one.startsWith(row)).count(), row);
        }
    }

    @Tag("deep")
    @Test
    void the_page_gives_the_numbers_of_both() throws IOException {
        assertEquals(page(), Files.readString(PAGE), "run the test with -Dupdate to write the page anew");
    }

    private static String page() {
        StringBuilder page = new StringBuilder(INTRO);
        for (Start start : starts()) {
            page.append("| ").append(start);
            for (int depth = 1; depth <= DEPTH; depth++) {
                long ours = start.wider().phrases(depth);
                assertEquals(start.oracle().phrases(depth), ours, start + " to " + depth);
                page.append(" | ").append(ours);
            }
            page.append(" |\n");
        }
        return page.toString();
    }

    private static final String INTRO = """
            # Possible phrases, with the blades

            How many sequences of one to three moves are open to two foil fencers at lunge distance who also work with the
            blades and renew their attacks: beside the alphabet of `Possible`, who stands on guard engages, changes the
            engagement, beats or binds in quarte, sixte, septime or octave, and presses; and anybody glides, counter-disengages,
            and renews an attack of one's own straight. Two of opposite hands stand as they engage, one inside where the other
            is outside (L'Abbat XXII). Each number is counted twice, as in [possible.md](possible.md), and the two agree on
            every single move: to the second from every start and to the third from one of them in every build, to the third
            from all in the profile `deep`.

            | start | 1 move | 2 moves | 3 moves |
            |---|---|---|---|
            """;

    private static void agree(List<String> path, Wider wider, Enumeration.Node node, int depth) {
        if (depth == 0) {
            return;
        }
        Map<String, Wider> ours = wider.moves();
        Map<String, Enumeration.Node> theirs = node.moves();
        assertEquals(new TreeSet<>(theirs.keySet()), new TreeSet<>(ours.keySet()), () -> "after " + path);
        ours.forEach((move, next) -> {
            path.add(move);
            agree(path, next, theirs.get(move), depth - 1);
            path.remove(path.size() - 1);
        });
    }
}
