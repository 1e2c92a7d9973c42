package org.drillwright.print.sheet.wall;

import java.text.Collator;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;
import org.drillwright.tell.GroupWords;

/** People as a list on a wall has them: from A to Z of what they are called there. */
final class ByName {

    private ByName() {}

    /** Everybody who works in some of the rounds, each once. */
    static List<String> people(Collection<Round> rounds, Naming names) {
        return rounds.stream()
                .flatMap(round -> round.groups().stream())
                .flatMap(group -> group.people().stream())
                .distinct()
                .sorted(order(names))
                .toList();
    }

    static Comparator<String> order(Naming names) {
        Function<String, String> called = name -> GroupWords.helper(name, names).replace("the ", "");
        Collator letters = Collator.getInstance(Locale.ROOT);
        return Comparator.<String, String>comparing(called, letters)
                .thenComparing(called)
                .thenComparing(name -> name);
    }
}
