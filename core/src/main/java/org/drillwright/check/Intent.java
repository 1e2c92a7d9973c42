package org.drillwright.check;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Doubt;
import org.drillwright.notation.Target;
import org.drillwright.notation.Utterance;

/** What an action is about, told from its words alone. */
public final class Intent {

    private Intent() {}

    /** Whether no unread word leaves open that it is done, and by whom. */
    public static boolean isSurelyDone(Clause clause) {
        return !clause.doubts().contains(Doubt.DONE) && !clause.doubts().contains(Doubt.WHO);
    }

    /** The clauses that surely tell what plays nothing and a rule looks at. */
    public static List<Clause> asides(Utterance told, Action.Trifle trifle) {
        return told.clauses().stream()
                .filter(Intent::isSurelyDone)
                .filter(clause -> clause.action().equals(new Action.Aside(trifle)))
                .toList();
    }

    /** Whether a turn sends a point or an edge at a person, be it as a feint. */
    public static boolean isOffensive(Utterance turn) {
        return turn.clauses().stream().anyMatch(Intent::isOffensive);
    }

    /** Whether a clause sends a point or an edge at a person, be it as a feint. */
    public static boolean isOffensive(Clause clause) {
        if (!isSurelyDone(clause)) {
            return false;
        }
        if (clause.action() instanceof Action.Strike strike) {
            return isAtPerson(strike.aim());
        }
        if (clause.action() instanceof Action.OnBlade onBlade) {
            return onBlade.carriesPoint() && isAtPerson(onBlade.aim());
        }
        return clause.action() instanceof Action.Lunge lunge && lunge.aim().isStated() && isAtPerson(lunge.aim());
    }

    private static boolean isAtPerson(Aim aim) {
        return !aim.target().equals(Optional.of(Target.MARK));
    }

    /** Whether a touch is meant or taken in a turn; a feint or a bare extension is none. */
    public static boolean isTouch(Utterance turn) {
        List<Clause> clauses = turn.clauses();
        boolean lunges = clauses.stream().anyMatch(clause -> clause.action() instanceof Action.Lunge);
        return clauses.stream().anyMatch(clause -> isTouch(clause, lunges));
    }

    private static boolean isTouch(Clause clause, boolean lunges) {
        if (!isSurelyDone(clause)) {
            return false;
        }
        if (clause.action() instanceof Action.Strike strike) {
            boolean arrives = !strike.feint() && (strike.role() != Action.Role.EXTENSION || lunges);
            return arrives && isAtPerson(strike.aim());
        }
        if (clause.action() instanceof Action.OnBlade onBlade) {
            return onBlade.carriesPoint() && isAtPerson(onBlade.aim());
        }
        return clause.action().isReply(Action.Reply.RECEIVE);
    }

    /** Whether it is certain that both salute: with no subject, or each named. */
    public static boolean isSaluteByBoth(Utterance words) {
        List<Optional<Side>> salutes = salutes(words);
        return salutes.contains(Optional.<Side>empty())
                || (salutes.contains(Optional.of(Side.LEADER)) && salutes.contains(Optional.of(Side.FOLLOWER)));
    }

    /** Who certainly salutes; empty for both. */
    public static List<Optional<Side>> salutes(Utterance words) {
        return words.clauses().stream()
                .filter(clause -> clause.action() instanceof Action.Salute)
                .filter(clause -> isSurelyDone(clause) && !clause.doubts().contains(Doubt.CHOICE))
                .map(Clause::subject)
                .toList();
    }

    /** Whether a clause brings blades together. */
    public static boolean isOnBlade(Clause clause) {
        return isSurelyDone(clause)
                && (clause.action() instanceof Action.OnBlade || clause.action() instanceof Action.Parry);
    }
}
