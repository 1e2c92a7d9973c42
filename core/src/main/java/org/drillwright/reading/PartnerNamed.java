package org.drillwright.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.Token;

/**
 * The partner in words that are told to both: beside the leader, who is told first, that is the follower (common practice, no
 * source).
 */
final class PartnerNamed {

    private final Lexicon lexicon;
    private final Optional<String> follower;

    PartnerNamed(Tongue tongue) {
        this.lexicon = tongue.lexicon();
        this.follower = lexicon.forms().keySet().stream()
                .filter(entry ->
                        entry.category().equals("PERSON") && entry.features().is("who", "follower"))
                .map(entry -> entry.lemma())
                .filter(lemma -> !lemma.contains(" "))
                .findFirst();
    }

    /** The sentence with the follower named wherever it says the partner. */
    List<Token> in(List<Token> sentence) {
        List<Token> read = new ArrayList<>();
        int at = 0;
        while (at < sentence.size()) {
            Optional<Lexicon.Match> partner = follower.isEmpty() ? Optional.empty() : partnerAt(sentence, at);
            int end = partner.map(Lexicon.Match::end).orElse(at + 1);
            Token token = sentence.get(at);
            read.add(
                    partner.isEmpty()
                            ? token
                            : new Token(
                                    follower.get(),
                                    token.span().to(sentence.get(end - 1).span())));
            at = end;
        }
        return List.copyOf(read);
    }

    private Optional<Lexicon.Match> partnerAt(List<Token> sentence, int at) {
        return lexicon.at(sentence, at).stream()
                .filter(match -> match.entry().category().equals("PERSON"))
                .filter(match -> match.entry().features().is("who", "other")
                        && !match.entry().features().has("pn"))
                .max(Comparator.comparingInt(Lexicon.Match::end));
    }
}
