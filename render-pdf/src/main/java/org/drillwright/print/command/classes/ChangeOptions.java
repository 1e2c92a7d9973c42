package org.drillwright.print.command.classes;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.planning.Substitution;
import org.drillwright.wording.Message;
import picocli.CommandLine.Mixin;

/** Who came late or left early; may be given again for a later round. */
final class ChangeOptions {

    @Mixin
    StageOptions stages = new StageOptions();

    List<Substitution> changes() {
        RoundByRound typed = stages.typed();
        typed.withoutRound().ifPresent(option -> {
            throw new CannotRun(Message.of(ChangeOptions.class, "round.before", option));
        });
        List<Substitution> changes = new ArrayList<>();
        int last = 1;
        for (RoundByRound.Stage stage : typed.stages()) {
            if (stage.fromRound() < last) {
                throw new CannotRun(Message.of(ChangeOptions.class, "round.from", last));
            }
            last = stage.fromRound();
            changes.add(new Substitution(
                    last, stage.without().stream().map(RoundByRound.Gone::name).toList(), stage.with()));
        }
        return changes;
    }
}
