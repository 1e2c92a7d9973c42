package org.drillwright.print.pose;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Engagement;
import org.drillwright.phrase.Range;
import org.drillwright.print.pose.BladePlay.Armed;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.Hold;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;

/** Poses those of a scene as the count left them. */
public final class Posing {

    /** A beaten blade goes up and out by so much, in degrees. */
    private static final double BEATEN_UP = 22;

    private static final double BEATEN_OUT = 10;

    /** Of the blade, from the bell: where it is beaten. */
    private static final double BEATEN_AT = 0.55;

    /** How far ahead of the front toe a pad hangs that a straight arm just reaches, in metres. */
    private static final double PAD = 1.20;

    private static final double PAD_HEIGHT = 1.25;

    private final Scene scene;
    private final Stands stands;
    private final Camera camera = Camera.oblique();

    private Posing(Scene scene) {
        this.scene = scene;
        this.stands = new Stands(scene);
    }

    /** Many drills of a school share their guards and their strokes, and a search takes milliseconds. */
    private static final RecentCache<Scene, Pose> LATELY = new RecentCache<>(1000);

    /** Who stands how at the end of the last stroke of a count, or at its end if there was none. */
    public static Pose of(Scene scene) {
        Scene visible = Visible.of(scene);
        return LATELY.of(visible, () -> {
            Posing posing = new Posing(visible);
            return visible.partner() ? posing.pair() : posing.alone();
        });
    }

    private Pose alone() {
        Stand stand = stands.of(Side.FOLLOWER, 0);
        Range measure = scene.moment().measure();
        double away = PAD + Distance.of(measure, false) - Distance.EXTENSION;
        Point mark = new Point(-away, 0, PAD_HEIGHT);
        boolean thrusts = scene.moment().follower().extended().is(true) && stand.known() && stands.length() > 0;
        boolean hits = thrusts && scene.mark() && measure.equals(Range.exactly(0));
        Thrust thrust = new Thrust(scene.weapon(), mark, 0);
        PosedBody person = !thrusts ? stands.idle(stand) : hits ? thrust.land(stand) : thrust.threaten(stand);
        return new Pose.Alone(
                scene.weapon(),
                person,
                scene.mark() ? Optional.of(new Point(-away, 0, 0)) : Optional.empty(),
                hits ? Optional.of(mark) : Optional.empty(),
                List.of(),
                new Moved(List.of(person)).feet(scene.feet()));
    }

    private Pose pair() {
        double measure = distance();
        Stand leader = stands.of(Side.LEADER, -measure / 2);
        Stand follower = stands.of(Side.FOLLOWER, measure / 2);
        return scene.stroke()
                .map(stroke -> stroke(stroke, leader, follower))
                .orElseGet(() -> standing(leader, follower));
    }

    private double distance() {
        Range measure = scene.moment().measure();
        Optional<Threat> met = scene.stroke().map(Stroke::threat).filter(Posing::meets);
        boolean touching =
                scene.moment().engagement().value().flatMap(one -> one).isPresent();
        return met.map(threat -> Distance.ofMeeting(measure, threat.attack().reach()))
                .orElseGet(() -> Distance.of(measure, touching));
    }

    private static boolean meets(Threat threat) {
        AttackEnd end = threat.end();
        return end instanceof AttackEnd.Parried || Strokes.arrives(end);
    }

    private Pose stroke(Stroke stroke, Stand leader, Stand follower) {
        boolean leads = stroke.by() == Side.LEADER;
        Strokes.Met met = new Strokes(scene, stroke, camera).meet(leads ? leader : follower, leads ? follower : leader);
        boolean round =
                scene.at(stroke.by().other()).filter(Aimed::carriedRound).isPresent();
        List<Trajectory> ways = met.meeting() instanceof Meeting.NotKnown
                ? List.of()
                : Trajectories.of(stroke, met.attacker(), met.defender(), guard(leads ? follower : leader, met), round);
        return pair(
                leads ? met.attacker() : met.defender(), leads ? met.defender() : met.attacker(), met.meeting(), ways);
    }

    /** The blade that a stroke went round: in the parry, or in the guard that it came through. */
    private Blade guard(Stand defender, Strokes.Met met) {
        if (met.meeting() instanceof Meeting.Parried) {
            return met.defender().blade().orElseThrow();
        }
        Position hand = scene.moment().of(defender.side()).hand().value().orElse(Position.SIXTE);
        return defender.holding(Holds.guard(scene.weapon(), hand), stands.length())
                .blade()
                .orElseThrow();
    }

    private Pose pair(PosedBody leader, PosedBody follower, Meeting meeting, List<Trajectory> ways) {
        double measure = follower.front().toe().x() - leader.front().toe().x();
        List<FootMove> feet = new Moved(List.of(leader, follower)).feet(scene.feet());
        return new Pose.Pair(scene.weapon(), leader, follower, measure, meeting, ways, feet);
    }

    private Pose standing(Stand leader, Stand follower) {
        Optional<Hold> first = stands.hold(leader);
        Optional<Hold> second = stands.hold(follower);
        boolean armed = stands.length() > 0 && leader.known() && follower.known();
        if (!armed || first.isEmpty() || second.isEmpty()) {
            return pair(stands.idle(leader), stands.idle(follower), new Meeting.Apart(), List.of());
        }
        Armed one = new Armed(leader, first.get());
        Armed other = new Armed(follower, second.get());
        BladePlay play = new BladePlay(stands.length(), camera);
        for (Side side : Side.values()) {
            if (scene.gesture(side).filter(Gesture.BEAT::equals).isPresent()) {
                return beaten(play, one, other, side);
            }
        }
        Optional<Engagement> contact = scene.moment().engagement().value().flatMap(known -> known);
        if (contact.isPresent()) {
            return engaged(play, one, other, contact.get().leader());
        }
        List<PosedBody> apart = play.apart(one, other);
        return pair(apart.get(0), apart.get(1), new Meeting.Apart(), List.of());
    }

    private Pose engaged(BladePlay play, Armed leader, Armed follower, Line line) {
        List<PosedBody> both = play.engaged(leader, follower, line);
        Crossing crossing = play.crossing(both.get(0), both.get(1));
        return pair(both.get(0), both.get(1), new Meeting.Engaged(crossing), List.of());
    }

    /** The one blade has just met the other and driven it up and out. */
    private Pose beaten(BladePlay play, Armed leader, Armed follower, Side by) {
        boolean leads = by == Side.LEADER;
        Armed beats = leads ? leader : follower;
        Armed other = leads ? follower : leader;
        Blade before =
                other.stand().holding(other.hold(), stands.length()).blade().orElseThrow();
        Point contact = before.bell().towards(before.tip(), BEATEN_AT);
        PosedBody after = other.stand().holding(other.hold().turned(BEATEN_UP, BEATEN_OUT), stands.length());
        PosedBody hits = play.through(beats, contact);
        Crossing at = new Crossing(contact, by);
        return pair(leads ? hits : after, leads ? after : hits, new Meeting.Beaten(by, at, before), List.of());
    }
}
