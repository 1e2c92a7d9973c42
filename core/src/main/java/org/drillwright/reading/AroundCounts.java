package org.drillwright.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.meaning.Meant;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Utterance;
import org.drillwright.source.Span;

/**
 * What a text around the counts cannot tell. A start says how the two stand, a closing how they part: in neither anybody lunges
 * or attacks. 'A lunge away' is a measure there, and what names such a deed otherwise is not understood.
 */
final class AroundCounts {

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");

    private AroundCounts() {}

    /** Whether nobody does this in a start; an arm may be out, a hand may be placed. */
    static boolean isNoStart(Action action) {
        return isNoParting(action) || action instanceof Action.Step;
    }

    /** Whether nobody does this when the drill is over. */
    static boolean isNoParting(Action action) {
        return action instanceof Action.Lunge
                || action instanceof Action.Parry
                || (action instanceof Action.Strike strike && strike.role() != Action.Role.EXTENSION);
    }

    /** The divisions that pass over the same words as the likeliest and tell of nothing that nobody does in a start; all, if none does. */
    static List<Segmentation.Division> of(List<Segmentation.Division> divisions) {
        return fitting(divisions, AroundCounts::isNoStart);
    }

    /** The same for a closing, in which masks that go up or down come off, where the words can say so. */
    static List<Segmentation.Division> ofParting(List<Segmentation.Division> divisions) {
        return fitting(divisions, AroundCounts::putsMaskOn);
    }

    static boolean putsMaskOn(Action action) {
        return action instanceof Action.Mask mask && mask.on();
    }

    private static List<Segmentation.Division> fitting(
            List<Segmentation.Division> divisions, Predicate<Action> nobodyDoes) {
        List<Segmentation.Division> standing = divisions.stream()
                .filter(one -> one.gaps().equals(divisions.get(0).gaps()))
                .filter(one -> one.pieces().stream()
                        .flatMap(piece -> piece.meant().stream())
                        .noneMatch(meant -> meant instanceof Meant.Does does && nobodyDoes.test(does.action())))
                .toList();
        return standing.isEmpty() ? divisions : standing;
    }

    /** The same text, in which what nobody does there is not read. */
    static Utterance without(Utterance told, String text, Predicate<Action> nobodyDoes) {
        if (told.actions().stream().noneMatch(nobodyDoes)) {
            return told;
        }
        List<Clause> clauses = new ArrayList<>();
        List<Span> unread = new ArrayList<>(told.unread());
        for (Clause clause : told.clauses()) {
            boolean done = !nobodyDoes.test(clause.action());
            clauses.add(
                    done
                            ? clause
                            : clause.with(new Action.Unread(text.substring(
                                    clause.span().start(), clause.span().end()))));
            if (!done) {
                unread.addAll(words(text, clause.span()));
            }
        }
        List<Span> inOrder = unread.stream()
                .distinct()
                .sorted(Comparator.comparingInt(Span::start))
                .toList();
        return new Utterance(
                clauses, inOrder, told.open(), told.readings(), List.of(), told.tradeWords(), told.telling());
    }

    private static List<Span> words(String text, Span clause) {
        List<Span> words = new ArrayList<>();
        Matcher word = WORD.matcher(text).region(clause.start(), clause.end());
        while (word.find()) {
            words.add(new Span(word.start(), word.end()));
        }
        return words;
    }
}
