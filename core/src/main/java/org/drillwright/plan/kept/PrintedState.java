package org.drillwright.plan.kept;

import java.util.List;
import java.util.Optional;
import org.drillwright.mark.PlanMark;
import org.drillwright.wording.Message;

/**
 * How a plan stands to what was printed.
 *
 * @param mark of the plan, if it was printed
 * @param hangs the mark of the plan that holds now, if one was printed
 * @param remarks what has changed since, one sentence each
 */
public record PrintedState(Optional<PlanMark> mark, Optional<PlanMark> hangs, List<Message> remarks) {

    /** Of a class of which nothing was printed. */
    public static final PrintedState NEW = new PrintedState(Optional.empty(), Optional.empty(), List.of());

    public PrintedState {
        remarks = List.copyOf(remarks);
    }

    /** What is said of it, in one sentence. */
    public Message sentence() {
        if (mark.isPresent()) {
            return Message.of(PrintedState.class, "printed", mark.get().shown());
        }
        return hangs.map(other -> Message.of(PrintedState.class, "not.printed.other", other.shown()))
                .orElseGet(() -> Message.of(PrintedState.class, "not.printed"));
    }
}
