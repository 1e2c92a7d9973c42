package org.drillwright.print.layout.fit;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.text.Typefaces;

/**
 * Where the columns of the counts stand, in points: the numeral at the outer edge, then what the two do, then the
 * distance. Safety runs under the last three, or, where pictures stand under the distance, beside them.
 *
 * @param pictures whether the counts have pictures
 */
public record Columns(Span count, Span leader, Span follower, Span distance, boolean pictures) {

    /** Between columns, as a share of the type size. */
    private static final double GAP = 0.7;

    /** Between the band's end and the words on it, as a share of the type size. */
    private static final double INSET = 0.3;

    /** The distance takes no more of the card than this. */
    private static final double DISTANCE_AT_MOST = 0.22;

    /** Crisp down to this, and no smaller: a quarter of a target is then 3.4 mm, 29 minutes of arc in the hand. */
    private static final double PICTURE_AT_LEAST = Millimetres.toPoints(16);

    /** As a share of the type size. */
    private static final double PICTURE = 5;

    /** A stretch across the card. */
    public record Span(double x, double width) {
        public double right() {
            return x + width;
        }
    }

    public static Columns of(CardText text, CardArea area, Scale scale, Typefaces faces) {
        double gap = GAP * scale.turn();
        double left = area.left() + inset(scale);
        double right = area.right() - inset(scale);
        double count = Math.max(
                widest(text.counts(), at -> faces.of(Face.BOLD).width(at.numeral())) * scale.numeral(),
                text.heads().count().widest() * scale.head());
        double distance = Math.min(
                Math.max(
                        widest(text.counts(), at -> at.distance().widest()) * scale.cue(),
                        text.heads().distance().widest() * scale.head()),
                DISTANCE_AT_MOST * area.inner());
        boolean pictures = text.hasPictures();
        if (pictures) {
            distance = Math.max(distance, pictureWidth(scale));
        }
        double both = right - left - count - distance - 3 * gap;
        double leader = both * Shares.leader(text.counts(), both / scale.turn());
        double x = left + count + gap;
        return new Columns(
                new Span(left, count),
                new Span(x, leader),
                new Span(x + leader + gap, both - leader),
                new Span(right - distance, distance),
                pictures);
    }

    /** How wide pictures are, in points. */
    public static double pictureWidth(Scale scale) {
        return Math.max(PICTURE_AT_LEAST, PICTURE * scale.turn());
    }

    /** Between the end of a band and the words on it, in points. */
    public static double inset(Scale scale) {
        return INSET * scale.turn();
    }

    private static double widest(List<CardText.Count> counts, ToDoubleFunction<CardText.Count> width) {
        return counts.stream().mapToDouble(width).max().orElse(0);
    }

    /** From the leader's column to the distance's end. */
    public Span acrossTurns() {
        return new Span(leader.x(), distance.right() - leader.x());
    }

    /** Where safety runs. */
    public Span safety() {
        return pictures ? new Span(leader.x(), follower.right() - leader.x()) : acrossTurns();
    }
}
