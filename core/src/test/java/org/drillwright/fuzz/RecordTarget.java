package org.drillwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.drillwright.register.ClassTold;
import org.drillwright.register.Entry;
import org.drillwright.register.Event;
import org.drillwright.register.History;
import org.drillwright.register.ReadHistory;
import org.drillwright.register.RecordAround;
import org.drillwright.register.RecordReader;
import org.drillwright.register.RecordWriter;
import org.drillwright.source.Severity;

/** Any bytes as a record: read, lines added to it, read again. */
public final class RecordTarget {

    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);
    private static final List<String> PEOPLE = List.of("Ash", "Bo", "=Cy");
    private static final List<String> DRILLS = List.of("a-drill");
    private static final List<Entry> NEW = List.of(
            Entry.attended(DAY, "Ash"),
            Entry.workedWith(DAY, "Ash", "a-drill", "=Cy"),
            Entry.workedWith(DAY, "=Cy", "a-drill", "Ash"),
            Entry.signedOff(DAY, "Bo, the \"second\"", "a-drill"));

    private static final ClassTold TOLD = told(NEW);

    private RecordTarget() {}

    private static ClassTold told(List<Entry> entries) {
        return new ClassTold(
                DAY,
                "tonight",
                "none",
                entries.stream()
                        .filter(entry -> entry.event() != Event.SIGNED_OFF)
                        .toList(),
                entries.stream()
                        .filter(entry -> entry.event() == Event.SIGNED_OFF)
                        .toList(),
                List.of(),
                /* signsOnly= */ false);
    }

    public static void fuzzerTestOneInput(byte[] bytes) {
        ReadHistory before = read(bytes);
        assertEquals(before.history(), read(bytes).history());
        Told.inOrder(before.findings());
        whatWasReadIsWrittenAsItWas(before.history());
        if (!isAnotherTable(before) && !isAsked(before)) {
            linesAreAdded(bytes, before);
        }
    }

    /** A table with another heading or not in UTF-8, to which the command adds nothing: it shows the error. */
    private static boolean isAnotherTable(ReadHistory read) {
        return !read.form().takesLines()
                || read.findings().stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }

    /** Dates whose order nothing decided may be read once there are certain ones below them; that is told. */
    private static boolean isAsked(ReadHistory read) {
        return read.findings().stream()
                .anyMatch(finding -> finding.wayOut().english().startsWith("Say which: tables: {dates:"));
    }

    private static void linesAreAdded(byte[] bytes, ReadHistory before) {
        String lines = RecordWriter.appended(before, TOLD).text();
        byte[] together = together(bytes, lines);
        ReadHistory after = read(together);
        Told.inOrder(after.findings());
        everyGoodLineIsKept(before.history(), after.history());
        String more = RecordWriter.appended(after, TOLD).text();
        assertEquals("", more, () -> "what was added is lost: " + after.findings());
    }

    private static ReadHistory read(byte[] bytes) {
        return RecordReader.read("record.csv", bytes, RecordAround.of(PEOPLE, DRILLS));
    }

    /** As {@code record} does: what stands there stays, byte for byte. */
    private static byte[] together(byte[] bytes, String lines) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(bytes);
        all.writeBytes(lines.getBytes(StandardCharsets.UTF_8));
        return all.toByteArray();
    }

    private static void everyGoodLineIsKept(History before, History after) {
        assertEquals(
                before.entries(), after.entries().subList(0, before.entries().size()));
    }

    private static void whatWasReadIsWrittenAsItWas(History history) {
        String text = RecordWriter.appended(read(new byte[0]), told(history.entries()))
                .text();
        ReadHistory again = read(text.getBytes(StandardCharsets.UTF_8));
        assertEquals(Set.copyOf(history.entries()), Set.copyOf(again.history().entries()), text);
        assertTrue(again.findings().stream().allMatch(finding -> finding.rule().equals("record-unknown-name")), text);
    }
}
