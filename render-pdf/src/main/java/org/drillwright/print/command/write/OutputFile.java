package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.phone.PhonePage;
import org.drillwright.wording.Message;

/** Puts a whole file in its place: written beside it first, then moved, so that nobody ever sees half of it. */
public final class OutputFile {

    /**
     * What this program writes and may therefore replace.
     *
     * @param said in a sentence: is not …
     * @param beginning of each such file, a character to a byte
     */
    private record Kind(Message said, String beginning) {

        static final Kind PDF = new Kind(Message.of(OutputFile.class, "output-file.a.pdf"), "%PDF");
        static final Kind PNG = new Kind(Message.of(OutputFile.class, "output-file.a.png"), "\u0089PNG");
        static final Kind CALENDAR = new Kind(
                Message.of(OutputFile.class, "output-file.a.calendar.of.this"),
                "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Drillwright//");
        static final Kind SVG = new Kind(
                Message.of(OutputFile.class, "output-file.a.picture.of.this"),
                "<svg xmlns=\"http://www.w3.org/2000/svg\" xml:lang=\"");
        static final Kind PAGE =
                new Kind(Message.of(OutputFile.class, "output-file.a.page.of.this"), PhonePage.BEGINNING);

        /** By the ending of the name. */
        static Kind of(Path file) {
            String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
            int dot = name.lastIndexOf('.');
            return switch (name.substring(dot + 1)) {
                case "png" -> PNG;
                case "svg" -> SVG;
                case "html" -> PAGE;
                case "ics" -> CALENDAR;
                default -> PDF;
            };
        }

        boolean isOf(Path file) throws IOException {
            try (var in = Files.newInputStream(file)) {
                return new String(in.readNBytes(beginning.length()), StandardCharsets.ISO_8859_1).equals(beginning);
            }
        }
    }

    private final Path target;
    private final Move move;

    /** How a file is moved over another. */
    @FunctionalInterface
    interface Move {
        void move(Path from, Path to) throws IOException;
    }

    public OutputFile(Path target) {
        this(target, Part::replace);
    }

    OutputFile(Path target, Move move) {
        this.target = followed(target);
        this.move = move;
    }

    private static Path followed(Path target) {
        try {
            return Part.followed(target);
        } catch (IOException leadsNowhere) {
            return target;
        }
    }

    /** Refuses a place where something lies that is not a document of ours to replace. */
    public void mustBeFree() {
        Part.mustTakeAFile(target);
        try {
            Kind kind = Kind.of(target);
            if (Files.isRegularFile(target) && Files.size(target) > 0 && !kind.isOf(target)) {
                throw new CannotRun(
                        Message.of(OutputFile.class, "output-file.already.exists.and.is", target, kind.said()));
            }
        } catch (IOException problem) {
            throw new CannotRun(Message.of(OutputFile.class, "output-file.cannot.be.replaced", target), problem);
        }
    }

    /** Writes all of it or nothing. */
    public void write(byte[] bytes) {
        take(writeBeside(bytes, 1));
    }

    /** Writes beside the place, under a name that no other process uses. */
    Path writeBeside(byte[] bytes, int number) {
        Part.mustTakeAFile(target);
        try {
            return Part.write(target, bytes, number);
        } catch (IOException problem) {
            throw new CannotRun(Message.of(OutputFile.class, "output-file.cannot.be.written", target), problem);
        }
    }

    /** Moves what was written beside into its place. */
    void take(Path beside) {
        try {
            move.move(beside, target);
        } catch (IOException held) {
            throw new CannotRun(kept(beside, held));
        }
    }

    /** The new file keeps a name of its own beside the old one. */
    private Message kept(Path beside, IOException held) {
        String name = String.valueOf(target.getFileName());
        Path renamed = target.resolveSibling(name.replaceFirst("(\\.\\w+)?$", "-new$1"));
        Message refused = new CannotRun(Message.of(OutputFile.class, "output-file.could.not.be.replaced", target), held)
                .message();
        Message open = Message.of(OutputFile.class, "output-file.is.it.open");
        try {
            move.move(beside, renamed);
            return refused.then(open).then(Message.of(OutputFile.class, "output-file.the.new.file.is", renamed));
        } catch (IOException again) {
            return refused.then(open).then(Message.of(OutputFile.class, "output-file.the.new.file.is", beside));
        }
    }
}
