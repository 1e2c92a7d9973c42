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
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** Tells of a drill or of somebody where only the name stands. */
final class NameTold {

    private NameTold() {}

    static Optional<HoverText> drill(SchoolFolder school, DrillRename.Named named) {
        return school.entry(named.id())
                .flatMap(Entry::subject)
                .map(Subject::drill)
                .map(drill -> {
                    List<Message> lines = new ArrayList<>();
                    lines.add(Message.listed(List.of(
                            Message.plain(drill.level()),
                            Message.of(NameTold.class, "form." + drill.form().word()),
                            Terms.of(drill.weapon()))));
                    if (!drill.purpose().isEmpty()) {
                        lines.add(Message.plain(drill.purpose()));
                    }
                    if (!drill.needs().isEmpty()) {
                        lines.add(Message.of(NameTold.class, "drill.needs", Message.words(drill.needs())));
                    }
                    return new HoverText(named.span(), Message.plain(drill.title()), lines);
                });
    }

    /** By the name of now, or by one from before. */
    static Optional<HoverText> person(SchoolFolder school, DrillRename.Named named) {
        try {
            Roster roster = ClassFolder.open(school).roster().orElse(Roster.EMPTY);
            String now = roster.former().getOrDefault(named.id(), named.id());
            return roster.people().stream()
                    .filter(person -> person.name().equals(now))
                    .findFirst()
                    .map(person -> new HoverText(named.span(), Message.plain(now), lines(person, named.id())))
                    .or(() -> roster.assistants().contains(now)
                            ? Optional.of(new HoverText(
                                    named.span(),
                                    Message.plain(now),
                                    List.of(Message.of(NameTold.class, "person.assists"))))
                            : Optional.empty());
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private static List<Message> lines(Person person, String called) {
        List<Message> lines = new ArrayList<>();
        if (!called.equals(person.name())) {
            lines.add(Message.of(NameTold.class, "person.was", called));
        }
        person.level().map(Message::plain).ifPresent(lines::add);
        person.hand().ifPresent(hand -> lines.add(Message.of(NameTold.class, "person.hand." + hand.word())));
        if (person.skill().isPresent()) {
            lines.add(Message.of(NameTold.class, "person.skill", person.skill().getAsInt()));
        }
        if (!person.knows().isEmpty()) {
            lines.add(Message.of(NameTold.class, "person.knows", person.knows().size()));
        }
        if (person.away()) {
            lines.add(Message.of(NameTold.class, "person.away"));
        }
        if (person.solo()) {
            lines.add(Message.of(NameTold.class, "person.solo"));
        }
        return lines;
    }
}
