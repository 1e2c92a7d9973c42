package org.drillwright.print.diagram;

import java.util.List;
import org.drillwright.print.diagram.curve.InkedArea;
import org.drillwright.print.diagram.figure.Gauge;
import org.drillwright.print.diagram.stage.LegendSign;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Rectangle;

/** One line of the legend: a sign as it is drawn in pictures, and what it means. */
public final class Sample {

    private final String words;
    private final LegendSign sign;

    Sample(String words, LegendSign sign) {
        this.words = words;
        this.sign = sign;
    }

    /** How it looks and what it means. */
    public String words() {
        return words;
    }

    /** How high it is in a picture so wide, both in points. */
    public double height(double picture) {
        return box(picture).height();
    }

    /** Drawn as in a picture so wide, in the middle of that width, its top here; in points. */
    public List<Mark> draw(double x, double y, double picture) {
        Rectangle box = box(picture);
        double dx = x + (picture - box.width()) / 2 - box.x();
        return marks(picture).stream().map(mark -> mark.moved(dx, y - box.y())).toList();
    }

    private Rectangle box(double picture) {
        return InkedArea.of(marks(picture)).box();
    }

    private List<Mark> marks(double picture) {
        return sign.draw(Gauge.of(picture, false));
    }
}
