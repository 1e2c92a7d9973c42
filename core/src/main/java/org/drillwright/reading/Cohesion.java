package org.drillwright.reading;

import java.util.Optional;
import org.drillwright.meaning.Meant;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.source.Span;

/** How what is told now hangs together with what was told before: it completes that, repeats it, or is a thing of its own. */
final class Cohesion {

    private final Discourse discourse;
    private final Restatement restatement;
    private final FencingPhrase phrase;
    private final Arrival arrival;
    private final boolean hadBefore;

    /** Whether something is told as done when another thing begins. */
    private boolean tellsOfEarlier;

    /** @param hadBefore that what is told as done when another thing begins was done on a count before */
    Cohesion(Discourse discourse, Restatement restatement, FencingPhrase phrase, boolean hadBefore) {
        this.discourse = discourse;
        this.restatement = restatement;
        this.phrase = phrase;
        this.arrival = new Arrival(discourse, restatement, phrase);
        this.hadBefore = hadBefore;
    }

    boolean tellsOfEarlier() {
        return tellsOfEarlier;
    }

    void add(Meant meant, Span span) {
        if (meant instanceof Meant.Had had) {
            tellsOfEarlier = true;
            if (!hadBefore) {
                add(had.meant(), span);
            }
        } else if (meant instanceof Meant.Lands lands) {
            arrival.land(lands, span);
        } else if (meant instanceof Meant.Again again) {
            again(again, span);
        } else if (meant instanceof Meant.Arrives) {
            if (!phrase.strikes()) {
                add(FencingPhrase.RECEIVED, span);
            }
        } else if (meant instanceof Meant.Comes) {
            int before = discourse.size();
            add(FencingPhrase.RECEIVED, span);
            if (discourse.size() > before) {
                discourse.letCome(before);
            }
        } else if (meant instanceof Meant.Does does) {
            add(does.action(), span);
        }
    }

    private void add(Action action, Span span) {
        Optional<Action> one = restatement.one(action);
        if (one.isPresent()) {
            discourse.replace(one.get(), span);
            return;
        }
        if (arrival.endsBegun(action) || restatement.evadesAgain(action)) {
            return;
        }
        restatement.toldAhead(action).ifPresent(discourse::takeOut);
        phrase.add(phrase.changesRoles(action) ? new Action.Aside(Action.Trifle.OTHER) : action, span);
    }

    /** The same once more, elsewhere; a position alone is taken with the hand. */
    private void again(Meant.Again again, Span span) {
        Optional<Action> before =
                discourse.goesOn() ? Optional.of(discourse.last().action()) : Optional.empty();
        Optional<Action> whole = before.filter(action -> discourse.join() == Clause.Join.COMMA)
                .flatMap(action -> Ellipsis.targeted(action, again));
        if (whole.isPresent()) {
            discourse.replace(whole.get(), span);
            return;
        }
        Optional<Action> once = before.flatMap(action -> Ellipsis.elsewhere(action, again));
        boolean completes = discourse.join() == Clause.Join.COMMA
                && before.filter(Ellipsis::isPlaceless).isPresent();
        if (completes && once.isPresent()) {
            discourse.replace(once.get(), span);
        } else if (once.isPresent()) {
            phrase.add(once.get(), span);
        } else if (again.position().isPresent()) {
            add(new Action.Place(again.position().get(), false), span);
        } else {
            discourse.leaveUnread(span);
            phrase.add(new Action.Unread("words"), span);
        }
    }
}
