package org.drillwright.reading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.Token;
import org.drillwright.meaning.Meant;
import org.drillwright.model.Side;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Telling;
import org.drillwright.source.Span;

/** Who takes part in what is told, who of them acts, and what is told of those whose turn it is not. */
final class Participants {

    private final LanguageTables tongue;
    private final Discourse discourse;
    private final List<List<Token>> sentences = new ArrayList<>();

    /** Whether attackers and defenders were named: each is a part in the phrase that either side may have. */
    private final Set<String> parts = new HashSet<>();

    /** Whether the one whose turn it is was told of last as 'the pupil' or 'the fencer', so that 'he' is the same. */
    private boolean pupilActs;

    private boolean calledUpon;

    /** Whether several were named, whose verbs look like orders: 'leaders beat and lunge'. */
    private boolean many;

    private boolean others;

    /** Whether what stands between that and here tells only how the other does it: 'he steps in with his hand high, showing …'. */
    private boolean besideOthers;

    private boolean anotherActs;

    /** What 'he' does, by whom the one may be meant whose turn it is, where nobody else acts. */
    private final List<Told> his = new ArrayList<>();

    /** What the partner does, by whom that one may be meant where the text speaks to nobody. */
    private final List<Told> partners = new ArrayList<>();

    /** What 'he' does of which not every word is read, so that he may be the one whose turn it is. */
    private final List<Span> hisUnread = new ArrayList<>();

    /** Whether the other told of last is the partner by name, not a mere 'he'. */
    private boolean partnerActs;

    /** How the one is told of whose turn it is. */
    private Telling telling = Telling.UNSAID;

    /** Whether it tells of somebody else, be it that nothing of what he does is understood. */
    private boolean tellsOfAnother;

    /** @param at how many clauses stand before it */
    record Told(Meant meant, Span span, int at) {}

    Participants(LanguageTables tongue, Discourse discourse) {
        this.tongue = tongue;
        this.discourse = discourse;
    }

    void sentence(List<Token> tokens) {
        sentences.add(tokens);
        calledUpon = false;
        many = false;
        others = false;
        besideOthers = false;
    }

    /** Notes how a piece tells of the one whose turn it is, and whether it tells of another. */
    void hear(SentencePart piece) {
        Telling told = PersonTold.in(tongue, discourse.sentence(), piece);
        telling = told.compareTo(telling) < 0 ? told : telling;
        tellsOfAnother = tellsOfAnother || PersonTold.isAnother(tongue, discourse.sentence(), piece);
    }

    /** Whether what is told beside is done by the pupil told of last, and the 'he' of it that one. */
    boolean isOfPupil(SentencePart piece) {
        return tells(piece) && pupilActs && piece.features().has("pn");
    }

    /** Whether what is told beside is done by the partner of a side that was named. */
    boolean isOfNamedPartner(SentencePart piece) {
        return tells(piece) && !mayBeOwn(piece) && discourse.subject().isPresent();
    }

    /** Whether the pupil told of last is still the one told of. */
    void keepPupil(SentencePart piece) {
        pupilActs = pupilActs && (isOfPupil(piece) || !tells(piece));
    }

    private static boolean tells(SentencePart piece) {
        return piece.isOfAnother() && !piece.meant().isEmpty();
    }

    /** What another does, or what is told beside what is done. */
    void beside(SentencePart piece) {
        besideOthers = (others || besideOthers) && piece.who().isEmpty();
        others = piece.isOfAnother();
        partnerActs = others && !mayBeOwn(piece);
        anotherActs = anotherActs || partnerActs;
        tellsOfHim(piece);
        if (piece.features().has("top") && piece.features().has("pn")) {
            hisUnread.add(discourse.span(piece));
        }
    }

    /** Whether who acts may be the one whose turn it is: 'he', or 'his partner' where a handbook tells of both. */
    private static boolean mayBeOwn(SentencePart piece) {
        return piece.features().has("pn") || piece.features().has("told");
    }

    void tellsOfHim(SentencePart piece) {
        for (Meant meant : piece.meant()) {
            (partnerActs ? partners : his).add(new Told(meant, discourse.span(piece), discourse.size()));
        }
    }

    /** Those who act from here are named, and nothing else told of them: 'leaders, …'. */
    void call(SentencePart piece) {
        notePart(piece);
        discourse.subject(named(piece));
        calledUpon = true;
        others = piece.isOfAnother();
        anotherActs = anotherActs || others;
    }

    /** Who acts in a piece, if it tells or its verb does. */
    void name(SentencePart piece) {
        notePart(piece);
        if (piece.who().isPresent()) {
            discourse.subject(named(piece));
            others = false;
            many = piece.isForm("base");
        } else if (piece.isForm("base") && !calledUpon && !(many && discourse.join() == Clause.Join.AND)) {
            discourse.subject(Optional.empty());
            others = false;
        }
    }

    private void notePart(SentencePart piece) {
        piece.who().filter(who -> who.equals("att") || who.equals("def")).ifPresent(parts::add);
    }

    private static Optional<Side> named(SentencePart piece) {
        return piece.who().flatMap(Participants::side);
    }

    private static Optional<Side> side(String who) {
        return switch (who) {
            case "leader" -> Optional.of(Side.LEADER);
            case "follower" -> Optional.of(Side.FOLLOWER);
            default -> Optional.empty();
        };
    }

    /** Whether a piece goes on to tell what the other does. */
    boolean goOnWithOther(SentencePart piece) {
        boolean goesOn = others && piece.isForm("3");
        boolean does = (others || besideOthers) && piece.isForm("ing") && !his.isEmpty();
        return (goesOn || does) && !piece.features().has("named");
    }

    /** That the piece is done by the one who acts. */
    void act(SentencePart piece) {
        others = false;
        pupilActs = pupilActs || piece.features().has("named");
    }

    List<Told> his() {
        return Collections.unmodifiableList(his);
    }

    List<Told> partners() {
        return Collections.unmodifiableList(partners);
    }

    List<Span> hisUnread() {
        return Collections.unmodifiableList(hisUnread);
    }

    boolean anotherActs() {
        return anotherActs;
    }

    boolean tellsOfAnother() {
        return tellsOfAnother;
    }

    Telling telling() {
        return telling;
    }

    /** Whether both attackers and defenders were named. */
    boolean bothPartsNamed() {
        return parts.size() > 1;
    }

    /** 'You', 'your'. */
    boolean speaksToSomebody() {
        return sentences.stream()
                .anyMatch(tokens -> IntStream.range(0, tokens.size())
                        .boxed()
                        .flatMap(at -> tongue.lexicon().at(tokens, at).stream().filter(match -> match.end() == at + 1))
                        .map(Lexicon.Match::entry)
                        .anyMatch(entry -> entry.features().is("who", "self")
                                && !entry.features().has("st")));
    }
}
