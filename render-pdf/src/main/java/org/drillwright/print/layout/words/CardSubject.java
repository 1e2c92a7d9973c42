package org.drillwright.print.layout.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.model.Turn;
import org.drillwright.phrase.Replay;

/**
 * What one drill's card is to say.
 *
 * @param place where the drill stands in a set, if the card is printed as part of one
 * @param draft whether the card is marked as a draft, not to be used in class
 * @param footerRemarks sentences for the card's foot, such as that the drill was not fully checked
 * @param needs the cards of the drills that it needs, as far as they are in sets
 * @param leadsTo the cards of the drills that need it
 * @param words what is known of the author's words
 * @param replay the drill as it was played, from which its pictures are drawn; empty for a card without pictures
 */
public record CardSubject(
        Drill drill,
        School school,
        Optional<Place> place,
        boolean draft,
        List<String> footerRemarks,
        List<Place> needs,
        List<Place> leadsTo,
        AuthorsWords words,
        Optional<Replay> replay) {

    /** A card without other cards to name. */
    public CardSubject(
            Drill drill,
            School school,
            Optional<Place> place,
            boolean draft,
            List<String> footerRemarks,
            Optional<Replay> replay) {
        this(drill, school, place, draft, footerRemarks, List.of(), List.of(), schools(school), replay);
    }

    /** A card without pictures, and without other cards to name. */
    public CardSubject(Drill drill, School school, Optional<Place> place, boolean draft, List<String> footerRemarks) {
        this(drill, school, place, draft, footerRemarks, Optional.empty());
    }

    private static AuthorsWords schools(School school) {
        return AuthorsWords.in(school.language().locale());
    }

    public CardSubject {
        footerRemarks = List.copyOf(footerRemarks);
        needs = List.copyOf(needs);
        leadsTo = List.copyOf(leadsTo);
    }

    /** Its title and all that is told to do, by which it is known how most of it is written. */
    public String said() {
        return Stream.concat(
                        Stream.of(drill.title()),
                        drill.steps().stream()
                                .flatMap(step -> Stream.of(step.leader(), step.follower()))
                                .flatMap(turn -> turn.map(Turn::say).stream()))
                .collect(Collectors.joining(" "));
    }

    /**
     * A drill's place in a set.
     *
     * @param number from 1
     * @param of how many drills the set has
     */
    public record Place(String set, int number, int of) {}
}
