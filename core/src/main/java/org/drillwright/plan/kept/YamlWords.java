package org.drillwright.plan.kept;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Words as YAML that every program reads as the same words. */
public final class YamlWords {

    /** Words that read as themselves; all others stand in quotes. */
    private static final Pattern PLAIN = Pattern.compile("\\p{L}[\\p{L}\\p{M}\\p{N}_-]*( [\\p{L}\\p{M}\\p{N}_-]+)*");

    /** What other programs take for something else than a word. */
    private static final Pattern TAKEN =
            Pattern.compile("y|n|yes|no|on|off|true|false|null|none", Pattern.CASE_INSENSITIVE);

    private YamlWords() {}

    public static String mapped(Map<String, String> values) {
        return values.entrySet().stream()
                .map(value -> quoted(value.getKey()) + ": " + quoted(value.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    public static String listed(List<String> words) {
        return words.stream().map(YamlWords::quoted).collect(Collectors.joining(", ", "[", "]"));
    }

    public static String quoted(String word) {
        boolean plain = PLAIN.matcher(word).matches() && !TAKEN.matcher(word).matches();
        return plain ? word : '"' + word.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
