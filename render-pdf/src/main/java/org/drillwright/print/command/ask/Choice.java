package org.drillwright.print.command.ask;

/**
 * One of several answers.
 *
 * @param label as a person reads it
 * @param value what it stands for
 */
record Choice(String label, String value) {}
