package org.drillwright.notation;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.drillwright.source.Span;

/** Finds words that leave something open, in the language that the text is written in. */
public final class Choices {

    private final Vocabulary vocabulary;

    public Choices(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** The words of the text that leave something open. */
    public List<Span> in(String text) {
        List<Token> tokens = Tokens.of(text);
        if (open(tokens, form -> true).isEmpty()) {
            return List.of();
        }
        Tongue tongue = tongue(text);
        return open(tokens, form -> form.tongue() == tongue);
    }

    private List<Span> open(List<Token> tokens, Predicate<Form> wanted) {
        return vocabulary.lexemes(tokens, wanted.and(form -> form.term().kind() == TermKind.CHOICE)).stream()
                .filter(lexeme -> lexeme.is(TermKind.CHOICE) || lexeme.folded().equals("/"))
                .map(Lexeme::span)
                .toList();
    }

    /** The language of most of its words, positions aside, whose names are the same in all; English where none is known or several are level. */
    private Tongue tongue(String text) {
        Map<Tongue, Integer> counts = new EnumMap<>(Tongue.class);
        vocabulary
                .lexemes(text)
                .forEach(lexeme -> lexeme.form()
                        .filter(form -> form.term().kind() != TermKind.POSITION)
                        .ifPresent(form ->
                                counts.merge(form.tongue(), lexeme.span().length(), Integer::sum)));
        Tongue most = Tongue.ENGLISH;
        for (Tongue tongue : Tongue.values()) {
            if (counts.getOrDefault(tongue, 0) > counts.getOrDefault(most, 0)) {
                most = tongue;
            }
        }
        return most;
    }
}
