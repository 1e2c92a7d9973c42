package org.drillwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Reply;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Move;
import org.drillwright.notation.Stance;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.ParryTravel;
import org.drillwright.phrase.Possible;
import org.drillwright.phrase.Rehearsal;
import org.drillwright.phrase.Setting;
import org.drillwright.phrase.State;

/** Proposes turns for a side that a count leaves without one: what the phrase allows there, the plainest first. */
public final class Suggestions {

    private static final int AT_MOST = 5;

    private static final Action HOLD = new Action.Answer(Reply.HOLD, Stance.UNSTATED);

    /**
     * A proposal for an empty turn.
     *
     * @param step the count, numbered from 0
     * @param turns in words that can be copied into the drill, the plainest first
     */
    public record Proposal(int step, Side side, List<String> turns) {

        public Proposal {
            turns = List.copyOf(turns);
        }
    }

    private Suggestions() {}

    /** Proposals for all turns of a partner drill that are empty. */
    public static List<Proposal> of(Subject subject) {
        List<Proposal> proposals = new ArrayList<>();
        if (!subject.isPartnerDrill()) {
            return proposals;
        }
        for (Subject.Place turn : subject.turns()) {
            if (subject.drill().steps().get(turn.step()).turn(turn.side()).isEmpty()) {
                proposals.add(new Proposal(turn.step(), turn.side(), turns(subject, turn.step(), turn.side())));
            }
        }
        return proposals;
    }

    private static List<String> turns(Subject subject, int step, Side side) {
        State state = stateFor(subject, step);
        List<String> turns = new ArrayList<>(open(subject, state, side).stream()
                .map(move -> words(move, subject))
                .distinct()
                .limit(AT_MOST)
                .toList());
        boolean attacked = state.attackOn(side).isPresent();
        if (!attacked) {
            turns.add(subject.said(List.of(HOLD)));
        }
        return turns;
    }

    private static List<Move> open(Subject subject, State state, Side side) {
        Setting setting = subject.replay().setting();
        return Possible.in(state, setting, side).stream()
                .map(Possible.Open::move)
                .sorted(Comparator.comparingInt(move -> rank(move, state, setting)))
                .toList();
    }

    /**
     * All that the phrase leaves open to a side without a turn, in the drill's language: first what plays with the partner's turn,
     * be it done behind that turn or before it, then what is open to the side alone; each time the plainest first.
     */
    public static List<String> open(Subject subject, int step, Side side) {
        Count count = subject.replay().counts().get(step);
        List<Move> behind = open(subject, stateFor(subject, step), side);
        List<Move> before = count.moves().isEmpty() ? List.of() : open(subject, count.begin(), side);
        List<Move> playing = Stream.concat(behind.stream(), before.stream())
                .filter(move -> plays(subject, step, move))
                .toList();
        return Stream.concat(playing.stream(), behind.stream())
                .map(move -> words(move, subject))
                .distinct()
                .toList();
    }

    /** Whether nothing is refused in a count with one more move. */
    private static boolean plays(Subject subject, int step, Move move) {
        Rehearsal.Words words = subject.script().words().with(step, move.by(), turn -> move.parts());
        Count count = subject.rehearsal().otherwise(words).replay().counts().get(step);
        return count.unmet().isEmpty()
                && count.moves().stream().allMatch(played -> played.refusals().isEmpty());
    }

    /** Where the count stands when all that is written has been played. */
    private static State stateFor(Subject subject, int step) {
        Count count = subject.replay().counts().get(step);
        return count.moves().isEmpty()
                ? count.begin()
                : count.moves().get(count.moves().size() - 1).after();
    }

    private static int rank(Move move, State state, Setting setting) {
        Action action = move.action();
        if (action instanceof Action.Parry parry) {
            return parryRank(parry, move.by(), state, setting);
        }
        if (action instanceof Action.Strike strike) {
            boolean riposte = strike.role() != Action.Role.ATTACK;
            return (riposte ? 0 : 20)
                    + (strike.path() == Path.DIRECT ? 0 : 2)
                    + move.parts().size();
        }
        if (action instanceof Action.Recover) {
            return 1;
        }
        return action instanceof Action.Answer ? 12 : 15;
    }

    /** Simple before half-circular before diagonal before circular: the shorter way first (Warford 1884, p. 16). */
    private static int parryRank(Action.Parry parry, Side side, State state, Setting setting) {
        ParryKind kind = parry.kind() == ParryKind.CIRCULAR
                ? ParryKind.CIRCULAR
                : state.of(side)
                        .hand()
                        .value()
                        .flatMap(hand -> parry.position().flatMap(to -> ParryTravel.kind(setting, hand, to)))
                        .orElse(ParryKind.UNSTATED);
        return switch (kind) {
            case UNSTATED, SIMPLE -> 0;
            case HALF_CIRCULAR -> 1;
            case DIAGONAL -> 2;
            case CIRCULAR -> 3;
            case CEDING -> 4;
        };
    }

    private static String words(Move move, Subject subject) {
        return subject.said(move.parts().stream().map(Clause::action).toList());
    }
}
