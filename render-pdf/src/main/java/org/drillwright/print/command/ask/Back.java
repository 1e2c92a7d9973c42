package org.drillwright.print.command.ask;

/** Somebody wants to go back to the question before. */
final class Back extends RuntimeException {

    Back() {
        super(null, null, false, false);
    }
}
