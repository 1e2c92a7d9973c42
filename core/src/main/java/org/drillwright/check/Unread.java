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

/**
 * What of a text was not read, and what that leaves open.
 *
 * @param unknown what is not known for it, in words
 * @param words the words, as they are written
 */
record Unread(List<String> unknown, List<String> words) {

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

    private static List<String> unknown(Utterance turn, Side side) {
        Set<Doubt> doubts = EnumSet.noneOf(Doubt.class);
        turn.clauses().forEach(clause -> doubts.addAll(clause.doubts()));
        boolean whole = doubts.isEmpty() || turn.clauses().stream().anyMatch(Unread::isNoAction);
        List<String> unknown = new ArrayList<>();
        if (whole || doubts.contains(Doubt.DONE)) {
            unknown.add("what the " + side.word() + " does");
        }
        for (Doubt doubt : doubts) {
            switch (doubt) {
                case DONE -> {}
                case MANNER -> unknown.add("how the " + side.word() + " does it");
                case STEPS -> unknown.add("how the " + side.word() + " steps");
                case WHO -> unknown.add("who does it");
                case MASK -> unknown.add("whether the " + side.word() + "'s mask is on");
                case CHOICE -> unknown.add("which of several things the " + side.word() + " does");
            }
        }
        return unknown;
    }

    private static boolean isNoAction(Clause clause) {
        return clause.action() instanceof Action.Unread;
    }
}
