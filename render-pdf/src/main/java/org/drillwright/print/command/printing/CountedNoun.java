package org.drillwright.print.command.printing;

import org.drillwright.wording.Message;

/** A number with its noun. */
public final class CountedNoun {

    private CountedNoun() {}

    /**
     * {@code 1 card}, {@code 2 cards}.
     *
     * @param noun which of the words under {@code count}
     */
    public static Message of(int number, String noun) {
        return Message.counted(CountedNoun.class, "count." + noun, number);
    }
}
