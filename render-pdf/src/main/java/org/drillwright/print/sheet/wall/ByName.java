package org.drillwright.print.sheet.wall;

import java.text.Collator;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;
import org.drillwright.register.History;

/** People as a list on a wall has them: from A to Z of what they are called there. */
final class ByName {

    private ByName() {}

    /** Everybody who works in some of the rounds, each once. */
    static List<String> people(Collection<Round> rounds, Naming names, WallTexts words) {
        return rounds.stream()
                .flatMap(round -> round.groups().stream())
                .flatMap(group -> group.people().stream())
                .distinct()
                .sorted(order(names, words))
                .toList();
    }

    /** What somebody is called in a list; whoever teaches is named by that. */
    static String called(String person, Naming names, WallTexts words) {
        return person.equals(History.INSTRUCTOR) ? words.text(WallText.INSTRUCTOR) : names.of(person);
    }

    static Comparator<String> order(Naming names, WallTexts words) {
        Function<String, String> called = name -> called(name, names, words);
        Collator letters = Collator.getInstance(words.locale());
        return Comparator.<String, String>comparing(called, letters)
                .thenComparing(called)
                .thenComparing(name -> name);
    }
}
