package org.drillwright.print.command.ask;

/** Somebody wants to go back to the question before. */
final class StepBack extends RuntimeException {

    StepBack() {
        super(null, null, false, false);
    }
}
