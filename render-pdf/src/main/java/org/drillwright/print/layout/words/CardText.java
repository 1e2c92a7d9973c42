package org.drillwright.print.layout.words;

import java.util.List;
import java.util.Optional;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.text.Paragraph;

/**
 * All words of a drill's card, measured once. A paragraph that has nothing to say is empty.
 *
 * @param about level, weapon and form
 * @param before what is read before the first count: gear, opening, start
 * @param closing what is read behind the last count, before repeats and cautions
 * @param draft the mark of a draft, if it is one
 * @param alone whether there is one person in the pictures, a class that follows a caller
 * @param rightToLeft whether most of its words are read from right to left
 * @param aims what a back says before its pictures: purpose, and which cards stand before and behind this one
 */
public record CardText(
        Paragraph title,
        Paragraph about,
        List<Paragraph> before,
        Heads heads,
        List<Count> counts,
        Paragraph closing,
        Paragraph repeat,
        List<Paragraph> cautions,
        Foot foot,
        Optional<String> draft,
        boolean alone,
        boolean rightToLeft,
        List<Paragraph> aims) {

    public CardText {
        before = List.copyOf(before);
        counts = List.copyOf(counts);
        cautions = List.copyOf(cautions);
        aims = List.copyOf(aims);
    }

    /**
     * The heads of the table.
     *
     * @param safety is not printed: the triangle stands for it
     */
    public record Heads(String leader, String follower, String distance, String safety) {}

    /**
     * At the foot of every side.
     *
     * @param line what was not fully checked, school, place in the set, revision
     * @param mark at the end of the line; on a draft that it is one
     */
    public record Foot(Paragraph caution, Paragraph line, Paragraph mark) {}

    /** The same card without the pictures of counts in which nobody attacks and neither ends in the lunge. */
    public CardText withoutQuietPictures() {
        List<Count> fewer = counts.stream()
                .map(count -> count.quiet() ? count.withoutPicture() : count)
                .toList();
        return new CardText(
                title, about, before, heads, fewer, closing, repeat, cautions, foot, draft, alone, rightToLeft, aims);
    }

    /**
     * One numbered count.
     *
     * @param ends whether the distance is the one at which the count ends, and not the one at which it begins
     * @param quiet whether nobody attacks and neither ends in the lunge
     */
    public record Count(
            String numeral,
            Paragraph call,
            Paragraph leader,
            Paragraph follower,
            Paragraph distance,
            boolean ends,
            Paragraph safety,
            Optional<Picture> picture,
            boolean quiet) {

        Count withoutPicture() {
            return picture.isEmpty()
                    ? this
                    : new Count(numeral, call, leader, follower, distance, ends, safety, Optional.empty(), quiet);
        }
    }
}
