package org.drillwright.print.layout.words;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.phrase.Replay;

/**
 * What one drill's card is to say.
 *
 * @param place where the drill stands in a set, if the card is printed as part of one
 * @param draft whether the card is marked as a draft, not to be used in class
 * @param footerRemarks sentences for the card's foot, such as that the drill was not fully checked
 * @param replay the drill as it was played, from which its pictures are drawn; empty for a card without pictures
 */
public record CardSubject(
        Drill drill,
        School school,
        Optional<Place> place,
        boolean draft,
        List<String> footerRemarks,
        Optional<Replay> replay) {

    /** A card without pictures. */
    public CardSubject(Drill drill, School school, Optional<Place> place, boolean draft, List<String> footerRemarks) {
        this(drill, school, place, draft, footerRemarks, Optional.empty());
    }

    public CardSubject {
        footerRemarks = List.copyOf(footerRemarks);
    }

    /**
     * A drill's place in a set.
     *
     * @param number from 1
     * @param of how many drills the set has
     */
    public record Place(String set, int number, int of) {}
}
