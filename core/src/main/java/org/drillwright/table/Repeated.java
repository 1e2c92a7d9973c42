package org.drillwright.table;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.drillwright.source.Findings;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** What is wrong in many lines alike, told once: in the first of them, with how many there are. */
public final class Repeated {

    private record Told(String rule, Span first, Supplier<Message> wayOut, int count) {}

    private final Map<Message, Told> told = new LinkedHashMap<>();

    public Repeated() {}

    public void add(String rule, Span span, Message what, Message wayOut) {
        add(rule, span, what, () -> wayOut);
    }

    /** @param wayOut asked for once, however many lines there are */
    public void add(String rule, Span span, Message what, Supplier<Message> wayOut) {
        told.merge(
                what,
                new Told(rule, span, wayOut, 1),
                (old, one) -> new Told(old.rule(), old.first(), old.wayOut(), old.count() + 1));
    }

    /** Adds the warnings. */
    public void report(Findings findings) {
        told.forEach((what, one) -> findings.warning(
                one.rule(),
                one.first(),
                one.count() > 1 ? what.then(Message.of(Repeated.class, "on.lines", one.count())) : what,
                one.wayOut().get()));
    }
}
