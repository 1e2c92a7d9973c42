package org.drillwright.plan.roster;

import java.util.List;
import java.util.Map;

/**
 * What people are called on a sheet: their names, or initials, each the only one of its kind.
 *
 * @param shown by name
 */
public record Naming(Map<String, String> shown) {

    public Naming {
        shown = Map.copyOf(shown);
    }

    /** Everyone by name. */
    public static Naming full() {
        return new Naming(Map.of());
    }

    /** Everyone by {@link Initials}. */
    public static Naming initials(List<String> names) {
        return new Naming(Initials.of(names));
    }

    public String of(String name) {
        return shown.getOrDefault(name, name);
    }
}
