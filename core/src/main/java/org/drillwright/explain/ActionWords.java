package org.drillwright.explain;

import java.util.List;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;
import org.drillwright.wording.Message;

/** Says actions back in the words of the trade, so that an author sees what was read. */
final class ActionWords {

    private ActionWords() {}

    /** The actions of one move, without the full stop, as they could be told in the drill. */
    static Message of(List<Action> actions, Subject subject) {
        if (actions.stream().anyMatch(Action.Unread.class::isInstance)) {
            return Message.of(ActionWords.class, "words.unread");
        }
        String said = subject.said(actions);
        return said.isEmpty()
                ? Message.of(ActionWords.class, "words.none")
                : Message.plain(said.substring(0, said.length() - 1));
    }
}
