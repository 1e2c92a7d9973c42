package org.drillwright.fuzz;

import java.util.List;

/** Bytes as a row of choices, read from the front. When they are used up, every further choice is the first. */
public final class Picks {

    private final byte[] bytes;
    private int at;

    public Picks(byte[] bytes) {
        this.bytes = bytes.clone();
    }

    /** Whether there is a byte left. */
    public boolean hasMore() {
        return at < bytes.length;
    }

    /** A number from 0, below a bound of at most 65536. */
    public int below(int bound) {
        int number = next();
        return (bound > 256 ? number << 8 | next() : number) % bound;
    }

    public boolean yes() {
        return below(2) == 1;
    }

    public <T> T of(List<T> choices) {
        return choices.get(below(choices.size()));
    }

    private int next() {
        return hasMore() ? bytes[at++] & 0xFF : 0;
    }
}
