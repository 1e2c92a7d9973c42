package org.drillwright.print.command;

import org.drillwright.wording.Message;
import picocli.CommandLine.TypeConversionException;

/** An argument is no word of its kind; its message is the rest of a sentence that names the argument. */
final class NotThatWord extends TypeConversionException {

    private final transient Message message;

    NotThatWord(Message message) {
        super(message.english());
        this.message = message;
    }

    Message message() {
        return message;
    }
}
