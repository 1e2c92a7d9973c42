package org.drillwright.print.pose;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.print.pose.body.Going;
import org.drillwright.print.pose.body.PosedBody;

/** What lies between the poses of two counts, one after the other. */
public record Passage(Pose from, Pose to) {

    /**
     * The pose on the way, without strokes and what feet did. None where what stands how is not known at one of the ends,
     * or where other people stand there.
     *
     * @param share of the way, 0 to 1
     */
    public Optional<Pose> at(double share) {
        if (from instanceof Pose.Pair old && to instanceof Pose.Pair next) {
            return Going.between(old.leader(), next.leader(), share)
                    .flatMap(leader -> Going.between(old.follower(), next.follower(), share)
                            .map(follower -> pair(leader, follower)));
        }
        if (from instanceof Pose.Alone old && to instanceof Pose.Alone next) {
            return Going.between(old.person(), next.person(), share)
                    .map(person -> new Pose.Alone(
                            to.weapon(),
                            person,
                            old.pad().flatMap(foot -> next.pad().map(other -> foot.towards(other, share))),
                            Optional.empty(),
                            List.of(),
                            List.of()));
        }
        return Optional.empty();
    }

    private Pose pair(PosedBody leader, PosedBody follower) {
        double measure = follower.front().toe().x() - leader.front().toe().x();
        return new Pose.Pair(to.weapon(), leader, follower, measure, new Meeting.Apart(), List.of(), List.of());
    }

    /**
     * How far ahead of the leader the origin of the later pose lies from that of the earlier one, in metres: whoever did not
     * move the feet stands where that one stood.
     */
    public double shift() {
        Optional<Double> byLeader = shift(Side.LEADER);
        Optional<Double> byFollower = shift(Side.FOLLOWER);
        boolean leaderStands = byLeader.isPresent() && stands(Side.LEADER);
        boolean followerStands = byFollower.isPresent() && stands(Side.FOLLOWER);
        if (leaderStands && followerStands) {
            return (byLeader.get() + byFollower.get()) / 2;
        }
        return followerStands ? byFollower.get() : byLeader.or(() -> byFollower).orElse(0.0);
    }

    private boolean stands(Side side) {
        return to.feet().stream().noneMatch(move -> move.by() == side);
    }

    /** By one of them. */
    private Optional<Double> shift(Side side) {
        return toe(from, side).flatMap(before -> before(side).map(now -> before - now));
    }

    /** Where the front toe was, as the later pose counts. */
    private Optional<Double> before(Side side) {
        return to.feet().stream()
                .filter(move -> move.by() == side && !move.kind().ofTheRearFoot())
                .map(FootMove::from)
                .findFirst()
                .or(() -> toe(to, side));
    }

    private static Optional<Double> toe(Pose pose, Side side) {
        return people(pose).stream()
                .filter(person -> person.side() == side && person.feetKnown())
                .map(person -> person.front().toe().x())
                .findFirst();
    }

    private static List<PosedBody> people(Pose pose) {
        return pose instanceof Pose.Pair pair
                ? List.of(pair.leader(), pair.follower())
                : List.of(((Pose.Alone) pose).person());
    }
}
