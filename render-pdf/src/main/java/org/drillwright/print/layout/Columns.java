package org.drillwright.print.layout;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Typefaces;

/**
 * Where the columns of the counts stand, in points: the numeral at the outer edge, then what the two do, then the
 * distance. Safety runs under the last three.
 */
record Columns(Span count, Span leader, Span follower, Span distance) {

    /** Between columns, as a share of the type size. */
    private static final double GAP = 0.55;

    /** The distance takes no more of the card than this. */
    private static final double DISTANCE_AT_MOST = 0.22;

    /** Equal columns look calm: only a plain difference in words makes them unequal. */
    private static final double CALM = 0.09;

    private static final double NARROWEST = 0.34;

    /** A stretch across the card. */
    record Span(double x, double width) {
        double right() {
            return x + width;
        }
    }

    static Columns of(CardText text, CardArea area, Scale scale, Typefaces faces) {
        double gap = GAP * scale.turn();
        double count = Math.max(
                widest(text.counts(), at -> faces.of(Face.BOLD).width(at.numeral())) * scale.numeral(),
                text.heads().count().widest() * scale.head());
        double distance = Math.min(
                Math.max(
                        widest(text.counts(), at -> at.distance().widest()) * scale.cue(),
                        text.heads().distance().widest() * scale.head()),
                DISTANCE_AT_MOST * area.inner());
        double both = area.inner() - count - distance - 3 * gap;
        double leader = both * share(text, both / scale.turn());
        double x = area.left() + count + gap;
        return new Columns(
                new Span(area.left(), count),
                new Span(x, leader),
                new Span(x + leader + gap, both - leader),
                new Span(area.right() - distance, distance));
    }

    /** The leader's share of a width that the two sides have together, in type sizes. */
    private static double share(CardText text, double both) {
        double leader = words(text, CardText.Count::leader);
        double follower = words(text, CardText.Count::follower);
        double share = leader / (leader + follower);
        if (Math.abs(share - 0.5) < CALM) {
            share = 0.5;
        }
        double least = widest(text.counts(), at -> at.leader().widest()) / both;
        double most = 1 - widest(text.counts(), at -> at.follower().widest()) / both;
        share = Math.max(NARROWEST, Math.min(1 - NARROWEST, share));
        return least <= most ? Math.max(least, Math.min(most, share)) : share;
    }

    private static double words(CardText text, java.util.function.Function<CardText.Count, Paragraph> side) {
        return 1
                + text.counts().stream()
                        .map(side)
                        .mapToDouble(Paragraph::onOneLine)
                        .sum();
    }

    private static double widest(List<CardText.Count> counts, ToDoubleFunction<CardText.Count> width) {
        return counts.stream().mapToDouble(width).max().orElse(0);
    }

    /** From the leader's column to the edge. */
    Span acrossTurns() {
        return new Span(leader.x(), distance.right() - leader.x());
    }

    Stream<Span> all() {
        return Stream.of(count, leader, follower, distance);
    }
}
