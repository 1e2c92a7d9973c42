package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;

/**
 * Everything that rules look at, between two actions. Immutable; each part may be unknown.
 *
 * @param measure the foot actions it takes to touch
 * @param engagement the contact of the blades, empty if they are apart
 * @param onLeader the attack under way at the leader, empty if there is none
 * @param onFollower the attack under way at the follower, empty if there is none
 * @param parried the parry that gives a right to riposte, empty if there is none
 * @param changed the contact that was left when a blade last went round to another line, for one who deceives that; empty
 *     once somebody has parried or come on guard since
 */
public record State(
        Fencer leader,
        Fencer follower,
        Range measure,
        Fact<Optional<Engagement>> engagement,
        Fact<Optional<Attack>> onLeader,
        Fact<Optional<Attack>> onFollower,
        Fact<Optional<Parried>> parried,
        Optional<Change> changed) {

    /**
     * A blade that went round to another line.
     *
     * @param by whose it was
     * @param left the contact before
     */
    public record Change(Side by, Fact<Optional<Engagement>> left) {}

    /** Both at attention, out of distance, blades apart. */
    public static State atAttention() {
        return new State(
                Fencer.atAttention(),
                Fencer.atAttention(),
                Range.of(Measure.OUT),
                Fact.of(Optional.empty()),
                Fact.of(Optional.empty()),
                Fact.of(Optional.empty()),
                Fact.of(Optional.empty()),
                Optional.empty());
    }

    public Fencer of(Side side) {
        return side == Side.LEADER ? leader : follower;
    }

    public Fact<Optional<Attack>> on(Side side) {
        return side == Side.LEADER ? onLeader : onFollower;
    }

    /** The attack under way at one side, if it is known that there is one. */
    public Optional<Attack> attackOn(Side side) {
        return on(side).value().flatMap(known -> known);
    }

    State with(Side side, Fencer fencer) {
        return side == Side.LEADER
                ? new State(fencer, follower, measure, engagement, onLeader, onFollower, parried, changed)
                : new State(leader, fencer, measure, engagement, onLeader, onFollower, parried, changed);
    }

    State with(Range now) {
        return new State(leader, follower, now, engagement, onLeader, onFollower, parried, changed);
    }

    State withEngagement(Fact<Optional<Engagement>> now) {
        return new State(leader, follower, measure, now, onLeader, onFollower, parried, changed);
    }

    State engaged(Engagement now) {
        return withEngagement(Fact.of(Optional.of(now)));
    }

    State apart() {
        return withEngagement(Fact.of(Optional.empty()));
    }

    State withAttackOn(Side side, Fact<Optional<Attack>> now) {
        return side == Side.LEADER
                ? new State(leader, follower, measure, engagement, now, onFollower, parried, changed)
                : new State(leader, follower, measure, engagement, onLeader, now, parried, changed);
    }

    State noAttackOn(Side side) {
        return withAttackOn(side, Fact.of(Optional.empty()));
    }

    State withParried(Fact<Optional<Parried>> now) {
        return new State(leader, follower, measure, engagement, onLeader, onFollower, now, changed);
    }

    /** The parry gives no right any more, if it was this side's. */
    State forgetParryBy(Side side) {
        boolean own = parried.value()
                .flatMap(known -> known)
                .filter(one -> one.by() == side)
                .isPresent();
        return own ? withParried(Fact.of(Optional.empty())) : this;
    }

    /** The hand of who has parried goes elsewhere with the blade; a delayed riposte goes out from there (Technical Rules t.11). */
    State ripostesFrom(Side side, Position position) {
        Optional<Parried> own = parried.value().flatMap(known -> known).filter(one -> one.by() == side);
        return own.map(one -> withParried(Fact.of(Optional.of(one.at(position)))))
                .orElse(this);
    }

    State withChange(Optional<Change> now) {
        return new State(leader, follower, measure, engagement, onLeader, onFollower, parried, now);
    }
}
