package org.drillwright.plan.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.plan.progress.PersonDrill;
import org.drillwright.plan.published.PublishedTerm;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.term.Pace;
import org.drillwright.plan.term.Term;
import org.drillwright.plan.term.TermDay;
import org.drillwright.plan.term.TermGroup;
import org.drillwright.register.Entry;
import org.drillwright.register.History;
import org.junit.jupiter.api.Test;

/** Drills without partners, of which the record holds no line: by hand. */
class CalledTest {

    private static final LocalDate FIRST = PlayedTerm.FIRST;

    private static Term term() {
        List<TermDay> days = new ArrayList<>();
        for (int week = 0; week < 4; week++) {
            days.add(new TermDay(
                    "c" + week, FIRST.plusWeeks(week), Optional.empty(), Duration.ofMinutes(60), false, Set.of()));
        }
        return new Term(
                "",
                "",
                Optional.empty(),
                days,
                List.of(new TermGroup("all", List.of("Ash", "Bo"), List.of("salute"))),
                Pace.USUAL,
                Map.of(),
                Map.of(),
                Optional.empty());
    }

    private static GroupPlan plan(List<Entry> record, int week, Optional<PublishedTerm> published) {
        return planned(record, week, published).groups().get(0);
    }

    private static TermPlan planned(List<Entry> record, int week, Optional<PublishedTerm> published) {
        Drill salute = PlayedTerm.drills().get("thrust").withForm(Form.SOLO);
        Roster roster = new Roster(List.of(Person.named("Ash"), Person.named("Bo")), List.of(), List.of());
        return new TermPlanner(
                        term(),
                        Map.of("salute", salute),
                        roster,
                        new History(record),
                        Duration.ZERO,
                        FIRST.plusWeeks(week))
                .plan("t", published);
    }

    @Test
    void what_was_published_of_a_class_that_was_held_was_worked_by_those_who_came() {
        Optional<PublishedTerm> published =
                Optional.of(planned(List.of(), 0, Optional.empty()).toPublish());
        List<Entry> record = new ArrayList<>(List.of(Entry.attended(FIRST, "Ash")));
        GroupPlan next = plan(record, 1, published);
        assertEquals("salute", next.classes().get(0).asNew().get(0).drill());
        assertEquals("salute", next.classes().get(1).again().get(0).drill());
        assertEquals(
                List.of(new PersonDrill("Bo", "salute")), next.classes().get(1).lacking());
        assertEquals(
                List.of(), plan(record, 1, Optional.empty()).classes().get(0).asNew(), "nothing was published");
        assertEquals(List.of(), plan(List.of(), 1, published).classes().get(0).asNew(), "nobody came");
    }

    /** New in week 0, again in weeks 1 and 3: three days, a fortnight apart; no partner is asked for. */
    @Test
    void who_was_there_three_times_may_be_signed_off() {
        List<Entry> record = new ArrayList<>();
        Optional<PublishedTerm> published = Optional.empty();
        for (int week = 0; week < 4; week++) {
            published = Optional.of(planned(record, week, published).toPublish());
            record.add(Entry.attended(FIRST.plusWeeks(week), "Ash"));
        }
        assertEquals(
                List.of(new PersonDrill("Ash", "salute")),
                plan(record, 4, published).ready());
    }
}
