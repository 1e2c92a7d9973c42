package org.drillwright.reading;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.lexicon.Features;
import org.drillwright.lexicon.LexicalEntry;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.Token;
import org.drillwright.notation.Telling;

/** How a part of a sentence tells of the one whose turn it is: by a word for 'I', by a verb that only 'I' has, or by name. */
final class PersonTold {

    private PersonTold() {}

    static Telling in(LanguageTables tongue, List<Token> sentence, SentencePart piece) {
        boolean acts = piece.kind() == SentencePart.Kind.CLAUSE || piece.kind() == SentencePart.Kind.GAP;
        if (!acts || piece.isOfAnother()) {
            return Telling.UNSAID;
        }
        if (tellsFirst(tongue, sentence, piece, "me") || isVerbOfMine(tongue, sentence, piece)) {
            return Telling.FIRST_PERSON;
        }
        boolean named = piece.who()
                        .filter(who -> who.equals("leader") || who.equals("follower"))
                        .isPresent()
                || tellsFirst(tongue, sentence, piece, "st");
        return named ? Telling.BY_NAME : Telling.UNSAID;
    }

    /** Whether it tells what somebody else does, be it that nothing of that is understood. */
    static boolean isAnother(LanguageTables tongue, List<Token> sentence, SentencePart piece) {
        if (piece.kind() != SentencePart.Kind.ABOUT || piece.features().has("deny")) {
            return false;
        }
        List<LexicalEntry> begins = IntStream.range(piece.from(), piece.to())
                .mapToObj(at -> entries(tongue, sentence, at).toList())
                .map(entries -> entries.stream()
                        .filter(entry -> entry.category().equals("PERSON")
                                || entry.category().equals("V"))
                        .toList())
                .filter(entries -> !entries.isEmpty())
                .findFirst()
                .orElse(List.of());
        boolean other = !begins.isEmpty()
                && begins.stream()
                        .allMatch(entry -> entry.category().equals("PERSON")
                                && entry.features().is("who", "other"));
        return piece.isOfAnother() || other;
    }

    private static boolean tellsFirst(LanguageTables tongue, List<Token> sentence, SentencePart piece, String feature) {
        return IntStream.range(piece.from(), piece.to())
                .boxed()
                .flatMap(at -> entries(tongue, sentence, at))
                .filter(entry -> entry.category().equals("PERSON"))
                .findFirst()
                .filter(entry ->
                        entry.features().is("who", "self") && entry.features().has(feature))
                .isPresent();
    }

    /** Whether the first verb of what reads as an order is no order: 'vado a fondo'. */
    private static boolean isVerbOfMine(LanguageTables tongue, List<Token> sentence, SentencePart piece) {
        List<Features> verb = IntStream.range(piece.from(), piece.to())
                .mapToObj(at -> entries(tongue, sentence, at)
                        .filter(entry -> entry.category().equals("V"))
                        .map(LexicalEntry::features)
                        .toList())
                .filter(forms -> !forms.isEmpty())
                .findFirst()
                .orElse(List.of());
        return piece.isForm("base")
                && verb.stream().anyMatch(form -> form.is("form", "1"))
                && verb.stream().noneMatch(form -> form.is("form", "base"));
    }

    private static Stream<LexicalEntry> entries(LanguageTables tongue, List<Token> sentence, int at) {
        return tongue.lexicon().at(sentence, at).stream().map(Lexicon.Match::entry);
    }
}
