package org.drillwright.editing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.school.ClassFolder;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolFolder.Entry;

/** Tells of a drill or of somebody where only the name stands. */
final class NameTold {

    private NameTold() {}

    static Optional<Told> drill(SchoolFolder school, DrillRename.Named named) {
        return school.entry(named.id())
                .flatMap(Entry::subject)
                .map(Subject::drill)
                .map(drill -> {
                    List<String> lines = new ArrayList<>();
                    lines.add(drill.level() + ", " + drill.form().word() + ", "
                            + drill.weapon().word());
                    if (!drill.purpose().isEmpty()) {
                        lines.add(drill.purpose());
                    }
                    if (!drill.needs().isEmpty()) {
                        lines.add("needs " + String.join(", ", drill.needs()));
                    }
                    return new Told(named.span(), drill.title(), lines);
                });
    }

    /** By the name of now, or by one from before. */
    static Optional<Told> person(SchoolFolder school, DrillRename.Named named) {
        try {
            Roster roster = ClassFolder.open(school).roster().orElse(Roster.EMPTY);
            String now = roster.former().getOrDefault(named.id(), named.id());
            return roster.people().stream()
                    .filter(person -> person.name().equals(now))
                    .findFirst()
                    .map(person -> new Told(named.span(), now, lines(person, named.id())))
                    .or(() -> roster.assistants().contains(now)
                            ? Optional.of(new Told(named.span(), now, List.of("assists")))
                            : Optional.empty());
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private static List<String> lines(Person person, String called) {
        List<String> lines = new ArrayList<>();
        if (!called.equals(person.name())) {
            lines.add("was " + called);
        }
        person.level().ifPresent(lines::add);
        person.hand().ifPresent(hand -> lines.add(hand.word() + " hand"));
        if (person.skill().isPresent()) {
            lines.add("skill " + person.skill().getAsInt());
        }
        if (!person.knows().isEmpty()) {
            lines.add("drills known by the roster: " + person.knows().size());
        }
        if (person.away()) {
            lines.add("away");
        }
        if (person.solo()) {
            lines.add("does only solo work");
        }
        return lines;
    }
}
