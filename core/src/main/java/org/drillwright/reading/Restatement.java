package org.drillwright.reading;

import java.util.Optional;
import org.drillwright.meaning.Meant;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Clause;

/** Whether what is told now is what was told before: said twice, explained, named, or told ahead of how it is done. */
final class Restatement {

    private final Discourse discourse;

    private boolean explains;

    /** Whether a colon stands before what comes now. */
    private boolean headed;

    /** Whether what comes now is done once more by the same words: 'parry three times'. */
    private boolean repeated;

    /** Whether the first half of the stroke told last was told, too, so that its end is to come. */
    private boolean halfTold;

    Restatement(Discourse discourse) {
        this.discourse = discourse;
    }

    void sentence() {
        headed = false;
        halfTold = false;
    }

    void comma(boolean colon) {
        explains = colon;
        headed = colon;
    }

    /** Whether what comes now explains what was told before. */
    boolean explains() {
        return explains;
    }

    void begin(SentencePart piece) {
        boolean apposed = piece.isForm("ing") || (piece.isForm("n") && (namesOnly() || namesAgain(piece)));
        explains = explains
                || (apposed && discourse.join() == Clause.Join.COMMA)
                || piece.features().has("names");
    }

    /** Whether what comes now is done once more. */
    void repeat(boolean again) {
        repeated = again;
    }

    /** What of the same piece comes next: it explains only if the piece is a gloss. */
    void goOn(SentencePart piece) {
        repeated = false;
        explains = piece.features().has("gloss");
    }

    void end() {
        explains = false;
        headed = false;
    }

    /** The one action that this and what was told last are, if they are one. */
    Optional<Action> one(Action action) {
        return discourse.goesOn() ? toldTwice(discourse.last().action(), action) : underTitle(action);
    }

    /** 'Invite. Let the hand drift outwards …': a sentence that is but a name heads the one behind it. */
    private Optional<Action> underTitle(Action action) {
        boolean headed = discourse.begins() > 0
                && discourse.begins() == discourse.earlier() + 1
                && discourse.join() == Clause.Join.BEGINS
                && discourse.get(discourse.earlier()).isCertain()
                && discourse.goesOnFrom(discourse.earlier());
        Optional<Action> one =
                headed ? Gloss.underTitle(discourse.get(discourse.earlier()).action(), action) : Optional.empty();
        if (one.isPresent()) {
            discourse.goBackTo(discourse.earlier());
        }
        return one;
    }

    /** "Deceive the parry: disengage" says one stroke twice; so does "recover and come on guard". */
    private Optional<Action> toldTwice(Action before, Action action) {
        if (repeated) {
            return Optional.empty();
        }
        if (halfTold) {
            halfTold = false;
            Optional<Action> ended = Gloss.ends(before, action);
            if (ended.isPresent()) {
                return ended;
            }
        }
        Optional<Action> kept = Gloss.measureKept(before, action);
        if (kept.isPresent()) {
            return kept;
        }
        if (explains) {
            halfTold = Gloss.begins(before, action);
            if (halfTold || (headed && Gloss.heads(before, action))) {
                return Optional.of(halfTold ? before : action);
            }
            return Gloss.of(before, action).or(() -> Gloss.extension(before, action));
        }
        if (Gloss.coveredBy(before, action)) {
            return Optional.of(before);
        }
        if (Gloss.deceivesBy(before, action)) {
            return Gloss.of(before, action);
        }
        if (before instanceof Action.Recover recover && action instanceof Action.OnGuard) {
            return Gloss.recover(recover, action);
        }
        if (before instanceof Action.OnGuard guard
                && action instanceof Action.Place place
                && (discourse.join() == Clause.Join.COMMA || discourse.join() == Clause.Join.WITH)) {
            return Gloss.guard(guard, place);
        }
        if (before instanceof Action.Answer answer
                && answer.reply() == Action.Reply.YIELD
                && action instanceof Action.Parry parry
                && discourse.join() == Clause.Join.COMMA) {
            return Gloss.ceding(parry);
        }
        if (before instanceof Action.Place place && Gloss.isBare(action)) {
            return Optional.of(new Action.Parry(
                    Optional.of(place.position()), ParryKind.UNSTATED, Aim.UNSTATED, place.inTheLunge()));
        }
        if (before instanceof Action.Parry parry && action instanceof Action.Parry more) {
            return Gloss.parries(parry, more);
        }
        if (before instanceof Action.Parry parry && action instanceof Action.OnBlade blade) {
            return Gloss.carried(parry, blade);
        }
        if (before instanceof Action.OnBlade
                && Gloss.isBare(action)
                && discourse.join() != Clause.Join.COMMA
                && discourse.besides() < discourse.size()) {
            return Optional.of(before);
        }
        if (before instanceof Action.OnGuard guard
                && action instanceof Action.OnBlade blade
                && discourse.join() == Clause.Join.COMMA) {
            return Gloss.engaged(guard, blade);
        }
        if (action instanceof Action.State state) {
            return Gloss.stance(before, state);
        }
        if (action instanceof Action.Answer answer && discourse.last().subject().equals(discourse.subject())) {
            return Gloss.answer(before, answer);
        }
        if (before instanceof Action.Invite && action instanceof Action.Invite) {
            return Gloss.of(before, action);
        }
        if (before instanceof Action.Lunge lunge
                && action instanceof Action.Lunge more
                && discourse.join() == Clause.Join.COMMA) {
            return Gloss.lunge(lunge, more);
        }
        return Gloss.extension(before, action);
    }

    /** 'Pass beneath, lower the body, and hit': one gets out of the way but once, however it is told. */
    boolean evadesAgain(Action action) {
        return action instanceof Action.Evade
                && discourse.join() != Clause.Join.AND
                && discourse.ofSentence().stream()
                        .anyMatch(told -> told.action() instanceof Action.Evade
                                && told.subject().equals(discourse.subject()));
    }

    /**
     * Where it stands that one is hit, or gets away, if that is what all of it comes to, told ahead of how it is done: 'it is
     * your turn to be hit, so open the chest and let his thrust land', 'get out of there: recover and withdraw'.
     */
    Optional<Integer> toldAhead(Action action) {
        boolean away = action instanceof Action.Withdraw;
        if (!away && !action.equals(FencingPhrase.RECEIVED)) {
            return Optional.empty();
        }
        for (int at = discourse.size() - 1; at >= discourse.begins(); at--) {
            Action told = discourse.get(at).action();
            if (told.equals(action) && discourse.get(at).subject().equals(discourse.subject())) {
                return Optional.of(at);
            }
            if (away && !(told instanceof Action.Recover)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** Whether what stands before is a riposte, a renewal or the like of which only the name is said: 'Riposte, a cut …'. */
    private boolean namesOnly() {
        return discourse.goesOn()
                && discourse.last().action() instanceof Action.Strike strike
                && strike.role() != Role.ATTACK
                && strike.role() != Role.EXTENSION
                && strike.path() == Path.UNSTATED
                && !strike.aim().isStated();
    }

    /** Whether a noun behind a stroke is the name of it: 'whip your blade over his point, a cut-over'. */
    private boolean namesAgain(SentencePart piece) {
        return discourse.goesOn()
                && discourse.last().action() instanceof Action.Strike before
                && piece.meant().size() == 1
                && piece.meant().get(0) instanceof Meant.Does does
                && does.action() instanceof Action.Strike named
                && named.path() == before.path()
                && named.path() != Path.UNSTATED
                && named.path() != Path.DIRECT
                && !named.aim().isStated();
    }
}
