package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Target;
import org.drillwright.notation.Width;

/** Tells into which line of the partner a stroke goes: from its words, its path, and where the point stands. */
final class Sighting {

    private final State state;
    private final Setting setting;
    private final Side by;
    private final Action.Strike strike;

    Sighting(State state, Setting setting, Side by, Action.Strike strike) {
        this.state = state;
        this.setting = setting;
        this.by = by;
        this.strike = strike;
    }

    /** The line it arrives in. */
    Fact<Line> line() {
        if (goesRoundTheGuard()) {
            return Fact.unknown(Fact.HERE);
        }
        Aim aim = strike.aim();
        Optional<Line> said = setting.isSabre() ? sabreLine(aim) : thrustLine(aim);
        if (said.isPresent()) {
            return Fact.of(said.get());
        }
        Fact<Line> expected = expected();
        if (!agrees(expected, aim)) {
            return Fact.unknown(Fact.HERE);
        }
        return expected.map(line -> choosesSide(line) ? Mirror.otherSide(line) : line);
    }

    /**
     * A straight thrust, or an arm that only goes out, which names no side goes past the guard, not into it, where no contact
     * ties it to a side: both lines of a height are never closed at once (Warford 1884, p. 12, 20).
     */
    private boolean choosesSide(Line line) {
        boolean bare = strike.role() == Role.EXTENSION && !strike.aim().isStated();
        boolean thrust = strike.path() == Path.DIRECT
                && strike.role() != Role.RIPOSTE
                && strike.role() != Role.COUNTER_RIPOSTE
                && height(strike.aim()).isPresent();
        boolean free = (bare || thrust)
                && width(strike.aim()).isEmpty()
                && state.engagement().is(Optional.empty())
                && !isExtended()
                && !setting.isSabre();
        return free
                && new ClosedLines(state, setting, by.other())
                        .closing(line, strike)
                        .isPresent();
    }

    /** A thrust reaches an arm round any guard, over it, under it or beside it, unless the words say where. */
    private boolean goesRoundTheGuard() {
        boolean arm = strike.aim().target().map(Target::isOfTheArm).orElse(false);
        return arm && strike.aim().height().isEmpty() && !setting.isSabre();
    }

    private boolean agrees(Fact<Line> expected, Aim aim) {
        if (expected.value().isEmpty()) {
            return true;
        }
        Line line = expected.value().get();
        Optional<Height> height = height(aim);
        Optional<Width> width = width(aim);
        return (height.isEmpty() || height.equals(line.height())) && (width.isEmpty() || width.equals(line.width()));
    }

    /** The line that the words name. */
    private Optional<Line> thrustLine(Aim aim) {
        Optional<Height> height = height(aim);
        Optional<Width> width = width(aim);
        return height.flatMap(high -> width.map(wide -> Line.of(high, wide)));
    }

    /** The height at which it arrives, as far as the words tell. */
    Optional<Height> height() {
        return setting.isSabre() || goesRoundTheGuard() ? Optional.empty() : height(strike.aim());
    }

    private Optional<Height> height(Aim aim) {
        return aim.height().or(() -> aim.target().flatMap(Sighting::heightOf));
    }

    private Optional<Width> width(Aim aim) {
        return aim.width().or(() -> aim.target().flatMap(this::widthOf));
    }

    /** From the parts of the body: common practice, no source; the flank's line after L'Abbat IX. */
    static Optional<Height> heightOf(Target target) {
        return switch (target) {
            case HEAD, CHEEK, CHEST, SHOULDER, INSIDE_CHEEK, OUTSIDE_CHEEK -> Optional.of(Height.HIGH);
            case FLANK, BELLY, THIGH, KNEE, LEG, FOOT -> Optional.of(Height.LOW);
            case BACK, BODY, HAND, WRIST, FOREARM, ELBOW, MARK -> Optional.empty();
        };
    }

    private Optional<Width> widthOf(Target target) {
        return switch (target) {
            case INSIDE_CHEEK -> Optional.of(Width.INSIDE);
            case OUTSIDE_CHEEK, FLANK, SHOULDER -> Optional.of(Width.OUTSIDE);
            default -> Optional.empty();
        };
    }

    private static Optional<Line> sabreLine(Aim aim) {
        Optional<Line> byTarget = aim.target().flatMap(Sighting::sabreLine);
        Optional<Line> byWidth = aim.width().map(width -> width == Width.INSIDE ? Line.INSIDE : Line.OUTSIDE);
        return byTarget.or(() -> byWidth);
    }

    private static Optional<Line> sabreLine(Target target) {
        return switch (target) {
            case HEAD -> Optional.of(Line.HEAD);
            case INSIDE_CHEEK, CHEST, BELLY -> Optional.of(Line.INSIDE);
            case OUTSIDE_CHEEK, FLANK, SHOULDER, BACK -> Optional.of(Line.OUTSIDE);
            case HAND, WRIST, FOREARM, ELBOW -> Optional.of(Line.ARM);
            case CHEEK, BODY, THIGH, KNEE, LEG, FOOT, MARK -> Optional.empty();
        };
    }

    /** The line that the path leads to, from where the point stands now. */
    Fact<Line> expected() {
        if (setting.isSabre()) {
            return strike.path() == Path.DIRECT && strike.aim().isStated() ? Fact.unknown(Fact.HERE) : threatened();
        }
        boolean riposte = strike.role() == Role.RIPOSTE || strike.role() == Role.COUNTER_RIPOSTE;
        return switch (strike.path()) {
            case DISENGAGE, CUT_OVER -> from().map(Mirror::otherSide);
            case COUNTER_DISENGAGE -> left();
            case ONE_TWO -> isExtended() ? from().map(Mirror::otherSide) : from();
            case DOUBLE -> isExtended() ? from() : from().map(Mirror::otherSide);
            case GLIDE -> contact();
            case DIRECT -> riposte ? straightRiposte() : from();
            case DECEIVE -> Fact.unknown(Fact.HERE);
            case UNSTATED -> riposte ? straightRiposte() : threatened();
        };
    }

    private boolean isExtended() {
        return state.of(by).extended().is(true)
                && state.of(by).point().value().flatMap(line -> line).isPresent();
    }

    /** The line that the point already threatens. */
    private Fact<Line> threatened() {
        return state.of(by).point().flatMap(line -> line, Fact.HERE);
    }

    /** The line of the partner before which the point stands: threatened, in contact, or before one's own guard. */
    Fact<Line> from() {
        Fencer fencer = state.of(by);
        if (!fencer.extended().isKnown()) {
            return Fact.unknown(fencer.extended().since());
        }
        boolean pointUnknown = fencer.extended().is(true) && !fencer.point().isKnown();
        if (isExtended() || pointUnknown) {
            return threatened();
        }
        if (state.engagement().value().isEmpty()) {
            return Fact.unknown(state.engagement().since());
        }
        if (state.engagement().value().get().isPresent()) {
            return contact();
        }
        return state.of(by).hand().flatMap(position -> setting.lineOf(position).map(setting::across), Where.GUARD);
    }

    private Fact<Line> contact() {
        return state.engagement().flatMap(blades -> blades.map(one -> one.lineOf(by.other())), Where.BLADES);
    }

    private Fact<Line> left() {
        return state.changed()
                .filter(change -> change.by() != by)
                .map(change -> change.left().flatMap(blades -> blades.map(one -> one.lineOf(by.other())), Where.BLADES))
                .orElseGet(() -> Fact.unknown(Where.BLADES));
    }

    /** A straight riposte stays in the line of the parry (Technical Rules t.11.1), seen from the other body. */
    private Fact<Line> straightRiposte() {
        return state.parried()
                .flatMap(
                        parry -> parry.filter(one -> one.by() == by)
                                .flatMap(Parried::position)
                                .flatMap(setting::lineOf)
                                .map(setting::across),
                        Where.PARRY);
    }

    /** A target that the weapon's rules leave out (t.77, t.97). */
    Optional<Target> offTarget() {
        return strike.aim().target().filter(target -> switch (setting.weapon()) {
            case SABRE -> target.isBelowTheHip();
            case FOIL -> target.isBelowTheHip() || target.isOfTheArm() || target == Target.HEAD;
            case EPEE, NONE -> false;
        });
    }

    /** Whether neither guard nor parry of the table is meant for it. */
    boolean isBeyondTable() {
        return offTarget().isPresent() || goesRoundTheGuard();
    }

    /**
     * The greatest measure from which it arrives: hand and forearm are one foot action nearer, at épée always, at sabre where the
     * arm is out (Waite 1880, p. 53, 75: who cuts at the wrist that comes stays out of reach).
     */
    int reach() {
        boolean near = setting.weapon() == Weapon.EPEE
                || (setting.isSabre() && !state.of(by.other()).extended().is(false));
        return near && isAtArm() ? 1 : 0;
    }

    /** Whether it hangs on the partner's arm from how far it arrives. */
    boolean reachesAnArmThatIsOut() {
        return setting.isSabre() && isAtArm();
    }

    private boolean isAtArm() {
        return strike.aim().target().map(Target::isOfTheArm).orElse(false);
    }
}
