package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Reply;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Line;
import org.drillwright.wording.Message;

/** Plays what meets an attack: parries, evasions, and touches taken on purpose. */
final class Defence {

    private final Setting setting;
    private final Moment moment;
    private final Objections ledger;

    Defence(Setting setting, Moment moment, Objections ledger) {
        this.setting = setting;
        this.moment = moment;
        this.ledger = ledger;
    }

    /** The hand goes to a position: a parry where an attack is coming, a guard otherwise. */
    State place(State state, Action.Place place) {
        Optional<Attack> attack = state.attackOn(moment.by());
        boolean there = state.of(moment.by()).hand().is(place.position())
                && state.of(moment.by()).covers().is(true);
        if (attack.isPresent() && !there) {
            return parry(
                    state,
                    new Action.Parry(
                            Optional.of(place.position()), ParryKind.UNSTATED, Aim.UNSTATED, place.inTheLunge()));
        }
        Fencer fencer = state.of(moment.by());
        boolean moves = !fencer.hand().is(place.position());
        State set = state.with(moment.by(), fencer.guarding(Fact.of(place.position())));
        State next = moves ? set.forgetParryBy(moment.by()) : set;
        Optional<Line> contact =
                state.engagement().value().flatMap(blades -> blades).map(blades -> blades.lineOf(moment.by()));
        if (!moves || contact.isEmpty()) {
            return next;
        }
        // A hand in the lunge that comes to where the blades touch meets the blade there.
        return setting.contact(moment.by(), place.position(), Optional.empty())
                .filter(blades -> place.inTheLunge() && contact.get() == blades.lineOf(moment.by()))
                .map(next::engaged)
                .orElseGet(() -> next.withEngagement(Fact.unknown(moment.where())));
    }

    State parry(State state, Action.Parry parry) {
        Side by = moment.by();
        Fact<Optional<Attack>> attack = state.on(by);
        if (!setting.partner()) {
            return hand(state, parry, Role.ATTACK, false);
        }
        if (!attack.isKnown()) {
            // Of what was parried nothing is known, and so not what right it gives.
            ledger.asks("attack", false, attack.since());
            return hand(state, parry, Role.ATTACK, false).withParried(Fact.unknown(attack.since()));
        }
        Optional<Attack> coming = state.attackOn(by);
        if (coming.isEmpty()) {
            ledger.refuse(new Refusal.NothingToParry());
            return hand(state, parry, Role.ATTACK, false);
        }
        return meet(state, parry, coming.get());
    }

    private State meet(State state, Action.Parry parry, Attack attack) {
        Side by = moment.by();
        boolean yields = mayYield(state, parry, attack);
        askWhetherFree(state, parry, attack);
        if (parry.position().isPresent() && !attack.beyondTable() && !yields) {
            ParryJudge judge = new ParryJudge(setting, state.of(by), parry, ledger);
            if (!attack.drawn() && judge.mayBeDrawnBy(attack)) {
                ledger.asks("line", false, attack.feintLine().orElseThrow().since());
                return afterFeint(hand(state, parry, attack.role(), true))
                        .withAttackOn(by, Fact.unknown(moment.where()));
            }
            if (!attack.drawn() && judge.isDrawnBy(attack)) {
                judge.judge(attack.feintLine().orElseThrow(), attack.contact());
                State drawn = afterFeint(hand(state, parry, attack.role(), true));
                return drawn.withAttackOn(by, Fact.of(Optional.of(attack.afterDrawing())));
            }
            judge.judge(attack);
        } else {
            ledger.asks("parry", true, Message.none());
        }
        State met = hand(state, parry, attack.role(), !attack.meant());
        return attack.meant() ? afterContact(met, parry) : afterFeint(met);
    }

    /**
     * A ceding parry yields to a blade that holds or carries one's own: common practice, no source.
     *
     * @return whether it may, because it is not known if there is a contact to yield to; then neither is where it has to end
     */
    private boolean mayYield(State state, Action.Parry parry, Attack attack) {
        if (parry.kind() != ParryKind.CEDING || attack.contact()) {
            return false;
        }
        Fact<Optional<Engagement>> contact = state.engagement();
        if (ledger.asks("contact", contact.isKnown(), contact.since())) {
            ledger.refuse(new Refusal.NothingToCedeTo());
        }
        return !contact.isKnown();
    }

    /**
     * A blade that is held by what took it does not go where it will: it cedes, or it opposes in time. Whether a parry that
     * says neither comes free is not known: common practice, no source. A glide takes no blade, and is parried by opposition.
     */
    private void askWhetherFree(State state, Action.Parry parry, Attack attack) {
        boolean held = !state.engagement().isKnown()
                || state.engagement()
                        .value()
                        .flatMap(blades -> blades)
                        .filter(blades -> blades.holds(moment.by()))
                        .isPresent();
        if (held && attack.contact() && attack.meant() && parry.kind() != ParryKind.CEDING) {
            ledger.asks("way out of the hold on the blade", false, moment.where());
        }
    }

    /** Whether blades met on a feint is shown only by what follows; the hand was looking for the blade. */
    private State afterFeint(State state) {
        return state.with(moment.by(), state.of(moment.by()).withReach())
                .withEngagement(Fact.unknown(Where.DRAWN_PARRY));
    }

    private State afterContact(State state, Action.Parry parry) {
        State next = state.with(moment.other(), state.of(moment.other()).idle());
        return parry.position()
                .flatMap(position -> setting.contact(moment.by(), position, Optional.of(moment.by())))
                .map(next::engaged)
                .orElseGet(() -> next.withEngagement(Fact.unknown(moment.where())));
    }

    private State hand(State state, Action.Parry parry, Role against, boolean feint) {
        Side by = moment.by();
        Fencer fencer = state.of(by);
        Fencer parried = parry.position()
                .map(position -> fencer.guarding(Fact.of(position)))
                .orElseGet(() -> fencer.open(moment.where()).handUnknown(moment.where()));
        return state.with(by, parried)
                .noAttackOn(by)
                .withChange(Optional.empty())
                .withParried(Fact.of(
                        Optional.of(new Parried(by, parry.position(), against, feint, circles(fencer, parry)))));
    }

    private static boolean circles(Fencer fencer, Action.Parry parry) {
        return parry.kind() == ParryKind.CIRCULAR
                || parry.position()
                        .filter(position -> fencer.hand().is(position))
                        .isPresent();
    }

    State evade(State state) {
        return state.noAttackOn(moment.by());
    }

    State answer(State state, Action.Answer answer) {
        Side by = moment.by();
        State next = state;
        if (answer.stance().guard().isPresent()
                && !state.of(by).hand().is(answer.stance().guard().get())
                && !state.of(by).isLunged()) {
            next = next.with(
                    by, next.of(by).guarding(Fact.of(answer.stance().guard().get())));
        }
        boolean answers = setting.partner() && answer.reply() != Reply.YIELD;
        if (answers && ledger.asks("attack", next.on(by).isKnown(), next.on(by).since())) {
            judgeThreat(answer, next);
        }
        Optional<Attack> attack = next.attackOn(by).filter(Attack::meant);
        if (attack.isEmpty() || answer.reply() == Reply.YIELD) {
            return answer.reply() == Reply.RECEIVE ? landed(next) : next;
        }
        boolean afterOwn = attack.get().role() == Role.RIPOSTE || attack.get().role() == Role.COUNTER_RIPOSTE;
        if (answer.reply() != Reply.RECEIVE && !afterOwn && !attack.get().drawn()) {
            ledger.refuse(new Refusal.HoldUnderAttack());
        }
        return landed(next);
    }

    /** A feint is shown and does not arrive; another point that only threatens touches from where it reaches. */
    private void judgeThreat(Action.Answer answer, State state) {
        Optional<Attack> threat = state.attackOn(moment.by()).filter(one -> !one.meant());
        if (answer.reply() != Reply.RECEIVE || threat.isEmpty()) {
            return;
        }
        if (threat.get().feint()) {
            ledger.refuse(new Refusal.NothingToTake());
            return;
        }
        int reach = threat.get().reach();
        Range measure = state.measure();
        boolean away = measure.least() > reach;
        if (ledger.asks("distance", away || measure.most() <= reach, Fact.HERE) && away) {
            ledger.refuse(Refusal.OutOfReach.ofTheArm(measure));
        }
    }

    /** Who owns to a touch has had it; where none was under way there is nothing to own to. */
    State acknowledge(State state) {
        return state.attackOn(moment.by()).filter(Attack::meant).isPresent() ? landed(state) : state;
    }

    /** A touch has arrived: nothing is under way any more. */
    private State landed(State state) {
        return state.noAttackOn(moment.by()).forgetParryBy(moment.by());
    }
}
