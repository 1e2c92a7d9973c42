package org.drillwright.read;

import java.util.Optional;
import org.drillwright.mark.PlanMark;
import org.drillwright.source.Span;

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
                    "This plan was saved by a later version of Drillwright (its form is " + form + ").",
                    "Read it with that version.");
        }
    }

    Optional<PlanMark> mark(String key, Keys keys) {
        Optional<String> written = keys.text(key, ReadingLimits.SHORT_TEXT).filter(text -> !text.equals(NONE));
        Optional<PlanMark> mark = written.flatMap(PlanMark::read);
        if (written.isPresent() && mark.isEmpty()) {
            error(
                    key,
                    keys,
                    "'" + written.get() + "' is not the mark of a plan: " + PlanMark.wrongWith(written.get()) + ".",
                    "The mark is at the foot of the sheet.");
        }
        return mark;
    }

    /** A value that this program didn't write so. */
    void wrong(String key, Keys keys, String what) {
        error(key, keys, what, "Plan files are not edited by hand; plan the term again if this one is spoilt.");
    }

    private void error(String key, Keys keys, String what, String wayOut) {
        Span at = nodes.places().span(keys.path().key(key));
        nodes.findings().error(ReadingRule.PLAN_SPOILT.id(), at, what, wayOut);
    }
}
