package org.drillwright.reading;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.grammar.Grammar;
import org.drillwright.lexicon.LexicalEntry;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.Token;
import org.drillwright.source.Span;
import org.drillwright.wording.PackedFile;

/**
 * A language that turns are written in: its words and its constructions.
 *
 * @param tag of the language (BCP 47)
 */
record LanguageTables(String tag, Lexicon lexicon, Grammar grammar) {

    /** Categories of words that change no action. */
    private static final Set<String> HOW = Set.of("MANNER", "ADJX", "INTJ", "DEG");

    /** The language as it comes with the program. */
    static LanguageTables load(String tag) {
        return new LanguageTables(tag, WordList.of(tag).lexicon(), Grammar.read(lines(tag + "/constructions.grammar")));
    }

    /** How it says actions. */
    Saying saying() {
        return Saying.read(lines(tag + "/saying"), lexicon);
    }

    /** How many of these words are listed; words written as one count once, lest the language that parts them knows more. */
    long known(List<List<Token>> sentences) {
        long known = 0;
        for (List<Token> sentence : sentences) {
            Optional<Span> before = Optional.empty();
            for (Token token : sentence) {
                Optional<Span> place = Optional.of(token.span());
                known += token.isWord() && knows(token.folded()) && !place.equals(before) ? 1 : 0;
                before = place;
            }
        }
        return known;
    }

    /** The words of a text, folded, without its stops. */
    List<String> words(String text) {
        return lexicon.words(text).stream()
                .filter(Token::isWord)
                .map(Token::folded)
                .toList();
    }

    /** Whether these words are listed for how a thing is done, and for nothing else. */
    boolean isManner(String words) {
        List<LexicalEntry> senses = lexicon.entries(words);
        return !senses.isEmpty()
                && senses.stream().allMatch(sense -> sense.category().equals("MANNER"));
    }

    /** Whether a sentence has a word that is listed for how a thing is done or what it is like, and for nothing else. */
    boolean tellsHow(List<Token> sentence) {
        for (int at = 0; at < sentence.size(); at++) {
            List<Lexicon.Match> senses = lexicon.at(sentence, at);
            if (!senses.isEmpty()
                    && senses.stream()
                            .allMatch(sense -> HOW.contains(sense.entry().category()))) {
                return true;
            }
        }
        return false;
    }

    boolean knows(String folded) {
        return lexicon.lists(folded) || grammar.names(folded);
    }

    /** The longest words at a token that leave something open by themselves: or, maybe, when ready; not what is tried. */
    Optional<Lexicon.Match> leavingOpen(List<Token> sentence, int at) {
        List<Lexicon.Match> senses = lexicon.at(sentence, at);
        boolean within = at > 0 && sentence.get(at - 1).isWord();
        boolean duty = within && senses.stream().anyMatch(LanguageTables::isDuty);
        if (senses.stream().anyMatch(match -> match.entry().category().equals("ATTEMPT"))) {
            return Optional.empty();
        }
        return senses.stream()
                .filter(match -> match.entry().category().equals("OR")
                        || match.entry().features().has("open"))
                .filter(match -> !(duty && match.entry().features().has("cond")))
                .max(Comparator.comparingInt(Lexicon.Match::end));
    }

    /** Behind a token, or behind an 'as if' that begins there: it leaves nothing open. */
    int behindPretence(List<Token> sentence, int at) {
        return lexicon.at(sentence, at).stream()
                .filter(match -> match.entry().category().equals("ASIFW"))
                .mapToInt(Lexicon.Match::end)
                .max()
                .orElse(at + 1);
    }

    /** 'He should' says what is to be done, 'should he' when. */
    private static boolean isDuty(Lexicon.Match match) {
        return match.entry().category().equals("WILL")
                && !match.entry().features().has("open");
    }

    static List<String> lines(String name) {
        return PackedFile.text(LanguageTables.class, name).lines().toList();
    }
}
