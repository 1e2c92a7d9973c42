package org.drillwright.print.phone;

import java.text.Collator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;
import org.drillwright.register.History;

/**
 * Everybody of an evening, whoever helps too. Each has a number that hangs on the plan alone, so that what a phone has
 * kept of a person stays that person's however a page is made.
 */
final class EveningPeople {

    /** Around a name, so that the direction of its letters changes nothing beside it (UAX 9: FSI, PDI). */
    private static final String BEGIN = "\u2068";

    private static final String END = "\u2069";

    private final List<String> numbered;
    private final Naming names;
    private final Voice voice;

    EveningPeople(KeptPlan plan, Naming names, Voice voice) {
        Set<String> all = new LinkedHashSet<>(plan.names());
        plan.rounds()
                .forEach(round -> round.groups().forEach(group -> group.eyes().ifPresent(all::add)));
        this.numbered = List.copyOf(all);
        this.names = names;
        this.voice = voice;
    }

    int number(String person) {
        return numbered.indexOf(person);
    }

    /** From A to Z of what they are called. */
    List<String> all() {
        return sorted(numbered);
    }

    /** Those who have something to do in some of the rounds. */
    List<String> in(List<Round> rounds) {
        Set<String> some = new LinkedHashSet<>();
        rounds.forEach(round -> round.groups().forEach(group -> {
            some.addAll(group.everyone());
            group.eyes().ifPresent(some::add);
        }));
        return sorted(some);
    }

    private List<String> sorted(Iterable<String> some) {
        Collator letters = Collator.getInstance(voice.locale());
        List<String> sorted = new ArrayList<>();
        some.forEach(sorted::add);
        sorted.sort(Comparator.<String, String>comparing(this::called, letters).thenComparing(name -> name));
        return sorted;
    }

    /** Whoever teaches is named by that. */
    String called(String person) {
        return person.equals(History.INSTRUCTOR) ? voice.text(PhoneText.INSTRUCTOR) : names.of(person);
    }

    /** What somebody is called within a sentence. */
    String within(String person) {
        return BEGIN + called(person) + END;
    }

    /** What stands for somebody in a line for a shell; nothing where the page doesn't say the name. */
    Optional<String> word(String person) {
        return names.of(person).equals(person) ? Optional.of(ShellWord.of(person)) : Optional.empty();
    }
}
