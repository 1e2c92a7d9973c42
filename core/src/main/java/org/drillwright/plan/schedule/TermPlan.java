package org.drillwright.plan.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.published.GroupCells;
import org.drillwright.plan.published.PublishedClass;
import org.drillwright.plan.published.PublishedTerm;
import org.drillwright.plan.term.Exam;
import org.drillwright.plan.term.Term;
import org.drillwright.plan.term.TermDay;
import org.drillwright.wording.Message;

/**
 * A term as it was planned on a day.
 *
 * @param named the file of the term
 * @param remarks what the instructor should know, one sentence each
 */
public record TermPlan(String named, Term term, LocalDate today, List<GroupPlan> groups, List<Message> remarks) {

    public TermPlan {
        groups = List.copyOf(groups);
        remarks = List.copyOf(remarks);
    }

    /** What is said of it once it is published, by itself. */
    public PublishedTerm toPublish() {
        List<PublishedClass> classes = new ArrayList<>();
        for (int at = 0; at < term.days().size(); at++) {
            TermDay day = term.days().get(at);
            List<GroupCells> cells = new ArrayList<>();
            for (GroupPlan group : groups) {
                ClassRow row = group.classes().get(at);
                cells.add(new GroupCells(group.group().name(), ids(row.asNew()), ids(row.again())));
            }
            classes.add(new PublishedClass(
                    day.key(), day.date(), day.begins(), (int) day.length().toMinutes(), cells));
        }
        return new PublishedTerm(
                named,
                Optional.empty(),
                term.title(),
                term.place(),
                term.zone(),
                term.exam().map(Exam::date),
                classes);
    }

    private static List<String> ids(List<Taught> taught) {
        return taught.stream().map(Taught::drill).toList();
    }
}
