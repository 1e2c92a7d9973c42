package org.drillwright.explain;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.notation.Clause;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.State;
import org.drillwright.wording.Message;

/**
 * A drill as it was played, in the order in which it is told, whoever tells it in words or to a program.
 *
 * @param opening ends as the first count begins
 */
public record Account(Part opening, List<Part> counts, Part closing) {

    /** What is done on a count, or around the counts, and how they stand at its end. */
    public record Part(List<Told> moves, Standing standing) {

        public Part {
            moves = List.copyOf(moves);
        }
    }

    /**
     * A move.
     *
     * @param read as it was read, in the words of the trade
     * @param fate how the attack ends, if it is one and that is known; told of moves on a count only
     * @param refused how many things the phrase refuses of it
     */
    public record Told(Side by, Message read, Optional<Message> fate, int refused) {}

    /**
     * How they stand.
     *
     * @param fencers those that the drill tells of: both, or of somebody alone the follower
     * @param between the measure and the contact
     * @param doubts what of all this is not known, of whichever side
     */
    public record Standing(State state, Map<Side, Message> fencers, Message between, List<Message> doubts) {}

    public Account {
        counts = List.copyOf(counts);
    }

    public static Account of(Subject subject) {
        List<Part> counts = new ArrayList<>();
        for (Count count : subject.replay().counts()) {
            counts.add(count(count, subject));
        }
        return new Account(
                around(subject.replay().opening(), subject.replay().start(), subject),
                counts,
                around(subject.replay().closing(), subject.replay().closed(), subject));
    }

    private static Part around(List<Played> moves, State end, Subject subject) {
        return new Part(
                moves.stream()
                        .map(played -> told(played, Optional.empty(), subject))
                        .toList(),
                standing(end, subject));
    }

    private static Part count(Count count, Subject subject) {
        List<Told> moves = new ArrayList<>();
        for (int at = 0; at < count.moves().size(); at++) {
            Optional<Message> fate = AttackEnd.of(count, at).map(EndWords::of);
            moves.add(told(count.moves().get(at), fate, subject));
        }
        return new Part(moves, standing(count.end(), subject));
    }

    private static Told told(Played played, Optional<Message> fate, Subject subject) {
        Message read = ActionWords.of(
                played.move().parts().stream().map(Clause::action).distinct().toList(), subject);
        return new Told(played.move().by(), read, fate, played.refusals().size());
    }

    private static Standing standing(State state, Subject subject) {
        Map<Side, Message> fencers = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            fencers.put(side, StateWords.of(state.of(side)));
        }
        Message between = StateWords.shared(state);
        List<Message> doubts = Stream.concat(fencers.values().stream(), Stream.of(between))
                .flatMap(StateWords::unknown)
                .toList();
        if (!subject.isPartnerDrill()) {
            fencers.keySet().retainAll(List.of(Side.FOLLOWER));
        }
        return new Standing(state, fencers, between, doubts);
    }
}
