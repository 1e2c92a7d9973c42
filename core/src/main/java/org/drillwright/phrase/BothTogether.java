package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Reply;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Line;
import org.drillwright.notation.Move;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;
import org.drillwright.phrase.told.StartWords;

/** Judges what only the turns of both together show, when a count has been played. */
final class BothTogether {

    private final Setting setting;
    private final List<Played> played;

    BothTogether(Setting setting, List<Played> played) {
        this.setting = setting;
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
                runsOn(one).or(() -> collides(one)).ifPresent(refusals::add);
                disagrees(one).ifPresent(refusals::add);
                leaves(one).ifPresent(refusals::add);
                otherSide(one).ifPresent(refusals::add);
                followsTheBeat(one).ifPresent(refusals::add);
            }
            judged.add(one.refused(refusals));
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
        return by(side).anyMatch(one -> one.move().isInDoubt());
    }

    /** Whether an arm goes out that can be met with a bind. */
    private boolean comesOut(Side side) {
        return by(side).anyMatch(one -> one.move().isAssault()) || isInDoubt(side);
    }

    /**
     * Between blades that touch, a beat or a press goes against the side on which they touch; for the other side the point
     * passes under first, a change beat, and the words say so: common practice, no source. Behind a parry the blades may have
     * parted, and an arm that has gone out elsewhere since may stand on either side.
     */
    private Optional<Refusal> otherSide(Played one) {
        Side by = one.move().by();
        State state = one.before();
        if (!(one.move().action() instanceof Action.OnBlade onBlade) || !goesAgainst(onBlade.contact())) {
            return Optional.empty();
        }
        boolean stays = state.of(by.other()).extended().is(false)
                && state.parried().is(Optional.empty())
                && !leavesContact(by.other());
        if (!stays) {
            return Optional.empty();
        }
        Optional<Line> touch =
                state.engagement().value().flatMap(known -> known).map(blades -> blades.lineOf(by));
        return onBlade.position()
                .filter(at -> touch.isPresent() && setting.lineOf(at).equals(touch.map(Mirror::otherSide)))
                .map(at -> new Refusal.FromTheOtherSide(onBlade.contact(), at, touch.orElseThrow()));
    }

    /**
     * A beat opens the line on the side from which it comes, and the thrust goes there; on the other side the beaten blade is still
     * in the way, and is passed by disengage or cut-over (Warford 1884, p. 18-19).
     */
    private Optional<Refusal> followsTheBeat(Played one) {
        Side by = one.move().by();
        Optional<Action.Strike> strike = one.move().strike().or(() -> aimed(one.move()));
        boolean straight = strike.filter(stroke -> stroke.path() == Action.Path.DIRECT
                        || (stroke.path() == Action.Path.UNSTATED && stroke.role() == Action.Role.ATTACK))
                .isPresent();
        Optional<Line> beaten = straight ? beatenBefore(one) : Optional.empty();
        if (beaten.isEmpty() || leavesContact(by.other()) || setting.isSabre()) {
            return Optional.empty();
        }
        boolean sure = strike.get().path() == Action.Path.DIRECT;
        return new Sighting(one.before(), setting, by, strike.get())
                .line()
                .value()
                .filter(line -> line == Mirror.otherSide(beaten.get()))
                .map(line -> new Refusal.AcrossTheBlades(beaten.get(), line, true, sure, false));
    }

    /** The stroke that a lunge with an aim of its own carries. */
    private static Optional<Action.Strike> aimed(Move move) {
        return move.lunge().map(Action.Lunge::aim).filter(Aim::isStated).map(Action.Strike::attack);
    }

    /**
     * The partner's line in which the blade was beaten just before, by the same one on this count; a beat that names none may
     * come from either side.
     */
    private Optional<Line> beatenBefore(Played one) {
        Side by = one.move().by();
        Optional<Played> before = by(by).takeWhile(own -> !own.equals(one))
                .reduce((first, last) -> last)
                .filter(own -> own.move().isCertain());
        return before.map(own -> own.move().action())
                .filter(Action.OnBlade.class::isInstance)
                .map(Action.OnBlade.class::cast)
                .filter(onBlade -> isBeat(onBlade.contact()))
                .flatMap(Action.OnBlade::position)
                .flatMap(setting::lineOf)
                .map(setting::across);
    }

    private static boolean isBeat(Action.Contact contact) {
        return contact == Action.Contact.BEAT || contact == Action.Contact.FROISSEMENT;
    }

    private static boolean goesAgainst(Action.Contact contact) {
        return switch (contact) {
            case BEAT, FROISSEMENT, PRESS -> true;
            default -> false;
        };
    }

    /** Whether a blade may go round on this very count, before it is beaten on its other side. */
    private boolean leavesContact(Side side) {
        return comesOut(side)
                || does(
                        side,
                        action -> action instanceof Action.OnBlade
                                || action instanceof Action.Place
                                || action instanceof Action.Invite);
    }

    /** Who yields and parries, cedes; and cedes to a blade that takes one's own. */
    private Optional<Refusal> yields(Played one) {
        if (!isYielding(one.move().action())) {
            return Optional.empty();
        }
        Side by = one.move().by();
        boolean first = by(by).filter(own -> isYielding(own.move().action()))
                .findFirst()
                .filter(one::equals)
                .isPresent();
        boolean parries = does(by, Action.Parry.class::isInstance);
        boolean taken = does(by.other(), Action.OnBlade.class::isInstance)
                || by(by).anyMatch(own ->
                        own.before().attackOn(by).filter(Attack::contact).isPresent());
        boolean apart = played.get(0).before().engagement().is(Optional.empty());
        return first && parries && apart && !taken && !isInDoubt(by.other())
                ? Optional.of(new Refusal.NothingToCedeTo())
                : Optional.empty();
    }

    /** Who comes forward under a lunge that reaches, runs on to the point: common practice, no source. */
    private Optional<Refusal> runsOn(Played one) {
        Side by = one.move().by();
        if (!comesForward(one.move())) {
            return Optional.empty();
        }
        boolean lunges = by(by.other())
                .anyMatch(other ->
                        other.move().isCertain() && other.move().lunge().isPresent());
        boolean stops = by(by.other())
                .flatMap(other -> other.move().strike().stream())
                .anyMatch(strike -> strike.role().stops());
        boolean parries = does(by, action -> action instanceof Action.Parry || action instanceof Action.Place);
        Range end = played.get(played.size() - 1).after().measure();
        return lunges && !stops && !parries && end.isKnown() && end.most() < 0
                ? Optional.of(new Refusal.RunsOn(end))
                : Optional.empty();
    }

    /**
     * Who lunges from nearer than the arm reaches, or steps on from there once more, comes to stand where the partner stands:
     * common practice, no source.
     */
    private Optional<Refusal> collides(Played one) {
        Move move = one.move();
        boolean lunges = move.lunge().isPresent();
        if (!lunges && !comesForward(move)) {
            return Optional.empty();
        }
        Range end = played.get(played.size() - 1).after().measure();
        boolean last = by(move.by())
                .reduce((first, later) -> later)
                .filter(one::equals)
                .isPresent();
        return last && end.isKnown() && end.most() < (lunges ? -1 : -2)
                ? Optional.of(new Refusal.NoRoom())
                : Optional.empty();
    }

    private static boolean comesForward(Move move) {
        return move.action() instanceof Action.Step step && step.foot().halfSteps() > 0;
    }

    /** Who has stepped out of reach is not touched. */
    private Optional<Refusal> leaves(Played one) {
        Side by = one.move().by();
        if (!one.move().action().isReply(Reply.RECEIVE)) {
            return Optional.empty();
        }
        Optional<Attack> attack = one.before().attackOn(by).filter(Attack::meant);
        Range measure = one.before().measure();
        boolean never = played.stream()
                .flatMap(other -> other.refusals().stream())
                .anyMatch(Refusal.OutOfReach.class::isInstance);
        boolean out = attack.filter(coming -> measure.least() > coming.reach()).isPresent();
        return out && does(by, Footwork::goesBack) && !never
                ? Optional.of(Refusal.OutOfReach.ofTheArm(measure))
                : Optional.empty();
    }

    /** Blades that the one engages are not apart for the other, and touch in one line. */
    private Optional<Refusal> disagrees(Played one) {
        Side by = one.move().by();
        Optional<Stance> own = by == Side.FOLLOWER ? blades(one) : Optional.empty();
        if (own.isEmpty()) {
            return Optional.empty();
        }
        Optional<Played> theirs = by(by.other())
                .filter(move -> move.move().isCertain() && blades(move).isPresent())
                .reduce((first, last) -> last);
        Optional<Stance> other = theirs.flatMap(this::blades);
        boolean inTurn =
                isOnBlade(one) && theirs.filter(BothTogether::isOnBlade).isPresent();
        if (other.isEmpty() || inTurn) {
            return Optional.empty();
        }
        if (!own.get().engaged().equals(other.get().engaged())) {
            return Optional.of(disagreement(other.get(), own.get()));
        }
        Optional<Line> here = line(own.get());
        Optional<Line> there = line(other.get()).map(setting::across);
        boolean elsewhere = here.isPresent()
                && there.isPresent()
                && !here.equals(there)
                && !named(own.get()).equals(named(other.get()));
        return elsewhere ? Optional.of(disagreement(other.get(), own.get())) : Optional.empty();
    }

    /** What a guard or a recovery says of the blades, if it says whether they touch. */
    private static Optional<Stance> stance(Action action) {
        Optional<Stance> stance =
                action instanceof Action.Recover recover ? Optional.of(recover.stance()) : StartWords.stance(action);
        return stance.filter(one -> one.engaged().isPresent());
    }

    /** What a turn says of whether the blades touch, in words or by the last thing that it does with the partner's blade. */
    private Optional<Stance> blades(Played one) {
        return stance(one.move().action())
                .or(() -> isLastOnBlade(one) ? left(one.move().action()) : Optional.empty());
    }

    private boolean isLastOnBlade(Played one) {
        return isOnBlade(one)
                && by(one.move().by())
                        .filter(BothTogether::isOnBlade)
                        .reduce((first, later) -> later)
                        .filter(one::equals)
                        .isPresent();
    }

    private static boolean isOnBlade(Played one) {
        return one.move().action() instanceof Action.OnBlade;
    }

    /** Whether blades are left touching or apart, by what certainly leaves them so. */
    private static Optional<Stance> left(Action action) {
        if (!(action instanceof Action.OnBlade onBlade)) {
            return Optional.empty();
        }
        Optional<Boolean> touching = switch (onBlade.contact()) {
            case ENGAGE, CHANGE_ENGAGEMENT -> Optional.of(true);
            case ABSENCE -> Optional.of(false);
            default -> Optional.empty();
        };
        return touching.map(Stance::touching);
    }

    private static Refusal disagreement(Stance theirs, Stance own) {
        return new Refusal.WordsDisagree(naming(theirs), naming(own));
    }

    /** The same, with the position named in which the blades touch. */
    private static Stance naming(Stance stance) {
        return new Stance(stance.guard(), stance.engaged(), named(stance));
    }

    private static Optional<Position> named(Stance stance) {
        return stance.engaged().equals(Optional.of(true)) ? stance.engagement().or(stance::guard) : Optional.empty();
    }

    private Optional<Line> line(Stance stance) {
        return named(stance).flatMap(setting::lineOf);
    }

    private static boolean isYielding(Action action) {
        return action instanceof Action.Answer answer && answer.reply() == Reply.YIELD;
    }
}
