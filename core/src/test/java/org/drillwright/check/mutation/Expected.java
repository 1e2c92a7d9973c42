package org.drillwright.check.mutation;

import java.util.OptionalInt;

/**
 * A finding that counts as noticing a mutation.
 *
 * @param count from 1; empty where the fault stands outside the counts
 */
record Expected(String rule, OptionalInt count) {

    static Expected at(String rule, int step) {
        return new Expected(rule, OptionalInt.of(step + 1));
    }

    static Expected outside(String rule) {
        return new Expected(rule, OptionalInt.empty());
    }

    @Override
    public String toString() {
        return count.isPresent() ? rule + " at " + count.getAsInt() : rule;
    }
}
