package org.drillwright.reading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.lexicon.Token;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Doubt;
import org.drillwright.source.Span;

/**
 * The clauses told so far, in the order in which they are done, with the marks of where a sentence, a stretch and a piece
 * begin in them, and with what the next clause is told.
 */
final class Discourse {

    private final List<Clause> clauses = new ArrayList<>();
    private final List<Span> open = new ArrayList<>();
    private final List<Span> unread = new ArrayList<>();

    private List<Token> sentence = List.of();

    /** Where the clauses of the sentence begin. */
    private int begins;

    /** Where the clauses of the sentence before begin. */
    private int earlier;

    /** Where the clauses of the stretch between two signs begin. */
    private int stretch;

    /** Where the clauses of the piece before begin. */
    private int latest;

    /** How many clauses stood before what was last told beside them: what another does, when, or why. */
    private int besides;

    /** Where it stands that something is let come that may yet be met or gone from; -1 if nothing is. */
    private int coming = -1;

    /** Who acts until somebody else is named: empty for the one whose turn it is. */
    private Optional<Side> subject = Optional.empty();

    private Clause.Join join = Clause.Join.BEGINS;

    /** Whether it is left open which of the things told in the sentence is done. */
    private boolean choice;

    void sentence(List<Token> tokens) {
        sentence = tokens;
        earlier = begins;
        begins = clauses.size();
        stretch = clauses.size();
        subject = Optional.empty();
        choice = false;
        join = Clause.Join.BEGINS;
    }

    List<Token> sentence() {
        return sentence;
    }

    Span span(SentencePart piece) {
        return sentence.get(piece.from()).span().to(sentence.get(piece.to() - 1).span());
    }

    List<Clause> clauses() {
        return Collections.unmodifiableList(clauses);
    }

    List<Clause> ofSentence() {
        return clauses().subList(begins, clauses.size());
    }

    int size() {
        return clauses.size();
    }

    boolean isEmpty() {
        return clauses.isEmpty();
    }

    Clause get(int at) {
        return clauses.get(at);
    }

    /** Whether a clause was told in this sentence. */
    boolean goesOn() {
        return clauses.size() > begins;
    }

    /** The clause told last; there is one. */
    Clause last() {
        return clauses.get(clauses.size() - 1);
    }

    int begins() {
        return begins;
    }

    int earlier() {
        return earlier;
    }

    int stretch() {
        return stretch;
    }

    int latest() {
        return latest;
    }

    int besides() {
        return besides;
    }

    Optional<Side> subject() {
        return subject;
    }

    void subject(Optional<Side> who) {
        subject = who;
    }

    Clause.Join join() {
        return join;
    }

    void join(Clause.Join how) {
        join = how;
    }

    void leaveChoice() {
        choice = true;
    }

    /** That the sentence takes up the clauses from there. */
    void goBackTo(int at) {
        begins = Math.min(begins, at);
    }

    void beginAnew() {
        begins = clauses.size();
    }

    void beginStretch() {
        stretch = clauses.size();
    }

    /** That a piece began at that clause. */
    void beginPiece(int at) {
        latest = at;
    }

    void tellBeside() {
        besides = clauses.size();
    }

    /**
     * Whether what comes now may belong to that clause: the same one acts, nothing is left open, and nothing was told between
     * them that may have changed what is done: 'lunge. When he parries, hit the flank' are two strokes.
     */
    boolean goesOnFrom(int at) {
        return at >= 0 && clauses.get(at).subject().equals(subject) && !choice && besides <= at;
    }

    void tell(Action action, Span span) {
        Set<Doubt> doubts = choice ? EnumSet.of(Doubt.CHOICE) : EnumSet.noneOf(Doubt.class);
        clauses.add(new Clause(action, subject, span, join, doubts));
        join = Clause.Join.WITH;
    }

    void append(Clause clause) {
        clauses.add(clause);
    }

    /** That another action is told in place of the one there. */
    void become(int at, Action action) {
        clauses.set(at, clauses.get(at).with(action));
    }

    /** That another action is told in place of the last one, by these words, too. */
    void replace(Action action, Span more) {
        Clause last = clauses.remove(clauses.size() - 1);
        clauses.add(new Clause(action, last.subject(), last.span().to(more), last.join(), last.doubts()));
    }

    /** Puts the clauses from one place on before those of an earlier place. */
    void move(int from, int to) {
        List<Clause> moved = List.copyOf(clauses.subList(from, clauses.size()));
        clauses.subList(from, clauses.size()).clear();
        clauses.addAll(to, moved);
    }

    /** "Followers, too": what was told of the others just before. */
    void repeat() {
        int from = begins < clauses.size() ? begins : earlier;
        List<Clause> told = List.copyOf(clauses.subList(from, clauses.size()));
        for (Clause clause : told) {
            clauses.add(new Clause(clause.action(), subject, clause.span(), clause.join(), clause.doubts()));
        }
    }

    /** That the clause there lets something come, which may yet be met or gone from. */
    void letCome(int at) {
        coming = at;
    }

    /** Where it stands that the one who acts lets something come, if that is still there as it was told. */
    Optional<Integer> whatComes(Action received) {
        boolean comes = coming >= 0
                && coming < clauses.size()
                && clauses.get(coming).action().equals(received)
                && clauses.get(coming).subject().equals(subject);
        return comes ? Optional.of(coming) : Optional.empty();
    }

    void takeOut(int at) {
        clauses.remove(at);
        begins = behind(begins, at);
        earlier = behind(earlier, at);
        stretch = behind(stretch, at);
        latest = behind(latest, at);
        besides = behind(besides, at);
        coming = coming == at ? -1 : behind(coming, at);
    }

    /** Where a place is now that another was taken out before it. */
    private static int behind(int place, int at) {
        return place > at ? place - 1 : place;
    }

    void doubt(int at, Doubt doubt) {
        if (at >= begins && at < clauses.size()) {
            Clause clause = clauses.get(at);
            Set<Doubt> doubts = EnumSet.of(doubt);
            doubts.addAll(clause.doubts());
            clauses.set(at, new Clause(clause.action(), clause.subject(), clause.span(), clause.join(), doubts));
        }
    }

    /** Leaves in doubt what was told in this sentence from there on. */
    void doubtFrom(int first, Doubt doubt) {
        for (int at = first; at < clauses.size(); at++) {
            doubt(at, doubt);
        }
    }

    void leaveUnread(Span span) {
        unread.add(span);
    }

    void leaveOpen(Span span) {
        open.add(span);
    }

    List<Span> unread() {
        return inOrder(unread);
    }

    List<Span> open() {
        return inOrder(open);
    }

    /** Words that were written as one share a place; it counts once. */
    private static List<Span> inOrder(List<Span> spans) {
        return spans.stream()
                .distinct()
                .sorted(Comparator.comparingInt(Span::start))
                .toList();
    }
}
