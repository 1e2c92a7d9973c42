package org.drillwright.table;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.drillwright.source.Findings;
import org.drillwright.source.Span;

/** What is wrong in many lines alike, told once: in the first of them, with how many there are. */
public final class Repeated {

    private record Told(String rule, Span first, Supplier<String> wayOut, int count) {}

    private final Map<String, Told> told = new LinkedHashMap<>();

    public void add(String rule, Span span, String what, String wayOut) {
        add(rule, span, what, () -> wayOut);
    }

    /** @param wayOut asked for once, however many lines there are */
    public void add(String rule, Span span, String what, Supplier<String> wayOut) {
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
                what + (one.count() > 1 ? " It is on " + one.count() + " lines." : ""),
                one.wayOut().get()));
    }
}
