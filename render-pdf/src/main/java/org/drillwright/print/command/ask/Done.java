package org.drillwright.print.command.ask;

/**
 * How a command ended.
 *
 * @param code its exit code
 * @param said all that it said, but for why it could not run
 */
public record Done(int code, String said) {}
