package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Reply;

/** Judges what only the turns of both together show, when a count has been played. */
final class BothTogether {

    private final List<Played> played;

    BothTogether(List<Played> played) {
        this.played = List.copyOf(played);
    }

    /** The moves of the count, each with what is refused of it beside the partner's. */
    List<Played> judged() {
        List<Played> judged = new ArrayList<>();
        for (Played one : played) {
            List<Refusal> refusals = new ArrayList<>(one.refusals());
            if (comesOut(one.move().by().other())) {
                refusals.removeIf(Refusal.NoBladeToTake.class::isInstance);
            }
            if (one.move().isCertain()) {
                yields(one).ifPresent(refusals::add);
            }
            judged.add(new Played(one.move(), one.before(), one.after(), refusals, one.asked()));
        }
        return judged;
    }

    private Stream<Played> by(Side side) {
        return played.stream().filter(one -> one.move().by() == side);
    }

    private boolean does(Side side, Predicate<Action> wanted) {
        return by(side).flatMap(one -> one.move().parts().stream()).anyMatch(part -> wanted.test(part.action()));
    }

    private boolean isInDoubt(Side side) {
        return by(side).anyMatch(one -> !one.move().isCertain() || one.move().action() instanceof Action.Unread);
    }

    /** Whether an arm goes out that can be met with a bind. */
    private boolean comesOut(Side side) {
        return by(side).anyMatch(one -> one.move().isAssault()) || isInDoubt(side);
    }

    /** Who yields and parries, cedes; and cedes to a blade that takes one's own. */
    private Optional<Refusal> yields(Played one) {
        Side by = one.move().by();
        boolean yields = by(by).filter(own -> isYielding(own.move().action()))
                .findFirst()
                .filter(one::equals)
                .isPresent();
        boolean parries = does(by, Action.Parry.class::isInstance);
        boolean taken = does(by.other(), Action.OnBlade.class::isInstance)
                || by(by).anyMatch(own ->
                        own.before().attackOn(by).filter(Attack::contact).isPresent());
        boolean apart = played.get(0).before().engagement().is(Optional.empty());
        return yields && parries && apart && !taken && !isInDoubt(by.other())
                ? Optional.of(new Refusal.NothingToCedeTo())
                : Optional.empty();
    }

    private static boolean isYielding(Action action) {
        return action instanceof Action.Answer answer && answer.reply() == Reply.YIELD;
    }
}
