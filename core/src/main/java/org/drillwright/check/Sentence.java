package org.drillwright.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.notation.Action;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/**
 * What a rule says of a fault.
 *
 * @param what what is the matter
 * @param wayOut what may be done instead, as far as it plays
 */
public record Sentence(Severity severity, Message what, WayOut wayOut) {

    public static Optional<Sentence> error(Message what, WayOut wayOut) {
        return Optional.of(new Sentence(Severity.ERROR, what, wayOut));
    }

    public static Optional<Sentence> warning(Message what, WayOut wayOut) {
        return Optional.of(new Sentence(Severity.WARNING, what, wayOut));
    }

    public static Optional<Sentence> error(String what, WayOut wayOut) {
        return error(Message.plain(what), wayOut);
    }

    public static Optional<Sentence> warning(String what, WayOut wayOut) {
        return warning(Message.plain(what), wayOut);
    }

    public static Optional<Sentence> none() {
        return Optional.empty();
    }

    /** A line behind 'the': {@code the high inside line}. */
    public static String the(Line line) {
        return "the " + line.words();
    }

    public static String lines(List<Line> lines) {
        return lines.stream().map(Sentence::the).collect(Collectors.joining(", "));
    }

    /** Words between which one may choose: {@code quarte, sixte, or octave}. */
    public static String either(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + ", or " + words.get(last);
    }

    /** A position at the beginning of a sentence. */
    public static String capital(Position position) {
        return capital(position.word(), "");
    }

    /** Words as a sentence with its stop; empty if there are none. */
    public static String capital(String words, String stop) {
        return words.isEmpty() ? "" : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + stop;
    }

    /** A path in words: {@code disengage}. */
    public static String path(Action.Path path) {
        return path.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
