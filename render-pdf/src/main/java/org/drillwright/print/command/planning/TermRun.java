package org.drillwright.print.command.planning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.lesson.OwnBlocks;
import org.drillwright.plan.published.Publication;
import org.drillwright.plan.published.Publications;
import org.drillwright.plan.published.PublishedTerm;
import org.drillwright.plan.published.PublishedText;
import org.drillwright.plan.roster.Habits;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.schedule.TermPlan;
import org.drillwright.plan.schedule.TermPlanner;
import org.drillwright.plan.term.Term;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.read.Reading;
import org.drillwright.school.ClassFiles;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.TermFolder;
import org.drillwright.source.Finding;
import org.drillwright.source.Nearest;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/**
 * A term that was read and planned, and its plans that were published.
 *
 * @param head the published plan that holds, if there is one
 */
public record TermRun(
        ClassRun opened, TermFolder terms, TermPlan plan, Publications plans, Optional<Publication> head) {

    /**
     * Reads and plans a term; nothing if something of it has errors, which are shown.
     *
     * @param here the folder that the caller stands in
     */
    public static Optional<TermRun> of(ClassRun opened, Path here, String named, LocalDate today) {
        TermFolder terms = PlannedClasses.terms(opened.folder(), opened.classes());
        Path file = file(opened, terms, here, named);
        return opened.roster().flatMap(roster -> planned(opened, terms, file, roster, today));
    }

    private static Path file(ClassRun opened, TermFolder terms, Path here, String named) {
        return terms.named(named)
                .or(() -> Locations.existing(here, named)
                        .or(() -> Locations.existing(opened.folder().root(), named))
                        .filter(Files::isRegularFile))
                .orElseThrow(() -> new CannotRun(unknown(terms, named)));
    }

    private static Message unknown(TermFolder terms, String named) {
        return Nearest.to(named, terms.names())
                .map(near -> Message.of(TermRun.class, "no.term.near", named, ClassFiles.TERMS, near))
                .orElseGet(() -> Message.of(TermRun.class, "no.term", named, ClassFiles.TERMS));
    }

    private static Optional<TermRun> planned(
            ClassRun opened, TermFolder terms, Path file, Roster roster, LocalDate today) {
        try {
            Reading<Term> reading = terms.read(file);
            opened.show(reading.findings());
            if (reading.value().isEmpty()) {
                opened.say(Message.of(TermRun.class, "term.first"));
                return Optional.empty();
            }
            String named = DrillFiles.id(file);
            List<Finding> findings = new ArrayList<>();
            Publications plans = terms.published(named, findings);
            opened.show(findings);
            if (findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR)) {
                opened.say(Message.of(TermRun.class, "published.unreadable"));
                return Optional.empty();
            }
            Optional<Publication> head = head(named, plans);
            TermPlan plan = new TermPlanner(
                            reading.value().get(),
                            opened.classes().drills(),
                            roster,
                            opened.classes().history(),
                            frame(opened.folder().habits()),
                            today)
                    .plan(named, head.map(Publication::term));
            return Optional.of(new TermRun(opened, terms, plan, plans, head));
        } catch (IOException problem) {
            throw new CannotRun(Message.of(TermRun.class, "unreadable", file), problem);
        }
    }

    /** What isn't there for drills. */
    private static Duration frame(Habits habits) {
        return new OwnBlocks(habits.blocks(), 0).fixed(habits.timing());
    }

    private static Optional<Publication> head(String named, Publications plans) {
        List<Publication> heads = plans.heads();
        if (heads.size() > 1) {
            throw new CannotRun(Message.of(
                    TermRun.class,
                    "two.published",
                    named,
                    heads.get(0).mark().shown(),
                    heads.get(1).mark().shown(),
                    ClassFiles.TERMS + "/plans"));
        }
        return heads.stream().findFirst();
    }

    /** The published plan that says what is planned now. */
    public Optional<Publication> printed() {
        return head.filter(published -> published.term().saysAs(plan.toPublish()));
    }

    /** The published plans up to the one that holds, the first of them first. */
    public List<Publication> line() {
        return head.map(plans::upTo).orElse(List.of());
    }

    /** What a drill is called; one that is gone by its id. */
    public String title(String drill) {
        return opened.folder()
                .entry(drill)
                .flatMap(SchoolFolder.Entry::subject)
                .map(subject -> subject.drill().title())
                .orElse(drill);
    }

    /** How the plan stands to what was published. */
    public Message standing() {
        return head.map(published -> published.mark().shown())
                .map(mark -> printed().isPresent()
                        ? Message.of(TermRun.class, "published", mark)
                        : Message.of(TermRun.class, "not.published.other", mark))
                .orElseGet(() -> Message.of(TermRun.class, "not.published"));
    }

    /** Keeps the plan as the one that holds; the same plan is kept once. */
    public TermRun publish(Instant now) {
        if (printed().isPresent()) {
            return this;
        }
        PublishedTerm said = plan.toPublish().after(head.map(Publication::mark));
        Publication published = new Publication(free(said), now, said);
        Path file = terms.planFile(plan.named(), published.mark());
        String text = PublishedText.file(published);
        KeptFile.write(file, text, Message.of(TermRun.class, "split.term"));
        List<Publication> all = new ArrayList<>(plans.all());
        all.add(published);
        return new TermRun(opened, terms, plan, new Publications(all), Optional.of(published));
    }

    private PlanMark free(PublishedTerm said) {
        PlanMark mark = said.mark(PlanMark.SHORT);
        try {
            return terms.isTaken(mark) ? said.mark(PlanMark.LONG) : mark;
        } catch (IOException problem) {
            throw new CannotRun(Message.of(TermRun.class, "plans.unreadable", plan.named()), problem);
        }
    }
}
