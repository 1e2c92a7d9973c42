package org.drillwright.print.command.prints;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import org.drillwright.mark.PrintRecord;
import org.drillwright.model.CardSize;
import org.drillwright.model.School;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.printing.chosen.ChosenDrills;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;

/**
 * Prints what has changed since it was last printed. The record is written after the cards are in their place: a crash
 * between the two costs a second print, never a record of cards that do not exist.
 */
public final class Reprint {

    private final Invocation run;
    private final PrintsFile file;
    private final PrintRecord record;
    private final Changed changed;

    /** @param printed the school's settings in the language that is printed in */
    public Reprint(Invocation run, SchoolFolder folder, School printed, CardSize size) {
        this.run = run;
        this.file = new PrintsFile(folder.root());
        this.record = file.read(run);
        this.changed = new Changed(record, folder.school(), printed, size);
    }

    /**
     * Whether all went well.
     *
     * @param print puts the cards in their place, and says whether it did
     */
    public boolean run(ChosenDrills all, LocalDate day, Predicate<ChosenDrills> print) {
        ChosenDrills picks = changed.of(all);
        if (picks.drills().isEmpty() && picks.absent().isEmpty()) {
            run.say(Message.of(Reprint.class, "nothing"));
            return true;
        }
        if (!print.test(picks)) {
            return false;
        }
        file.add(record, changed.lines(picks, day));
        List<Message> recall = changed.recall(picks);
        if (!recall.isEmpty()) {
            run.say(Message.of(Reprint.class, "take.off"));
            recall.forEach(line -> run.out().println("  " + run.said(line)));
        }
        return true;
    }
}
