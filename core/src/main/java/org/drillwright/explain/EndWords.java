package org.drillwright.explain;

import java.util.Map;
import org.drillwright.phrase.AttackEnd;

/** Says how an attack ends. */
public final class EndWords {

    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("parried", "parried"),
            Map.entry("received", "received"),
            Map.entry("short", "short of the target"),
            Map.entry("evaded", "evaded"),
            Map.entry("evaded.ducked", "evaded below the blade"),
            Map.entry("evaded.aside", "evaded to the side"),
            Map.entry("evaded.back", "evaded by drawing back"),
            Map.entry("evaded.hand", "evaded by withdrawing the hand"),
            Map.entry("evaded.leg", "evaded by withdrawing the leg"),
            Map.entry("stopped", "met by a stop hit"),
            Map.entry("not.met", "not met"),
            Map.entry("withdrawn", "broken off before it is answered"),
            Map.entry("drew.parry", "a threat that draws a parry"),
            Map.entry("threat", "a threat, no answer needed"),
            Map.entry("not.yet", "still under way"),
            Map.entry("unknown", "not known"));

    private EndWords() {}

    /** A few words that stand behind a semicolon: {@code parried}, or {@code arrives past the parry of octave}. */
    public static String of(AttackEnd end) {
        return end instanceof AttackEnd.PastTheParry past
                ? "arrives past the parry of " + past.by().word()
                : WORDS.getOrDefault(end.key(), end.key());
    }
}
