package org.drillwright.reading;

import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Contact;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Stance;
import org.drillwright.source.Span;

/**
 * What an action is by its place in the phrase of arms: a stroke behind a parry is the riposte, a blade carried was engaged
 * before.
 */
final class FencingPhrase {

    static final Action RECEIVED = new Action.Answer(Action.Reply.RECEIVE, Stance.UNSTATED);

    private static final Set<String> DETERMINING = Set.of("DET", "POSS");

    private final LanguageTables tongue;
    private final Discourse discourse;
    private final Participants participants;

    private boolean lunged;

    FencingPhrase(LanguageTables tongue, Discourse discourse, Participants participants) {
        this.tongue = tongue;
        this.discourse = discourse;
        this.participants = participants;
    }

    void sentence() {
        lunged = false;
    }

    /** That what comes now in this sentence is done in the lunge. */
    void lunge() {
        lunged = true;
    }

    /** "While still on the lunge, parry": what is parried in this sentence is parried there. */
    void inTheLunge() {
        lunged = true;
        for (int at = discourse.begins(); at < discourse.size(); at++) {
            discourse.become(at, Gloss.inTheLunge(discourse.get(at).action()));
        }
    }

    void add(Action said, Span span) {
        meets(said);
        boolean answersHim = said instanceof Action.Strike counter
                && counter.role() == Role.COUNTER_RIPOSTE
                && (!participants.his().isEmpty() || behindName());
        if (answersHim || (said instanceof Action.Strike answer && answer.role() == Role.RIPOSTE)) {
            parriedWith();
        }
        if (said instanceof Action.OnBlade blade && blade.position().isEmpty()) {
            engagedThere(blade.contact());
        }
        Action action = said instanceof Action.Strike strike ? behindParry(strike) : whileStepping(said);
        if (said instanceof Action.OnGuard guard && isInTheLunge()) {
            action = new Action.Recover(Action.Way.BACK, guard.stance());
        }
        discourse.tell(lunged ? Gloss.inTheLunge(action) : action, span);
        lunged = lunged && !(said instanceof Action.Recover) && !(said instanceof Action.Step);
    }

    /** 'Let the attack come and step back': what is met or gone from does not arrive. */
    private void meets(Action action) {
        if (Gloss.meetsWhatComes(action)) {
            discourse.whatComes(RECEIVED).ifPresent(discourse::takeOut);
        }
    }

    /** 'Masks off, salute, change': what is changed behind that are the roles. */
    boolean changesRoles(Action action) {
        boolean bare = action instanceof Action.OnBlade blade
                && blade.contact() == Contact.CHANGE_ENGAGEMENT
                && blade.position().isEmpty()
                && !blade.aim().isStated();
        return bare && !discourse.isEmpty() && isCourtesy(discourse.last().action());
    }

    /** Whether a stroke or a lunge of the one who acts was told. */
    boolean strikes() {
        return discourse.clauses().stream()
                .anyMatch(told -> told.subject().equals(discourse.subject())
                        && (told.action() instanceof Action.Strike || told.action() instanceof Action.Lunge));
    }

    /** A stroke behind one's own parry, or behind what carries the parried blade away, is the riposte, whatever it is called. */
    private Action behindParry(Action.Strike strike) {
        int at = discourse.size() - 1;
        while (at > discourse.begins()
                && discourse.get(at).action() instanceof Action.OnBlade blade
                && carries(blade.contact())
                && discourse.get(at - 1).subject().equals(discourse.get(at).subject())) {
            at--;
        }
        boolean parried = at >= 0
                && discourse.get(at).action() instanceof Action.Parry
                && (discourse.subject().isEmpty() || discourse.get(at).subject().equals(discourse.subject()));
        if (!parried || strike.role() != Role.ATTACK || strike.feint() || strike.falseAttack()) {
            return strike;
        }
        Role role = meetsRiposte(discourse.get(at).span()) ? Role.COUNTER_RIPOSTE : Role.RIPOSTE;
        return new Action.Strike(role, strike.path(), strike.aim(), strike.cut(), false, false, strike.opposition());
    }

    /** 'Parry his riposte and hit': what is hit with behind that is the counter-riposte. */
    private boolean meetsRiposte(Span parry) {
        return IntStream.range(1, discourse.sentence().size())
                .filter(at ->
                        parry.start() <= discourse.sentence().get(at).span().start()
                                && discourse.sentence().get(at).span().end() <= parry.end()
                                && DETERMINING.stream().anyMatch(category -> isA(category, at - 1)))
                .boxed()
                .flatMap(at -> tongue.lexicon().at(discourse.sentence(), at).stream())
                .anyMatch(match -> match.entry().category().equals("ACTN")
                        && match.entry().features().is("role", "riposte"));
    }

    private boolean isA(String category, int at) {
        return tongue.lexicon().at(discourse.sentence(), at).stream()
                .anyMatch(match ->
                        match.end() == at + 1 && match.entry().category().equals(category));
    }

    /** 'Lunge, hold it, and come back to guard': he who comes on guard out of his lunge has recovered. */
    private boolean isInTheLunge() {
        int at = discourse.size() - 1;
        while (at >= 0 && keepsTheLunge(discourse.get(at).action())) {
            at--;
        }
        return at >= 0
                && discourse.get(at).action() instanceof Action.Lunge
                && discourse.get(at).isCertain()
                && discourse.get(at).subject().equals(discourse.subject());
    }

    /** What may be done in the lunge without an end of it; a hand that goes home behind a parry there may stay in it. */
    private static boolean keepsTheLunge(Action action) {
        return action instanceof Action.Strike
                || (action instanceof Action.Answer answer
                        && Set.of(Action.Reply.HOLD, Action.Reply.WAIT, Action.Reply.RECEIVE)
                                .contains(answer.reply()));
    }

    /** "Advance, the blade engaged": it stays so. */
    private Action whileStepping(Action said) {
        boolean stepped = discourse.goesOn() && discourse.last().action() instanceof Action.Step;
        return stepped && said instanceof Action.State state && state.measure().isEmpty()
                ? new Action.Answer(Action.Reply.HOLD, state.stance())
                : said;
    }

    /** 'Sixte, then counter-riposte': nothing is told before but the name. */
    private boolean behindName() {
        return discourse.goesOn()
                && discourse.sentence().stream()
                        .anyMatch(token -> token.span().equals(discourse.last().span()));
    }

    /** "Take octave and riposte", "four, six, then riposte": what is answered from there was parried there. */
    private void parriedWith() {
        int last = discourse.size() - 1;
        if (last < discourse.begins() || !(discourse.get(last).action() instanceof Action.Place)) {
            return;
        }
        boolean parried = discourse.ofSentence().stream().anyMatch(told -> told.action() instanceof Action.Parry);
        if (parried) {
            return;
        }
        int at = last;
        while (at >= discourse.begins() && discourse.get(at).action() instanceof Action.Place place) {
            discourse.become(
                    at,
                    new Action.Parry(
                            Optional.of(place.position()), ParryKind.UNSTATED, Aim.UNSTATED, place.inTheLunge()));
            at--;
        }
    }

    private static boolean carries(Contact contact) {
        return contact == Contact.BIND || contact == Contact.CROISE || contact == Contact.ENVELOP;
    }

    /** "Take four and croisé": what carries the blade away from there has engaged it there. */
    private void engagedThere(Action.Contact contact) {
        int last = discourse.size() - 1;
        if (carries(contact)
                && last >= 0
                && discourse.get(last).action() instanceof Action.Place place
                && !place.inTheLunge()) {
            discourse.become(
                    last, new Action.OnBlade(Action.Contact.ENGAGE, Optional.of(place.position()), Aim.UNSTATED));
        }
    }

    static boolean isCourtesy(Action action) {
        return action instanceof Action.Salute || action instanceof Action.Mask;
    }
}
