package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.roster.Hall;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;
import org.drillwright.tell.HallText;

/** A hall drawn to a round scale, with its lanes, their places and the way the lines move. */
public final class HallSheet {

    private static final int[] SCALES = {
        25, 40, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 1500, 2500, 5000
    };

    /** What the words over and under the drawing take at most, as a share of the page. */
    private static final double WORDS = 0.35;

    private HallSheet() {}

    /** @param mark of the plan that hangs; empty if none does */
    public static List<Frame> pages(
            Floor floor, PairingPlan pairs, SheetSize size, String school, String mark, Typefaces faces) {
        HandType type = new HandType(faces);
        Hall hall = floor.layout().hall();
        Sheet upright = HandType.upright(size);
        Sheet lying = HandType.lying(size);
        Sheet sheet = scale(hall, lying) <= scale(hall, upright) ? lying : upright;
        double width = sheet.inner();
        int scale = scale(hall, sheet);
        String document = Feet.words(Feet.mark(mark), school, "Print at 100 % (actual size).");
        Flow flow = new Flow(sheet, 1, Foot.of(type.foot(), sheet, "", document));
        flow.add(type.heading().title("The hall, 1 to " + scale, width));
        List<Styled> words = new ArrayList<>(List.of(new Styled(floor.layout().sentence(), Face.BOLD)));
        words.add(new Styled(String.join(". ", HallText.sizes(hall)) + ".", Face.REGULAR));
        flow.add(type.notes().paragraph(words, width));
        flow.add(new HallDrawing(floor, pairs.method(), type, scale).block());
        List<String> below = new ArrayList<>();
        if (pairs.method().isWalked()) {
            below.add("Filled circle: the line that stays. Open circle: the line that moves.");
        }
        below.addAll(HallText.toKnow(floor, pairs));
        below.forEach(sentence -> flow.add(type.words().paragraph(Face.REGULAR, sentence, width)));
        return flow.pages();
    }

    private static int scale(Hall hall, Sheet sheet) {
        for (int scale : SCALES) {
            boolean wide = HallDrawing.points(hall.length(), scale) <= sheet.inner();
            boolean high = HallDrawing.points(hall.width(), scale) <= (1 - WORDS) * sheet.height();
            if (wide && high) {
                return scale;
            }
        }
        return SCALES[SCALES.length - 1];
    }
}
