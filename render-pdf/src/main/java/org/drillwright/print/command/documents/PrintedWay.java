package org.drillwright.print.command.documents;

import java.text.Normalizer;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.drillwright.model.Language;

/** The ways in which texts say something, each spelt as it is printed. */
final class PrintedWay {

    /** The word itself, or one with an ending. */
    private static final List<String> ENDINGS = List.of("", "\\p{Alpha}{1,4}");

    /** Shorter ones are abbreviations, and begin too many words. */
    private static final int SHORTEST = 3;

    private PrintedWay() {}

    /**
     * For each text the way it uses, of several the one that most texts use; for a text that uses none, the one of most.
     * Nothing if no text uses any.
     *
     * @param ways without accents, in small letters, words apart: {@code counter riposte}
     */
    static List<String> of(List<String> ways, List<String> texts, Language language) {
        for (String ending : ENDINGS) {
            List<Set<String>> used = texts.stream()
                    .map(text -> used(ways, ending, text, language))
                    .toList();
            Map<String, Integer> times = new HashMap<>();
            used.forEach(some -> some.forEach(way -> times.merge(way, 1, Integer::sum)));
            Comparator<String> better = Comparator.<String>comparingInt(way -> times.getOrDefault(way, 0))
                    .thenComparing(String::length)
                    .thenComparing(Comparator.reverseOrder());
            Optional<String> most = times.keySet().stream().max(better);
            if (most.isPresent()) {
                return used.stream()
                        .map(some -> some.stream().max(better).orElse(most.get()))
                        .toList();
            }
        }
        return List.of();
    }

    private static Set<String> used(List<String> ways, String ending, String text, Language language) {
        String plain = plain(text);
        Set<String> used = new TreeSet<>();
        for (String way : ways) {
            if (way.length() < SHORTEST) {
                continue;
            }
            Matcher found = Pattern.compile("(?<![\\p{Alnum}-])("
                            + Pattern.quote(way).replace(" ", "\\E[ -]\\Q") + ")" + ending + "(?![\\p{Alnum}-])")
                    .matcher(plain);
            if (found.find()) {
                used.add(text.substring(found.start(1), found.end(1)).toLowerCase(language.locale()));
            }
        }
        return used;
    }

    /** Without accents, in small letters, letter for letter. */
    private static String plain(String text) {
        return text.chars()
                .mapToObj(unit -> Normalizer.normalize(String.valueOf((char) unit), Normalizer.Form.NFD)
                        .substring(0, 1))
                .collect(Collectors.joining())
                .toLowerCase(Locale.ROOT);
    }
}
