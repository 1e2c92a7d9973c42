package org.drillwright.print.command.classes;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.plan.kept.Absence;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.planning.People;
import org.drillwright.wording.Message;

/** For which rounds people of a plan were gone, after what was said of them round by round. */
record Absences(KeptPlan plan, People people, List<RoundByRound.Stage> stages) {

    List<Absence> all() {
        stages.forEach(stage -> WorkedOptions.mustBeARound(stage.fromRound(), plan, RoundByRound.FROM));
        return stages.stream()
                .flatMap(stage -> stage.without().stream().map(gone -> absence(gone, stage.fromRound())))
                .toList();
    }

    private Absence absence(RoundByRound.Gone gone, int from) {
        String person = people.anybody(gone.name());
        boolean isIn = plan.here().contains(person)
                || plan.rounds().stream()
                        .flatMap(round -> round.groups().stream())
                        .anyMatch(group -> group.everyone().contains(person));
        if (!isIn) {
            throw new CannotRun(Message.of(Absences.class, "not.in.class", person));
        }
        Optional<String> instead = gone.instead().map(people::anybody);
        if (instead.filter(person::equals).isPresent()) {
            throw new CannotRun(Message.of(Absences.class, "instead.other", person));
        }
        return new Absence(
                person,
                from,
                until(person, from),
                instead,
                instead.filter(people::teaches).isPresent());
    }

    /** Up to the next round of which something is said of the same person. */
    private int until(String person, int from) {
        return stages.stream()
                .filter(later -> later.fromRound() > from)
                .filter(later -> Stream.concat(
                                later.without().stream().map(RoundByRound.Gone::name), later.with().stream())
                        .map(people::anybody)
                        .anyMatch(person::equals))
                .mapToInt(RoundByRound.Stage::fromRound)
                .min()
                .orElse(Absence.NEVER);
    }
}
