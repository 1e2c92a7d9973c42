package org.drillwright.print.command.planning;

import java.util.Map;
import java.util.Optional;
import org.drillwright.mark.PrintMark;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.kept.KeptPlans;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.roster.Roster;
import org.drillwright.school.ClassFolder;
import org.drillwright.school.SchoolFolder;

/**
 * A class that was read without an error, and its plan.
 *
 * @param named the class
 * @param figures a few of each file that it is planned from
 * @param kept the plans of it that were printed
 */
public record Tonight(
        SchoolFolder folder,
        ClassFolder classes,
        String named,
        Map<String, String> figures,
        Roster roster,
        ClassPlan plan,
        KeptPlans kept) {

    /** The same with another way to change over. */
    public Tonight moving(Movement movement) {
        return new Tonight(folder, classes, named, figures, roster, plan.moving(movement), kept);
    }

    /** The mark of a drill's card now. */
    public Optional<String> card(String drill) {
        return Optional.ofNullable(classes.drills().get(drill))
                .map(one -> PrintMark.of(one, folder.school()).shown());
    }

    /** Whether somebody is without a permitted partner for more than the number being odd. */
    public static boolean isShort(PairingPlan pairs) {
        return pairs.shortages().stream().anyMatch(shortage -> !shortage.parity());
    }
}
