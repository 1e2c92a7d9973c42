package org.drillwright.reading;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Doubt;
import org.drillwright.source.Span;

/** The words of a stretch that nothing accounts for, and what they leave in doubt of what stands beside them. */
final class Gaps {

    private final Discourse discourse;
    private final List<SentencePart> gaps = new ArrayList<>();
    private final List<SentencePart> beside = new ArrayList<>();

    Gaps(Discourse discourse) {
        this.discourse = discourse;
    }

    void leave(SentencePart gap) {
        gaps.add(gap);
        discourse.leaveUnread(discourse.span(gap));
    }

    /** That something is done in a piece of the stretch. */
    void standBeside(SentencePart piece) {
        beside.add(piece);
    }

    /** Gaps leave in doubt what stands beside them up to the next sign; alone they are a thing unread. */
    void endStretch() {
        if (!gaps.isEmpty()) {
            if (discourse.size() == discourse.stretch()) {
                Span span = discourse.span(gaps.get(0)).to(discourse.span(gaps.get(gaps.size() - 1)));
                discourse.append(new Clause(new Action.Unread("words"), discourse.subject(), span, discourse.join()));
            } else {
                for (int at = discourse.stretch(); at < discourse.size(); at++) {
                    for (Doubt doubt : doubts(discourse.get(at))) {
                        discourse.doubt(at, doubt);
                    }
                }
            }
        }
        gaps.clear();
        beside.clear();
        discourse.beginStretch();
    }

    private Set<Doubt> doubts(Clause clause) {
        Set<Doubt> doubts = EnumSet.noneOf(Doubt.class);
        for (SentencePart gap : gaps) {
            boolean before = discourse.span(gap).start() < clause.span().start();
            boolean finite = beside.stream().anyMatch(piece -> piece.isForm("3"));
            if (before) {
                doubts.add(finite ? Doubt.WHO : Doubt.DONE);
            } else {
                doubts.addAll(behind(clause.action()));
            }
        }
        return doubts;
    }

    private static Set<Doubt> behind(Action action) {
        if (action instanceof Action.Lunge) {
            return EnumSet.of(Doubt.STEPS, Doubt.MANNER);
        }
        if (action instanceof Action.Step || action instanceof Action.Withdraw) {
            return EnumSet.of(Doubt.STEPS);
        }
        return EnumSet.of(action instanceof Action.Mask ? Doubt.MASK : Doubt.MANNER);
    }
}
