package org.drillwright.print.command.classes;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.plan.kept.Absence;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.planning.People;

/** For which rounds people of a plan were gone, after what was said of them round by round. */
record Absences(KeptPlan plan, People people, List<WorkedOptions.Given> given) {

    List<Absence> all() {
        return given.stream().flatMap(this::from).toList();
    }

    private Stream<Absence> from(WorkedOptions.Given one) {
        WorkedOptions.mustBeARound(one.fromRound, plan, "--from-round");
        if (!one.instead.isEmpty() && (one.instead.size() != 1 || one.without.size() != 1)) {
            throw new CannotRun("--instead wants the one whose place was taken: --without NAME --instead NAME,"
                    + " and for another place --from-round again.");
        }
        Optional<String> instead = one.instead.stream().findFirst().map(people::anybody);
        return one.without.stream().map(typed -> absence(people.anybody(typed), one.fromRound, instead));
    }

    private Absence absence(String person, int from, Optional<String> instead) {
        boolean isIn = plan.here().contains(person)
                || plan.rounds().stream()
                        .flatMap(round -> round.groups().stream())
                        .anyMatch(group -> group.everyone().contains(person));
        if (!isIn) {
            throw new CannotRun(person + " isn't in this class, so nobody was without.");
        }
        if (instead.filter(person::equals).isPresent()) {
            throw new CannotRun("--instead wants somebody else than " + person + ".");
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
        return given.stream()
                .filter(later -> later.fromRound > from)
                .filter(later -> Stream.concat(later.without.stream(), later.with.stream())
                        .map(people::anybody)
                        .anyMatch(person::equals))
                .mapToInt(later -> later.fromRound)
                .min()
                .orElse(Absence.NEVER);
    }
}
