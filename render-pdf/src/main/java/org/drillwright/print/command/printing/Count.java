package org.drillwright.print.command.printing;

import org.drillwright.wording.Message;

/** A number with its noun. */
public final class Count {

    private Count() {}

    /**
     * {@code 1 card}, {@code 2 cards}.
     *
     * @param noun which of the words under {@code count}
     */
    public static Message of(int number, String noun) {
        return Message.counted(Count.class, "count." + noun, number);
    }
}
