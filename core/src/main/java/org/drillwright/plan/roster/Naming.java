package org.drillwright.plan.roster;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

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

    /** Initials; where two would be alike, both show more letters of their last word, and at last a number. */
    public static Naming initials(List<String> names) {
        Map<String, String> shown = new LinkedHashMap<>();
        int longest = names.stream().mapToInt(String::length).max().orElse(0);
        for (int letters = 1; letters <= longest; letters++) {
            Set<String> alike = alike(shown);
            for (String name : names) {
                if (letters == 1 || alike.contains(shown.getOrDefault(name, ""))) {
                    shown.put(name, shortened(name, letters));
                }
            }
        }
        Set<String> taken = new HashSet<>();
        Map<String, String> unique = new HashMap<>();
        for (String name : names) {
            String mark = shown.getOrDefault(name, name);
            for (int number = 2; !taken.add(mark); number++) {
                mark = shown.getOrDefault(name, name) + number;
            }
            unique.put(name, mark);
        }
        return new Naming(unique);
    }

    private static Set<String> alike(Map<String, String> shown) {
        Set<String> seen = new HashSet<>();
        return shown.values().stream().filter(mark -> !seen.add(mark)).collect(Collectors.toSet());
    }

    private static String shortened(String name, int letters) {
        String[] words = name.strip().split("[\\s-]+");
        StringBuilder mark = new StringBuilder();
        for (int at = 0; at < words.length; at++) {
            int wanted = at == words.length - 1 ? letters : 1;
            int[] points = words[at].codePoints().limit(wanted).toArray();
            mark.append(new String(points, 0, points.length));
        }
        return mark.isEmpty() ? name : mark.toString();
    }

    public String of(String name) {
        return shown.getOrDefault(name, name);
    }
}
