package org.drillwright.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What each term is called in each language, and by which source; written by hand from the sources.
 *
 * @param rows the terms, in the order of the file
 * @param sources what each code stands for
 * @param differences where sources differ, and what the program says then
 */
record TermSources(List<Row> rows, Map<String, String> sources, String differences) {

    /** The languages, in the order of the columns. */
    static final List<String> LANGUAGES = List.of("en", "fr", "it", "es", "de");

    private static final Path FOLDER = Path.of("src/test/resources/terms");
    private static final Pattern CELL = Pattern.compile("(.+) \\[([^\\]]+)\\]");

    /** @param key of the bundle of terms; or the action as which the word alone is read, or {@code no action} */
    record Row(String key, List<Cell> cells) {

        boolean ofBundle() {
            return key.contains(".");
        }
    }

    /** @param sources codes, perhaps each with an article behind a blank */
    record Cell(String word, List<String> sources) {

        static Cell of(String text) {
            Matcher matcher = CELL.matcher(text);
            if (!matcher.matches()) {
                throw new IllegalArgumentException("a term without a source: " + text);
            }
            return new Cell(matcher.group(1), List.of(matcher.group(2).split(", ")));
        }

        Stream<String> codes() {
            return sources.stream().map(source -> source.split(" ")[0]);
        }
    }

    static TermSources read() {
        Map<String, String> sources = new LinkedHashMap<>();
        lines("sources.tsv").map(line -> line.split("\t")).forEach(source -> sources.put(source[0], source[1]));
        return new TermSources(lines("terms.tsv").map(TermSources::row).toList(), sources, text("differ.md"));
    }

    private static Row row(String line) {
        List<String> columns = List.of(line.split("\t"));
        if (columns.size() != LANGUAGES.size() + 1) {
            throw new IllegalArgumentException("not one word for each language: " + line);
        }
        return new Row(
                columns.get(0),
                columns.subList(1, columns.size()).stream().map(Cell::of).toList());
    }

    private static Stream<String> lines(String file) {
        return Arrays.stream(text(file).split("\n")).filter(line -> !line.startsWith("#"));
    }

    private static String text(String file) {
        try {
            return Files.readString(FOLDER.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
