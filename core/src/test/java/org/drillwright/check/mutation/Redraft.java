package org.drillwright.check.mutation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.model.Hands;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;

/** A drill with some of its parts written anew. */
public final class Redraft {

    private final Drill drill;
    private final List<Step> steps;
    private List<String> gear;
    private String start;
    private String opening;
    private String closing;
    private Map<String, String> accept;
    private Hands hands;
    private String note;
    private String title;
    private String purpose;

    private Redraft(Drill drill) {
        this.drill = drill;
        this.steps = new ArrayList<>(drill.steps());
        this.gear = drill.gear();
        this.start = drill.start();
        this.opening = drill.opening();
        this.closing = drill.closing();
        this.accept = drill.accept();
        this.hands = drill.hands();
        this.note = drill.note();
        this.title = drill.title();
        this.purpose = drill.purpose();
    }

    public static Redraft of(Drill drill) {
        return new Redraft(drill);
    }

    public Redraft turn(int step, Side side, String words) {
        return turn(step, side, words.isEmpty() ? Optional.empty() : Optional.of(Turn.of(words)));
    }

    private Redraft turn(int step, Side side, Optional<Turn> turn) {
        Step old = steps.get(step);
        steps.set(
                step,
                new Step(
                        old.number(),
                        old.call(),
                        side == Side.LEADER ? turn : old.leader(),
                        side == Side.FOLLOWER ? turn : old.follower(),
                        old.distance(),
                        old.safety(),
                        old.note()));
        return this;
    }

    public Redraft distance(int step, String cue) {
        Step old = steps.get(step);
        return replace(step, cue, old.safety());
    }

    public Redraft safety(int step, String note) {
        return replace(step, steps.get(step).distance(), note);
    }

    private Redraft replace(int step, String cue, String note) {
        Step old = steps.get(step);
        steps.set(step, new Step(old.number(), old.call(), old.leader(), old.follower(), cue, note, old.note()));
        return this;
    }

    /** A count put before all others. */
    public Redraft first(Step step) {
        steps.add(0, step);
        return this;
    }

    /** A count put in, the one of that number and those behind it moved back. */
    Redraft inserted(int step, Step count) {
        steps.add(step, count);
        return this;
    }

    public Redraft gear(List<String> items) {
        gear = items;
        return this;
    }

    public Redraft start(String words) {
        start = words;
        return this;
    }

    public Redraft opening(String words) {
        opening = words;
        return this;
    }

    public Redraft closing(String words) {
        closing = words;
        return this;
    }

    /** The hands of the two are the same where they were opposite, and the other way round. */
    public Redraft otherHands() {
        hands = hands == Hands.SAME ? Hands.OPPOSITE : Hands.SAME;
        return this;
    }

    /** A remark to the instructor. */
    public Redraft remark(String words) {
        note = words;
        return this;
    }

    /** Another title and another purpose. */
    public Redraft called(String otherTitle, String otherPurpose) {
        title = otherTitle;
        purpose = otherPurpose;
        return this;
    }

    /** No warning is accepted. */
    public Redraft acceptingNothing() {
        accept = Map.of();
        return this;
    }

    public Drill drill() {
        return new Drill(
                drill.id(),
                title,
                drill.level(),
                drill.form(),
                drill.weapon(),
                hands,
                drill.worksOn(),
                drill.needs(),
                gear,
                purpose,
                start,
                opening,
                steps,
                closing,
                drill.repeat(),
                drill.swap(),
                drill.tempo(),
                note,
                drill.cautions(),
                drill.variantOf(),
                drill.tags(),
                drill.revised(),
                accept);
    }
}
