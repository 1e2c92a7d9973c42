package org.drillwright.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.wording.DataLines;
import org.drillwright.wording.Plain;

/** What values of files are called in other languages than that of the keys. */
final class ValueWords {

    /** Key, own word, and what else it is called. */
    private static final Map<String, Map<String, List<String>>> WORDS = load();

    private ValueWords() {}

    /** Everything that one of these values of a key may also be called. */
    static List<String> also(String key, List<String> known) {
        return WORDS.getOrDefault(key, Map.of()).entrySet().stream()
                .filter(value -> known.contains(value.getKey()))
                .flatMap(value -> value.getValue().stream())
                .toList();
    }

    /** Which of these values of a key is called so; capitals and accents make no difference. */
    static Optional<String> own(String key, String written, List<String> known) {
        String folded = Plain.fold(written);
        return WORDS.getOrDefault(key, Map.of()).entrySet().stream()
                .filter(value -> known.contains(value.getKey()))
                .filter(value -> value.getValue().stream().map(Plain::fold).anyMatch(folded::equals))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private static Map<String, Map<String, List<String>>> load() {
        Map<String, Map<String, List<String>>> words = new LinkedHashMap<>();
        DataLines.of(ValueWords.class, "values.words").forEach(line -> {
            String[] halves = line.split(":", 2);
            String[] value = halves[0].split(" ", 2);
            words.computeIfAbsent(value[0], key -> new LinkedHashMap<>())
                    .put(
                            value[1],
                            Stream.of(halves[1].split(",")).map(String::strip).toList());
        });
        return words;
    }
}
