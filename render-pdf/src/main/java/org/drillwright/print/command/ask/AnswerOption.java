package org.drillwright.print.command.ask;

import org.drillwright.wording.Message;

/**
 * One of several answers.
 *
 * @param label as a person reads it
 * @param value what it stands for
 */
record AnswerOption(Message label, String value) {

    /** Labelled with what somebody wrote. */
    static AnswerOption plain(String label, String value) {
        return new AnswerOption(Message.plain(label), value);
    }
}
