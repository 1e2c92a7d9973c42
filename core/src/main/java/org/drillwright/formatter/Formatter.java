package org.drillwright.formatter;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.read.DrillReader;
import org.drillwright.read.ReadDrill;
import org.drillwright.read.Reading;
import org.drillwright.read.SourceTree;
import org.drillwright.source.SourceFile;
import org.drillwright.wording.Message;

/** Lays out drill files in the one way that the page of formats describes. */
public final class Formatter {

    private final DrillReader reader;

    /** What came of a file. */
    public sealed interface Outcome {}

    /**
     * A file and its text in the one layout.
     *
     * @param file as it stands
     */
    public record Tidied(SourceFile file, String text) implements Outcome {

        public boolean changes() {
            return !file.text().equals(text);
        }
    }

    /** @param why one sentence */
    public record LeftAlone(Message why) implements Outcome {}

    public Formatter(DrillReader reader) {
        this.reader = reader;
    }

    /**
     * Lays out a file.
     *
     * @param id the file's name without its ending
     * @param name the file's name as it is shown
     */
    public Outcome of(String id, String name, byte[] bytes) {
        Reading<ReadDrill> reading = reader.read(id, name, bytes);
        if (reading.value().isEmpty() || !reading.findings().isEmpty()) {
            return new LeftAlone(Message.of(Formatter.class, "findings"));
        }
        ReadDrill drill = reading.value().get();
        if (SourceTree.isDirected(drill.file())) {
            return new LeftAlone(Message.of(Formatter.class, "directive"));
        }
        Optional<String> text = SourceTree.of(drill.file()).map(tree -> laidOut(drill.file(), tree));
        return text.filter(tidied -> isSame(drill.drill(), tidied))
                .<Outcome>map(tidied -> new Tidied(drill.file(), tidied))
                .orElseGet(() -> new LeftAlone(Message.of(Formatter.class, "strange")));
    }

    private String laidOut(SourceFile file, SourceTree.Entries tree) {
        Remarks remarks = new Attaching(file.text(), tree).attach();
        String text = new Layout(reader.shape(), remarks).of(tree);
        return text.replace("\n", lineEnd(file.text()));
    }

    /** The end of the file's first line. */
    private static String lineEnd(String text) {
        int end = text.indexOf('\n');
        boolean lone = end < 0 && text.indexOf('\r') >= 0;
        return lone ? "\r" : end > 0 && text.charAt(end - 1) == '\r' ? "\r\n" : "\n";
    }

    /** Trust is good: nothing is handed on that does not read back as the same drill. */
    private boolean isSame(Drill drill, String text) {
        Reading<ReadDrill> again = reader.read(drill.id(), drill.id(), text.getBytes(StandardCharsets.UTF_8));
        return again.findings().isEmpty() && again.value().map(ReadDrill::drill).equals(Optional.of(drill));
    }
}
