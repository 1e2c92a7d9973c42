package org.drillwright.print.command.planning;

import java.util.Optional;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.kept.PrintedState;
import org.drillwright.plan.pair.Pairing;
import org.drillwright.plan.pair.PairingPlan;

/**
 * A plan of tonight, and whether it was printed.
 *
 * @param pairing by which it was found; nothing if it is told as it was printed and would be found otherwise now
 * @param said what is kept of it
 * @param printed the plan that hangs, if this is it
 */
public record Shown(
        PairingPlan plan, Optional<Pairing> pairing, KeptPlan said, Optional<Kept> printed, PrintedState standing) {

    /** The mark that stands on what is printed of it; empty if it was not kept. */
    public String mark() {
        return printed.map(kept -> kept.mark().shown()).orElse("");
    }
}
