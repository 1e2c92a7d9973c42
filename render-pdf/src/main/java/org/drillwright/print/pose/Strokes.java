package org.drillwright.print.pose;

import static org.drillwright.notation.Action.Displacement.HAND;
import static org.drillwright.notation.Action.Displacement.UNSTATED;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action.Displacement;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.notation.Target;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Body;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.Hold;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;
import org.drillwright.print.pose.body.Posture;
import org.drillwright.print.pose.body.RearHand;

/** Poses a stroke at its end: who makes it, who meets it, and how they meet. */
final class Strokes {

    /** How much higher than in a thrust the hand is that binds, in metres. */
    private static final double BINDS = 0.30;

    /** How far up a hand goes from where it is, in metres, the least first. */
    private static final double[] ASIDE = {0, -0.06, 0.06, -0.12, 0.12, -0.18, 0.18, -0.24};

    /** How far a blade turns from where it is, in degrees, the least first. */
    private static final int[] TURNED = {0, -10, 10, -20, 20, -30, 30, -40, 40};

    private final Stands stands;
    private final Scene scene;
    private final Stroke stroke;
    private final Camera camera;

    /** The two, who makes the stroke first, and how they meet. */
    record Met(PosedBody attacker, PosedBody defender, Meeting meeting) {}

    Strokes(Scene scene, Stroke stroke, Camera camera) {
        this.stands = new Stands(scene);
        this.scene = scene;
        this.stroke = stroke;
        this.camera = camera;
    }

    Met meet(Stand attacker, Stand defender) {
        Optional<Line> line = stroke.threat().line().value().or(this::byTarget);
        if (line.isEmpty() || !attacker.known() || !defender.known() || stands.length() == 0) {
            return notKnown(attacker, defender);
        }
        return meet(evaded(attacker), defender, line.get());
    }

    /** Where only a part of the body is told: the height of a line is enough, for the part itself is what is drawn. */
    private Optional<Line> byTarget() {
        return stroke.at()
                .filter(at -> at != Target.MARK && at != Target.BACK)
                .map(at -> at.isOfTheArm()
                        ? Line.ARM
                        : at.isBelowTheHip() || at == Target.BELLY ? Line.LOW_INSIDE : Line.HIGH_INSIDE);
    }

    /** Who strikes out of an evasion, told where it goes. */
    private Stand evaded(Stand attacker) {
        return scene.displaced(attacker.side())
                .filter(how -> how != UNSTATED)
                .map(how -> evading(attacker))
                .orElse(attacker);
    }

    private Met meet(Stand attacker, Stand defender, Line line) {
        AttackEnd end = stroke.threat().end();
        if (end instanceof AttackEnd.Parried parried) {
            return parried(attacker, defender, line, parried.by().or(stroke::parry));
        }
        if (arrives(end)) {
            return landed(attacker, stopped(defender), line);
        }
        if (end instanceof AttackEnd.FallsShort) {
            return reaching(attacker, defender, defender, line, Reach.SHORT);
        }
        if (end instanceof AttackEnd.Evaded) {
            return reaching(attacker, defender, evading(defender), line, Reach.EVADED);
        }
        if (end instanceof AttackEnd.Unknown) {
            return reaching(attacker, defender, defender, line, Reach.UNKNOWN);
        }
        return reaching(attacker, defender, defender, line, Reach.THREAT);
    }

    static boolean arrives(AttackEnd end) {
        return end instanceof AttackEnd.Received
                || end instanceof AttackEnd.NotMet
                || end instanceof AttackEnd.PastTheParry;
    }

    private Met notKnown(Stand attacker, Stand defender) {
        PosedBody strikes = unknown(attacker);
        Optional<Hold> hold = stands.hold(defender).filter(one -> defender.known() && stands.length() > 0);
        PosedBody other = hold.map(
                        one -> new BladePlay(stands.length(), camera).free(new BladePlay.Armed(defender, one), strikes))
                .orElseGet(() -> stands.idle(defender));
        return new Met(strikes, other, new Meeting.NotKnown(stroke.by()));
    }

    /** The arm of a stroke of which it is not known where it goes. */
    private PosedBody unknown(Stand attacker) {
        return attacker.known()
                ? attacker.with(Optional.empty(), Optional.empty())
                : attacker.holding(Holds.HANGING, 0);
    }

    /** Who is stopped in an attack has lunged half-way. */
    private Stand stopped(Stand defender) {
        boolean stops = stroke.threat().attack().role().stops();
        return stops && defender.posture().equals(Posture.LUNGE) ? defender.in(Posture.HALF_LUNGE) : defender;
    }

    /** Where who takes the target away is with it, if the feet have not done it already. */
    private Stand evading(Stand evader) {
        boolean stays = evader.posture().equals(Posture.ON_GUARD) && !stands.goesBack(evader.side());
        return stays ? displaced(evader, scene.displaced(evader.side()).orElse(UNSTATED)) : evader;
    }

    /** Where it is not said: a leg that is aimed at goes back, else the body as far as the feet let it. */
    private Stand displaced(Stand evader, Displacement how) {
        return switch (how) {
            case DUCKED -> evader.in(Posture.DUCKED).with(RearHand.TO_THE_FLOOR);
            case ASIDE -> evader.in(Posture.ASIDE);
            case BACK -> evader.in(Posture.DRAWN_BACK);
            case LEG -> evader.in(Posture.LEG_WITHDRAWN);
            case HAND -> evader;
            case UNSTATED ->
                evader.in(
                        stroke.at().filter(Target::isBelowTheHip).isPresent()
                                ? Posture.LEG_WITHDRAWN
                                : Posture.DRAWN_BACK);
        };
    }

    private Met parried(Stand attacker, Stand defender, Line line, Optional<Position> position) {
        if (position.isEmpty()) {
            return new Met(
                    unknown(attacker),
                    defender.with(Optional.empty(), Optional.empty()),
                    new Meeting.NotKnown(stroke.by()));
        }
        Hold hold = Holds.parry(scene.weapon(), position.get());
        Place place = onTheArm(line)
                ? TargetPoints.arm(defender.body().swordArm(defender.body().wrist(hold)), 0.45)
                : new TargetPoints(defender.body(), camera).of(line);
        Parrying.Carried carried = stroke.cut()
                ? cut().parried(attacker, defender.holding(hold, stands.length()), position.get(), line == Line.HEAD)
                : new Parrying(scene.weapon(), position.get(), place, camera).carry(attacker, defender);
        return new Met(
                carried.attacker(), carried.defender(), new Meeting.Parried(stroke.by(), place, carried.crossing()));
    }

    private Cut cut() {
        return new Cut(stands.length(), camera);
    }

    private Met landed(Stand attacker, Stand defender, Line line) {
        Optional<Hold> hold = hit(defender, line);
        Place place = place(defender, line, hold);
        PosedBody arrives = stroke.cut()
                ? cut().land(attacker, place, line == Line.HEAD)
                : new Thrust(scene.weapon(), place.seen(), stroke.bound() ? BINDS : 0).land(attacker);
        if (hold.isEmpty()) {
            return new Met(
                    arrives,
                    defender.with(Optional.empty(), Optional.empty()),
                    new Meeting.Landed(stroke.by(), place, Optional.empty()));
        }
        BladePlay play = new BladePlay(stands.length(), camera);
        BladePlay.Armed armed = new BladePlay.Armed(defender, hold.get());
        if (stroke.held()) {
            return held(arrives, play, armed, place);
        }
        PosedBody passive =
                onTheArm(line) ? defender.holding(hold.get(), stands.length()) : play.passive(armed, arrives);
        return new Met(arrives, passive, new Meeting.Landed(stroke.by(), place, Optional.empty()));
    }

    /** The other's blade is held out by the one that arrives: it crosses a quarter of the way from its bell. */
    private Met held(PosedBody arrives, BladePlay play, BladePlay.Armed armed, Place place) {
        Blade blade = arrives.blade().orElseThrow();
        Point contact = blade.at(0.25);
        PosedBody defender = play.through(armed, contact.plus(Point.UP.times(Parrying.THICKNESS)));
        Point at = defender.blade().orElseThrow().bell().towards(contact, 1);
        Side nearer = camera.depth(at) < camera.depth(contact) ? defender.side() : arrives.side();
        return new Met(
                arrives, defender, new Meeting.Landed(stroke.by(), place, Optional.of(new Crossing(contact, nearer))));
    }

    /** How the one holds the weapon who is hit. */
    private Optional<Hold> hit(Stand defender, Line line) {
        if (stroke.threat().attack().role().stops()) {
            return Optional.of(Holds.STOPPED);
        }
        Optional<Hold> parry = stroke.parry().map(position -> Holds.parry(scene.weapon(), position));
        if (parry.isPresent() || onTheArm(line)) {
            return parry.or(() -> stands.hold(defender));
        }
        boolean low = line.height().map(Height.LOW::equals).orElse(line != Line.HEAD);
        return scene.moment().of(defender.side()).covers().isKnown()
                ? Optional.of(low ? Holds.GIVES_LOW : Holds.GIVES_HIGH)
                : stands.hold(defender);
    }

    private boolean onTheArm(Line line) {
        return line == Line.ARM || stroke.at().filter(Target::isOfTheArm).isPresent();
    }

    /** Where it goes on the body of one who stands so, the arm as in a hold. */
    private Place place(Stand defender, Line line, Optional<Hold> hold) {
        Body body = defender.body();
        TargetPoints places = new TargetPoints(body, camera);
        if (onTheArm(line) && hold.isPresent()) {
            boolean hand = stroke.at()
                    .filter(at -> at == Target.HAND || at == Target.WRIST)
                    .isPresent();
            return TargetPoints.arm(body.swordArm(body.wrist(hold.get())), hand ? 0.08 : 0.45);
        }
        boolean told = stroke.threat().line().isKnown();
        return stroke.at()
                .filter(at -> at.isBelowTheHip() || !told)
                .map(places::of)
                .orElseGet(() -> places.of(line));
    }

    private enum Reach {
        SHORT,
        EVADED,
        THREAT,
        UNKNOWN
    }

    /** Arm and blade straight on the way to where the target was, and not there. */
    private Met reaching(Stand attacker, Stand before, Stand defender, Line line, Reach reach) {
        Place place = place(before, line, stands.hold(before));
        PosedBody threatens =
                stroke.cut() ? raised(attacker, place) : new Thrust(scene.weapon(), place.seen(), 0).threaten(attacker);
        Point tip = threatens.blade().orElseThrow().tip();
        Meeting meeting = switch (reach) {
            case SHORT -> new Meeting.FallsShort(stroke.by(), tip, place);
            case EVADED -> new Meeting.Evaded(stroke.by(), tip, place, stands.idle(before));
            case THREAT -> new Meeting.Threatens(stroke.by(), tip, place);
            case UNKNOWN -> new Meeting.NotKnown(stroke.by());
        };
        boolean misses = reach == Reach.SHORT || reach == Reach.EVADED;
        PosedBody faces =
                misses ? clearing(defender, threatens, Blade.straight(tip, place.seen())) : facing(defender, threatens);
        return new Met(threatens, faces, meeting);
    }

    /** The edge on its way: arm out, the blade still over the line to the target. */
    private PosedBody raised(Stand attacker, Place place) {
        Body body = attacker.body();
        Point shoulder = body.swordShoulder();
        Point wrist = shoulder.towards(place.seen(), 0.5 / shoulder.distance(place.seen()));
        Point along = place.seen().minus(wrist).unit();
        return attacker.with(wrist, along.plus(Point.UP.times(0.5)).unit(), stands.length());
    }

    private Optional<Hold> answering(Stand defender) {
        if (scene.displaced(defender.side()).filter(HAND::equals).isPresent()) {
            return Optional.of(Holds.WITHDRAWN);
        }
        return stroke.parry()
                .map(position -> Holds.parry(scene.weapon(), position))
                .or(() -> stands.hold(defender));
    }

    private PosedBody facing(Stand defender, PosedBody attacker) {
        BladePlay play = new BladePlay(stands.length(), camera);
        return answering(defender)
                .map(one -> play.passive(new BladePlay.Armed(defender, one), attacker))
                .orElseGet(() -> stands.idle(defender));
    }

    /**
     * The hand so much lower or higher as leaves the way free that the point had still to go, or else nobody would see that
     * it is not there.
     */
    private PosedBody clearing(Stand defender, PosedBody attacker, Blade rest) {
        BladePlay play = new BladePlay(stands.length(), camera);
        Optional<Hold> hold = answering(defender);
        if (hold.isEmpty()) {
            return facing(defender, attacker);
        }
        for (double moved : ASIDE) {
            for (int turned : TURNED) {
                Hold aside = hold.get().moved(0, 0, moved).turned(turned, 0);
                PosedBody person = play.passive(new BladePlay.Armed(defender, aside), attacker);
                if (leaves(person, rest) && clear(person, attacker)) {
                    return person;
                }
            }
        }
        return facing(defender, attacker);
    }

    private boolean leaves(PosedBody person, Blade rest) {
        Blade blade = person.blade().orElseThrow();
        Blade hand = Blade.straight(person.swordArm().orElseThrow().wrist(), blade.bell());
        return BladePlay.between(camera, hand, rest) >= BladePlay.BETWEEN;
    }

    private boolean clear(PosedBody person, PosedBody other) {
        return BladePlay.between(
                        camera, person.blade().orElseThrow(), other.blade().orElseThrow())
                >= BladePlay.BETWEEN;
    }
}
