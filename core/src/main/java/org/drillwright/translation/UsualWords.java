package org.drillwright.translation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.lexicon.Spelling;
import org.drillwright.model.Language;
import org.drillwright.wording.DataLines;

/** Words of schools and drills that are no turns, such as levels and pieces of gear, in the languages of cards. */
final class UsualWords {

    private static final String FILE = "usual.words";

    private final List<String> tags;
    private final List<List<String>> rows;

    private UsualWords(List<String> tags, List<List<String>> rows) {
        this.tags = tags;
        this.rows = rows;
    }

    /** Those that come with the program. */
    static UsualWords standard() {
        return Standard.WORDS;
    }

    private static final class Standard {
        private static final UsualWords WORDS = load();
    }

    private static UsualWords load() {
        List<List<String>> lines = DataLines.of(UsualWords.class, FILE).stream()
                .map(line -> Arrays.stream(line.split("\\|")).map(String::strip).toList())
                .toList();
        return new UsualWords(lines.get(0), List.copyOf(lines.subList(1, lines.size())));
    }

    /** A word of one language, looked for in its column first, in another; empty if it is not among them. */
    Optional<String> of(String word, Language from, Language into) {
        int to = tags.indexOf(into.word());
        String folded = Spelling.fold(word.strip());
        List<Integer> columns = new ArrayList<>();
        Stream.concat(Stream.of(from.word()), tags.stream())
                .map(tags::indexOf)
                .filter(column -> column >= 0 && !columns.contains(column))
                .forEach(columns::add);
        return to < 0
                ? Optional.empty()
                : columns.stream()
                        .flatMap(column -> rows.stream()
                                .filter(row -> Spelling.fold(row.get(column)).equals(folded))
                                .map(row -> row.get(to)))
                        .findFirst();
    }

    List<List<String>> rows() {
        return rows;
    }
}
