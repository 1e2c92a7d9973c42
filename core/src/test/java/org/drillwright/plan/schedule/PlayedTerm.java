package org.drillwright.plan.schedule;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.plan.published.PublishedTerm;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.term.Exam;
import org.drillwright.plan.term.Pace;
import org.drillwright.plan.term.Term;
import org.drillwright.plan.term.TermDay;
import org.drillwright.plan.term.TermGroup;
import org.drillwright.read.DrillReader;
import org.drillwright.register.Entry;
import org.drillwright.register.History;

/**
 * A term of invented people, played week by week: each week it is planned and published, whoever comes works what the plan
 * says, and that goes into the record.
 */
final class PlayedTerm {

    static final LocalDate FIRST = LocalDate.of(2026, 9, 2);
    private static final int WEEKS = 12;
    private static final int PEOPLE = 24;

    /** In teaching order, with what each needs; the shape of a usual course, invented. */
    private static final String[][] DRILLS = {
        {"thrust"},
        {"quarte", "thrust"},
        {"sixte", "thrust"},
        {"head-cut"},
        {"beat", "thrust"},
        {"septime", "quarte"},
        {"disengage", "sixte"},
        {"circle", "sixte"},
        {"cut-over", "quarte"},
        {"one-two", "disengage"},
        {"counter", "disengage"},
        {"octave", "septime"},
        {"second-riposte", "quarte", "sixte"},
        {"feint", "head-cut"}
    };

    final List<TermPlan> plans = new ArrayList<>();
    final List<Entry> record = new ArrayList<>();

    static Map<String, Drill> drills() {
        Map<String, Drill> drills = new LinkedHashMap<>();
        for (String[] drill : DRILLS) {
            String needs = String.join(", ", List.of(drill).subList(1, drill.length));
            String text = "title: " + drill[0] + "\nlevel: intermediate\nform: partner\nweapon: foil\nneeds: [" + needs
                    + "]\nsteps: [{leader: Hold., follower: Hold.}]\n";
            drills.put(
                    drill[0],
                    new DrillReader(School.DEFAULT)
                            .read(drill[0], drill[0] + ".yaml", text.getBytes(StandardCharsets.UTF_8))
                            .value()
                            .orElseThrow()
                            .drill());
        }
        return drills;
    }

    static Roster roster() {
        List<Person> people = new ArrayList<>();
        for (int at = 0; at < PEOPLE; at++) {
            people.add(Person.named(person(at)));
        }
        return new Roster(people, List.of(), List.of());
    }

    private static String person(int number) {
        return String.format(java.util.Locale.ROOT, "P%02d", number);
    }

    static Term term() {
        List<TermDay> days = new ArrayList<>();
        for (int week = 0; week < WEEKS; week++) {
            days.add(new TermDay(
                    "c" + (week + 1),
                    FIRST.plusWeeks(week),
                    Optional.empty(),
                    Duration.ofMinutes(75),
                    false,
                    Set.of()));
        }
        List<String> people = roster().names();
        return new Term(
                "Autumn",
                "",
                Optional.empty(),
                days,
                List.of(new TermGroup("all", people, List.copyOf(drills().keySet()))),
                Pace.USUAL,
                Map.of(),
                Map.of("thrust", 6),
                Optional.of(new Exam(FIRST.plusWeeks(11).plusDays(2), List.copyOf(drills().keySet()), 3)));
    }

    static TermPlan plan(List<Entry> record, LocalDate today, Optional<PublishedTerm> published) {
        return new TermPlanner(term(), drills(), roster(), new History(record), Duration.ofMinutes(15), today)
                .plan("autumn", published);
    }

    /** @param seed decides who comes */
    static PlayedTerm of(int seed) {
        PlayedTerm played = new PlayedTerm();
        Random random = new Random(seed);
        double[] chances = new double[PEOPLE];
        for (int at = 0; at < PEOPLE; at++) {
            chances[at] = 0.6 + 0.35 * random.nextDouble();
        }
        Optional<PublishedTerm> published = Optional.empty();
        for (int week = 0; week < WEEKS; week++) {
            TermPlan plan = plan(played.record, FIRST.plusWeeks(week), published);
            played.plans.add(plan);
            published = Optional.of(plan.toPublish());
            played.work(week, plan.groups().get(0).classes().get(week), chances, random);
        }
        played.plans.add(plan(played.record, FIRST.plusWeeks(WEEKS), published));
        return played;
    }

    /** Two classes run over and lose a review; one falls into a holiday. */
    private void work(int week, ClassRow row, double[] chances, Random random) {
        LocalDate day = row.day().date();
        List<String> here = new ArrayList<>();
        for (int at = 0; at < PEOPLE; at++) {
            if (random.nextDouble() < chances[at] && (week != 5 || here.size() < 8)) {
                here.add(person(at));
            }
        }
        here.forEach(person -> record.add(Entry.attended(day, person)));
        List<String> worked = new ArrayList<>();
        row.asNew().forEach(taught -> worked.add(taught.drill()));
        row.again().forEach(taught -> worked.add(taught.drill()));
        if ((week == 3 || week == 8) && !row.again().isEmpty()) {
            worked.remove(worked.size() - 1);
        }
        for (String drill : worked) {
            for (int at = 0; at < here.size(); at++) {
                String partner = here.get((at + 1 + week) % here.size());
                if (!partner.equals(here.get(at))) {
                    record.add(Entry.workedWith(day, here.get(at), drill, partner));
                }
            }
        }
    }
}
