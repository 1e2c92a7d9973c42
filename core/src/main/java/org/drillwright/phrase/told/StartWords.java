package org.drillwright.phrase.told;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Doubt;
import org.drillwright.notation.Stance;
import org.drillwright.notation.Utterance;

/**
 * How far the words of a start tell how they stand. Words that were not read may tell whatever no whole reading tells; what a
 * whole reading tells they leave, unless they stand beside another one that tells of the same.
 */
public final class StartWords {

    /** What a start can tell. */
    public enum Part {
        HAND,
        FEET,
        CONTACT,
        MEASURE
    }

    private final List<Clause> clauses;

    public StartWords(Utterance start) {
        clauses = ToldClauses.of(start);
    }

    public List<Clause> clauses() {
        return clauses;
    }

    public boolean isRead() {
        return clauses.stream().allMatch(StartWords::isWhole);
    }

    public static boolean isWhole(Clause clause) {
        return clause.isCertain() && !isNoAction(clause);
    }

    /** However somebody stands on guard, the feet do. */
    public static boolean isCertain(Clause clause, Part part) {
        boolean onlyHow = part == Part.FEET && clause.doubts().equals(Set.of(Doubt.MANNER));
        return (clause.isCertain() || onlyHow) && !isNoAction(clause);
    }

    private static boolean isNoAction(Clause clause) {
        return clause.action() instanceof Action.Unread;
    }

    /** How somebody stands by an action, if it says so. */
    public static Optional<Stance> stance(Action action) {
        if (action instanceof Action.OnGuard onGuard) {
            return Optional.of(onGuard.stance());
        }
        if (action instanceof Action.Answer answer) {
            return Optional.of(answer.stance());
        }
        return action instanceof Action.State stated ? Optional.of(stated.stance()) : Optional.empty();
    }

    /** Whom a clause of a start is about: both, where it names nobody. */
    public static List<Side> sides(Clause clause) {
        return clause.subject().map(List::of).orElse(List.of(Side.values()));
    }

    /** Whether words of it stand between two signs with nothing that was read, so that they may tell of anything. */
    public boolean mayTellMore() {
        return clauses.stream().anyMatch(StartWords::isNoAction);
    }

    /** Whether words that were not read may tell otherwise of a part than what was read. */
    public boolean leavesOpen(Part part, Side side) {
        boolean told = clauses.stream()
                .filter(clause -> isCertain(clause, part))
                .anyMatch(clause -> sides(clause).contains(side) && tells(clause.action(), part));
        boolean doubted = clauses.stream()
                .filter(clause -> !isCertain(clause, part))
                .anyMatch(clause -> sides(clause).contains(side) && mayTell(clause.action(), part));
        return !isRead() && (doubted || !told);
    }

    /** The same of what is between the two. */
    public boolean leavesOpen(Part part) {
        return leavesOpen(part, Side.LEADER) && leavesOpen(part, Side.FOLLOWER);
    }

    private static boolean mayTell(Action action, Part part) {
        return tells(action, part) || (part == Part.HAND && action instanceof Action.OnGuard);
    }

    private static boolean tells(Action action, Part part) {
        return switch (part) {
            case HAND ->
                action instanceof Action.Place
                        || stance(action).flatMap(stance -> stance.guard()).isPresent();
            case FEET -> action instanceof Action.OnGuard;
            case CONTACT ->
                action instanceof Action.Withdraw
                        || stance(action).flatMap(stance -> stance.engaged()).isPresent();
            case MEASURE ->
                action instanceof Action.Withdraw
                        || (action instanceof Action.State state
                                && state.measure().isPresent());
        };
    }
}
