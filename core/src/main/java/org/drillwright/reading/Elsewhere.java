package org.drillwright.reading;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.grammar.Chart;
import org.drillwright.grammar.Phrase;
import org.drillwright.lexicon.Token;
import org.drillwright.meaning.Meant;

/**
 * What another does, or when or why something is done, in words that are not all read: from the words that begin it up to
 * a sign, an 'and' or what may be done by the one whose turn it is.
 */
final class Elsewhere {

    private static final Set<String> JOINING = Set.of("SEP", "SEPOR");
    private static final Set<String> NAMING = Set.of("PERSON", "POSS");

    private final LanguageTables tongue;
    private final List<Token> sentence;
    private final Chart<Meant> chart;
    private final IdentityHashMap<Phrase<Meant>, Optional<SentencePart>> known = new IdentityHashMap<>();

    Elsewhere(LanguageTables tongue, List<Token> sentence, Chart<Meant> chart) {
        this.tongue = tongue;
        this.sentence = sentence;
        this.chart = chart;
    }

    /** How far it goes from the words that begin it; empty if it may as well tell of the one whose turn it is. */
    Optional<SentencePart> told(Phrase<Meant> opening) {
        return known.computeIfAbsent(opening, this::found);
    }

    private Optional<SentencePart> found(Phrase<Meant> opening) {
        int end = opening.to();
        while (end < sentence.size() && sentence.get(end).isWord() && !isJoined(end) && !ownMayBegin(opening, end)) {
            end++;
        }
        boolean byHimself = end == sentence.size() || sentence.get(end).folded().equals(":");
        boolean perhapsOwn = opening.features().has("top") && opening.features().has("pn") && !byHimself;
        boolean nothing = end == opening.to() || perhapsOwn || mayTell(end) || !isOfThisLanguage(opening.to(), end);
        return nothing
                ? Optional.empty()
                : Optional.of(
                        new SentencePart(SentencePart.Kind.ABOUT, opening.from(), end, opening.features(), List.of()));
    }

    /** Whether what may be an order where it ends may as well tell what he does: Italian 'affonda'. */
    private boolean mayTell(int end) {
        return end < sentence.size() && chart.from(end).stream().anyMatch(phrase -> isAct(phrase, "3"));
    }

    /** Whether no more words are strange to the language than are known in it. */
    private boolean isOfThisLanguage(int from, int to) {
        long known = sentence.subList(from, to).stream()
                .filter(token -> tongue.knows(token.folded()))
                .count();
        return 2 * known >= to - from;
    }

    private boolean isJoined(int at) {
        return chart.from(at).stream().anyMatch(phrase -> JOINING.contains(phrase.category()));
    }

    /** Whether an order or what somebody else does may begin here. */
    private boolean ownMayBegin(Phrase<Meant> opening, int at) {
        boolean verb = at == opening.to() && !opening.features().has("pn");
        boolean mayOrder = !verb && !isWithin(opening, at);
        boolean namesNobody = opening.features().has("imp");
        return chart.from(at).stream()
                .anyMatch(phrase -> (mayOrder && isAct(phrase, "base"))
                        || (namesNobody && isOneself(phrase))
                        || isToldOfOthers(phrase));
    }

    private static boolean isAct(Phrase<Meant> phrase, String form) {
        return phrase.category().equals("ACT") && phrase.features().is("form", form);
    }

    private static boolean isOneself(Phrase<Meant> phrase) {
        return NAMING.contains(phrase.category()) && phrase.features().is("who", "self");
    }

    private static boolean isToldOfOthers(Phrase<Meant> phrase) {
        boolean told = phrase.category().equals("S") && !phrase.features().is("who", "other");
        boolean called = phrase.category().equals("FRAG") && phrase.features().has("voc");
        return told || called;
    }

    /** Whether a word belongs to what stands before it: 'the parry', 'to lunge'. */
    private boolean isWithin(Phrase<Meant> opening, int at) {
        for (int from = opening.to(); from < at; from++) {
            for (Phrase<Meant> phrase : chart.from(from)) {
                boolean noun = phrase.category().equals("NP") && phrase.to() > at;
                boolean linked = phrase.category().equals("LINK") && phrase.to() == at;
                if (noun || linked) {
                    return true;
                }
            }
        }
        return false;
    }
}
