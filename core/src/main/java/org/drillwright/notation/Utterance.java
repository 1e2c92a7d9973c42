package org.drillwright.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.source.Span;

/**
 * What the reader made of a text.
 *
 * @param clauses the actions in their order
 * @param unread words that nothing accounts for, within the text, in its order
 * @param open words that leave something open: 'or', 'if', 'maybe'
 * @param readings words that can be read two ways, of which playing did not show which is meant
 * @param others what else the text may say, the likeliest first
 * @param tradeWords how many of its words are terms of the trade
 * @param telling of whom it tells
 */
public record Utterance(
        List<Clause> clauses,
        List<Span> unread,
        List<Span> open,
        List<TwoReadings> readings,
        List<OtherReading> others,
        int tradeWords,
        Telling telling) {

    public static final Utterance NOTHING =
            new Utterance(List.of(), List.of(), List.of(), List.of(), List.of(), 0, Telling.UNSAID);

    public Utterance {
        clauses = List.copyOf(clauses);
        unread = List.copyOf(unread);
        open = List.copyOf(open);
        readings = List.copyOf(readings);
        others = List.copyOf(others);
    }

    /** The same, with what else the text may say. */
    public Utterance orElse(List<OtherReading> more) {
        return new Utterance(clauses, unread, open, readings, more, tradeWords, telling);
    }

    /** The same, said to be open in some words. */
    public Utterance leaving(List<TwoReadings> undecided) {
        return new Utterance(clauses, unread, open, undecided, List.of(), tradeWords, telling);
    }

    /** The same words, with these actions. */
    public Utterance doing(List<Clause> actions) {
        return new Utterance(actions, unread, open, readings, others, tradeWords, telling);
    }

    /** The same words, of which it is not known who does what they tell: nothing of them is played, and all is said to be unread. */
    public Utterance byNobodyKnown() {
        return clauses.stream()
                .map(Clause::span)
                .reduce(Span::to)
                .map(words -> new Utterance(
                        List.of(new Clause(new Action.Unread("words"), Optional.empty(), words, Clause.Join.BEGINS)),
                        List.of(words),
                        open,
                        List.of(),
                        List.of(),
                        tradeWords,
                        telling))
                .orElse(this);
    }

    /** What of it one side does: in a turn, what the other does is said about somebody else. */
    public Utterance by(Side side) {
        List<Clause> own = clauses.stream()
                .filter(clause -> clause.subject().filter(who -> who != side).isEmpty())
                .toList();
        return new Utterance(
                own,
                unread,
                open,
                readings,
                others.stream()
                        .map(other -> new OtherReading(other.utterance().by(side), other.kind()))
                        .toList(),
                tradeWords,
                telling);
    }

    /** What it says if he of whom it tells is the one whose turn it is; empty if it does not tell of another so. */
    public Optional<Utterance> ofOneself() {
        return otherwise(OtherReading.Kind.OF_ONESELF);
    }

    /** What it says if the partner of whom it tells to 'you' is the one whose turn it is; empty if it does not tell so. */
    public Optional<Utterance> ofYourPartner() {
        return otherwise(OtherReading.Kind.OF_YOUR_PARTNER);
    }

    private Optional<Utterance> otherwise(OtherReading.Kind kind) {
        return others.stream()
                .filter(other -> other.kind() == kind)
                .map(OtherReading::utterance)
                .findFirst();
    }

    /** The actions in their order. */
    public List<Action> actions() {
        return clauses.stream().map(Clause::action).toList();
    }

    /** Whether all of the text could be read: no word is left over, and no action is in doubt. */
    public boolean isRead() {
        return unread.isEmpty()
                && clauses.stream()
                        .allMatch(clause -> clause.isCertain() && !(clause.action() instanceof Action.Unread));
    }

    /**
     * The words that were not read, those beside each other as one.
     *
     * @param text that it was read from
     */
    public List<Span> stretchesUnread(String text) {
        List<Span> stretches = new ArrayList<>();
        for (Span word : unread) {
            int last = stretches.size() - 1;
            boolean beside = last >= 0
                    && stretches.get(last).end() <= word.start()
                    && text.substring(stretches.get(last).end(), word.start()).isBlank();
            if (beside) {
                stretches.set(last, stretches.get(last).to(word));
            } else {
                stretches.add(word);
            }
        }
        return stretches;
    }
}
