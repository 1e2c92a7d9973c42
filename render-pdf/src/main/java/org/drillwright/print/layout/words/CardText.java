package org.drillwright.print.layout.words;

import java.util.List;
import java.util.Optional;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.text.Paragraph;

/**
 * All words of a drill's card, measured once. A paragraph that has nothing to say is empty.
 *
 * @param about level, weapon and form
 * @param before what is read before the first count: opening, then start
 * @param after what is read behind the last count: closing, repeats, cautions
 * @param foot what stands at the foot of every card
 * @param draft the mark of a draft, if it is one
 */
public record CardText(
        Paragraph title,
        Paragraph about,
        Paragraph gear,
        List<Paragraph> before,
        Heads heads,
        List<Count> counts,
        List<Paragraph> after,
        List<Paragraph> foot,
        Optional<String> draft) {

    public CardText {
        before = List.copyOf(before);
        counts = List.copyOf(counts);
        after = List.copyOf(after);
        foot = List.copyOf(foot);
    }

    /** The heads of the columns. */
    public record Heads(Paragraph count, Paragraph leader, Paragraph follower, Paragraph distance, Paragraph safety) {}

    /** The same card without the pictures of its counts. */
    public CardText withoutPictures() {
        List<Count> plain = counts.stream().map(Count::withoutPicture).toList();
        return new CardText(title, about, gear, before, heads, plain, after, foot, draft);
    }

    public boolean hasPictures() {
        return !pictures().isEmpty();
    }

    /** One for each count, or none at all. */
    public List<Picture> pictures() {
        return counts.stream().map(Count::picture).flatMap(Optional::stream).toList();
    }

    /** One numbered count. */
    public record Count(
            String numeral,
            Paragraph call,
            Paragraph leader,
            Paragraph follower,
            Paragraph distance,
            Paragraph safety,
            Optional<Picture> picture) {

        Count withoutPicture() {
            return new Count(numeral, call, leader, follower, distance, safety, Optional.empty());
        }
    }
}
