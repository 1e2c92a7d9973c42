package org.drillwright.source;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Rules that were called otherwise: the one place for it. An old name is understood for a release wherever somebody writes
 * one, and findings tell it beside the new one.
 */
public final class FormerRules {

    /** The old name, and the new one. */
    private static final String TABLE = """
            both-turns turn-missing
            hands-agree hands-at-odds
            ranks-agree partner-not-told
            numbered-in-order number-out-of-order
            salute-both-ends salute-missing
            gear-note gear-missing
            distance-cue no-true-distance
            safety-note safety-note-missing
            no-choice choice-left-open
            one-thing-a-count too-much-in-a-count
            level-fit beyond-the-level
            needs-known needs-cannot-be-met
            accept-known accept-without-effect
            mask-first mask-off-in-reach
            in-reach too-far-or-too-near
            hand-before-foot foot-before-hand
            open-line attack-into-closed-line
            parry-closes parry-misses
            answer-to-attack attack-unanswered
            riposte-after-parry riposte-without-parry
            something-to-renew nothing-to-renew
            blade-is-there blade-not-there
            lever foible-against-forte
            line-change wrong-way-past-blade
            recover-first lunge-not-recovered
            not-both-at-once both-lunge-at-once
            rear-foot-stays rear-foot-passes
            opening-leads-on opening-leads-elsewhere
            back-to-start not-back-at-start
            turns-agree turns-at-odds
            blade-in-hand no-blade-in-hand
            one-reading turn-read-two-ways
            say-as-means say-unlike-means
            words-read words-unread
            fully-checked not-fully-checked
            set-whole broken-set
            one-title-a-set same-title-in-set
            no-twins twin-drills
            one-mark same-print-mark
            own-words own-word-without-effect
            plain-text not-plain-text
            yaml-syntax broken-yaml
            one-a-file several-in-one-file
            known-key unknown-key
            key-once key-twice
            needed-key key-missing
            right-kind wrong-kind
            text-length text-empty-or-too-long
            known-word unknown-word
            own-id ids-too-alike
            record-columns record-unreadable
            record-whole-line record-line-broken
            record-batch record-batch-broken
            record-once record-line-twice
            record-taken-back record-takes-back-nothing
            record-known-name record-unknown-name
            record-right-word record-wrong-word
            plan-mark plan-spoilt
            printable unprintable
            """;

    private static final Map<String, String> NOW = new LinkedHashMap<>();
    private static final Map<String, String> WAS = new HashMap<>();

    static {
        TABLE.lines().map(line -> line.split(" ")).forEach(names -> {
            NOW.put(names[0], names[1]);
            WAS.put(names[1], names[0]);
        });
    }

    private FormerRules() {}

    /** The table line by line, such as {@code open-line attack-into-closed-line}. */
    public static String table() {
        return TABLE;
    }

    /** What a rule is called that was written so; what was written, if no rule was ever called so before. */
    public static String now(String written) {
        return NOW.getOrDefault(written, written);
    }

    /** What a rule was called before; empty if it always had its name. */
    public static Optional<String> was(String id) {
        return Optional.ofNullable(WAS.get(id));
    }
}
