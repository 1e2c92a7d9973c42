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
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.kept.KeptPlans;
import org.drillwright.plan.kept.KeptText;
import org.drillwright.plan.pair.Round;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.wording.Message;

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

    private Message twoHeads(Kept one, Kept other) {
        String named = tonight.named();
        String mark = one.mark().shown();
        List<Round> rounds = one.plan().rounds();
        if (rounds.equals(other.plan().rounds())) {
            return Message.of(PlanMarks.class, "two.plans.alike", named, told(one), told(other), mark);
        }
        int from = same(rounds, other.plan().rounds()) + 1;
        return Message.of(PlanMarks.class, "two.plans", named, told(one), told(other), from, mark);
    }

    /** How many rounds are the same in both before the first that isn't. */
    private static int same(List<Round> one, List<Round> other) {
        int same = 0;
        int both = Math.min(one.size(), other.size());
        while (same < both && one.get(same).equals(other.get(same))) {
            same++;
        }
        return same;
    }

    private Message told(Kept kept) {
        String mark = kept.mark().shown();
        int people = kept.plan().here().size();
        return time(kept)
                .map(time -> Message.of(PlanMarks.class, "plan.at", mark, time, people))
                .orElseGet(() -> Message.of(PlanMarks.class, "plan", mark, people));
    }

    /** When it was printed, as its file tells. */
    private Optional<String> time(Kept kept) {
        try {
            LocalTime time = Files.getLastModifiedTime(
                            tonight.classes().planFile(kept.plan().date(), kept.mark()))
                    .toInstant()
                    .atZone(ZoneId.systemDefault())
                    .toLocalTime();
            return Optional.of(String.format(Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute()));
        } catch (IOException unknown) {
            return Optional.empty();
        }
    }

    /** The plan whose mark somebody typed. */
    Kept named(String typed) {
        Optional<PlanMark> mark = PlanMark.read(typed);
        return mark.flatMap(plans::of)
                .orElseThrow(() ->
                        new CannotRun(mark.map(sure -> notAmong(sure.shown())).orElseGet(() -> noMark(typed))));
    }

    private Message notAmong(String mark) {
        return plans.all().isEmpty()
                ? Message.of(PlanMarks.class, "not.among.none", mark, tonight.named(), day())
                : Message.of(PlanMarks.class, "not.among", mark, tonight.named(), day(), printed());
    }

    private Message noMark(String typed) {
        return plans.all().isEmpty()
                ? Message.of(PlanMarks.class, "no.mark.none", typed, PlanMark.wrongWith(typed), day())
                : Message.of(PlanMarks.class, "no.mark", typed, PlanMark.wrongWith(typed), day(), printed());
    }

    private Message day() {
        return Message.day(tonight.plan().brief().date());
    }

    private Message printed() {
        return Message.listed(plans.all().stream().map(this::told).toList());
    }

    /** Writes a plan down under a mark that no other plan of the folder has. */
    Kept keep(KeptPlan plan, Map<String, String> madeFrom) {
        Kept kept = new Kept(free(plan), plan, madeFrom);
        Path file = tonight.classes().planFile(plan.date(), kept.mark());
        KeptFile.write(file, KeptText.file(kept), Message.of(PlanMarks.class, "split.class"));
        return kept;
    }

    private PlanMark free(KeptPlan plan) {
        PlanMark mark = plan.mark(PlanMark.SHORT);
        try {
            return tonight.classes().isTaken(mark) ? plan.mark(PlanMark.LONG) : mark;
        } catch (IOException problem) {
            throw new CannotRun(Message.of(PlanMarks.class, "plans.unreadable", tonight.named()), problem);
        }
    }
}
