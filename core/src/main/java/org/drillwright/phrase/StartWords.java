package org.drillwright.phrase;

import java.util.List;
import java.util.Set;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Doubt;
import org.drillwright.notation.Utterance;

/**
 * How far the words of a start tell how they stand. Words that were not read may tell whatever no whole reading tells; what a
 * whole reading tells they leave, unless they stand beside another one that tells of the same.
 */
final class StartWords {

    /** What a start can tell. */
    enum Part {
        HAND,
        FEET,
        CONTACT,
        MEASURE
    }

    private final List<Clause> clauses;

    StartWords(Utterance start) {
        clauses = InDoubt.clauses(start);
    }

    List<Clause> clauses() {
        return clauses;
    }

    boolean isRead() {
        return clauses.stream().allMatch(StartWords::isWhole);
    }

    static boolean isWhole(Clause clause) {
        return clause.isCertain() && !isNoAction(clause);
    }

    /** However somebody stands on guard, the feet do. */
    static boolean isCertain(Clause clause, Part part) {
        boolean onlyHow = part == Part.FEET && clause.doubts().equals(Set.of(Doubt.MANNER));
        return (clause.isCertain() || onlyHow) && !isNoAction(clause);
    }

    private static boolean isNoAction(Clause clause) {
        return clause.action() instanceof Action.Unread;
    }

    /** Whether words of it stand between two signs with nothing that was read, so that they may tell of anything. */
    boolean mayTellMore() {
        return clauses.stream().anyMatch(StartWords::isNoAction);
    }

    /** Whether words that were not read may tell otherwise of a part than what was read. */
    boolean leavesOpen(Part part, Side side) {
        boolean told = clauses.stream()
                .filter(clause -> isCertain(clause, part))
                .anyMatch(clause -> StartState.sides(clause).contains(side) && tells(clause.action(), part));
        boolean doubted = clauses.stream()
                .filter(clause -> !isCertain(clause, part))
                .anyMatch(clause -> StartState.sides(clause).contains(side) && mayTell(clause.action(), part));
        return !isRead() && (doubted || !told);
    }

    /** The same of what is between the two. */
    boolean leavesOpen(Part part) {
        return leavesOpen(part, Side.LEADER) && leavesOpen(part, Side.FOLLOWER);
    }

    private static boolean mayTell(Action action, Part part) {
        return tells(action, part) || (part == Part.HAND && action instanceof Action.OnGuard);
    }

    private static boolean tells(Action action, Part part) {
        return switch (part) {
            case HAND ->
                action instanceof Action.Place
                        || StartState.stance(action)
                                .flatMap(stance -> stance.guard())
                                .isPresent();
            case FEET -> action instanceof Action.OnGuard;
            case CONTACT ->
                action instanceof Action.Withdraw
                        || StartState.stance(action)
                                .flatMap(stance -> stance.engaged())
                                .isPresent();
            case MEASURE ->
                action instanceof Action.Withdraw
                        || (action instanceof Action.State state
                                && state.measure().isPresent());
        };
    }
}
