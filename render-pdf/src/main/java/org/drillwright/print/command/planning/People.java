package org.drillwright.print.command.planning;

import java.util.List;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.register.History;
import org.drillwright.source.Nearest;
import org.drillwright.wording.Message;

/** Finds people by their names as they are typed: capitals don't matter, and a beginning is enough if only one has it. */
public record People(Roster roster) {

    /** The name as the roster has it. */
    public String name(String typed) {
        return found(typed, roster.names());
    }

    /** Somebody who trains, not only teaches. */
    public Person person(String typed) {
        String name = found(typed, roster.people().stream().map(Person::name).toList());
        return roster.person(name).orElseThrow();
    }

    /** Anybody who trains or teaches. */
    public String anybody(String typed) {
        return typed.equals(History.INSTRUCTOR) ? typed : name(typed);
    }

    /** Whether somebody teaches, and doesn't train. */
    public boolean teaches(String name) {
        return roster.person(name).isEmpty();
    }

    private static String found(String typed, List<String> names) {
        if (names.contains(typed)) {
            return typed;
        }
        List<String> same = names.stream().filter(typed::equalsIgnoreCase).toList();
        List<String> begun = names.stream()
                .filter(name -> name.regionMatches(true, 0, typed, 0, typed.length()))
                .toList();
        if (same.size() == 1) {
            return same.get(0);
        }
        if (begun.size() == 1 && !typed.isBlank()) {
            return begun.get(0);
        }
        if (begun.size() > 1 && !typed.isBlank()) {
            throw new CannotRun(Message.of(People.class, "ambiguous", typed, Message.words(begun)));
        }
        throw new CannotRun(Nearest.to(typed, names)
                .map(near -> Message.of(People.class, "nobody.near", typed, near))
                .orElseGet(() -> Message.of(People.class, "nobody", typed)));
    }
}
