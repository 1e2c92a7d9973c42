package org.drillwright.print.command.classes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.kept.Worked;
import org.drillwright.plan.pair.Round;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.planning.People;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** What really happened, where that isn't what was printed. */
final class WorkedOptions {

    @Option(
            names = "--rounds",
            paramLabel = "N",
            description = "Only so many rounds were worked. Normally all; 0: only who was there.")
    Optional<Integer> rounds = Optional.empty();

    @Option(
            names = "--only",
            paramLabel = "DRILL",
            description =
                    "Of the drills that were planned only this one was worked. May be given several times; the page"
                            + " of handout --html writes such a line of what was ticked there.")
    List<String> only = new ArrayList<>();

    @ArgGroup(exclusive = false, multiplicity = "0..*")
    List<Given> given = new ArrayList<>();

    @Option(
            names = "--swap",
            arity = "3",
            paramLabel = "ROUND NAME NAME",
            hideParamSyntax = true,
            description = "ROUND NAME NAME: in this round the two stood in each other's places. May be given several"
                    + " times.")
    List<String> swaps = new ArrayList<>();

    /** Who was gone or had come from a round on. */
    static final class Given {

        @Option(
                names = "--from-round",
                paramLabel = "N",
                description = "The round from which --without and --with hold. Normally the first: never there, or all"
                        + " the time.")
        int fromRound = 1;

        @Option(names = "--without", paramLabel = "NAME", description = "Somebody who was gone from that round on.")
        List<String> without = new ArrayList<>();

        @Option(
                names = "--with",
                paramLabel = "NAME",
                description = "Somebody who was there and isn't in the plan. With whom isn't known; to say that, change"
                        + " a copy of the plan (--as).")
        List<String> with = new ArrayList<>();
    }

    /** Whether anything was said. */
    boolean isAnything() {
        return rounds.isPresent() || !only.isEmpty() || !given.isEmpty() || !swaps.isEmpty();
    }

    /** What was worked of a plan. */
    Worked of(KeptPlan plan, People people) {
        Worked worked = Worked.of(plan);
        for (int at = 0; at + 2 < swaps.size(); at += 3) {
            worked = swapped(worked, swaps.subList(at, at + 3), people);
        }
        for (Given one : given) {
            mustBeARound(one.fromRound, plan, "--from-round");
            for (String name : one.without) {
                worked = without(worked, people.name(name), one.fromRound);
            }
            for (String name : one.with) {
                worked = worked.with(people.person(name).name());
            }
        }
        worked = only.isEmpty() ? worked : worked.only(only);
        if (rounds.isPresent()
                && (rounds.get() < 0 || rounds.get() > plan.rounds().size())) {
            throw new CannotRun(
                    "--rounds wants a number from 0 to " + plan.rounds().size() + ".");
        }
        return rounds.isPresent() ? worked.first(rounds.get()) : worked;
    }

    private static Worked without(Worked worked, String name, int fromRound) {
        if (!worked.here().contains(name) && worked.rounds().stream().noneMatch(round -> holds(round, name))) {
            throw new CannotRun(name + " isn't in this class, so nobody was without.");
        }
        return worked.without(name, fromRound);
    }

    private static boolean holds(Round round, String name) {
        return round.groups().stream().anyMatch(group -> group.everyone().contains(name));
    }

    private static Worked swapped(Worked worked, List<String> swap, People people) {
        String one = people.name(swap.get(1));
        String other = people.name(swap.get(2));
        Round round = worked.rounds().stream()
                .filter(each -> String.valueOf(each.number()).equals(swap.get(0)))
                .findFirst()
                .orElseThrow(() -> new CannotRun("--swap wants the number of a round first, from 1 to "
                        + worked.rounds().size() + ", then two names."));
        for (String name : List.of(one, other)) {
            if (round.groupOf(name).isEmpty()) {
                throw new CannotRun(name + " has no partner's place in round " + round.number() + " of the plan.");
            }
        }
        return worked.swapped(round.number(), one, other);
    }

    private static void mustBeARound(int number, KeptPlan plan, String option) {
        if (number < 1 || number > Math.max(1, plan.rounds().size())) {
            throw new CannotRun(option + " wants a round from 1 to "
                    + Math.max(1, plan.rounds().size()) + ".");
        }
    }
}
