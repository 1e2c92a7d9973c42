package org.drillwright.print.sheet.wall;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.drillwright.plan.roster.Naming;

/** Names that are too long for their column, as first name and as many initials as tell them from all others. */
public final class ShortNames {

    private ShortNames() {}

    /** What to write for each name; a name that nothing tells apart stays whole. */
    static Map<String, String> of(List<String> names, Predicate<String> isTooLong) {
        Map<String, String> shown = new LinkedHashMap<>();
        names.forEach(name -> shown.put(name, name));
        for (String name : names) {
            if (isTooLong.test(name)) {
                shown.put(name, shortened(name, names));
            }
        }
        return shown;
    }

    /** The first name alone where nobody else has it; else with the initials that tell people apart. */
    public static Naming first(List<String> names) {
        Map<String, String> shown = new LinkedHashMap<>();
        for (String name : names) {
            String first = first(name);
            long alike =
                    names.stream().filter(other -> first(other).equals(first)).count();
            shown.put(name, alike == 1 ? first : shortened(name, names));
        }
        return new Naming(shown);
    }

    private static String first(String name) {
        return name.strip().split("\\s+")[0];
    }

    private static String shortened(String name, List<String> names) {
        List<String> words = List.of(name.strip().split("\\s+"));
        String last = words.get(words.size() - 1);
        for (int letters = 1; words.size() > 1 && letters < last.codePointCount(0, last.length()); letters++) {
            String tried = shortened(words, letters);
            int known = letters;
            boolean alone = names.stream()
                    .filter(other -> !other.equals(name))
                    .noneMatch(other -> other.equals(tried)
                            || shortened(List.of(other.strip().split("\\s+")), known)
                                    .equals(tried));
            if (alone) {
                return tried;
            }
        }
        return name;
    }

    private static String shortened(List<String> words, int letters) {
        StringBuilder shown = new StringBuilder(words.get(0));
        for (int at = 1; at < words.size(); at++) {
            int wanted = at == words.size() - 1 ? letters : 1;
            shown.append(at == 1 ? " " : "");
            words.get(at).codePoints().limit(wanted).forEach(shown::appendCodePoint);
            shown.append('.');
        }
        return shown.toString();
    }
}
