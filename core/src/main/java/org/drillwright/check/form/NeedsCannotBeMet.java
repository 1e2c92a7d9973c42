package org.drillwright.check.form;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Drill;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Nearest;
import org.drillwright.source.Severity;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** The drills that a drill builds on exist, go round in no circle, and are of no higher level. */
public final class NeedsCannotBeMet implements Rule {

    private static final RuleText TEXT =
            new RuleText(NeedsCannotBeMet.class, "needs-cannot-be-met", Severity.ERROR, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        Drill drill = subject.drill();
        for (int at = 0; at < drill.needs().size(); at++) {
            Span span = subject.span(FieldPath.of("needs").item(at));
            judgeNeed(subject, drill.needs().get(at), span, findings);
        }
        drill.variantOf().ifPresent(id -> judgeExists(subject, id, subject.span(FieldPath.of("variant-of")), findings));
    }

    private static void judgeNeed(Subject subject, String id, Span span, Findings findings) {
        if (!judgeExists(subject, id, span, findings)) {
            return;
        }
        Drill needed = Optional.ofNullable(subject.others().get(id)).orElse(subject.drill());
        List<String> way = subject.mayCircle() ? wayBack(subject, id) : List.of();
        if (!way.isEmpty()) {
            findings.error(
                    TEXT.id(),
                    span,
                    Message.of(NeedsCannotBeMet.class, "needs-cannot-be-met.circle", circle(way)),
                    Message.of(NeedsCannotBeMet.class, "needs-cannot-be-met.circle.way"));
        } else if (subject.school().rank(needed.level())
                > subject.school().rank(subject.drill().level())) {
            findings.error(
                    TEXT.id(),
                    span,
                    Message.of(NeedsCannotBeMet.class, "needs-cannot-be-met.higher", id, needed.level()),
                    Message.of(NeedsCannotBeMet.class, "needs-cannot-be-met.higher.way"));
        }
    }

    /** {@code one needs other needs one}. */
    private static Message circle(List<String> way) {
        return way.stream()
                .map(Message::plain)
                .reduce((before, next) -> Message.of(NeedsCannotBeMet.class, "needs-cannot-be-met.needs", before, next))
                .orElse(Message.none());
    }

    private static boolean judgeExists(Subject subject, String id, Span span, Findings findings) {
        if (subject.others().containsKey(id)) {
            return true;
        }
        if (subject.isUnread(id)) {
            return false;
        }
        findings.error(
                TEXT.id(),
                span,
                Message.of(NeedsCannotBeMet.class, "needs-cannot-be-met.unknown", id),
                Nearest.to(id, subject.others().keySet())
                        .map(Nearest::meant)
                        .orElse(Message.of(NeedsCannotBeMet.class, "needs-cannot-be-met.unknown.way")));
        return false;
    }

    /** The ids from this drill over a need back to it; empty if there is no such way. */
    private static List<String> wayBack(Subject subject, String first) {
        String self = subject.drill().id();
        Map<String, String> cameFrom = new HashMap<>();
        Deque<String> open = new ArrayDeque<>(List.of(first));
        cameFrom.put(first, self);
        while (!open.isEmpty()) {
            String id = open.remove();
            if (id.equals(self)) {
                return wayTo(self, cameFrom);
            }
            Drill drill = subject.others().get(id);
            for (String next : drill == null ? List.<String>of() : drill.needs()) {
                if (cameFrom.putIfAbsent(next, id) == null) {
                    open.add(next);
                }
            }
        }
        return List.of();
    }

    private static List<String> wayTo(String self, Map<String, String> cameFrom) {
        Deque<String> way = new ArrayDeque<>(List.of(self));
        String id = cameFrom.getOrDefault(self, self);
        while (!id.equals(self)) {
            way.addFirst(id);
            id = cameFrom.getOrDefault(id, self);
        }
        way.addFirst(self);
        return List.copyOf(way);
    }
}
