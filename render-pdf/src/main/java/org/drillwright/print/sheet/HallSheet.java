package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.roster.Hall;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.sheet.wall.WallText;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;

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
            Floor floor, PairingPlan pairs, SheetSize size, School school, String mark, Typefaces faces) {
        HandWords words = HandWords.in(school.language());
        HallSentences sentences = new HallSentences(words);
        HandType type = new HandType(faces);
        Hall hall = floor.layout().hall();
        Sheet upright = Sheet.upright(size, Sheet.HELD);
        Sheet lying = Sheet.lying(size, Sheet.HELD);
        Sheet sheet = scale(hall, lying) <= scale(hall, upright) ? lying : upright;
        double width = sheet.inner();
        int scale = scale(hall, sheet);
        String document =
                Foot.line(words.mark(mark), school.name(), words.evening().text(WallText.PRINT) + ".");
        Flow flow = new Flow(sheet, 1, Foot.of(type.foot(), sheet, "", document));
        flow.add(type.heading().title(words.text(HandWord.HALL_SCALE, scale), width));
        List<Styled> above = new ArrayList<>(List.of(new Styled(sentences.lanes(floor.layout()), Face.BOLD)));
        above.add(new Styled(String.join(". ", sentences.sizes(hall)) + ".", Face.REGULAR));
        flow.add(type.notes().paragraph(above, width));
        flow.add(new HallDrawing(floor, pairs.method(), type, scale, words).block());
        List<String> below = new ArrayList<>();
        if (pairs.method().isWalked()) {
            below.add(words.text(HandWord.CIRCLES));
        }
        below.addAll(sentences.toKnow(floor, pairs));
        below.forEach(sentence -> flow.add(type.words().paragraph(Face.REGULAR, sentence, width)));
        return Mirrored.pages(flow.pages(), school.language().locale(), faces);
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
