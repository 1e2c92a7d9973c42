package org.drillwright.check.mutation;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.check.Sample;
import org.drillwright.model.Drill;
import org.drillwright.model.Level;
import org.drillwright.model.Side;
import org.drillwright.model.Turn;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.source.Span;

/** A correct drill, as operators look at it: by its words and what they say, never by how it was judged. */
record Scene(Sample sample) {

    /** One side's turn on one count, numbered from 0. */
    record At(int step, Side side) {
        At partner() {
            return new At(step, side.other());
        }

        At next() {
            return new At(step + 1, side);
        }

        @Override
        public String toString() {
            return side.word() + " at " + (step + 1);
        }
    }

    Drill drill() {
        return sample.subject().drill();
    }

    int counts() {
        return drill().steps().size();
    }

    boolean isPartnerDrill() {
        return sample.subject().isPartnerDrill();
    }

    /** Whether the start names that measure. */
    boolean begins(Measure measure) {
        return sample.subject().script().start().actions().stream()
                .anyMatch(action ->
                        action instanceof Action.State state && state.measure().equals(Optional.of(measure)));
    }

    boolean isSabre() {
        return drill().weapon() == Weapon.SABRE;
    }

    boolean isFree() {
        return sample.subject().level().turns() == Level.Turns.FREE;
    }

    Redraft redraft() {
        return Redraft.of(drill());
    }

    /** All turns, count by count. */
    Stream<At> turns() {
        return IntStream.range(0, counts())
                .boxed()
                .flatMap(step -> Stream.of(new At(step, Side.LEADER), new At(step, Side.FOLLOWER)));
    }

    /** All turns of a drill for two. */
    Stream<At> partnerTurns() {
        return isPartnerDrill() ? turns() : Stream.empty();
    }

    String words(At at) {
        return drill().steps().get(at.step()).turn(at.side()).map(Turn::read).orElse("");
    }

    /** The language in which a turn is written, as a tag. */
    String language(At at) {
        return sample.subject().reader().tag(words(at));
    }

    /** Whether a turn is a preparation, to which a step forward belongs. */
    boolean prepares(At at) {
        boolean bare = strike(at)
                .filter(strike -> strike.role() == Action.Role.EXTENSION && !lunges(at))
                .isPresent();
        return bare || does(at, Action.OnBlade.class) || does(at, Action.Invite.class);
    }

    private <T extends Action> Stream<T> actions(At at, Class<T> kind) {
        if (at.step() >= counts()) {
            return Stream.empty();
        }
        return sample.subject().turn(at.step(), at.side()).clauses().stream()
                .map(Clause::action)
                .filter(kind::isInstance)
                .map(kind::cast);
    }

    boolean does(At at, Class<? extends Action> kind) {
        return actions(at, kind).findAny().isPresent();
    }

    /** What is not of these kinds. */
    boolean doesOnly(At at, List<Class<? extends Action>> kinds) {
        return actions(at, Action.class).allMatch(action -> kinds.stream().anyMatch(kind -> kind.isInstance(action)));
    }

    /** The stroke of a turn; a lunge, a bind or a press with an aim of its own carries one too. */
    Optional<Action.Strike> strike(At at) {
        Stream<Action.Strike> carried = Stream.concat(
                        actions(at, Action.Lunge.class).map(Action.Lunge::aim),
                        actions(at, Action.OnBlade.class)
                                .filter(Action.OnBlade::carriesPoint)
                                .map(Action.OnBlade::aim))
                .filter(Aim::isStated)
                .map(aim ->
                        new Action.Strike(Action.Role.ATTACK, Action.Path.UNSTATED, aim, false, false, false, false));
        return actions(at, Action.Strike.class).reduce((first, last) -> last).or(carried::findFirst);
    }

    /** A stroke that means to touch: no feint, no false attack, and no bare extension. */
    boolean attacks(At at) {
        boolean falseAttack = actions(at, Action.Strike.class).anyMatch(Action.Strike::falseAttack);
        return strike(at)
                .filter(strike -> !strike.feint() && !falseAttack)
                .filter(strike -> strike.role() != Action.Role.EXTENSION || lunges(at))
                .isPresent();
    }

    boolean ripostes(At at) {
        return strike(at)
                .filter(strike -> strike.role() == Action.Role.RIPOSTE || strike.role() == Action.Role.COUNTER_RIPOSTE)
                .isPresent();
    }

    boolean lunges(At at) {
        return does(at, Action.Lunge.class);
    }

    boolean stepsBack(At at) {
        return actions(at, Action.Step.class).anyMatch(step -> step.foot() == Action.Foot.RETREAT);
    }

    /** The parry named on a turn; a bare position under an attack is one too. */
    Optional<Action.Parry> parry(At at) {
        Optional<Action.Parry> parry = actions(at, Action.Parry.class).findFirst();
        Optional<Action.Parry> placed = actions(at, Action.Place.class)
                .findFirst()
                .map(place -> new Action.Parry(
                        Optional.of(place.position()), Action.ParryKind.UNSTATED, Aim.UNSTATED, place.inTheLunge()));
        return parry.or(() -> placed).filter(one -> strike(at.partner()).isPresent());
    }

    /** The words of the parry within its turn. */
    Optional<Span> parryWords(At at) {
        return sample.subject().turn(at.step(), at.side()).clauses().stream()
                .filter(clause -> clause.action() instanceof Action.Parry || clause.action() instanceof Action.Place)
                .map(Clause::span)
                .findFirst();
    }

    Optional<Position> parryPosition(At at) {
        return parry(at).flatMap(Action.Parry::position);
    }

    boolean cedes(At at) {
        return parry(at)
                .filter(parry -> parry.kind() == Action.ParryKind.CEDING)
                .isPresent();
    }

    /** Positions whose line differs between schools (prime and quinte of a thrusting weapon; facts, section 3.1). */
    boolean schoolsDiffer(Position position) {
        return isSabre()
                ? position != Position.QUARTE && position != Position.TIERCE && position != Position.QUINTE
                : position == Position.PRIME || position == Position.QUINTE;
    }

    /** Whether a side has lunged on an earlier count and not recovered since. */
    boolean isOnTheLunge(At at) {
        boolean lunged = false;
        for (int step = 0; step < at.step(); step++) {
            At then = new At(step, at.side());
            boolean up = does(then, Action.Recover.class) || does(then, Action.OnGuard.class);
            lunged = (lunged && !up) || lunges(then);
        }
        return lunged;
    }

    /** What a turn does to the partner's blade. */
    Optional<Action.Contact> touches(At at) {
        return actions(at, Action.OnBlade.class).map(Action.OnBlade::contact).findFirst();
    }

    boolean receives(At at) {
        return actions(at, Action.Answer.class).anyMatch(answer -> answer.reply() == Action.Reply.RECEIVE);
    }

    /** A single step forward or back, alone in its turn. */
    Optional<Action.Step> onlyStep(At at) {
        return actions(at, Action.Step.class)
                .filter(step -> step.times() == 1 && doesOnly(at, List.of(Action.Step.class)))
                .findFirst();
    }

    /** Whether a side has parried on an earlier count. */
    boolean parriedBefore(At at) {
        return turns().anyMatch(then -> then.side() == at.side()
                && then.step() < at.step()
                && parry(then).isPresent());
    }

    /** The first turn from there on that sends a point or an edge at somebody. */
    Optional<At> firstStrike() {
        return turns().filter(at -> strike(at).isPresent()).findFirst();
    }

    Optional<At> firstAttack() {
        return turns().filter(this::attacks).findFirst();
    }
}
