package org.drillwright.print.command.classes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.kept.Worked;
import org.drillwright.plan.pair.Round;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.planning.People;
import org.drillwright.wording.Message;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What really happened, where that isn't what was printed. */
final class WorkedOptions {

    @Option(names = "--rounds", paramLabel = "N")
    Optional<Integer> rounds = Optional.empty();

    @Option(names = "--skipped", paramLabel = "N")
    List<Integer> skipped = new ArrayList<>();

    @Option(names = "--only", paramLabel = "DRILL")
    List<String> only = new ArrayList<>();

    @Mixin
    StageOptions stages = new StageOptions();

    @Option(names = RoundByRound.INSTEAD, paramLabel = "NAME", parameterConsumer = RoundByRound.InOrder.class)
    List<RoundByRound.Word> instead = stages.said;

    @Option(names = "--swap", arity = "3", paramLabel = "ROUND NAME NAME", hideParamSyntax = true)
    List<String> swaps = new ArrayList<>();

    /** Whether anything was said. */
    boolean isAnything() {
        return rounds.isPresent()
                || !skipped.isEmpty()
                || !only.isEmpty()
                || stages.typed().isAnything()
                || !swaps.isEmpty();
    }

    /** What was worked of a plan. */
    Worked of(KeptPlan plan, People people) {
        Worked worked = Worked.of(plan);
        for (int at = 0; at + 2 < swaps.size(); at += 3) {
            worked = swapped(worked, swaps.subList(at, at + 3), people);
        }
        List<RoundByRound.Stage> said = stages.typed().stages();
        worked = worked.after(new Absences(plan, people, said).all());
        for (RoundByRound.Stage stage : said) {
            for (String name : stage.with()) {
                String person = people.anybody(name);
                mustHaveBeenGone(person, stage.fromRound(), worked);
                worked = people.teaches(person) ? worked : worked.with(person);
            }
        }
        worked = only.isEmpty() ? worked : worked.only(only);
        skipped.forEach(round -> mustBeARound(round, plan, "--skipped"));
        worked = worked.skipping(skipped);
        if (rounds.isPresent()
                && (rounds.get() < 0 || rounds.get() > plan.rounds().size())) {
            throw new CannotRun(Message.of(
                    WorkedOptions.class, "rounds.number", plan.rounds().size()));
        }
        return rounds.isPresent() ? worked.first(rounds.get()) : worked;
    }

    /** Whoever comes wasn't there in the round before; the plan, with what was said of it, may have them there. */
    private static void mustHaveBeenGone(String person, int from, Worked worked) {
        boolean there = worked.rounds().stream()
                .filter(round -> round.number() == from - 1)
                .anyMatch(round -> round.groupOf(person).isPresent());
        if (there) {
            throw new CannotRun(Message.of(WorkedOptions.class, "was.there", person, from - 1, from));
        }
    }

    private static Worked swapped(Worked worked, List<String> swap, People people) {
        String one = people.name(swap.get(1));
        String other = people.name(swap.get(2));
        Round round = worked.rounds().stream()
                .filter(each -> String.valueOf(each.number()).equals(swap.get(0)))
                .findFirst()
                .orElseThrow(() -> new CannotRun(
                        Message.of(WorkedOptions.class, "swap", worked.rounds().size())));
        for (String name : List.of(one, other)) {
            if (round.groupOf(name).isEmpty()) {
                throw new CannotRun(Message.of(WorkedOptions.class, "no.place", name, round.number()));
            }
        }
        return worked.swapped(round.number(), one, other);
    }

    static void mustBeARound(int number, KeptPlan plan, String option) {
        if (number < 1 || number > Math.max(1, plan.rounds().size())) {
            throw new CannotRun(Message.of(
                    WorkedOptions.class,
                    "round.to",
                    option,
                    Math.max(1, plan.rounds().size())));
        }
    }
}
