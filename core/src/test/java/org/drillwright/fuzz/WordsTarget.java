package org.drillwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Utterance;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Span;

/** Any text, read as the words of a turn and as a distance cue. */
public final class WordsTarget {

    /** Longer than any text that a drill may hold. */
    private static final int LONGEST = 2_500;

    private static final TurnReader READER = TurnReader.standard();

    private WordsTarget() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        String all = new String(bytes, StandardCharsets.UTF_8);
        String text = all.substring(0, Math.min(all.length(), LONGEST));
        Utterance read = READER.read(text);
        inside(text, read);
        assertEquals(read, READER.read(text));
        blanksAroundChangeNothing(text, read);
        theCaseOfLettersChangesNothing(text, read);
        aSentenceSaidTwiceIsReadTwice(text, read);
        inOrder(text, read.open());
        assertEquals(READER.cue(text, "fr"), READER.cue(" " + text, "fr"));
        read.unread().stream()
                .limit(1)
                .forEach(span -> READER.meant(text, span).ifPresent(near -> assertTrue(!near.isBlank(), near)));
    }

    private static void inside(String text, Utterance read) {
        read.clauses().forEach(clause -> inside(text, clause.span()));
        read.readings().forEach(reading -> inside(text, reading.span()));
        inOrder(text, read.unread());
    }

    private static void inside(String text, Span span) {
        assertTrue(span.end() <= text.length(), () -> span + " in '" + text + "'");
        assertTrue(!text.substring(span.start(), span.end()).isBlank(), () -> span + " in '" + text + "'");
    }

    private static void inOrder(String text, List<Span> spans) {
        int before = 0;
        for (Span span : spans) {
            inside(text, span);
            assertTrue(span.start() >= before, () -> spans + " in '" + text + "'");
            before = span.end();
        }
    }

    private static void blanksAroundChangeNothing(String text, Utterance read) {
        Utterance moved = READER.read("  " + text + " ");
        assertEquals(actions(read), actions(moved));
        assertEquals(
                read.unread(),
                moved.unread().stream()
                        .map(span -> new Span(span.start() - 2, span.end() - 2))
                        .toList());
    }

    /** A full stop before a small letter ends no sentence; therefore texts without one are asked. */
    private static void theCaseOfLettersChangesNothing(String text, Utterance read) {
        if (text.chars().allMatch(unit -> unit < 128 && unit != '.')) {
            assertEquals(actions(read), actions(READER.read(text.toUpperCase(Locale.ROOT))));
        }
    }

    /** Nothing is carried from one sentence into the next. */
    private static void aSentenceSaidTwiceIsReadTwice(String text, Utterance read) {
        List<Action> twice = actions(READER.read(text + "\n! " + text));
        List<Action> once = actions(read);
        assertEquals(2 * once.size(), twice.size(), text);
        assertEquals(once, twice.subList(0, once.size()), text);
        assertEquals(once, twice.subList(once.size(), twice.size()), text);
    }

    private static List<Action> actions(Utterance read) {
        return read.clauses().stream()
                .map(Clause::action)
                .filter(action -> !(action instanceof Action.Aside))
                .toList();
    }
}
