package org.drillwright.editing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.source.Field;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Span;
import org.drillwright.source.Written;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/**
 * A part of a drill as its outline shows it.
 *
 * @param detail its words, or what they begin with
 * @param whole all of it
 * @param name what is shown when somebody goes there, within the whole
 */
public record Symbol(Message label, String detail, Span whole, Span name, List<Symbol> parts) {

    /** What stands around the counts, in the order in which it is lived through. */
    private static final List<String> BEFORE = List.of("start", "opening");

    public Symbol {
        parts = List.copyOf(parts);
    }

    /** The outline of a drill: the start and the opening, each count with its turns, the closing. */
    public static List<Symbol> outline(Subject subject) {
        List<Symbol> symbols = new ArrayList<>();
        BEFORE.forEach(part -> of(subject, FieldPath.of(part), part(part)).ifPresent(symbols::add));
        for (int step = 0; step < subject.drill().steps().size(); step++) {
            symbols.add(count(subject, step));
        }
        of(subject, FieldPath.of("closing"), part("closing")).ifPresent(symbols::add);
        return symbols;
    }

    private static Symbol count(Subject subject, int step) {
        FieldPath path = Subject.stepPath(step);
        List<Symbol> turns = new ArrayList<>();
        for (Side side : Side.values()) {
            of(subject, path.key(side.word()), Terms.of(side)).ifPresent(turns::add);
        }
        Span whole = turns.stream().map(Symbol::whole).reduce(subject.spanInStep(step, ""), Span::to);
        String call = subject.drill().steps().get(step).call();
        return new Symbol(
                Message.of(Symbol.class, "part.count", subject.count(step)),
                call.isEmpty() ? turns.stream().map(Symbol::detail).findFirst().orElse("") : call,
                whole,
                subject.spanInStep(step, ""),
                turns);
    }

    private static Message part(String key) {
        return Message.of(Symbol.class, "part." + key);
    }

    private static Optional<Symbol> of(Subject subject, FieldPath path, Message label) {
        Optional<Field> field = subject.places().field(path);
        return field.map(found ->
                new Symbol(label, words(subject, path), found.key().to(found.value()), found.key(), List.of()));
    }

    private static String words(Subject subject, FieldPath path) {
        Written own = subject.words(path);
        return own.text().isEmpty() ? subject.words(path.key("say")).text() : own.text();
    }
}
