package org.drillwright.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.source.Span;

/**
 * What one side does at one moment: a single action, or an attack whose arm, feet and lunge belong together.
 *
 * @param parts its clauses in the order in which they are played
 */
public record Move(Side by, List<Clause> parts) {

    public Move {
        parts = List.copyOf(parts);
    }

    /** The words of the move, within the turn. */
    public Span span() {
        Span span = parts.get(0).span();
        for (Clause part : parts) {
            span = span.to(part.span());
        }
        return span;
    }

    /** Whether no unread word leaves anything of it in doubt. */
    public boolean isCertain() {
        for (Clause part : parts) {
            if (!part.isCertain()) {
                return false;
            }
        }
        return true;
    }

    /** Whether it is not known what it is: words of it were not read, or leave it open. */
    public boolean isInDoubt() {
        return !isCertain() || action() instanceof Action.Unread;
    }

    /** The action that the move is known by. */
    public Action action() {
        return parts.size() == 1
                ? parts.get(0).action()
                : strike().<Action>map(strike -> strike)
                        .or(() -> lunge())
                        .orElseGet(() -> parts.get(0).action());
    }

    /** The stroke, with what the lunge's words add to its aim. */
    public Optional<Action.Strike> strike() {
        Optional<Action.Strike> strike = Optional.empty();
        for (Clause part : parts) {
            if (part.action() instanceof Action.Strike next) {
                strike = Optional.of(strike.map(first -> together(first, next)).orElse(next));
            }
        }
        return strike.map(
                found -> lunge().map(lunge -> found.aimed(lunge.aim())).orElse(found));
    }

    /** The lunge that carries it, if one does. */
    public Optional<Action.Lunge> lunge() {
        for (Clause part : parts) {
            if (part.action() instanceof Action.Lunge lunge) {
                return Optional.of(lunge);
            }
        }
        return Optional.empty();
    }

    /** The steps of the feet in it, in their order. */
    public List<Action.Step> steps() {
        List<Action.Step> steps = new ArrayList<>();
        for (Clause part : parts) {
            if (part.action() instanceof Action.Step step) {
                steps.add(step);
            }
        }
        return steps;
    }

    /** Whether a point or an edge goes towards someone, or a lunge carries one. */
    public boolean isAssault() {
        for (Clause part : parts) {
            if (part.action() instanceof Action.Strike || part.action() instanceof Action.Lunge) {
                return true;
            }
        }
        return false;
    }

    /** An extension and the touch it leads to are one stroke. */
    private static Action.Strike together(Action.Strike first, Action.Strike next) {
        boolean extendsFirst = first.role() == Action.Role.EXTENSION;
        Action.Strike main = extendsFirst ? next : first;
        Action.Strike other = extendsFirst ? first : next;
        return new Action.Strike(
                main.role(),
                main.path() == Action.Path.UNSTATED ? other.path() : main.path(),
                main.aim().completedBy(other.aim()),
                main.cut() || other.cut(),
                main.feint(),
                main.falseAttack(),
                main.opposition() || other.opposition());
    }
}
