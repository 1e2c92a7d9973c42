package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;

/** Judges whether a stroke that is named for its way can go that way: a blade to pass, and the line it ends in. */
final class PathJudge {

    private final State state;
    private final Setting setting;
    private final Side by;
    private final Action.Strike strike;
    private final Objections ledger;
    private final Sighting sighting;

    PathJudge(State state, Setting setting, Side by, Action.Strike strike, Objections ledger) {
        this.state = state;
        this.setting = setting;
        this.by = by;
        this.strike = strike;
        this.ledger = ledger;
        this.sighting = new Sighting(state, setting, by, strike);
    }

    void judge() {
        if (setting.isSabre()) {
            return;
        }
        switch (strike.path()) {
            case DISENGAGE, CUT_OVER -> {
                judgeBlade();
                judgeEnd();
            }
            case COUNTER_DISENGAGE -> judgeCounter();
            case ONE_TWO, DOUBLE -> judgeEnd();
            case DIRECT -> {
                judgeStraight();
                judgeSide();
            }
            case UNSTATED -> judgeSide();
            case GLIDE -> {
                new BladeJudge(state, setting, by, ledger).judgeGlide();
                judgeSide();
            }
            case DECEIVE -> {}
        }
    }

    /** A disengage presupposes a blade to leave (L'Abbat XII). */
    private void judgeBlade() {
        Fact<Line> from = sighting.from();
        Fencer partner = state.of(by.other());
        boolean before = from.value()
                .flatMap(line -> partner.hand().value().map(hand -> standsBefore(line, hand)))
                .orElse(false);
        boolean there = before || partner.reaching() || partner.extended().is(true);
        boolean apart = state.engagement().is(Optional.empty());
        boolean decides = there
                || (state.engagement().isKnown() && !apart)
                || (from.isKnown() && partner.hand().isKnown() && apart);
        if (ledger.asks("contact", decides, state.engagement().since()) && apart && !there) {
            ledger.refuse(new Refusal.NoBladeToPass(strike.path(), from.value().orElse(Line.HIGH_INSIDE)));
        }
    }

    private boolean standsBefore(Line line, Position hand) {
        ParryTable.Row row = setting.parries().row(hand);
        return row.lines().contains(line) || !row.firm();
    }

    /** It ends on the other side of the blade, or on the same side where the path comes round again. */
    private void judgeEnd() {
        Optional<Line> from = sighting.from().value();
        Optional<Line> expected = sighting.expected().value();
        Optional<Line> named = sighting.line().value();
        if (named.isPresent()) {
            ledger.asks("contact", from.isPresent(), sighting.from().since());
        }
        if (from.isEmpty() || expected.isEmpty() || named.isEmpty()) {
            return;
        }
        boolean contactKnown =
                state.engagement().isKnown() || state.of(by).extended().is(true);
        if (!contactKnown || Mirror.sameSide(expected.get(), named.get()) || changesHeight(from.get(), named.get())) {
            return;
        }
        boolean mayComeRound = strike.path() == Action.Path.DISENGAGE;
        boolean known = !mayComeRound || state.parried().isKnown();
        if (ledger.asks("parry", known, state.parried().since()) && !(mayComeRound && followsCircle())) {
            ledger.refuse(new Refusal.EndsElsewhere(strike.path(), from.get(), expected.get(), named.get()));
        }
    }

    /** Under the hand into the low line, or over it into the high one, on either side of it (L'Abbat VI, VIII, XIII). */
    private boolean changesHeight(Line from, Line named) {
        return strike.path() == Action.Path.DISENGAGE && !Mirror.sameHeight(from, named);
    }

    /** Behind a feint that a circular parry followed, the same way round again comes to the same side. */
    private boolean followsCircle() {
        return state.parried()
                .value()
                .flatMap(known -> known)
                .filter(one -> one.feint() && one.circular())
                .isPresent();
    }

    /** It deceives a change of engagement, or the circular parry that a feint drew: the second half of a double. */
    private void judgeCounter() {
        Optional<State.Change> change = state.changed().filter(one -> one.by() != by);
        if (change.isEmpty() && followsCircle()) {
            return;
        }
        if (change.isEmpty()) {
            boolean sure =
                    state.of(by.other()).hand().isKnown() && state.engagement().isKnown();
            if (ledger.asks("contact", sure, state.engagement().since())) {
                ledger.refuse(new Refusal.NothingToCounter());
            }
            return;
        }
        Optional<Line> expected = sighting.expected().value();
        Optional<Line> named = sighting.line().value();
        if (expected.isPresent() && named.isPresent() && !expected.equals(named)) {
            ledger.refuse(new Refusal.EndsElsewhere(
                    strike.path(), Mirror.otherSide(expected.get()), expected.get(), named.get()));
        }
    }

    /** A straight riposte does not pass the blade it has just parried. */
    private void judgeStraight() {
        boolean riposte = strike.role() == Role.RIPOSTE || strike.role() == Role.COUNTER_RIPOSTE;
        Optional<Parried> parry =
                state.parried().value().flatMap(known -> known).filter(one -> one.by() == by);
        Optional<Line> expected = sighting.expected().value();
        Optional<Line> named = sighting.line().value();
        if (!riposte || parry.isEmpty() || expected.isEmpty() || named.isEmpty()) {
            return;
        }
        boolean passes = Mirror.sameHeight(expected.get(), named.get()) && !expected.equals(named);
        if (passes && parry.get().position().isPresent() && asksWhetherTheyTouch()) {
            ledger.refuse(new Refusal.NotStraight(parry.get().position().get(), expected.get(), named.get()));
        }
    }

    /**
     * Between blades that touch, a straight thrust goes only to the side on which they touch: "straight thrust in line of
     * engagement" (Warford 1884, p. 17); the other side is reached by disengage or cut-over (p. 18-19; Technical Rules
     * t.10.1), or when the blade has been beaten away (p. 18).
     */
    private void judgeSide() {
        Optional<Line> named = sighting.line().value();
        boolean riposte = strike.role() == Role.RIPOSTE || strike.role() == Role.COUNTER_RIPOSTE;
        boolean judged = riposte && strike.path() == Action.Path.DIRECT;
        if (named.isEmpty() || judged) {
            return;
        }
        boolean straight = strike.path() == Action.Path.DIRECT
                || strike.path() == Action.Path.GLIDE
                || strike.role() == Role.EXTENSION
                || strike.opposition();
        Optional<Line> stands = sighting.from().value();
        boolean lies = stands.filter(line -> Mirror.sameHeight(line, named.get()) && line != named.get())
                .isPresent();
        if (straight && (lies || stands.isEmpty())) {
            ledger.asks("contact", isTouchKnown(), state.engagement().since());
        }
        Optional<Line> from = touching().isPresent() ? stands : Optional.empty();
        boolean crosses = lies && from.isPresent();
        if (crosses) {
            boolean sure = straight && !isJustParried();
            ledger.refuse(new Refusal.AcrossTheBlades(from.get(), named.get(), false, sure, strike.opposition()));
        }
    }

    private boolean asksWhetherTheyTouch() {
        Fact<Optional<Engagement>> blades = state.engagement();
        return ledger.asks("contact", blades.isKnown(), blades.since())
                && blades.value().flatMap(known -> known).isPresent();
    }

    /** Whether it is known on which side of the partner's blade this one lies, or that they do not touch. */
    private boolean isTouchKnown() {
        Fencer partner = state.of(by.other());
        boolean apart = state.engagement().is(Optional.empty());
        boolean arm = partner.extended().isKnown()
                && (partner.extended().is(false) || partner.point().isKnown());
        return apart || (state.engagement().isKnown() && arm && sighting.from().isKnown());
    }

    /** The contact, unless the partner's arm has gone out to another line since. */
    private Optional<Engagement> touching() {
        Fencer partner = state.of(by.other());
        Optional<Engagement> contact = state.engagement().value().flatMap(blades -> blades);
        boolean riposte = strike.role() == Role.RIPOSTE || strike.role() == Role.COUNTER_RIPOSTE;
        if (partner.extended().is(false) || riposte) {
            return contact;
        }
        Optional<Line> point = partner.point().value().flatMap(line -> line);
        return contact.filter(blades -> point.equals(Optional.of(blades.lineOf(by))));
    }

    /** Blades that met in a parry may have parted since; that is seldom written. */
    private boolean isJustParried() {
        return state.parried()
                .value()
                .flatMap(known -> known)
                .filter(one -> one.by() != by)
                .isPresent();
    }
}
