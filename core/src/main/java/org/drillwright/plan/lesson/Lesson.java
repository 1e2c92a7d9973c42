package org.drillwright.plan.lesson;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import org.drillwright.plan.roster.Timing;

/** Fits drills into the time of a class. */
public final class Lesson {

    /** Rounds that are tried at most where as many as fit are wanted. */
    private static final int MOST_ROUNDS = 40;

    /** What a warm-up is called that isn't the school's own. */
    public static final String PLAIN_WARM_UP = "warm-up";

    private final Duration length;
    private final Timing timing;
    private final OwnBlocks own;

    /** Without blocks of the school's own. */
    public Lesson(Duration length, Timing timing) {
        this(length, timing, OwnBlocks.NONE);
    }

    /** @param length of the whole class */
    public Lesson(Duration length, Timing timing, OwnBlocks own) {
        this.length = length;
        this.timing = timing;
        this.own = own;
    }

    /**
     * Drills that were chosen, before they are laid.
     *
     * @param advice what could be cut
     */
    private record Chosen(List<DrillLoad> drills, List<DrillLoad> leftOut, List<Remark> moved, List<Remark> advice) {}

    /** The drills of most value that fit, each after what it needs; if they don't all fit, what could be cut. */
    public LessonPlan plan(List<DrillLoad> wished) {
        Chosen chosen = chosen(wished);
        return laid(chosen, chosen.drills());
    }

    private Chosen chosen(List<DrillLoad> wished) {
        DrillOrder order = DrillOrder.of(wished);
        if (order.circle().isPresent()) {
            return new Chosen(
                    List.of(),
                    wished,
                    List.of(),
                    List.of(new Remark.Circle(order.circle().get())));
        }
        List<DrillLoad> chosen = DrillChoice.of(order.drills(), roomForDrills(), timing.changeover());
        List<DrillLoad> leftOut =
                order.drills().stream().filter(load -> !chosen.contains(load)).toList();
        return new Chosen(chosen, leftOut, order.moved(), Cuts.advice(this, order.drills(), chosen));
    }

    /**
     * As {@link #plan}, then with as many partners as fit: each drill in turn gets one round more while there is room.
     *
     * @param most rounds of one drill, for instance as many as there are partners
     */
    public LessonPlan planWithRounds(List<DrillLoad> wished, int most) {
        return planWithRounds(wished, load -> most);
    }

    /**
     * As {@link #plan}, then with as many partners as fit.
     *
     * @param most rounds of each drill; one that has as many already gets no more
     */
    public LessonPlan planWithRounds(List<DrillLoad> wished, ToIntFunction<DrillLoad> most) {
        Chosen chosen = chosen(wished);
        List<DrillLoad> drills = new ArrayList<>(chosen.drills());
        boolean grown = needed(drills).compareTo(length) <= 0;
        while (grown) {
            grown = false;
            for (int at = 0; at < drills.size(); at++) {
                DrillLoad before = drills.get(at);
                if (before.rounds() < Math.min(most.applyAsInt(before), MOST_ROUNDS)) {
                    drills.set(at, before.withRounds(before.rounds() + 1));
                    boolean fits = needed(drills).compareTo(length) <= 0;
                    drills.set(at, fits ? drills.get(at) : before);
                    grown |= fits;
                }
            }
        }
        return laid(chosen, drills);
    }

    private Duration roomForDrills() {
        return length.minus(own.fixed(timing));
    }

    /** How long a class with these drills lasts. */
    Duration needed(List<DrillLoad> drills) {
        Duration needed = own.fixed(timing);
        for (DrillLoad load : drills) {
            needed = needed.plus(load.total());
        }
        return needed.plus(timing.changeover().multipliedBy(Math.max(0, drills.size() - 1)));
    }

    Duration length() {
        return length;
    }

    OwnBlocks own() {
        return own;
    }

    private LessonPlan laid(Chosen chosen, List<DrillLoad> drills) {
        LaidBlocks laid = new LaidBlocks(timing, own, length.minus(needed(drills)));
        List<LessonPart> blocks = laid.of(drills);
        Duration needed = blocks.get(blocks.size() - 1).end();
        List<Remark> advice = new ArrayList<>(chosen.advice());
        advice.addAll(laid.told());
        LessonPlan plan = new LessonPlan(blocks, drills, chosen.leftOut(), length, needed, chosen.moved(), advice);
        if (!drills.isEmpty() && plan.practiceShare() < LessonPlan.LEAST_PRACTICE) {
            advice.add(new Remark.LittlePractice(Math.round(100 * plan.practiceShare())));
        }
        return new LessonPlan(blocks, drills, chosen.leftOut(), length, needed, chosen.moved(), advice);
    }
}
