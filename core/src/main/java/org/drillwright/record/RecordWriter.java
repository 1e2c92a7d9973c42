package org.drillwright.record;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Makes the lines to append to a record; what stands there is never touched. */
public final class RecordWriter {

    private RecordWriter() {}

    /**
     * The text to append to a file, empty if there is nothing new.
     *
     * @param existing all that the file holds now, empty if there is no file yet
     * @param history what was read from it; what it tells already is not written again
     */
    public static String appended(String existing, History history, List<Entry> entries) {
        List<Entry> fresh = fresh(history, entries);
        if (fresh.isEmpty()) {
            return "";
        }
        String unmarked = RecordReader.unmarked(existing);
        char separator = CsvTable.separatorOf(unmarked);
        boolean begins = CsvTable.lineByLine(unmarked).isEmpty();
        String heading = begins ? SpreadsheetCell.line(RecordReader.COLUMNS, separator) + "\n" : "";
        return lastLineEnd(existing)
                + heading
                + fresh.stream().map(entry -> line(entry, separator) + "\n").collect(Collectors.joining());
    }

    /** What a last line that was cut short lacks, so that it spoils nothing but itself. */
    private static String lastLineEnd(String existing) {
        return existing.isEmpty() || existing.endsWith("\n") ? "" : "\n";
    }

    private static List<Entry> fresh(History history, List<Entry> entries) {
        Set<Entry> told = new HashSet<>(history.entries());
        history.entries().forEach(entry -> told.add(entry.mirrored()));
        List<Entry> fresh = new ArrayList<>();
        for (Entry entry : entries) {
            if (told.add(entry)) {
                told.add(entry.mirrored());
                fresh.add(entry);
            }
        }
        return fresh;
    }

    private static String line(Entry entry, char separator) {
        List<String> cells = List.of(
                entry.date().toString(),
                entry.person(),
                entry.drill(),
                entry.event().word(),
                entry.with());
        return SpreadsheetCell.line(cells, separator);
    }
}
