package org.drillwright.print.command.planning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.kept.KeptPlans;
import org.drillwright.plan.kept.KeptText;
import org.drillwright.print.command.console.CannotRun;

/** The plans of tonight's class that were printed, by their marks. */
final class PlanMarks {

    private final Tonight tonight;
    private final KeptPlans plans;

    PlanMarks(Tonight tonight) {
        this.tonight = tonight;
        this.plans = tonight.kept();
    }

    KeptPlans plans() {
        return plans;
    }

    int heads() {
        return plans.heads().size();
    }

    /** The plan that holds. */
    Optional<Kept> head() {
        List<Kept> heads = plans.heads();
        if (heads.size() > 1) {
            throw new CannotRun(twoHeads(heads.get(0), heads.get(1)));
        }
        return heads.stream().findFirst();
    }

    private String twoHeads(Kept one, Kept other) {
        return "Two plans of " + tonight.named() + " were printed independently: " + told(one) + " and "
                + told(other) + "; " + difference(one.plan(), other.plan()) + ". Say which is in force: --plan "
                + one.mark().shown() + ".";
    }

    private static String difference(KeptPlan one, KeptPlan other) {
        int same = 0;
        int both = Math.min(one.rounds().size(), other.rounds().size());
        while (same < both && one.rounds().get(same).equals(other.rounds().get(same))) {
            same++;
        }
        return same == one.rounds().size() && same == other.rounds().size()
                ? "their rounds are the same"
                : "they differ from round " + (same + 1) + " onwards";
    }

    private String told(Kept kept) {
        return kept.mark().shown() + " (" + time(kept) + kept.plan().here().size() + " people)";
    }

    /** When it was printed, as its file tells. */
    private String time(Kept kept) {
        try {
            LocalTime time = Files.getLastModifiedTime(
                            tonight.classes().planFile(kept.plan().date(), kept.mark()))
                    .toInstant()
                    .atZone(ZoneId.systemDefault())
                    .toLocalTime();
            return String.format(Locale.ROOT, "%02d:%02d, ", time.getHour(), time.getMinute());
        } catch (IOException unknown) {
            return "";
        }
    }

    /** The plan whose mark somebody typed. */
    Kept named(String typed) {
        Optional<PlanMark> mark = PlanMark.read(typed);
        String wrong = mark.map(sure -> "No plan " + sure.shown() + " of " + tonight.named() + " was printed here")
                .orElseGet(() -> "'" + typed + "' is not the mark of a plan: "
                        + PlanMark.wrongWith(typed).english());
        return mark.flatMap(plans::of).orElseThrow(() -> new CannotRun(wrong + "; " + printed()));
    }

    private String printed() {
        String day = "for " + tonight.plan().brief().date() + " ";
        return plans.all().isEmpty()
                ? day + "none was."
                : "printed " + day + plans.all().stream().map(this::told).collect(Collectors.joining(", ")) + ".";
    }

    /** Writes a plan down under a mark that no other plan of the folder has. */
    Kept keep(KeptPlan plan, Map<String, String> madeFrom) {
        Kept kept = new Kept(free(plan), plan, madeFrom);
        Path file = tonight.classes().planFile(plan.date(), kept.mark());
        KeptFile.write(file, KeptText.file(kept), "This plan", "Split the class into two.");
        return kept;
    }

    private PlanMark free(KeptPlan plan) {
        PlanMark mark = plan.mark(PlanMark.SHORT);
        try {
            return tonight.classes().isTaken(mark) ? plan.mark(PlanMark.LONG) : mark;
        } catch (IOException problem) {
            throw new CannotRun("The plans of " + tonight.named() + " cannot be read", problem);
        }
    }
}
