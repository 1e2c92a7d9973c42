package org.drillwright.lexicon;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What is asked of features: {@code [c=STRIKE|LUNGE,dir,!half]}, that is one of two values, one present, one absent. */
public record Condition(List<Test> tests) {

    public static final Condition NONE = new Condition(List.of());

    /**
     * One thing that is asked.
     *
     * @param values any of which will do; empty if the name only has to be there
     * @param absent whether it must not hold
     */
    public record Test(String name, Set<String> values, boolean absent) {

        public Test {
            values = Set.copyOf(values);
        }

        boolean holds(Features features) {
            boolean there = values.isEmpty()
                    ? features.has(name)
                    : features.get(name).filter(values::contains).isPresent();
            return there != absent;
        }
    }

    public Condition {
        tests = List.copyOf(tests);
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
            tests.add(new Test(name.strip(), new TreeSet<>(values), absent));
        }
        return new Condition(tests);
    }

    public boolean holds(Features features) {
        for (Test test : tests) {
            if (!test.holds(features)) {
                return false;
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
