package org.drillwright.print.diagram.figure;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.Weapon;
import org.drillwright.print.diagram.curve.Dot;
import org.drillwright.print.diagram.curve.InkedArea;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.PosedBody;

/** A person from the hem of the jacket up, as the partner sees that one; white, so that signs stand out. */
public final class Bust {

    private static final int SAMPLES = 40;

    private final PosedBody person;
    private final Eye eye;
    private final Figure figure;

    /** @param gauge of the picture that this is a part of */
    public Bust(PosedBody person, Weapon weapon, double scale, Gauge gauge) {
        this.person = person;
        this.eye = new Eye(Camera.facing(person.ahead()), scale);
        this.figure = new Figure(person, weapon, eye, gauge, Tone.WHITE);
    }

    public Eye eye() {
        return eye;
    }

    /** Where the head ends on paper. */
    public double top() {
        return figure.top();
    }

    /** Where the jacket ends on paper. */
    public double bottom() {
        return figure.edge().stream().mapToDouble(Dot::y).max().orElseThrow();
    }

    /** Where it ends on the left and on the right, without the blade. */
    public Rectangle sides() {
        List<Mark> marks = new ArrayList<>(figure.bust());
        marks.addAll(figure.sword(0));
        return InkedArea.of(marks).box();
    }

    /** All of it that lies in a frame; a blade is cut where it would leave it. */
    public List<Mark> draw(Rectangle frame) {
        List<Mark> marks = new ArrayList<>(figure.bust());
        marks.addAll(
                figure.sword(person.blade().map(blade -> inside(blade, frame)).orElse(0.0)));
        return marks;
    }

    private double inside(Blade blade, Rectangle frame) {
        for (int at = 0; at <= SAMPLES; at++) {
            Dot dot = eye.see(blade.at(at / (double) SAMPLES));
            boolean in = dot.x() > frame.x() + 1 && dot.x() < frame.right() - 1;
            if (!in || dot.y() < frame.y() + 1 || dot.y() > frame.bottom() - 1) {
                return Math.max(0, (at - 1) / (double) SAMPLES);
            }
        }
        return 1;
    }
}
