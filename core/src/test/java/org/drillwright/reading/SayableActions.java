package org.drillwright.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Contact;
import org.drillwright.notation.Action.Depth;
import org.drillwright.notation.Action.Displacement;
import org.drillwright.notation.Action.Foot;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Reply;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Action.Way;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Height;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;
import org.drillwright.notation.Target;
import org.drillwright.notation.Width;

/** The actions that can be meant, each kind with what can be said of it. */
final class SayableActions {

    /** Of all strokes that differ in role, path, aim and manner one in so many is taken, to keep the test short. */
    private static final int ONE_IN = 37;

    private final List<Action> all = new ArrayList<>();

    private SayableActions() {}

    static List<Action> all() {
        SayableActions actions = new SayableActions();
        actions.feet();
        actions.stances();
        actions.strokes();
        actions.parries();
        actions.blades();
        actions.others();
        return actions.all;
    }

    private void feet() {
        for (Foot foot : Foot.values()) {
            for (int times = 1; times <= 4; times++) {
                all.add(new Action.Step(foot, times));
            }
        }
        for (Depth depth : List.of(Depth.FULL, Depth.HALF, Depth.FLECHE)) {
            aims().forEach(aim -> all.add(new Action.Lunge(depth, aim)));
        }
        all.add(new Action.Withdraw());
        all.add(new Action.Stand());
        for (Displacement how : Displacement.values()) {
            all.add(new Action.Evade(how));
        }
    }

    private void stances() {
        for (Stance stance : allStances()) {
            all.add(new Action.OnGuard(stance));
            all.add(new Action.Recover(Way.BACK, stance));
            all.add(new Action.Recover(Way.FORWARD, stance));
            all.add(new Action.Answer(Reply.HOLD, stance));
            all.add(new Action.Answer(Reply.WAIT, stance));
        }
    }

    private static List<Stance> allStances() {
        List<Stance> stances = new ArrayList<>(List.of(Stance.UNSTATED));
        stances.add(new Stance(Optional.empty(), Optional.of(true), Optional.empty()));
        stances.add(new Stance(Optional.empty(), Optional.of(false), Optional.empty()));
        for (Position position : Position.values()) {
            Optional<Position> guard = Optional.of(position);
            stances.add(new Stance(guard, Optional.empty(), Optional.empty()));
            stances.add(new Stance(guard, Optional.of(false), Optional.empty()));
            stances.add(new Stance(guard, Optional.of(true), guard));
        }
        return stances;
    }

    private void strokes() {
        List<Action> strokes = new ArrayList<>();
        for (Role role : Role.values()) {
            for (Path path : role == Role.EXTENSION ? List.of(Path.DIRECT) : List.of(Path.values())) {
                Stream.concat(aims().stream(), placesInLines().stream())
                        .forEach(aim -> strokes.addAll(strokes(role, path, aim)));
            }
        }
        for (int at = 0; at < strokes.size(); at += ONE_IN) {
            all.add(strokes.get(at));
        }
    }

    /** An edge cuts straight; only an attack is a feint or false; who deceives a parry does not oppose. */
    private static List<Action> strokes(Role role, Path path, Aim aim) {
        List<Action> strokes = new ArrayList<>();
        strokes.add(new Action.Strike(role, path, aim, false, false, false, false));
        if (role != Role.EXTENSION && path != Path.DECEIVE) {
            strokes.add(new Action.Strike(role, path, aim, false, false, false, true));
        }
        if (role != Role.EXTENSION && path == Path.DIRECT) {
            strokes.add(new Action.Strike(role, path, aim, true, false, false, false));
        }
        if (role == Role.ATTACK && path != Path.DECEIVE) {
            strokes.add(new Action.Strike(role, path, aim, false, true, false, false));
            strokes.add(new Action.Strike(role, path, aim, false, false, true, false));
        }
        return strokes;
    }

    private void parries() {
        for (ParryKind kind : ParryKind.values()) {
            for (Optional<Position> position : positions()) {
                all.add(new Action.Parry(position, kind, Aim.UNSTATED, false));
                all.add(new Action.Parry(position, kind, Aim.UNSTATED, true));
            }
        }
        aims().stream()
                .filter(Aim::isStated)
                .forEach(aim -> all.add(new Action.Parry(Optional.empty(), ParryKind.UNSTATED, aim, false)));
        for (Position position : Position.values()) {
            all.add(new Action.Place(position, false));
            all.add(new Action.Place(position, true));
        }
    }

    private void blades() {
        for (Contact contact : Contact.values()) {
            all.add(new Action.OnBlade(contact, Optional.empty(), Aim.UNSTATED));
            if (contact != Contact.ABSENCE && contact != Contact.PRESS_BACK) {
                positions().stream()
                        .filter(Optional::isPresent)
                        .forEach(position -> all.add(new Action.OnBlade(contact, position, Aim.UNSTATED)));
            }
        }
        for (Contact contact : List.of(Contact.BIND, Contact.CROISE, Contact.ENVELOP, Contact.FROISSEMENT)) {
            lines().forEach(aim -> all.add(new Action.OnBlade(contact, Optional.empty(), aim)));
        }
    }

    private void others() {
        // A thing has no line that could be opened.
        aims().stream()
                .filter(aim -> aim.target().filter(Target.MARK::equals).isEmpty())
                .forEach(aim -> all.add(new Action.Invite(aim, Optional.empty())));
        for (Position position : Position.values()) {
            all.add(new Action.Invite(Aim.UNSTATED, Optional.of(position)));
        }
        all.add(new Action.Answer(Reply.RECEIVE, Stance.UNSTATED));
        all.add(new Action.Answer(Reply.YIELD, Stance.UNSTATED));
        all.add(new Action.Answer(Reply.FOLLOW, Stance.UNSTATED));
        all.add(new Action.Salute());
        all.add(new Action.Mask(true));
        all.add(new Action.Mask(false));
        for (Measure measure : Measure.values()) {
            all.add(new Action.State(Optional.of(measure), Stance.UNSTATED));
        }
        for (boolean engaged : new boolean[] {true, false}) {
            all.add(new Action.State(
                    Optional.empty(), new Stance(Optional.empty(), Optional.of(engaged), Optional.empty())));
        }
    }

    private static List<Optional<Position>> positions() {
        List<Optional<Position>> positions = new ArrayList<>(List.of(Optional.empty()));
        Arrays.stream(Position.values()).map(Optional::of).forEach(positions::add);
        return positions;
    }

    private static List<Aim> lines() {
        List<Aim> lines = new ArrayList<>();
        for (Optional<Height> height :
                List.of(Optional.<Height>empty(), Optional.of(Height.HIGH), Optional.of(Height.LOW))) {
            for (Optional<Width> width :
                    List.of(Optional.<Width>empty(), Optional.of(Width.INSIDE), Optional.of(Width.OUTSIDE))) {
                lines.add(new Aim(height, width, Optional.empty()));
            }
        }
        return lines;
    }

    private static List<Aim> aims() {
        List<Aim> aims = lines();
        for (Target target : Target.values()) {
            aims.add(new Aim(Optional.empty(), Optional.empty(), Optional.of(target)));
        }
        return aims;
    }

    /** A target and the line in which it is sought. */
    private static List<Aim> placesInLines() {
        return lines().stream()
                .filter(Aim::isStated)
                .flatMap(line -> Stream.of(Target.CHEST, Target.SHOULDER, Target.FLANK, Target.HAND)
                        .map(target -> new Aim(line.height(), line.width(), Optional.of(target))))
                .toList();
    }
}
