package org.drillwright.print.command.planning;

import java.util.List;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.pair.Pairing;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.PairingRequest;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.Roster;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.school.ClassFolder;
import org.drillwright.school.SchoolFolder;

/** A class that was read without an error, and its plan. */
public record Tonight(SchoolFolder folder, ClassFolder classes, Roster roster, ClassPlan plan) {

    /** Its pairs, after all changes. */
    public Pairing pairing(List<Change> changes) {
        PairingRequest request = plan.pairing();
        Pairing pairing = Pairing.of(request);
        for (Change change : changes) {
            List<Round> rounds = pairing.plan().rounds();
            if (change.fromRound() > rounds.size() + 1) {
                throw new CannotRun(
                        "There is no round " + change.fromRound() + ": the class has " + rounds.size() + ".");
            }
            request = changed(request, change, rounds.subList(0, change.fromRound() - 1));
            pairing = Pairing.of(request);
        }
        return pairing;
    }

    private PairingRequest changed(PairingRequest request, Change change, List<Round> played) {
        People people = new People(roster);
        List<String> without = change.without().stream().map(people::name).toList();
        List<String> with =
                change.with().stream().map(name -> people.person(name).name()).toList();
        for (String name : without) {
            boolean here = request.students().stream()
                            .anyMatch(student -> student.name().equals(name))
                    || request.soloists().contains(name)
                    || request.helpers().contains(name);
            if (!here) {
                throw new CannotRun(name + " isn't in this class, so the class can't go on without.");
            }
        }
        return request.after(played, roster, without, with);
    }

    /** What people are called on a printed sheet. */
    public Naming naming(boolean initials) {
        return initials || folder.habits().initials() ? Naming.initials(roster.names()) : Naming.full();
    }

    /** Whether somebody is without a permitted partner for more than the number being odd. */
    public static boolean isShort(PairingPlan pairs) {
        return pairs.shortages().stream().anyMatch(shortage -> !shortage.parity());
    }
}
