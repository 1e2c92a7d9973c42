package org.drillwright.explain;

import java.util.List;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;

/** Says actions back in the words of the trade, so that an author sees what was read. */
final class ActionWords {

    private ActionWords() {}

    /** The actions of one move, without the full stop, as they could be told in the drill. */
    static String of(List<Action> actions, Subject subject) {
        if (actions.stream().anyMatch(Action.Unread.class::isInstance)) {
            return "words that could not be read";
        }
        String said = subject.said(actions);
        return said.isEmpty() ? "nothing in the phrase" : said.substring(0, said.length() - 1);
    }
}
