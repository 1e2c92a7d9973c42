package org.drillwright.reading;

import java.util.List;
import java.util.Optional;
import org.drillwright.meaning.Meant;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;

/**
 * Whether 'he', 'they' or the partner, of whom alone a text tells, is the one whose turn it is, and what is told of that one
 * then.
 */
final class Coreference {

    private final Discourse discourse;
    private final Participants participants;
    private final Cohesion cohesion;

    Coreference(Discourse discourse, Participants participants, Cohesion cohesion) {
        this.discourse = discourse;
        this.participants = participants;
        this.cohesion = cohesion;
    }

    /** Takes for the one whose turn it is whoever the whole text can only tell of so. */
    void ofWhole() {
        if (!discourse.isEmpty()) {
            thoseWhoSalute();
        } else if (participants.his().size() > 1 && mayTellOfHim()) {
            acts(participants.his());
        }
    }

    /** That the partner of whom it tells to 'you', if it does, is the one whose turn it is. */
    void ofYourPartner() {
        if (tellsOfYourPartner()) {
            acts(participants.partners());
        }
    }

    /**
     * That the one of whom alone the text tells is the one whose turn it is, be it one action only: 'he lunges to the
     * chest'.
     */
    void ofOneself() {
        if (mayTellOfPartner()) {
            acts(participants.partners());
        } else if (discourse.isEmpty() && mayTellOfHim()) {
            acts(participants.his());
        }
    }

    /** 'The masks being put on, they engage': where they salute or mask, what they do is done by both. */
    private void thoseWhoSalute() {
        boolean salutedAlready =
                discourse.clauses().stream().anyMatch(clause -> clause.action() instanceof Action.Salute);
        boolean courteous = discourse.clauses().stream().anyMatch(clause -> FencingPhrase.isCourtesy(clause.action()))
                || participants.his().stream()
                        .anyMatch(told ->
                                told.meant() instanceof Meant.Does does && FencingPhrase.isCourtesy(does.action()));
        boolean twice = salutedAlready
                && participants.his().stream()
                        .anyMatch(told ->
                                told.meant() instanceof Meant.Does does && does.action() instanceof Action.Salute);
        if (participants.anotherActs() || !courteous || twice) {
            return;
        }
        discourse.subject(Optional.empty());
        discourse.beginAnew();
        for (int one = participants.his().size() - 1; one >= 0; one--) {
            Participants.Told told = participants.his().get(one);
            int end = discourse.size();
            discourse.join(told.at() == 0 ? Clause.Join.BEGINS : Clause.Join.AND);
            cohesion.add(told.meant(), told.span());
            discourse.move(end, told.at());
        }
    }

    /** Whether 'he' does something in it and nobody else is named, so that it may be told of the one whose turn it is. */
    boolean mayTellOfHim() {
        return !participants.his().isEmpty() && participants.hisUnread().isEmpty() && !participants.anotherActs();
    }

    /** Whether he or the partner, of whom alone it tells, may be the one whose turn it is; asked before {@link #ofWhole()}. */
    boolean mayTellOfOneself() {
        return (discourse.isEmpty() && mayTellOfHim()) || mayTellOfPartner();
    }

    private boolean mayTellOfPartner() {
        return tellsOfPartnerAlone() && !participants.speaksToSomebody();
    }

    /** Whether it tells 'you' what your partner does, and nothing else; asked before {@link #ofWhole()}. */
    boolean tellsOfYourPartner() {
        return tellsOfPartnerAlone() && participants.speaksToSomebody();
    }

    private boolean tellsOfPartnerAlone() {
        return discourse.isEmpty()
                && participants.his().isEmpty()
                && participants.hisUnread().isEmpty()
                && !participants.partners().isEmpty();
    }

    /** That the one of whom alone the text tells is the one whose turn it is: a handbook tells of the pupil so. */
    private void acts(List<Participants.Told> tale) {
        discourse.goBackTo(0);
        discourse.join(Clause.Join.BEGINS);
        for (Participants.Told told : tale) {
            discourse.subject(Optional.empty());
            cohesion.add(told.meant(), told.span());
            discourse.join(Clause.Join.AND);
        }
    }
}
