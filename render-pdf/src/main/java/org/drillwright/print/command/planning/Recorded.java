package org.drillwright.print.command.planning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.read.PlanReader;
import org.drillwright.read.Reading;
import org.drillwright.read.ReadingLimits;
import org.drillwright.wording.Message;

/**
 * The plan that is recorded: the one that was printed, unless somebody says otherwise.
 *
 * @param mark what the record calls it
 * @param changed whether it is a changed copy of the plan with that mark
 */
public record Recorded(KeptPlan plan, String mark, boolean changed) {

    /** Stands for a plan that was never printed. */
    public static final String NONE = "none";

    /** The plan that hangs, or that of a mark, or with {@link #NONE} one that is made now. */
    public static Recorded of(Tonight tonight, Optional<String> mark) {
        boolean nothingToPrint = tonight.plan().pairing().drills().isEmpty() && mark.isEmpty();
        if (nothingToPrint || mark.filter(NONE::equals).isPresent()) {
            return new Recorded(fresh(tonight), NONE, false);
        }
        Kept kept = Wall.of(tonight, mark)
                .start()
                .orElseThrow(() -> new CannotRun(Message.of(
                        Recorded.class,
                        "not.printed",
                        tonight.named(),
                        Message.day(tonight.plan().brief().date()))));
        return new Recorded(kept.plan(), kept.mark().shown(), false);
    }

    private static KeptPlan fresh(Tonight tonight) {
        KeptPlan plan = Wall.unprinted(tonight);
        List<String> here =
                tonight.plan().here().stream().map(person -> person.name()).toList();
        return plan.rounds().isEmpty() ? plan.with(here) : plan;
    }

    /** A copy of a plan that somebody changed; nothing if it can't be read, which is shown. */
    public static Optional<Recorded> copy(Invocation run, Tonight tonight, String typed) {
        Path file = Locations.existing(run.here(), typed)
                .filter(Files::isRegularFile)
                .orElseThrow(() -> new CannotRun(Message.of(Recorded.class, "no.file", typed)));
        Reading<Kept> reading = PlanReader.read(typed, bytes(file));
        run.showWhyNot(reading.findings());
        if (reading.value().isEmpty()) {
            run.sayWhyNot(Message.of(Recorded.class, "copy.first"));
        }
        return reading.value().map(kept -> copied(kept, tonight, typed));
    }

    private static Recorded copied(Kept kept, Tonight tonight, String typed) {
        KeptPlan plan = kept.plan();
        LocalDate date = tonight.plan().brief().date();
        if (!plan.named().equals(tonight.named()) || !plan.date().equals(date)) {
            throw new CannotRun(Message.of(
                    Recorded.class,
                    "other.plan",
                    typed,
                    plan.named(),
                    Message.day(plan.date()),
                    tonight.named(),
                    Message.day(date)));
        }
        plan.fault().ifPresent(fault -> {
            throw new CannotRun(Message.of(Recorded.class, "faulty", fault, typed));
        });
        return new Recorded(plan, kept.mark().shown(), !plan.fits(kept.mark()));
    }

    private static byte[] bytes(Path file) {
        try (var in = Files.newInputStream(file)) {
            return in.readNBytes(ReadingLimits.FILE_BYTES + 1);
        } catch (IOException problem) {
            throw new CannotRun(Message.of(Recorded.class, "unreadable", file), problem);
        }
    }
}
