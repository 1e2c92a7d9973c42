package org.drillwright.register;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.source.Fingerprint;

/** Makes the lines to append to a record; what stands there is never touched. */
public final class RecordWriter {

    private RecordWriter() {}

    /**
     * What to append to a file so that it tells this of a class and no more.
     *
     * <p>What the class's batches tell beyond it is taken back. Lines typed by hand stay: what one of them tells isn't told
     * again, and what one of them takes back isn't put back.
     *
     * @param read what the file holds now
     */
    public static Added appended(ReadHistory read, ClassTold told) {
        List<Batch> before = read.batches().stream()
                .filter(batch -> batch.isOf(told.date(), told.named()))
                .toList();
        Net stands = new Net();
        before.stream()
                .flatMap(batch -> batch.lines().stream())
                .filter(line -> line.entry().event() != Event.SIGNED_OFF)
                .forEach(stands::add);
        boolean again = !stands.isEmpty();
        List<RecordLine> lines = lines(read, stands, again && told.signsOnly(), told);
        if (lines.isEmpty()) {
            return Added.NOTHING;
        }
        String id = id(before, told, lines);
        List<List<String>> rows = new ArrayList<>();
        rows.add(end(told, BatchWords.first(id, lines.size())));
        lines.forEach(line -> rows.add(line.cells()));
        rows.add(end(told, BatchWords.last(id)));
        int back = (int) lines.stream().filter(RecordLine::takenBack).count();
        return new Added(read.form().appended(rows), lines.size() - back, back, again);
    }

    /** What to append to a file so that it tells these facts, one line each, of no class. */
    public static Added told(ReadHistory read, List<Entry> facts) {
        Net stands = new Net();
        read.loose().forEach(stands::add);
        List<List<String>> rows = facts.stream()
                .filter(entry -> stands.of(entry) <= 0)
                .map(entry -> RecordLine.told(entry).cells())
                .toList();
        return rows.isEmpty() ? Added.NOTHING : new Added(read.form().appended(rows), rows.size(), 0, false);
    }

    /** @param stands what the class's batches tell and don't take back */
    private static List<RecordLine> lines(ReadHistory read, Net stands, boolean signsOnly, ClassTold told) {
        List<RecordLine> lines = signsOnly ? new ArrayList<>() : worked(read, stands, told);
        Net known = Net.of(read.history().entries());
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

    private static List<RecordLine> worked(ReadHistory read, Net stands, ClassTold told) {
        Net wanted = Net.of(told.worked());
        read.loose().stream()
                .filter(line -> !line.takenBack() && wanted.of(line.entry()) > 0)
                .forEach(line -> wanted.add(RecordLine.takenBack(line.entry())));
        List<RecordLine> lines = new ArrayList<>();
        wanted.beyond(stands).forEach(entry -> lines.add(RecordLine.told(entry)));
        stands.beyond(wanted).forEach(entry -> lines.add(RecordLine.takenBack(entry)));
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
