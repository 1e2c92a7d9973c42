package org.drillwright.print.command.ask;

/** The conversation is over: somebody said 'quit', or no more answers come. */
final class Over extends RuntimeException {

    private final boolean said;

    /** @param said whether it was said; else the input ended in the middle of a line */
    Over(boolean said) {
        super(null, null, false, false);
        this.said = said;
    }

    boolean wasSaid() {
        return said;
    }
}
