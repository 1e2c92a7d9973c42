package org.drillwright.lexicon;

import java.util.ArrayList;
import java.util.List;

/** What is asked of features: {@code [c=STRIKE|LUNGE,dir,!half]}, that is one of two values, one present, one absent. */
public final class Condition {

    public static final Condition NONE = new Condition(List.of());

    private final Test[] tests;

    /** The bit of the name of each. */
    private final long[] bits;

    /** The bits of the names that have to be there. */
    private final long needed;

    /**
     * One thing that is asked.
     *
     * @param values any of which will do; empty if the name only has to be there
     * @param absent whether it must not hold
     */
    public record Test(String name, List<String> values, boolean absent) {

        public Test {
            values = List.copyOf(values);
        }

        private boolean holds(Features features, long bit) {
            int at = features.at(name, bit);
            boolean there = at >= 0 && (values.isEmpty() || values.contains(features.valueAt(at)));
            return there != absent;
        }
    }

    private Condition(List<Test> tests) {
        this.tests = tests.toArray(Test[]::new);
        this.bits = tests.stream().mapToLong(test -> Features.bit(test.name())).toArray();
        long names = 0;
        for (Test test : tests) {
            names |= test.absent() ? 0 : Features.bit(test.name());
        }
        this.needed = names;
    }

    /** Reads what stands between the brackets. */
    public static Condition parse(String text) {
        List<Test> tests = new ArrayList<>();
        for (String part : text.split(",")) {
            boolean absent = part.startsWith("!");
            String rest = absent ? part.substring(1) : part;
            int sign = rest.indexOf('=');
            String name = sign < 0 ? rest : rest.substring(0, sign);
            boolean mixed = name.contains("|") || (sign >= 0 && rest.indexOf('=', sign + 1) >= 0);
            if (name.isBlank() || mixed) {
                throw new IllegalArgumentException("no condition: [" + text + "]");
            }
            List<String> values =
                    sign < 0 ? List.of() : List.of(rest.substring(sign + 1).split("\\|"));
            tests.add(new Test(
                    name.strip().intern(), values.stream().map(String::intern).toList(), absent));
        }
        return new Condition(tests);
    }

    /** All that is asked, in the order it is written. */
    public List<Test> tests() {
        return List.of(tests);
    }

    public boolean holds(Features features) {
        if (!features.mayHave(needed)) {
            return false;
        }
        for (int at = 0; at < tests.length; at++) {
            if (!tests[at].holds(features, bits[at])) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether it may hold of something whose one feature is known.
     *
     * @param value of the feature; empty if it is not there
     */
    public boolean mayHold(String name, String value) {
        for (Test test : tests) {
            if (test.name().equals(name)) {
                boolean there = !value.isEmpty()
                        && (test.values().isEmpty() || test.values().contains(value));
                if (there == test.absent()) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether it asks for a name to be there. */
    public boolean asks(String name) {
        for (Test test : tests) {
            if (!test.absent() && test.name().equals(name)) {
                return true;
            }
        }
        return false;
    }
}
