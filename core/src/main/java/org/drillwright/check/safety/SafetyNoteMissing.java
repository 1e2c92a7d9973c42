package org.drillwright.check.safety;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.drillwright.check.Intent;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** Each count on which a point or an edge can arrive says how it arrives softly. */
public final class SafetyNoteMissing implements Rule {

    private static final Pattern SAYS_ANYTHING = Pattern.compile("[\\p{L}\\p{N}]");

    private static final RuleText TEXT =
            new RuleText(SafetyNoteMissing.class, "safety-note-missing", Severity.ERROR, true);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        if (!subject.isPartnerDrill()) {
            return;
        }
        Map<String, Integer> firstWith = new HashMap<>();
        int needing = 0;
        for (int step = 0; step < subject.drill().steps().size(); step++) {
            if (canArrive(subject, step)) {
                needing++;
                judgeNote(subject, step, findings);
                firstWith.putIfAbsent(folded(subject.drill().steps().get(step)), step);
            }
        }
        if (needing > 1 && firstWith.size() == 1 && !firstWith.containsKey("")) {
            findings.warning(
                    TEXT.id(),
                    subject.spanInStep(firstWith.values().iterator().next(), "safety"),
                    Message.of(SafetyNoteMissing.class, "safety-note-missing.same"),
                    Message.of(SafetyNoteMissing.class, "safety-note-missing.same.way"));
        }
    }

    private static boolean canArrive(Subject subject, int step) {
        return Intent.isOffensive(subject.turn(step, Side.LEADER))
                || Intent.isOffensive(subject.turn(step, Side.FOLLOWER))
                || Intent.isTouch(subject.turn(step, Side.LEADER))
                || Intent.isTouch(subject.turn(step, Side.FOLLOWER));
    }

    private static void judgeNote(Subject subject, int step, Findings findings) {
        String note = subject.drill().steps().get(step).safety();
        if (!SAYS_ANYTHING.matcher(note).find()) {
            String what = note.isEmpty() ? "safety-note-missing.none" : "safety-note-missing.empty";
            findings.error(
                    TEXT.id(),
                    subject.spanInStep(step, "safety"),
                    Message.of(SafetyNoteMissing.class, what, subject.count(step)),
                    Message.of(
                            SafetyNoteMissing.class,
                            what + ".way",
                            subject.typed(SafetyNoteMissing.class, "typed.note")));
        }
    }

    private static String folded(Step step) {
        return step.safety()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{M}\\p{N}]+", " ")
                .strip();
    }
}
