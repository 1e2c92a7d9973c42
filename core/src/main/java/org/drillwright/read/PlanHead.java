package org.drillwright.read;

import java.util.Optional;
import org.drillwright.mark.PlanMark;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** Reads what all kept plans begin with: their form and their marks. */
record PlanHead(NodeReader nodes) {

    private static final String NONE = "none";

    /** @param known the latest form that is read */
    void form(String key, int known, Keys keys) {
        keys.need(key);
        int form = keys.wholeNumber(key, 1, 999).orElse(known);
        if (form > known) {
            error(
                    key,
                    keys,
                    Message.of(PlanHead.class, "plan.later.form", form),
                    Message.of(PlanHead.class, "plan.later.form.way"));
        }
    }

    Optional<PlanMark> mark(String key, Keys keys) {
        Optional<String> written = keys.text(key, ReadingLimits.SHORT_TEXT).filter(text -> !text.equals(NONE));
        Optional<PlanMark> mark = written.flatMap(PlanMark::read);
        if (written.isPresent() && mark.isEmpty()) {
            error(
                    key,
                    keys,
                    Message.of(PlanHead.class, "plan.no.mark", written.get(), PlanMark.wrongWith(written.get())),
                    Message.of(PlanHead.class, "plan.no.mark.way"));
        }
        return mark;
    }

    /** A value that this program didn't write so. */
    void wrong(String key, Keys keys, Message what) {
        error(key, keys, what, Message.of(PlanHead.class, "plan.by.hand"));
    }

    private void error(String key, Keys keys, Message what, Message wayOut) {
        Span at = nodes.places().span(keys.path().key(key));
        nodes.findings().error(ReadingRule.PLAN_SPOILT.id(), at, what, wayOut);
    }
}
