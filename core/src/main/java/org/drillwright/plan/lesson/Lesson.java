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

    private final Duration length;
    private final Timing timing;

    /** @param length of the whole class */
    public Lesson(Duration length, Timing timing) {
        this.length = length;
        this.timing = timing;
    }

    /** The drills of most value that fit, each after what it needs; if they don't all fit, what could be cut. */
    public LessonPlan plan(List<DrillLoad> wished) {
        DrillOrder order = DrillOrder.of(wished);
        if (order.circle().isPresent()) {
            String circle = String.join(", ", order.circle().get());
            return laid(List.of(), wished, List.of(), List.of("These need one another in a circle: " + circle + "."));
        }
        List<DrillLoad> chosen = DrillChoice.of(order.drills(), roomForDrills(), timing.changeover());
        List<DrillLoad> leftOut =
                order.drills().stream().filter(load -> !chosen.contains(load)).toList();
        return laid(chosen, leftOut, order.moved(), Cuts.advice(this, order.drills(), chosen));
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
        LessonPlan plan = plan(wished);
        List<DrillLoad> drills = new ArrayList<>(plan.drills());
        boolean grown = plan.fits();
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
        return laid(drills, plan.leftOut(), plan.moved(), plan.advice());
    }

    private Duration roomForDrills() {
        return length.minus(timing.fixed());
    }

    /** How long a class with these drills lasts. */
    Duration needed(List<DrillLoad> drills) {
        Duration needed = timing.fixed();
        for (DrillLoad load : drills) {
            needed = needed.plus(load.total());
        }
        return needed.plus(timing.changeover().multipliedBy(Math.max(0, drills.size() - 1)));
    }

    Duration length() {
        return length;
    }

    private LessonPlan laid(List<DrillLoad> drills, List<DrillLoad> leftOut, List<String> moved, List<String> advice) {
        List<Block> blocks = new ArrayList<>();
        Duration at = Duration.ZERO;
        at = add(blocks, Block.Kind.OPENING, "opening", at, timing.opening());
        at = add(blocks, Block.Kind.WARM_UP, "warm-up", at, timing.warmUp());
        for (int number = 0; number < drills.size(); number++) {
            at = number == 0 ? at : at.plus(timing.changeover());
            at = add(
                    blocks,
                    Block.Kind.DRILL,
                    drills.get(number).drill(),
                    at,
                    drills.get(number).total());
        }
        at = add(blocks, Block.Kind.CLOSING, "closing", at, timing.closing());
        LessonPlan plan = new LessonPlan(blocks, drills, leftOut, length, at, moved, advice);
        return withPracticeWarning(plan);
    }

    private static LessonPlan withPracticeWarning(LessonPlan plan) {
        List<String> advice = new ArrayList<>(plan.advice());
        advice.removeIf(sentence -> sentence.startsWith("Only "));
        if (!plan.drills().isEmpty() && plan.practiceShare() < LessonPlan.LEAST_PRACTICE) {
            advice.add("Only " + Math.round(100 * plan.practiceShare())
                    + " % of the class is practice; aim for 50 %, and for 40 % at least.");
        }
        return new LessonPlan(
                plan.blocks(), plan.drills(), plan.leftOut(), plan.length(), plan.needed(), plan.moved(), advice);
    }

    private static Duration add(List<Block> blocks, Block.Kind kind, String name, Duration start, Duration length) {
        Duration end = start.plus(length);
        blocks.add(new Block(kind, name, start, end));
        return end;
    }
}
