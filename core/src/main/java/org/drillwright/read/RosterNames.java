package org.drillwright.read;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.plan.roster.Apart;
import org.drillwright.register.History;
import org.drillwright.source.Findings;
import org.drillwright.source.Nearest;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;
import org.drillwright.wording.Plain;

/** The names of a roster as they are read: each one's own, and all that are spoken of there. */
final class RosterNames {

    /** The days of the week as a roster writes them. */
    static final List<String> DAYS =
            Arrays.stream(DayOfWeek.values()).map(RosterNames::word).toList();

    private final Findings findings;
    private final Map<String, Span> taken = new HashMap<>();
    private final List<Spoken> apart = new ArrayList<>();

    private final Map<String, Former> former = new LinkedHashMap<>();

    private record Former(String now, Span span) {}

    private record Spoken(Apart pair, Span span) {}

    static String word(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }

    RosterNames(Findings findings) {
        this.findings = findings;
    }

    /** A name that somebody has. */
    void take(String name, Span span) {
        if (name.isEmpty()) {
            return;
        }
        if (name.equals(History.INSTRUCTOR)) {
            findings.error(
                    ReadingRule.IDS_TOO_ALIKE.id(),
                    span,
                    Message.of(RosterNames.class, "name.instructor", name),
                    Message.of(RosterNames.class, "name.instructor.way"));
        }
        if (name.lines().count() > 1) {
            findings.error(
                    ReadingRule.WRONG_KIND.id(),
                    span,
                    Message.of(RosterNames.class, "name.line.break"),
                    Message.of(RosterNames.class, "name.line.break.way"));
        }
        Span first = taken.putIfAbsent(name, span);
        if (first != null) {
            findings.error(
                    ReadingRule.IDS_TOO_ALIKE.id(),
                    span,
                    Message.of(
                            RosterNames.class,
                            "name.taken",
                            name,
                            findings.file().position(first.start()).line()),
                    Message.of(RosterNames.class, "name.taken.way"));
        }
    }

    /** Two who are kept apart; the other's name may come later. */
    void part(String one, String other, Span span) {
        apart.add(new Spoken(new Apart(one, other), span));
    }

    /** All who are kept apart, once everyone's name has been read; names that nobody has are findings. */
    List<Apart> apart() {
        for (Spoken spoken : apart) {
            String other = spoken.pair().other();
            if (!taken.containsKey(other) || other.equals(spoken.pair().one())) {
                findings.error(
                        ReadingRule.UNKNOWN_WORD.id(),
                        spoken.span(),
                        other.equals(spoken.pair().one())
                                ? Message.of(RosterNames.class, "apart.self")
                                : Message.of(RosterNames.class, "apart.unknown", other),
                        Nearest.to(other, taken.keySet())
                                .filter(near -> !near.equals(other))
                                .map(Nearest::meant)
                                .orElse(Message.of(RosterNames.class, "apart.unknown.way")));
            }
        }
        return apart.stream().map(Spoken::pair).toList();
    }

    /** A name that somebody had before; one that came back says nothing. */
    void was(String old, String now, Span span) {
        if (old.equals(now)) {
            return;
        }
        former.merge(old, new Former(now, span), (first, second) -> {
            findings.error(
                    ReadingRule.IDS_TOO_ALIKE.id(),
                    span,
                    Message.of(RosterNames.class, "former.taken", old, first.now()),
                    Message.of(RosterNames.class, "former.taken.way"));
            return first;
        });
    }

    /** Former names with the present ones; a ring of them, in which nobody knows who is meant, is a finding. */
    Map<String, String> former() {
        Map<String, String> present = new HashMap<>();
        former.forEach((old, one) -> {
            Set<String> passed = new LinkedHashSet<>(List.of(old));
            String now = one.now();
            while (former.containsKey(now) && passed.add(now)) {
                now = former.getOrDefault(now, one).now();
            }
            if (passed.contains(now)) {
                findings.error(
                        ReadingRule.IDS_TOO_ALIKE.id(),
                        one.span(),
                        Message.of(RosterNames.class, "former.ring", ring(passed, now)),
                        Message.of(RosterNames.class, "former.ring.way"));
            }
            present.put(old, now);
        });
        return present;
    }

    private static Message ring(Set<String> passed, String now) {
        return Stream.concat(passed.stream(), Stream.of(now))
                .map(Message::plain)
                .reduce((one, next) -> Message.of(RosterNames.class, "former.was", one, next))
                .orElse(Message.none());
    }

    static void warnUnlessKnown(String drill, Collection<String> drills, Span span, Findings findings) {
        if (!drills.contains(drill)) {
            findings.warning(ReadingRule.UNKNOWN_WORD.id(), span, unknownDrill(drill), wayOut(drill, drills));
        }
    }

    static Message unknownDrill(String drill) {
        return Message.of(RosterNames.class, "no.drill", drill);
    }

    static Message wayOut(String drill, Collection<String> drills) {
        return Nearest.meant(drill, drills).orElse(Message.of(RosterNames.class, "no.drill.way"));
    }

    static Optional<DayOfWeek> day(String word) {
        int at = DAYS.indexOf(Plain.fold(word));
        return at < 0 ? Optional.empty() : Optional.of(DayOfWeek.of(at + 1));
    }
}
