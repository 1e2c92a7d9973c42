package org.drillwright.reading;

import java.util.Optional;
import org.drillwright.meaning.Meant;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Clause;
import org.drillwright.source.Span;

/** Where a stroke arrives: told of the one begun before, or as a stroke of its own. */
final class Arrival {

    private final Discourse discourse;
    private final Restatement restatement;
    private final FencingPhrase phrase;

    Arrival(Discourse discourse, Restatement restatement, FencingPhrase phrase) {
        this.discourse = discourse;
        this.restatement = restatement;
        this.phrase = phrase;
    }

    /** "Slide the point under and hit low" is one stroke. */
    void land(Meant.Lands lands, Span span) {
        Action.Strike hit = new Action.Strike(Role.ATTACK, Path.DIRECT, lands.aim(), false, false, false, false);
        if (lands.strikes() && (endsBegun(hit) || hitsAsTold(lands))) {
            return;
        }
        Optional<Action.Strike> told = strokeToEnd()
                .filter(strike -> strike.role() != Role.EXTENSION)
                .filter(strike -> strike.path() != Path.DIRECT && strike.path() != Path.UNSTATED);
        if (!lands.aim().isStated() && told.isPresent()) {
            discourse.replace(told.get(), span);
            return;
        }
        Optional<Action.Strike> open = strokeToEnd()
                .filter(strike -> !strike.aim().isStated()
                        || (!lands.strikes() && strike.aim().agreesWith(lands.aim())));
        boolean onItsWay =
                open.filter(strike -> strike.role() != Role.EXTENSION).isPresent();
        if (onItsWay || (open.isPresent() && !lands.strikes())) {
            discourse.replace(open.orElseThrow().aimed(lands.aim()), span);
            return;
        }
        if ((!lands.strikes() || restatement.explains())
                && discourse.goesOn()
                && discourse.last().action() instanceof Action.Lunge lunge
                && !lunge.aim().isStated()) {
            discourse.replace(new Action.Lunge(lunge.depth(), lands.aim()), span);
            return;
        }
        boolean nothingToEnd =
                !lands.strikes() && discourse.isEmpty() && lands.aim().target().isEmpty();
        if (nothingToEnd) {
            discourse.leaveUnread(span);
            phrase.add(new Action.Unread("words"), span);
            return;
        }
        Path path = lands.strikes() ? Path.DIRECT : Path.UNSTATED;
        phrase.add(new Action.Strike(Role.ATTACK, path, whereLunged(lands.aim()), false, false, false, false), span);
    }

    /**
     * 'Disengage, lunge, cut flank', 'Thrust high inside and lunge. Hit the chest': where the stroke that was begun
     * arrives, told behind the lunge or the arm that carries it.
     */
    boolean endsBegun(Action action) {
        if (!(action instanceof Action.Strike end) || !(Gloss.arrives(end) || restatement.explains())) {
            return false;
        }
        int last = discourse.size() - 1;
        int at = carriedFrom(end.aim());
        if (!discourse.goesOnFrom(at)) {
            return false;
        }
        Action begun = discourse.get(at).action();
        Optional<Action> whole = restatement.explains() ? Gloss.of(begun, end) : Gloss.arriving(begun, end, at < last);
        if (whole.isPresent()) {
            discourse.become(at, whole.get());
            discourse.goBackTo(at);
            discourse.join(Clause.Join.WITH);
        }
        return whole.isPresent();
    }

    /** Where the last clause stands that does not carry a stroke to that aim; -1 if all do. */
    private int carriedFrom(Aim aim) {
        int at = discourse.size() - 1;
        while (at >= 0 && Gloss.carries(discourse.get(at).action(), aim)) {
            at--;
        }
        return at;
    }

    /** The stroke told last in this sentence, if it is a real one and nothing that may end it was told since. */
    private Optional<Action.Strike> strokeToEnd() {
        boolean mayGoOn = discourse.goesOn()
                && discourse.besides() < discourse.size()
                && discourse.last().subject().equals(discourse.subject());
        return mayGoOn && discourse.last().action() instanceof Action.Strike strike
                ? Optional.of(strike).filter(one -> !one.feint())
                : Optional.empty();
    }

    /** 'Thrust at the chest, lunge and hit': a hit of which nothing more is told is that of the stroke told before. */
    private boolean hitsAsTold(Meant.Lands lands) {
        boolean anew = !discourse.goesOn();
        int at = carriedFrom(Aim.UNSTATED);
        boolean carried = at < discourse.size() - 1;
        if (lands.aim().isStated()
                || at < (anew ? discourse.earlier() : discourse.begins())
                || !discourse.goesOnFrom(at)) {
            return false;
        }
        boolean told = discourse.get(at).action() instanceof Action.Strike stroke
                && !stroke.feint()
                && (anew || carried || stroke.aim().isStated());
        if (told) {
            discourse.goBackTo(at);
        }
        return told;
    }

    /** 'Lunge into the high inside line and touch the chest': the touch arrives in the line of the lunge. */
    private Aim whereLunged(Aim touched) {
        return discourse.goesOn()
                        && discourse.last().action() instanceof Action.Lunge lunge
                        && lunge.aim().agreesWith(touched)
                ? touched.completedBy(lunge.aim())
                : touched;
    }
}
