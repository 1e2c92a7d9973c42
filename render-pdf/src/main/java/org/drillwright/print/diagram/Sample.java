package org.drillwright.print.diagram;

import java.util.List;
import java.util.function.Function;
import org.drillwright.print.frame.Mark;

/** One line of the legend: a piece of a picture, and what it means. */
public final class Sample {

    private final String words;
    private final double width;
    private final double height;
    private final Function<Pad, List<Mark>> drawing;

    /** Sizes in units of a picture. */
    Sample(String words, double width, double height, Function<Pad, List<Mark>> drawing) {
        this.words = words;
        this.width = width;
        this.height = height;
        this.drawing = drawing;
    }

    /** How it looks and what it means. */
    public String words() {
        return words;
    }

    /** How high it is in a picture so wide, both in points. */
    public double height(double picture) {
        return height * picture / Pad.WIDTH;
    }

    /** Drawn as in a picture so wide, in the middle of that width, its top here; in points. */
    public List<Mark> draw(double x, double y, double picture) {
        Pad pad = new Pad(x, y, picture / Pad.WIDTH);
        return drawing.apply(pad.from((Pad.WIDTH - width) / 2, 0));
    }
}
