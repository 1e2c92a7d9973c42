package org.drillwright.mark;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;

/** What was printed, in the order in which it was: the text of a file of comma-separated values. */
public record PrintRecord(List<Printed> lines) {

    /** The file's first line. */
    public static final String HEAD = "date,mark,drill,size";

    /** The same where some cards were printed in another language than they are by themselves. */
    public static final String HEAD_WITH_LANGUAGE = HEAD + ",language";

    public static final PrintRecord EMPTY = new PrintRecord(List.of());

    public PrintRecord {
        lines = List.copyOf(lines);
    }

    /** What came of reading a record. */
    public sealed interface Reading {

        /** @param torn whether the last line was not whole and is passed over */
        record Done(PrintRecord record, boolean torn) implements Reading {}

        /** @param line the first that belongs to no record, from 1 */
        record Foreign(int line) implements Reading {}
    }

    /**
     * Reads a record. Only a last line may be torn, and only if it has no end: a disk that was full or a copy that was
     * broken off leaves such a line.
     */
    public static Reading read(String text) {
        String whole = text.startsWith("\uFEFF") ? text.substring(1) : text;
        if (whole.isBlank()) {
            return new Reading.Done(EMPTY, false);
        }
        List<String> lines = whole.lines().toList();
        boolean ended = whole.endsWith("\n") || whole.endsWith("\r");
        if (!lines.get(0).equals(HEAD) && !lines.get(0).equals(HEAD_WITH_LANGUAGE)) {
            boolean begun = lines.size() == 1 && !ended && HEAD_WITH_LANGUAGE.startsWith(lines.get(0));
            return begun ? new Reading.Done(EMPTY, true) : new Reading.Foreign(1);
        }
        return rows(lines, ended);
    }

    private static Reading rows(List<String> lines, boolean ended) {
        List<Printed> printed = new ArrayList<>();
        for (int at = 1; at < lines.size(); at++) {
            String line = lines.get(at);
            var row = Printed.read(line);
            row.ifPresent(printed::add);
            if (row.isEmpty() && at == lines.size() - 1 && !ended) {
                return new Reading.Done(new PrintRecord(printed), true);
            }
            if (row.isEmpty() && !line.isBlank()) {
                return new Reading.Foreign(at + 1);
            }
        }
        return new Reading.Done(new PrintRecord(printed), false);
    }

    /** The file's text. */
    public String text() {
        boolean withLanguage = lines.stream().anyMatch(line -> line.language().isPresent());
        StringBuilder text = new StringBuilder(withLanguage ? HEAD_WITH_LANGUAGE : HEAD).append('\n');
        lines.forEach(line -> text.append(line.line(withLanguage)).append('\n'));
        return text.toString();
    }

    public PrintRecord with(List<Printed> more) {
        List<Printed> all = new ArrayList<>(lines);
        all.addAll(more);
        return new PrintRecord(all);
    }

    /** Whether cards with that mark were printed in that size. */
    public boolean has(PrintMark mark, CardSize size) {
        return lines.stream().anyMatch(line -> line.mark().equals(mark) && line.size() == size);
    }

    /** Where a mark stands, the latest last. */
    public List<Printed> of(PrintMark mark) {
        return lines.stream().filter(line -> line.mark().equals(mark)).toList();
    }

    /** Other marks of a drill in the same language, each in each size once, as it was printed last. */
    public List<Printed> older(String drill, PrintMark current, Optional<Language> language) {
        Map<List<Object>, Printed> last = new LinkedHashMap<>();
        lines.stream()
                .filter(line -> line.drill().equals(drill) && !line.mark().equals(current))
                .filter(line -> line.language().equals(language))
                .forEach(line -> last.put(List.of(line.mark(), line.size()), line));
        return List.copyOf(last.values());
    }
}
