package org.drillwright.print.bench.peers;

/**
 * How long something took.
 *
 * @param clock by the clock, in nanoseconds
 * @param processor what the processors spent on it, in nanoseconds
 * @param result what it answered
 */
record Timed(long clock, long processor, String result) {}
