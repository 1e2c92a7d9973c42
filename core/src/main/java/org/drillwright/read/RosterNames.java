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
import org.drillwright.plan.roster.Apart;
import org.drillwright.record.History;
import org.drillwright.source.Findings;
import org.drillwright.source.Nearest;
import org.drillwright.source.Span;

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
                    "'" + name + "' means whoever teaches, so it can't be a name.",
                    "Write the person's own name or initials.");
        }
        if (name.lines().count() > 1) {
            findings.error(
                    ReadingRule.WRONG_KIND.id(),
                    span,
                    "This name has a line break in it.",
                    "Write the name on one line; sheets and the record give each person one line.");
        }
        Span first = taken.putIfAbsent(name, span);
        if (first != null) {
            findings.error(
                    ReadingRule.IDS_TOO_ALIKE.id(),
                    span,
                    "There is a '" + name + "' already (line "
                            + findings.file().position(first.start()).line() + ").",
                    "Make the two names differ, for instance by an initial.");
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
                                ? "Nobody can be kept apart from themselves."
                                : "There is no '" + other + "' on this roster.",
                        Nearest.to(other, taken.keySet())
                                .filter(near -> !near.equals(other))
                                .map(near -> "Did you mean '" + near + "'?")
                                .orElse("Write the name as it is on the roster."));
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
                    "'" + old + "' is given as a former name of " + first.now() + " already.",
                    "A name belongs to one person: keep it for one of the two.");
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
                        "It isn't clear who is meant: " + String.join(" was ", passed) + " was " + now + ".",
                        "Delete one of these former names.");
            }
            present.put(old, now);
        });
        return present;
    }

    static void warnUnlessKnown(String drill, Collection<String> drills, Span span, Findings findings) {
        if (!drills.contains(drill)) {
            findings.warning(ReadingRule.UNKNOWN_WORD.id(), span, unknownDrill(drill), wayOut(drill, drills));
        }
    }

    static String unknownDrill(String drill) {
        return "There is no drill '" + drill + "' in this folder.";
    }

    static String wayOut(String drill, Collection<String> drills) {
        return Nearest.to(drill, drills)
                .map(near -> "Did you mean '" + near + "'?")
                .orElse("It counts again once the drill is back.");
    }

    static Optional<DayOfWeek> day(String word) {
        int at = DAYS.indexOf(Plain.fold(word));
        return at < 0 ? Optional.empty() : Optional.of(DayOfWeek.of(at + 1));
    }
}
