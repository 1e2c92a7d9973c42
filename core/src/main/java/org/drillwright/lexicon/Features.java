package org.drillwright.lexicon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What is known of a word or phrase: names, each with one value. Immutable; small, and compared often. */
public final class Features {

    /** The value of a feature that is only there or not. */
    public static final String PRESENT = "yes";

    public static final Features NONE = new Features(new String[0]);

    /** Names and values by turns, sorted by name, all interned. */
    private final String[] pairs;

    private final int hash;

    /** The bits of all names, so that most that are not there need not be looked for. */
    private final long bits;

    private Features(String[] pairs) {
        this.pairs = pairs;
        this.hash = Arrays.hashCode(pairs);
        long all = 0;
        for (int at = 0; at < pairs.length; at += 2) {
            all |= bit(pairs[at]);
        }
        this.bits = all;
    }

    /** One of 64 bits for a name; two names may share one. */
    public static long bit(String name) {
        return 1L << ((name.hashCode() * 0x9E3779B9) >>> 26);
    }

    /** False only if a name of these bits is not there. */
    boolean mayHave(long names) {
        return (bits & names) == names;
    }

    public static Features of(Map<String, String> values) {
        String[] pairs = new String[values.size() * 2];
        int at = 0;
        for (Map.Entry<String, String> entry : new TreeMap<>(values).entrySet()) {
            pairs[at++] = entry.getKey().intern();
            pairs[at++] = entry.getValue().intern();
        }
        return pairs.length == 0 ? NONE : new Features(pairs);
    }

    /** Of names and values by turns, sorted by name. */
    static Features sorted(String... pairs) {
        String[] interned = new String[pairs.length];
        for (int at = 0; at < pairs.length; at++) {
            interned[at] = pairs[at].intern();
        }
        return pairs.length == 0 ? NONE : new Features(interned);
    }

    /** Reads {@code name=value name2=value2 name3}; a name alone is {@link #PRESENT}. */
    public static Features parse(List<String> words) {
        Map<String, String> values = new TreeMap<>();
        for (String word : words) {
            int sign = word.indexOf('=');
            String name = sign < 0 ? word : word.substring(0, sign);
            if (name.isEmpty() || values.put(name, sign < 0 ? PRESENT : word.substring(sign + 1)) != null) {
                throw new IllegalArgumentException("feature '" + word + "' is empty or stands twice");
            }
        }
        return of(values);
    }

    public boolean isEmpty() {
        return pairs.length == 0;
    }

    public boolean has(String name) {
        return at(name) >= 0;
    }

    public Optional<String> get(String name) {
        int at = at(name);
        return at < 0 ? Optional.empty() : Optional.of(pairs[at + 1]);
    }

    /** Whether the feature is there with just this value. */
    public boolean is(String name, String value) {
        int at = at(name);
        return at >= 0 && pairs[at + 1].equals(value);
    }

    private int at(String name) {
        return at(name, bit(name));
    }

    /** Where a name of such a bit stands; negative if it is not there. */
    int at(String name, long bit) {
        if ((bits & bit) == 0) {
            return -1;
        }
        for (int at = 0; at < pairs.length; at += 2) {
            if (pairs[at].equals(name)) {
                return at;
            }
        }
        return -1;
    }

    /** The value of the name that stands there. */
    String valueAt(int at) {
        return pairs[at + 1];
    }

    /** The names, sorted. */
    public List<String> names() {
        List<String> names = new ArrayList<>(pairs.length / 2);
        for (int at = 0; at < pairs.length; at += 2) {
            names.add(pairs[at]);
        }
        return names;
    }

    /** Both together; empty if they give one name two values. */
    public Optional<Features> and(Features other) {
        if (other.pairs.length == 0) {
            return Optional.of(this);
        }
        if (pairs.length == 0) {
            return Optional.of(other);
        }
        return contradicts(other) ? Optional.empty() : Optional.of(merged(other));
    }

    private boolean contradicts(Features other) {
        for (int at = 0; at < pairs.length; at += 2) {
            int theirs = other.at(pairs[at]);
            if (theirs >= 0 && !other.pairs[theirs + 1].equals(pairs[at + 1])) {
                return true;
            }
        }
        return false;
    }

    /** Both together, the other's winning. */
    private Features merged(Features other) {
        String[] both = new String[pairs.length + other.pairs.length];
        int mine = 0;
        int theirs = 0;
        int end = 0;
        while (mine < pairs.length || theirs < other.pairs.length) {
            int order = mine == pairs.length
                    ? 1
                    : theirs == other.pairs.length ? -1 : pairs[mine].compareTo(other.pairs[theirs]);
            String[] from = order < 0 ? pairs : other.pairs;
            int at = order < 0 ? mine : theirs;
            both[end++] = from[at];
            both[end++] = from[at + 1];
            mine += order <= 0 ? 2 : 0;
            theirs += order >= 0 ? 2 : 0;
        }
        return new Features(end == both.length ? both : Arrays.copyOf(both, end));
    }

    /** These features, the other's winning where both have one. */
    public Features overlaidBy(Features other) {
        if (other.pairs.length == 0) {
            return this;
        }
        return pairs.length == 0 ? other : merged(other);
    }

    /** These features, one of them set. */
    public Features with(String name, String value) {
        if (is(name, value)) {
            return this;
        }
        return overlaidBy(new Features(new String[] {name, value}));
    }

    /**
     * These features, overlaid by the other's; where the other says {@code x=$y}, what was {@code y} here is {@code x}
     * there.
     */
    public Features renamedBy(Features other) {
        Features result = this;
        for (int at = 0; at < other.pairs.length; at += 2) {
            String name = other.pairs[at];
            String value = other.pairs[at + 1];
            Optional<String> moved = value.startsWith("$") ? get(value.substring(1)) : Optional.of(value);
            result = value.startsWith("$") ? result.without(value.substring(1)) : result;
            if (moved.isPresent()) {
                result = result.with(name, moved.get());
            }
        }
        return result;
    }

    /** These features without one. */
    public Features without(String name) {
        int at = at(name);
        if (at < 0) {
            return this;
        }
        String[] fewer = new String[pairs.length - 2];
        System.arraycopy(pairs, 0, fewer, 0, at);
        System.arraycopy(pairs, at + 2, fewer, at, fewer.length - at);
        return fewer.length == 0 ? NONE : new Features(fewer);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Features features && hash == features.hash && Arrays.equals(pairs, features.pairs);
    }

    @Override
    public int hashCode() {
        return hash;
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (int at = 0; at < pairs.length; at += 2) {
            text.append(at == 0 ? "" : " ").append(pairs[at]);
            if (!pairs[at + 1].equals(PRESENT)) {
                text.append('=').append(pairs[at + 1]);
            }
        }
        return text.toString();
    }
}
