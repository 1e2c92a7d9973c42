package org.drillwright.plan.published;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.drillwright.mark.PlanMark;

/**
 * What a plan of a term says that was published: whole in itself.
 *
 * @param named the file of the term
 * @param after the plan that this one took over from
 * @param zone in which the times of day are; absent: whatever is local
 * @param exam the day of the exam, if there is one
 */
public record PublishedTerm(
        String named,
        Optional<PlanMark> after,
        String title,
        String place,
        Optional<ZoneId> zone,
        Optional<LocalDate> exam,
        List<PublishedClass> classes) {

    public PublishedTerm {
        classes = List.copyOf(classes);
    }

    /** The same behind another plan. */
    public PublishedTerm after(Optional<PlanMark> mark) {
        return new PublishedTerm(named, mark, title, place, zone, exam, classes);
    }

    /** Whether it says what another one says, whatever each took over from. */
    public boolean saysAs(PublishedTerm other) {
        return after(Optional.empty()).equals(other.after(Optional.empty()));
    }

    public PlanMark mark(int length) {
        return PlanMark.of(PublishedText.of(this), length);
    }

    /** Whether a mark is this plan's own: it is not where somebody has changed what it says. */
    public boolean fits(PlanMark mark) {
        return mark(mark.signs().length() - 1).equals(mark);
    }

    public Optional<PublishedClass> of(String key) {
        return classes.stream().filter(one -> one.key().equals(key)).findFirst();
    }
}
