package org.drillwright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.lexicon.Token;
import org.drillwright.meaning.Meant;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Contact;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Doubt;
import org.drillwright.notation.Telling;
import org.drillwright.notation.Utterance;
import org.drillwright.source.Span;

/** Makes clauses of the pieces of sentences: goes over the pieces, and hands each on to those that it is for. */
final class Clauses {

    private final LanguageTables tongue;
    private final Discourse discourse = new Discourse();
    private final Gaps gaps = new Gaps(discourse);
    private final Polarity polarity = new Polarity();
    private final Restatement restatement = new Restatement(discourse);
    private final Participants participants;
    private final FencingPhrase phrase;
    private final Cohesion cohesion;
    private final Coreference coreference;

    private boolean said;
    private boolean moved;
    private Span heard = Span.at(0);

    /** Whether what comes now is done instead of what was told before, so that it is no action of its own. */
    private boolean alternative;

    /**
     * @param tongue the language that the sentences are of
     * @param hadBefore that what is told as done when another thing begins was done on a count before: 'having parried,
     *     riposte'
     */
    Clauses(LanguageTables tongue, boolean hadBefore) {
        this.tongue = tongue;
        participants = new Participants(tongue, discourse);
        phrase = new FencingPhrase(tongue, discourse, participants);
        cohesion = new Cohesion(discourse, restatement, phrase, hadBefore);
        coreference = new Coreference(discourse, participants, cohesion);
    }

    void sentence(List<Token> tokens, List<SentencePart> pieces) {
        Span whole = tokens.get(0).span().to(tokens.get(tokens.size() - 1).span());
        heard = said ? heard.to(whole) : whole;
        discourse.sentence(tokens);
        participants.sentence(tokens);
        phrase.sentence();
        polarity.sentence();
        restatement.sentence();
        alternative = false;
        for (SentencePart piece : inOrderDone(pieces)) {
            OpenWords.in(tongue, tokens, piece).forEach(discourse::leaveOpen);
            participants.hear(piece);
            take(piece);
        }
        gaps.endStretch();
    }

    /** 'Before lunging, extend the arm': what is done later may be told ahead of what is done first. */
    private static List<SentencePart> inOrderDone(List<SentencePart> pieces) {
        int ahead = 0;
        while (ahead < pieces.size() && !pieces.get(ahead).acts()) {
            ahead++;
        }
        if (ahead == pieces.size() || !pieces.get(ahead).isLater()) {
            return pieces;
        }
        List<SentencePart> order = new ArrayList<>(pieces);
        SentencePart later = order.remove(ahead);
        int first = ahead;
        while (first < order.size() && !order.get(first).acts()) {
            first++;
        }
        order.add(Math.min(first + 1, order.size()), later);
        return order;
    }

    /** A word that nobody looks at any more. */
    void beyond(Token token) {
        discourse.leaveUnread(token.span());
        discourse.append(
                new Clause(new Action.Unread(token.folded()), Optional.empty(), token.span(), Clause.Join.WITH));
    }

    /** Whether something is told as done when another begins, so that it may have been done on a count before. */
    boolean tellsOfEarlier() {
        return cohesion.tellsOfEarlier();
    }

    /** Whether 'he' does something in it and nobody else is named, so that it may be told of the one whose turn it is. */
    boolean mayTellOfHim() {
        return coreference.mayTellOfHim();
    }

    /** Whether he or the partner, of whom alone it tells, may be the one whose turn it is; asked before {@link #utterance()}. */
    boolean mayTellOfOneself() {
        return coreference.mayTellOfOneself();
    }

    /** Whether it tells 'you' what your partner does, and nothing else; asked before {@link #utterance()}. */
    boolean tellsOfYourPartner() {
        return coreference.tellsOfYourPartner();
    }

    /** What is said if the partner of whom it tells to 'you' is the one whose turn it is. */
    Utterance ofYourPartner() {
        coreference.ofYourPartner();
        return utterance();
    }

    /**
     * What is said if the one of whom alone the text tells is the one whose turn it is, be it one action only: 'he lunges
     * to the chest'; elsewhere as {@link #utterance()}.
     */
    Utterance ofOneself() {
        coreference.ofOneself();
        return utterance();
    }

    Utterance utterance() {
        coreference.ofWhole();
        boolean ofAnother = discourse.isEmpty() && participants.tellsOfAnother();
        if (discourse.isEmpty()) {
            for (Span span : participants.hisUnread()) {
                discourse.leaveUnread(span);
                discourse.append(new Clause(new Action.Unread("words"), Optional.empty(), span, Clause.Join.BEGINS));
            }
        }
        if (discourse.isEmpty() && said) {
            discourse.append(new Clause(
                    new Action.Aside(moved ? Action.Trifle.MOVED : Action.Trifle.OTHER),
                    Optional.empty(),
                    heard,
                    Clause.Join.BEGINS,
                    polarity.isForbidden() ? Set.of(Doubt.DONE) : Set.of()));
        }
        if (participants.bothPartsNamed()) {
            discourse.goBackTo(0);
            for (int at = 0; at < discourse.size(); at++) {
                if (discourse.get(at).subject().isEmpty()) {
                    discourse.doubt(at, Doubt.WHO);
                }
            }
        }
        return new Utterance(
                discourse.clauses(),
                discourse.unread(),
                discourse.open(),
                List.of(),
                List.of(),
                said ? 1 : 0,
                ofAnother ? Telling.OF_ANOTHER : participants.telling());
    }

    private void take(SentencePart piece) {
        switch (piece.kind()) {
            case COMMA, COLON -> {
                boolean colon = piece.kind() == SentencePart.Kind.COLON;
                gaps.endStretch();
                alternative = false;
                restatement.comma(colon);
                polarity.comma(colon);
                if (discourse.join() != Clause.Join.BEGINS) {
                    discourse.join(Clause.Join.COMMA);
                }
            }
            case AND -> {
                gaps.endStretch();
                alternative = false;
                polarity.and(piece);
                discourse.join(Clause.Join.AND);
            }
            case OR -> {
                gaps.endStretch();
                discourse.leaveChoice();
                discourse.leaveOpen(discourse.span(piece));
                alternative = discourse.goesOn();
                discourse.doubt(discourse.size() - 1, Doubt.CHOICE);
            }
            case GAP -> gaps.leave(piece);
            case COUNT, MANNER -> said = true;
            case ABOUT -> about(piece);
            case CLAUSE, FRAGMENT -> clause(piece);
        }
    }

    private void about(SentencePart piece) {
        said = true;
        boolean inTheLunge = piece.features().has("lunged");
        if (!inTheLunge) {
            discourse.tellBeside();
        }
        boolean pupils = participants.isOfPupil(piece);
        boolean partners = participants.isOfNamedPartner(piece);
        participants.keepPupil(piece);
        if (pupils || partners) {
            if (!pupils) {
                discourse.subject(discourse.subject().map(Side::other));
            }
            piece.meant().forEach(meant -> cohesion.add(meant, discourse.span(piece)));
            if (!pupils) {
                discourse.beginPiece(discourse.size());
            }
            return;
        }
        if (inTheLunge) {
            phrase.inTheLunge();
        }
        participants.beside(piece);
        polarity.beside(piece, !discourse.goesOn(), discourse.isEmpty());
        if (piece.features().has("cond")) {
            discourse.leaveChoice();
            boolean alone = discourse.size() == discourse.stretch();
            discourse.doubtFrom(alone ? discourse.begins() : discourse.stretch(), Doubt.CHOICE);
        }
    }

    private void clause(SentencePart piece) {
        said = true;
        moved |= piece.moves() && !piece.isOfAnother() && !polarity.isDenied();
        if (piece.features().has("lunged")) {
            phrase.lunge();
        }
        polarity.clause(piece);
        if (alternative) {
            if (!discourse.goesOn()) {
                discourse.leaveUnread(discourse.span(piece));
            }
            return;
        }
        polarity.order(piece);
        if (piece.isCallTo()) {
            participants.call(piece);
            if (piece.features().has("same")) {
                discourse.repeat();
            }
            return;
        }
        participants.name(piece);
        if (participants.goOnWithOther(piece)) {
            participants.tellsOfHim(piece);
            return;
        }
        participants.act(piece);
        tell(piece);
    }

    /** Tells what is done in a piece by the one who acts. */
    private void tell(SentencePart piece) {
        restatement.begin(piece);
        int first = discourse.size();
        if (piece.features().has("open")) {
            discourse.leaveChoice();
        }
        Optional<Meant> before = Optional.empty();
        for (Meant meant : piece.meant()) {
            boolean again = before.equals(Optional.of(meant));
            restatement.repeat(again && !isPress(meant));
            if (!again || !isOfTheFeet(meant)) {
                cohesion.add(meant, discourse.span(piece));
            }
            restatement.goOn(piece);
            before = Optional.of(meant);
        }
        boolean doneBefore = piece.isForm("having") && !piece.isLater();
        if (doneBefore && discourse.latest() >= discourse.begins() && discourse.latest() < first) {
            discourse.move(first, discourse.latest());
        }
        if (polarity.mayDeny(piece)) {
            discourse.doubtFrom(first, Doubt.DONE);
        }
        if (!piece.meant().isEmpty()) {
            discourse.beginPiece(first);
            gaps.standBeside(piece);
            discourse.join(Clause.Join.WITH);
            restatement.end();
        }
    }

    /** 'Lean on the blade with a steady pressure': one presses but once, however it is told. */
    private static boolean isPress(Meant meant) {
        return meant instanceof Meant.Does does
                && does.action() instanceof Action.OnBlade onBlade
                && onBlade.contact() == Contact.PRESS;
    }

    /** "Jump in with a balestra" is one jump, "run at her with a flèche" one flèche. */
    private static boolean isOfTheFeet(Meant meant) {
        return meant instanceof Meant.Does does
                && (does.action() instanceof Action.Step || does.action() instanceof Action.Lunge);
    }
}
