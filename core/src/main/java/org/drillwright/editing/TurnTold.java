package org.drillwright.editing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.explain.EndWords;
import org.drillwright.explain.StateWords;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Parried;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.State;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Span;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** Tells how a text of a drill was read, and how it leaves the two. */
final class TurnTold {

    private final Subject subject;
    private final List<Message> lines = new ArrayList<>();

    private TurnTold(Subject subject) {
        this.subject = subject;
    }

    /** A turn; its heading is what was read, in the drill's language. */
    static HoverText turn(Subject subject, int step, Side side, Span span) {
        TurnTold told = new TurnTold(subject);
        Utterance read = subject.turn(step, side);
        told.unread(read, subject.turnWords(step, side).text());
        Count count = subject.replay().counts().get(step);
        State after = count.begin();
        for (int at = 0; at < count.moves().size(); at++) {
            Played played = count.moves().get(at);
            if (played.move().by() == side) {
                after = played.after();
                AttackEnd.of(count, at)
                        .map(end -> Message.of(TurnTold.class, "attack.end", EndWords.of(end)))
                        .ifPresent(told.lines::add);
            }
        }
        told.state(after);
        return new HoverText(span, told.said(read), told.lines);
    }

    /** The start, the opening or the closing. */
    static HoverText part(Subject subject, String part, State after, Span span) {
        TurnTold told = new TurnTold(subject);
        Utterance read = subject.script().part(part);
        told.unread(read, subject.words(FieldPath.of(part)).text());
        told.state(after);
        return new HoverText(span, told.said(read), told.lines);
    }

    private Message said(Utterance read) {
        String said = subject.reader().said(read, subject.tongue());
        return said.isEmpty() ? Message.of(TurnTold.class, "read.nothing") : Message.plain(said);
    }

    private void unread(Utterance read, String text) {
        List<Message> words = read.unread().stream()
                .map(span -> Message.quoted(text.substring(span.start(), span.end())))
                .toList();
        if (!words.isEmpty()) {
            lines.add(Message.of(TurnTold.class, "read.not", Message.listed(words)));
        }
    }

    private void state(State state) {
        for (Side side : Side.values()) {
            if (subject.isPartnerDrill() || side == Side.FOLLOWER) {
                lines.add(Message.of(TurnTold.class, "stands", Terms.of(side), StateWords.of(state.of(side))));
            }
        }
        if (subject.isPartnerDrill()) {
            lines.add(StateWords.shared(state));
            threat(state).or(() -> riposte(state)).ifPresent(lines::add);
        }
    }

    private static Optional<Message> threat(State state) {
        for (Side side : Side.values()) {
            Optional<Attack> attack = state.attackOn(side).filter(Attack::meant);
            if (attack.isPresent()) {
                Message attacker = Terms.of(side.other());
                return Optional.of(attack.get()
                        .line()
                        .value()
                        .map(line ->
                                Message.of(TurnTold.class, "threat.line", attacker, Terms.of(side), Terms.of(line)))
                        .orElse(Message.of(TurnTold.class, "threat", attacker, Terms.of(side)))
                        .capital());
            }
        }
        return Optional.empty();
    }

    private static Optional<Message> riposte(State state) {
        return state.parried()
                .value()
                .flatMap(known -> known)
                .map(parried -> Message.of(TurnTold.class, next(parried), Terms.of(parried.by()))
                        .capital());
    }

    private static String next(Parried parried) {
        return parried.against() == Action.Role.ATTACK ? "may.riposte" : "may.counter-riposte";
    }
}
