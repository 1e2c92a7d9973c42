package org.drillwright.print.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.phrase.Feet;
import org.drillwright.phrase.Fencer;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;

/**
 * Draws one of the two from above: both feet, the head over them, and the blade. The leader's head is black, the
 * follower's white. Where the feet are not known, a question mark stands for the person.
 */
final class PersonSketch {

    static final String BLADE = "blade";

    private static final double SHOE = 14;
    private static final double SOLE = 6;
    private static final double HEAD = 6.4;

    private final Pad pad;
    private final double toe;

    /** 1 for who looks to the right, −1 for who looks to the left. */
    private final int ahead;

    private final boolean black;
    private final List<Mark> marks = new ArrayList<>();

    private PersonSketch(Pad pad, double toe, int ahead, boolean black) {
        this.pad = pad;
        this.toe = toe;
        this.ahead = ahead;
        this.black = black;
    }

    static List<Mark> leader(Fencer fencer, double toe, Pad pad) {
        return new PersonSketch(pad, toe, 1, true).draw(fencer);
    }

    static List<Mark> follower(Fencer fencer, double toe, Pad pad) {
        return new PersonSketch(pad, toe, -1, false).draw(fencer);
    }

    private List<Mark> draw(Fencer fencer) {
        Optional<Feet> feet = fencer.feet().value();
        if (feet.isEmpty()) {
            List<Mark> unknown = List.of(pad.ring(at(9), 0, 10, 1.6), pad.question(at(9), 0, 13));
            return List.of(new Mark.Named(TargetSketch.UNKNOWN, unknown));
        }
        blade(fencer, feet.get());
        feet(feet.get());
        head(feet.get());
        return marks;
    }

    private void feet(Feet feet) {
        List<Mark> shoes = new ArrayList<>();
        if (feet == Feet.STANDING) {
            shoes.add(along(SHOE, 0, -6.5));
            shoes.add(along(SHOE, 0, 6.5));
        } else {
            double depth = Ground.depth(feet);
            shoes.add(along(SHOE, 0, 0));
            double heel = at(depth - SOLE / 2);
            shoes.add(pad.line(heel, ahead * SOLE / 2, heel, -ahead * (SHOE - SOLE / 2), SOLE));
        }
        marks.add(new Mark.Named(feet.name().toLowerCase(Locale.ROOT).replace('_', ' '), shoes));
    }

    /** A shoe that points to the partner, its toe so far behind the front. */
    private Mark along(double length, double behind, double aside) {
        double from = at(behind);
        double to = at(behind + length);
        return pad.line(from, aside, to, aside, SOLE);
    }

    private void head(Feet feet) {
        double behind = switch (feet) {
            case STANDING -> SHOE / 2;
            case ON_GUARD -> Ground.STANCE * 0.58;
            case LUNGED -> Ground.STANCE * 0.85;
        };
        double x = at(behind);
        marks.add(new Mark.Named(
                black ? "leader" : "follower",
                List.of(
                        pad.disc(x, 0, HEAD + 1, Ink.WHITE),
                        black ? pad.disc(x, 0, HEAD, Ink.BLACK) : pad.ring(x, 0, HEAD - 1.3, 2.6))));
    }

    /** From the hand, on the side of a right-hander's arm; drawn only where it is known how the arm is. */
    private void blade(Fencer fencer, Feet feet) {
        Optional<Boolean> extended = fencer.extended().value();
        if (feet == Feet.STANDING || extended.isEmpty()) {
            return;
        }
        double aside = 9.5 * ahead;
        double hand = extended.get() ? -2 : 3;
        double tip = extended.get() ? -Ground.REACH : -7;
        marks.add(new Mark.Named(
                BLADE,
                List.of(
                        pad.line(at(Ground.STANCE * 0.5), aside * 0.5, at(hand), aside, 3.4),
                        pad.line(at(hand), aside, at(tip), extended.get() ? aside * 0.3 : aside * 1.1, 1.9))));
    }

    /** So far behind the front of the front foot. */
    private double at(double behind) {
        return toe - ahead * behind;
    }
}
