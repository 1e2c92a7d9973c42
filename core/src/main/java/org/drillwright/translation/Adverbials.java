package org.drillwright.translation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.lexicon.Spelling;
import org.drillwright.model.Language;
import org.drillwright.wording.DataLines;

/** How and when something is done, by a closed list of what means the same in the languages of cards. */
final class Adverbials {

    private static final String FILE = "how.words";

    /** Stands where a language has no words for it. */
    private static final String NONE = "-";

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}\\p{N}]+");

    private final List<String> tags;
    private final List<Row> rows;

    private Adverbials(List<String> tags, List<Row> rows) {
        this.tags = tags;
        this.rows = List.copyOf(rows);
    }

    /**
     * A line of the list.
     *
     * @param kind a manner, nothing to be said, or the opening, the person or the verb of a clause that tells when
     * @param said in each language
     * @param known in each language, the words of each way to say it, folded
     */
    private record Row(String kind, List<String> said, List<List<List<String>>> known) {
        Row {
            said = List.copyOf(said);
            known = List.copyOf(known);
        }

        static Row of(List<String> line) {
            List<List<String>> ways =
                    behind(line).stream().map(cell -> parts(cell, "/")).toList();
            return new Row(
                    line.get(0),
                    ways.stream().map(cell -> cell.get(0)).toList(),
                    ways.stream()
                            .map(cell -> cell.stream().map(Adverbials::folded).toList())
                            .toList());
        }

        boolean is(String other) {
            return kind.equals(other);
        }
    }

    /**
     * Words of a text that the list has.
     *
     * @param start of the first
     * @param end behind the last
     * @param said the same in the other language, with a comma in front if it takes one; empty if the action says it itself
     */
    record Found(int start, int end, String said) {}

    /** A word, without capitals and accents, and where it stands. */
    private record Word(String folded, int start, int end) {}

    /** Those that come with the program. */
    static Adverbials standard() {
        return Standard.MANNERS;
    }

    private static final class Standard {
        private static final Adverbials MANNERS = load();
    }

    private static Adverbials load() {
        List<List<String>> lines = DataLines.of(Adverbials.class, FILE).stream()
                .map(line -> parts(line, "\\|"))
                .toList();
        return new Adverbials(
                behind(lines.get(0)), lines.stream().skip(1).map(Row::of).toList());
    }

    private static List<String> parts(String line, String between) {
        return Arrays.stream(line.split(between)).map(String::strip).toList();
    }

    private static List<String> behind(List<String> line) {
        return line.subList(1, line.size());
    }

    /** All that the list has of a text, by where it begins, and the longest first. */
    List<Found> in(String text, Language from, Language into) {
        int there = tags.indexOf(from.word());
        int to = tags.indexOf(into.word());
        if (there < 0 || to < 0) {
            return List.of();
        }
        List<Word> words = words(text);
        List<String> folded = words.stream().map(Word::folded).toList();
        List<Found> found = new ArrayList<>();
        for (int first = 0; first < words.size(); first++) {
            for (int end = words.size(); end > first; end--) {
                Optional<String> said = said(folded.subList(first, end), there, to);
                if (said.isPresent()) {
                    found.add(new Found(
                            words.get(first).start(), words.get(end - 1).end(), said.get()));
                }
            }
        }
        return found;
    }

    /** Every way to say how and when in a language that the list has. */
    List<String> ways(Language language) {
        int at = tags.indexOf(language.word());
        List<String> ways = new ArrayList<>();
        of("how")
                .map(row -> row.said().get(at))
                .filter(said -> !said.equals(NONE))
                .forEach(ways::add);
        of("when")
                .forEach(when ->
                        of("who").forEach(who -> of("does").forEach(does -> ways.add(clause(when, who, does, at)))));
        return ways;
    }

    private Stream<Row> of(String kind) {
        return rows.stream().filter(row -> row.is(kind));
    }

    private static String clause(Row when, Row who, Row does, int at) {
        return Stream.of(when, who, does).map(row -> row.said().get(at)).collect(Collectors.joining(" "));
    }

    private Optional<String> said(List<String> folded, int from, int to) {
        return of("how")
                .filter(row -> beginning(row, from, folded) == folded.size())
                .map(row -> row.said().get(to))
                .filter(said -> !said.equals(NONE))
                .findFirst()
                .or(() -> of("none")
                        .filter(row -> beginning(row, from, folded) == folded.size())
                        .map(row -> "")
                        .findFirst())
                .or(() -> when(folded, from, to));
    }

    private Optional<String> when(List<String> words, int from, int to) {
        for (Row when : of("when").toList()) {
            int opened = beginning(when, from, words);
            if (opened > 0) {
                for (Row who : of("who").toList()) {
                    int named = beginning(who, from, words.subList(opened, words.size()));
                    List<String> rest = words.subList(opened + named, words.size());
                    Optional<Row> does = named == 0
                            ? Optional.empty()
                            : of("does")
                                    .filter(row -> !rest.isEmpty() && beginning(row, from, rest) == rest.size())
                                    .findFirst();
                    if (does.isPresent()) {
                        return Optional.of(clause(when, who, does.get(), to));
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** How many words a row has at the beginning of some, in its longest way; 0 if none. */
    private static int beginning(Row row, int language, List<String> words) {
        return row.known().get(language).stream()
                .filter(way -> way.size() <= words.size() && way.equals(words.subList(0, way.size())))
                .mapToInt(List::size)
                .max()
                .orElse(0);
    }

    private static List<String> folded(String text) {
        return words(text).stream().map(Word::folded).toList();
    }

    private static List<Word> words(String text) {
        List<Word> words = new ArrayList<>();
        Matcher word = WORD.matcher(text);
        while (word.find()) {
            words.add(new Word(Spelling.fold(word.group()), word.start(), word.end()));
        }
        return words;
    }
}
