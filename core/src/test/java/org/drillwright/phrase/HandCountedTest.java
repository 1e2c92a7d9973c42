package org.drillwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.drillwright.oracle.Enumeration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Positions in which every open move was written out by hand, from the rules of the phrase and the table of positions, before
 * anything was run. A row is the start, the moves made, and then for each side the moves that are open.
 *
 * <p>{@code HI, HO, LI, LO} are the lines, high and low, inside and outside; a stroke without {@code lunge} is made by the arm
 * alone; {@code dis} is a disengage, {@code cut} a cut-over.
 */
class HandCountedTest {

    private static final String POSITIONS = """
            sixte apart |
              L 10: forward, back, to quarte, to septime, to octave, lunge HI, lunge LI, lunge LO, lunge dis HI, lunge cut HI
              F 10: forward, back, to quarte, to septime, to octave, lunge HI, lunge LI, lunge LO, lunge dis HI, lunge cut HI
            quarte engaged |
              L 9: forward, back, to sixte, to septime, to octave, lunge LI, lunge LO, lunge dis HO, lunge cut HO
              F 9: forward, back, to sixte, to septime, to octave, lunge LI, lunge LO, lunge dis HO, lunge cut HO
            octave apart |
              L 10: forward, back, to quarte, to sixte, to septime, lunge HI, lunge HO, lunge LI, lunge dis LI, lunge cut LI
              F 10: forward, back, to quarte, to sixte, to septime, lunge HI, lunge HO, lunge LI, lunge dis LI, lunge cut LI
            sixte apart | L forward
              L 10: forward, back, to quarte, to septime, to octave, HI, LI, LO, dis HI, cut HI
              F 10: forward, back, to quarte, to septime, to octave, HI, LI, LO, dis HI, cut HI
            sixte apart | L back
              L 5: forward, back, to quarte, to septime, to octave
              F 5: forward, back, to quarte, to septime, to octave
            sixte apart | L lunge HI
              L 0:
              F 4: parry-quarte, circular-sixte, back, touched
            sixte apart | L lunge LI
              L 0:
              F 3: parry-septime, back, touched
            sixte apart | L lunge HI; F parry-quarte
              L 6: recover back, recover forward, LI, LO, dis HO, cut HO
              F 10: forward, back, to sixte, to septime, to octave, HI, LI, LO, dis HO, cut HO
            sixte apart | L lunge HI; F circular-sixte
              L 6: recover back, recover forward, LI, LO, dis HI, cut HI
              F 10: forward, back, to quarte, to septime, to octave, HO, LI, LO, dis HI, cut HI
            sixte apart | L lunge HI; F back
              L 2: recover back, recover forward
              F 5: forward, back, to quarte, to septime, to octave
            sixte apart | L lunge HI; F touched
              L 5: recover back, recover forward, HI, LI, LO
              F 11: forward, back, to quarte, to septime, to octave, HI, HO, LI, LO, dis HI, cut HI
            quarte engaged | L lunge dis HO
              L 0:
              F 4: parry-sixte, circular-quarte, back, touched
            quarte engaged | L lunge dis HO; F parry-sixte; F HO
              L 3: parry-sixte, circular-quarte, touched
              F 0:
            quarte engaged | L lunge dis HO; F parry-sixte; F HO; L parry-sixte
              L 7: recover back, recover forward, HO, LI, LO, dis HI, cut HI
              F 9: forward, back, to quarte, to septime, to octave, LI, LO, dis HI, cut HI
            sixte apart | L lunge HI; F parry-quarte; L recover back
              L 8: forward, back, to quarte, to septime, to octave, lunge HO, lunge LI, lunge LO
              F 8: forward, back, to sixte, to septime, to octave, lunge HI, lunge LI, lunge LO
            sixte apart | L lunge HI; F parry-quarte; L recover forward
              L 8: forward, back, to quarte, to septime, to octave, HO, LI, LO
              F 8: forward, back, to sixte, to septime, to octave, HI, LI, LO
            sixte engaged | L to quarte
              L 8: forward, back, to sixte, to septime, to octave, lunge HI, lunge LI, lunge LO
              F 8: forward, back, to quarte, to septime, to octave, lunge HO, lunge LI, lunge LO
            sixte apart | L to quarte
              L 8: forward, back, to sixte, to septime, to octave, lunge HI, lunge LI, lunge LO
              F 8: forward, back, to quarte, to septime, to octave, lunge HO, lunge LI, lunge LO
            septime apart | L lunge HI
              L 0:
              F 3: parry-quarte, back, touched
            octave engaged | L lunge dis LI; F circular-octave
              L 6: recover back, recover forward, HI, HO, dis LI, cut LI
              F 10: forward, back, to quarte, to sixte, to septime, LO, HI, HO, dis LI, cut LI
            sixte engaged | L lunge dis HI; F parry-quarte; L recover back
              L 8: forward, back, to quarte, to septime, to octave, lunge HO, lunge LI, lunge LO
              F 8: forward, back, to sixte, to septime, to octave, lunge HI, lunge LI, lunge LO
            sixte apart | F lunge HI
              L 4: parry-quarte, circular-sixte, back, touched
              F 0:
            """;

    /**
     * A position written out by hand.
     *
     * @param counted how many moves were counted for both
     * @param open the moves, in full words
     */
    record Written(String start, List<String> made, int counted, Set<String> open) {

        @Override
        public String toString() {
            return start + ": " + String.join("; ", made);
        }
    }

    static List<Written> written() {
        List<Written> written = new ArrayList<>();
        List<String> rows = POSITIONS.lines().toList();
        for (int at = 0; at < rows.size(); at += 3) {
            String[] head = rows.get(at).split("\\|", -1);
            Set<String> open = new TreeSet<>();
            int counted =
                    side(rows.get(at + 1).strip(), open) + side(rows.get(at + 2).strip(), open);
            written.add(new Written(head[0].strip(), moves(head[1], ";"), counted, open));
        }
        return written;
    }

    /** Adds a side's moves; gives the number written before them. */
    private static int side(String row, Set<String> open) {
        String[] parts = row.split(":", 2);
        for (String move : moves(parts[1], ",")) {
            open.add(parts[0].substring(0, 2) + move);
        }
        return Integer.parseInt(parts[0].substring(2));
    }

    private static List<String> moves(String text, String between) {
        return Arrays.stream(text.split(between))
                .map(String::strip)
                .filter(move -> !move.isEmpty())
                .map(move -> move.replace("dis ", "disengage ").replace("cut ", "cut-over "))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("written")
    void what_is_open_is_what_was_written_by_hand(Written written) {
        String[] start = written.start().split(" ");
        boolean engaged = start[1].equals("engaged");
        Enumeration.Node node = Enumeration.start(start[0], engaged);
        Replay replay = new PossibleTest.Start(start[0], engaged).replay();
        State state = replay.start();
        for (String move : written.made()) {
            node = node.moves().get(move);
            state = PossibleTest.moves(state, replay.setting()).get(move);
        }
        assertEquals(written.open(), new TreeSet<>(node.moves().keySet()), "the tables");
        assertEquals(
                written.open(),
                new TreeSet<>(PossibleTest.moves(state, replay.setting()).keySet()),
                "the program");
        assertEquals(written.counted(), written.open().size());
    }

    @Test
    void there_are_twenty_of_them_and_no_two_alike() {
        assertTrue(written().size() >= 20);
        assertEquals(
                written().size(),
                written().stream().map(Written::toString).distinct().count());
    }
}
