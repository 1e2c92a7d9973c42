package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.drillwright.model.Side;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.wording.Message;

/**
 * One way of knowing less about a state.
 *
 * @param part what becomes unknown, in words
 */
record Unknowing(String part, UnaryOperator<State> change) {

    private static final Message HERE = Where.HERE;

    static final List<Unknowing> ALL = all();

    private static List<Unknowing> all() {
        List<Unknowing> all = new ArrayList<>();
        all.add(new Unknowing("the measure", state -> state.with(Range.UNKNOWN)));
        all.add(new Unknowing("the engagement", state -> state.withEngagement(Fact.unknown(HERE))));
        all.add(new Unknowing("the parry", state -> state.withParried(Fact.unknown(HERE))));
        for (Side side : Side.values()) {
            String whose = " of the " + side.word();
            all.add(new Unknowing(
                    "the attack at the " + side.word(), state -> state.withAttackOn(side, Fact.unknown(HERE))));
            all.add(new Unknowing(
                    "the line of the attack at the " + side.word(),
                    state -> state.withAttackOn(side, state.on(side).map(attack -> attack.map(Unknowing::lineless)))));
            all.add(of(side, "the feet" + whose, Unknowing::footless));
            all.add(of(side, "the mask" + whose, fencer -> fencer.withMask(Fact.unknown(HERE))));
            all.add(of(side, "the whole hand" + whose, fencer -> fencer.handUnknown(HERE)));
            all.add(of(
                    side,
                    "the hand" + whose,
                    fencer -> hand(fencer, Fact.unknown(HERE), fencer.covers(), fencer.extended(), fencer.point())));
            all.add(of(
                    side,
                    "the cover" + whose,
                    fencer -> hand(fencer, fencer.hand(), Fact.unknown(HERE), fencer.extended(), fencer.point())));
            all.add(of(
                    side,
                    "the arm" + whose,
                    fencer -> hand(fencer, fencer.hand(), fencer.covers(), Fact.unknown(HERE), fencer.point())));
            all.add(of(
                    side,
                    "the point" + whose,
                    fencer -> hand(fencer, fencer.hand(), fencer.covers(), fencer.extended(), Fact.unknown(HERE))));
        }
        return List.copyOf(all);
    }

    private static Unknowing of(Side side, String part, UnaryOperator<Fencer> change) {
        return new Unknowing(part, state -> state.with(side, change.apply(state.of(side))));
    }

    private static Fencer hand(
            Fencer fencer,
            Fact<Position> hand,
            Fact<Boolean> covers,
            Fact<Boolean> extended,
            Fact<Optional<Line>> point) {
        return new Fencer(
                fencer.feet(), fencer.gained(), hand, covers, extended, point, fencer.reaching(), fencer.masked());
    }

    private static Fencer footless(Fencer fencer) {
        return new Fencer(
                Fact.unknown(HERE),
                fencer.gained(),
                fencer.hand(),
                fencer.covers(),
                fencer.extended(),
                fencer.point(),
                fencer.reaching(),
                fencer.masked());
    }

    private static Attack lineless(Attack attack) {
        return new Attack(
                Fact.unknown(HERE),
                Optional.empty(),
                attack.feintLine(),
                attack.role(),
                attack.meant(),
                attack.feint(),
                attack.contact(),
                attack.drawn(),
                attack.beyondTable(),
                attack.reach());
    }

    @Override
    public String toString() {
        return part;
    }
}
