package org.drillwright.table;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.drillwright.wording.DataLines;
import org.drillwright.wording.Plain;

/** The words of several languages by which tables name their columns, and in which some of the cells are written. */
public final class TableWords {

    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]+");

    private static final Map<String, Set<String>> HEADINGS = load("headings.words");
    private static final Map<String, Set<String>> VALUES = load("values.words");

    private TableWords() {}

    /** The fields that a table of this program can have. */
    public static List<String> fields() {
        return List.copyOf(HEADINGS.keySet());
    }

    /** Words that a column of a field may be called by, folded. */
    static Set<String> headings(String field) {
        return HEADINGS.getOrDefault(field, Set.of());
    }

    /** The own word that a cell of a column stands for. */
    public static Optional<String> value(String field, String written) {
        String folded = fold(written);
        return VALUES.entrySet().stream()
                .filter(entry -> entry.getKey().startsWith(field + " "))
                .filter(entry -> entry.getValue().contains(folded))
                .map(entry -> entry.getKey().substring(field.length() + 1))
                .findFirst();
    }

    /** Small letters and figures alone, without accents. */
    static String fold(String word) {
        return BETWEEN.matcher(Plain.fold(word)).replaceAll("");
    }

    private static Map<String, Set<String>> load(String name) {
        Map<String, Set<String>> words = new LinkedHashMap<>();
        DataLines.of(TableWords.class, name).stream()
                .map(line -> line.split(":", 2))
                .forEach(line -> words.put(line[0].strip(), folded(line[1])));
        return words;
    }

    private static Set<String> folded(String words) {
        return Arrays.stream(words.split(","))
                .map(TableWords::fold)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
