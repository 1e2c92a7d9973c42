package org.drillwright.plan.lesson;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.roster.OwnBlock;
import org.drillwright.plan.roster.Timing;

/** Lays the parts of a lesson one behind the other, and fills what is left. */
final class LaidBlocks {

    private final Timing timing;
    private final OwnBlocks own;
    private final Duration left;
    private final List<OwnBlock> fillers;
    private final List<LessonPart> blocks = new ArrayList<>();
    private Duration at = Duration.ZERO;

    /** @param left of the class beside its drills and all that is laid in any case; below 0 if they don't fit */
    LaidBlocks(Timing timing, OwnBlocks own, Duration left) {
        this.timing = timing;
        this.own = own;
        this.left = left;
        this.fillers = fillers();
    }

    /** Each in its turn, once, if it fits. */
    private List<OwnBlock> fillers() {
        List<OwnBlock> chosen = new ArrayList<>();
        Duration still = left;
        for (OwnBlock block : own.inTurn()) {
            if (block.length().compareTo(still) <= 0) {
                chosen.add(block);
                still = still.minus(block.length());
            }
        }
        return chosen;
    }

    List<LessonPart> of(List<DrillLoad> drills) {
        add(LessonPart.Kind.OPENING, "opening", timing.opening(), "");
        if (own.at(OwnBlock.Place.WARM_UP).isEmpty()) {
            add(LessonPart.Kind.WARM_UP, Lesson.PLAIN_WARM_UP, timing.warmUp(), "");
        }
        add(LessonPart.Kind.WARM_UP, own.at(OwnBlock.Place.WARM_UP));
        add(LessonPart.Kind.BEFORE, own.at(OwnBlock.Place.BEFORE));
        between(drills, 0);
        for (int number = 0; number < drills.size(); number++) {
            at = number == 0 ? at : at.plus(timing.changeover());
            add(
                    LessonPart.Kind.DRILL,
                    drills.get(number).drill(),
                    drills.get(number).total(),
                    "");
            between(drills, number + 1);
        }
        add(LessonPart.Kind.SPARE, fillers);
        add(LessonPart.Kind.AFTER, own.at(OwnBlock.Place.AFTER));
        add(LessonPart.Kind.CLOSING, "closing", timing.closing(), "");
        return blocks;
    }

    /** Those that part the drills into equal numbers, behind so many of them. */
    private void between(List<DrillLoad> drills, int done) {
        List<OwnBlock> parting = own.at(OwnBlock.Place.BETWEEN);
        int gaps = parting.size() + 1;
        for (int number = 1; number < gaps; number++) {
            int behind = (number * drills.size() + gaps - 1) / gaps;
            if (Math.min(behind, Math.max(Math.min(1, drills.size()), drills.size() - 1)) == done) {
                add(LessonPart.Kind.BETWEEN, parting.subList(number - 1, number));
            }
        }
    }

    private void add(LessonPart.Kind kind, List<OwnBlock> own) {
        own.forEach(block -> add(kind, block.name(), block.length(), block.how()));
    }

    private void add(LessonPart.Kind kind, String name, Duration length, String how) {
        Duration end = at.plus(length);
        blocks.add(new LessonPart(kind, name, at, end, how));
        at = end;
    }

    /** Whose turn it was without there being room. */
    List<Remark> told() {
        List<Remark.Passed> passedOver = own.inTurn().stream()
                .takeWhile(block -> !fillers.contains(block))
                .map(block -> new Remark.Passed(block.name(), block.length()))
                .toList();
        return passedOver.isEmpty() ? List.of() : List.of(new Remark.NoRoom(passedOver));
    }
}
