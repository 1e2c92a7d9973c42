package org.drillwright.record;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.source.Fingerprint;

/** Makes the lines to append to a record; what stands there is never touched. */
public final class RecordWriter {

    private RecordWriter() {}

    /**
     * The text to append to a file so that it tells this of a class and no more; empty if it does already.
     *
     * <p>What the class's batches tell beyond it is taken back. Lines typed by hand stay: what one of them tells isn't told
     * again, and what one of them takes back isn't put back.
     *
     * @param existing all that the file holds now, empty if there is no file yet
     * @param read what was read from it
     */
    public static String appended(String existing, ReadHistory read, ClassTold told) {
        List<Batch> before = read.batches().stream()
                .filter(batch -> batch.isOf(told.date(), told.named()))
                .toList();
        List<RecordLine> lines = lines(read, before, told);
        if (lines.isEmpty()) {
            return "";
        }
        String unmarked = RecordReader.unmarked(existing);
        char separator = CsvTable.separatorOf(unmarked);
        boolean begins = CsvTable.lineByLine(unmarked).isEmpty();
        List<List<String>> rows = new ArrayList<>(begins ? List.of(RecordReader.COLUMNS) : List.of());
        String id = id(before, told, lines);
        rows.add(end(told, BatchWords.first(id, lines.size())));
        lines.forEach(line -> rows.add(line.cells()));
        rows.add(end(told, BatchWords.last(id)));
        return lastLineEnd(existing)
                + rows.stream()
                        .map(cells -> SpreadsheetCell.line(cells, separator) + "\n")
                        .collect(Collectors.joining());
    }

    /** How many facts a text that was appended tells, and how many it takes back. */
    public static int lines(String appended, boolean takenBack) {
        return (int) CsvTable.lineByLine(appended).stream()
                .filter(line -> Event.of(RecordLine.eventOf(line.cell(3))).isPresent())
                .filter(line -> RecordLine.takesBack(line.cell(3)) == takenBack)
                .count();
    }

    /** What a last line that was cut short lacks, so that it spoils nothing but itself. */
    private static String lastLineEnd(String existing) {
        return existing.isEmpty() || existing.endsWith("\n") ? "" : "\n";
    }

    private static List<RecordLine> lines(ReadHistory read, List<Batch> before, ClassTold told) {
        Net stands = new Net();
        before.stream()
                .flatMap(batch -> batch.lines().stream())
                .filter(line -> line.entry().event() != Event.SIGNED_OFF)
                .forEach(stands::add);
        Net wanted = Net.of(told.worked());
        read.loose().stream()
                .filter(line -> !line.takenBack() && wanted.of(line.entry()) > 0)
                .forEach(line -> wanted.add(RecordLine.takenBack(line.entry())));
        Net known = Net.of(read.history().entries());
        List<RecordLine> lines = new ArrayList<>();
        wanted.beyond(stands).forEach(entry -> lines.add(RecordLine.told(entry)));
        stands.beyond(wanted).forEach(entry -> lines.add(RecordLine.takenBack(entry)));
        told.signedOff().stream()
                .distinct()
                .filter(entry -> known.of(entry) <= 0)
                .forEach(entry -> lines.add(RecordLine.told(entry)));
        told.notSignedOff().stream()
                .distinct()
                .filter(entry -> known.of(entry) > 0)
                .forEach(entry -> lines.add(RecordLine.takenBack(entry)));
        return lines;
    }

    private static List<String> end(ClassTold told, String words) {
        return List.of(told.date().toString(), "", told.named(), words, told.plan());
    }

    /** The same lines told of a class after the same ones have the same id, on any machine. */
    private static String id(List<Batch> before, ClassTold told, List<RecordLine> lines) {
        String last = before.isEmpty() ? "" : before.get(before.size() - 1).id();
        String text = told.date() + " " + told.named() + " " + last + " " + lines;
        return Fingerprint.figures(text.getBytes(StandardCharsets.UTF_8), BatchWords.ID);
    }
}
