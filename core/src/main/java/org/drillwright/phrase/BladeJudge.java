package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;

/** Judges whether what is done to the partner's blade finds it there. */
final class BladeJudge {

    private final State state;
    private final Setting setting;
    private final Side by;
    private final Objections ledger;

    BladeJudge(State state, Setting setting, Side by, Objections ledger) {
        this.state = state;
        this.setting = setting;
        this.by = by;
        this.ledger = ledger;
    }

    void judge(Action.OnBlade onBlade) {
        switch (onBlade.contact()) {
            case BIND, CROISE, ENVELOP, PRESS -> judgeTaking(Optional.of(onBlade.contact()));
            case CHANGE_ENGAGEMENT -> judgeChange(onBlade.position());
            case BEAT, FROISSEMENT -> onBlade.position().ifPresent(this::judgeBeat);
            case ENGAGE, ABSENCE, PRESS_BACK -> {}
        }
    }

    /** A glide goes along a blade in contact, or along an arm that is out. */
    void judgeGlide() {
        judgeTaking(Optional.empty());
    }

    /**
     * What takes a blade holds it: it begins from a contact (the flanconade from a press, L'Abbat 1734, ch. IX; the glide
     * keeps the feel of the blade, Warford 1884, p. 17), or meets an arm that is out (common practice, no source).
     */
    private void judgeTaking(Optional<Action.Contact> contact) {
        Fact<Optional<Engagement>> blades = state.engagement();
        Fact<Boolean> out = state.of(by.other()).extended();
        boolean known = blades.isKnown() && (!blades.is(Optional.empty()) || out.isKnown());
        if (ledger.asks("contact", known, blades.isKnown() ? out.since() : blades.since())
                && blades.is(Optional.empty())
                && out.is(false)) {
            ledger.refuse(new Refusal.NoBladeToTake(contact));
        }
    }

    /** One changes from one engagement to another (L'Abbat 1734, ch. XIX-XX). */
    private void judgeChange(Optional<Position> to) {
        Fact<Optional<Engagement>> blades = state.engagement();
        if (!ledger.asks("contact", blades.isKnown(), blades.since())) {
            return;
        }
        Optional<Line> here = blades.value().flatMap(known -> known).map(one -> one.lineOf(by));
        if (here.isEmpty()) {
            ledger.refuse(new Refusal.NoEngagementToChange());
            return;
        }
        to.filter(position -> setting.lineOf(position).equals(here))
                .ifPresent(position -> ledger.refuse(new Refusal.ChangesToItself(position)));
    }

    /** A blade that is high is beaten high: its height is that of the contact, else that of the partner's hand. */
    private void judgeBeat(Position at) {
        Fencer partner = state.of(by.other());
        Optional<Line> contact =
                state.engagement().value().flatMap(known -> known).map(one -> one.lineOf(by));
        boolean apart =
                state.engagement().is(Optional.empty()) && partner.extended().is(false);
        Optional<Line> guard =
                apart ? partner.hand().value().flatMap(setting::lineOf).map(setting::across) : Optional.empty();
        ledger.asks("contact", state.engagement().isKnown(), state.engagement().since());
        Optional<Line> blade = contact.or(() -> guard);
        Optional<Line> beaten = setting.lineOf(at);
        // A blade stands high unless something else is told: common practice, no source.
        boolean low = beaten.flatMap(Line::height).filter(Height.LOW::equals).isPresent();
        if (low && state.engagement().is(Optional.empty())) {
            boolean known = partner.hand().isKnown() && partner.extended().isKnown();
            ledger.asks("guard", known, partner.hand().since());
        }
        boolean elsewhere = blade.isPresent() && beaten.isPresent() && !Mirror.sameHeight(blade.get(), beaten.get());
        if (elsewhere) {
            ledger.refuse(new Refusal.BeatsElsewhere(at, blade.get()));
        }
    }
}
