package org.drillwright.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.drillwright.lexicon.Features;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.Token;
import org.drillwright.model.Side;

/**
 * The partner in words that are told to both: he is the other than the one by whom they are told, beside the leader, who is
 * told first, the follower (common practice, no source). Where both are named, as master and pupil, so is the one who tells.
 */
final class PartnerNamed {

    private final Lexicon lexicon;
    private final Side side;
    private final Optional<String> partner;
    private final Optional<String> teller;

    PartnerNamed(LanguageTables tongue, Side teller) {
        this.lexicon = tongue.lexicon();
        this.side = teller;
        this.partner = name(teller.other());
        this.teller = name(teller);
    }

    private Optional<String> name(Side side) {
        return lexicon.ofCategory("PERSON").stream()
                .filter(entry -> entry.features().is("who", word(side)))
                .map(entry -> entry.lemma())
                .filter(lemma -> !lemma.contains(" "))
                .findFirst();
    }

    /** The sentence with the side named wherever it says the partner, or the pupil beside him who leads or follows. */
    List<Token> in(List<Token> sentence) {
        List<Token> partnerNamed = named(sentence, PartnerNamed::isPartner, partner);
        if (!partnerNamed.equals(sentence)) {
            return named(partnerNamed, PartnerNamed::isTeller, teller);
        }
        boolean leads = names(sentence, Side.LEADER);
        return leads == names(sentence, Side.FOLLOWER)
                ? sentence
                : named(sentence, PartnerNamed::isTeller, leads == (side == Side.LEADER) ? partner : teller);
    }

    private boolean names(List<Token> sentence, Side one) {
        String word = word(one);
        return IntStream.range(0, sentence.size())
                .anyMatch(at ->
                        personAt(sentence, at, person -> person.is("who", word)).isPresent());
    }

    private static String word(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    private static boolean isPartner(Features person) {
        return person.is("who", "other") && !person.has("pn");
    }

    private static boolean isTeller(Features person) {
        return person.is("who", "self") && person.has("st");
    }

    private List<Token> named(List<Token> sentence, Predicate<Features> person, Optional<String> name) {
        List<Token> read = new ArrayList<>();
        int at = 0;
        while (at < sentence.size()) {
            Optional<Lexicon.Match> found = name.isEmpty() ? Optional.empty() : personAt(sentence, at, person);
            int end = found.map(Lexicon.Match::end).orElse(at + 1);
            Token token = sentence.get(at);
            read.add(
                    found.isEmpty()
                            ? token
                            : new Token(
                                    name.get(),
                                    token.span().to(sentence.get(end - 1).span())));
            at = end;
        }
        return List.copyOf(read);
    }

    private Optional<Lexicon.Match> personAt(List<Token> sentence, int at, Predicate<Features> person) {
        return lexicon.at(sentence, at).stream()
                .filter(match -> match.entry().category().equals("PERSON"))
                .filter(match -> person.test(match.entry().features()))
                .max(Comparator.comparingInt(Lexicon.Match::end));
    }
}
