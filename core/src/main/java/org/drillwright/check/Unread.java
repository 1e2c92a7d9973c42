package org.drillwright.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Doubt;
import org.drillwright.notation.Utterance;
import org.drillwright.source.Written;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/**
 * What of a text was not read, and what that leaves open.
 *
 * @param unknown what is not known for it, in words
 * @param words the words, as they are written
 */
record Unread(List<Message> unknown, List<String> words) {

    private static final Unread NONE = new Unread(List.of(), List.of());

    Unread {
        unknown = List.copyOf(unknown);
        words = List.copyOf(words);
    }

    /** What of a turn was not read; a caller's word in a solo drill is no action. */
    static Unread in(Subject subject, int step, Side side) {
        boolean callersWord = !subject.isPartnerDrill() && side == Side.LEADER;
        Written words = subject.turnWords(step, side);
        return callersWord || words.text().isEmpty() ? NONE : of(subject.turn(step, side), words.text(), side);
    }

    private static Unread of(Utterance turn, String text, Side side) {
        if (turn.isRead() && !turn.clauses().isEmpty()) {
            return NONE;
        }
        return new Unread(unknown(turn, side), words(turn, text));
    }

    static List<String> words(Utterance utterance, String text) {
        return utterance.stretchesUnread(text).stream()
                .map(span -> text.substring(span.start(), span.end()))
                .toList();
    }

    private static List<Message> unknown(Utterance turn, Side side) {
        Set<Doubt> doubts = EnumSet.noneOf(Doubt.class);
        turn.clauses().forEach(clause -> doubts.addAll(clause.doubts()));
        boolean whole = doubts.isEmpty() || turn.clauses().stream().anyMatch(Unread::isNoAction);
        List<Message> unknown = new ArrayList<>();
        if (whole || doubts.contains(Doubt.DONE)) {
            unknown.add(of("unknown.what", side));
        }
        for (Doubt doubt : doubts) {
            switch (doubt) {
                case DONE -> {}
                case MANNER -> unknown.add(of("unknown.manner", side));
                case STEPS -> unknown.add(of("unknown.steps", side));
                case WHO -> unknown.add(Message.of(Unread.class, "unknown.who"));
                case MASK -> unknown.add(of("unknown.mask", side));
                case CHOICE -> unknown.add(of("unknown.choice", side));
            }
        }
        return unknown;
    }

    private static Message of(String key, Side side) {
        return Message.of(Unread.class, key, Terms.of(side));
    }

    private static boolean isNoAction(Clause clause) {
        return clause.action() instanceof Action.Unread;
    }
}
