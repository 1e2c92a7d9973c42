package org.drillwright.print.sheet;

import java.util.List;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.roster.Hall;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Legibility;
import org.drillwright.print.text.Typefaces;
import org.drillwright.tell.HallText;

/** A hall drawn to a round scale, with its lanes and the way the lines move. */
public final class HallSheet {

    private static final int[] SCALES = {
        25, 40, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 1500, 2500, 5000
    };

    /** What the words over and under the drawing take at most, as a share of the page. */
    private static final double WORDS = 0.4;

    private HallSheet() {}

    /** @param mark of the plan that hangs; empty if none does */
    public static List<Frame> pages(
            Floor floor, PairingPlan pairs, SheetSize size, String school, String mark, Typefaces faces) {
        Type type = Type.ofCapitals(faces, Legibility.inTheHand()).times(1.15);
        Hall hall = floor.layout().hall();
        Paper upright = Paper.upright(size);
        Paper lying = Paper.lying(size);
        Paper paper = scale(hall, lying) <= scale(hall, upright) ? lying : upright;
        int scale = scale(hall, paper);
        Flow flow = new Flow(paper, Feet.of(type, paper, Feet.mark(mark), school, "Print at 100 % (actual size)."));
        flow.add(type.times(1.5).paragraph(Role.TITLE, Face.BOLD, "The hall, 1 to " + scale, flow.width()));
        flow.add(type.paragraph(Role.PARAGRAPH, Face.BOLD, floor.layout().sentence(), flow.width()));
        flow.add(new HallDrawing(floor, pairs.method(), type, scale).piece());
        flow.add(type.item(
                pairs.method().isWalked()
                        ? "Filled circle: the line that stands; open circle: the line that moves on."
                        : "The two circles of a lane are the two of a pair.",
                flow.width()));
        HallText.toKnow(floor, pairs).forEach(sentence -> flow.add(type.item(sentence, flow.width())));
        HallText.sizes(hall).forEach(sentence -> flow.add(type.item(sentence, flow.width())));
        return flow.pages();
    }

    private static int scale(Hall hall, Paper paper) {
        for (int scale : SCALES) {
            boolean wide = HallDrawing.points(hall.length(), scale) <= paper.inner();
            boolean high = HallDrawing.points(hall.width(), scale) <= (1 - WORDS) * paper.height();
            if (wide && high) {
                return scale;
            }
        }
        return SCALES[SCALES.length - 1];
    }
}
