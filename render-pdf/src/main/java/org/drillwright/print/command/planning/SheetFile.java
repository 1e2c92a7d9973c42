package org.drillwright.print.command.planning;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.print.command.printing.SchoolFaces;
import org.drillwright.print.command.write.OutputFile;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PdfWriter;
import org.drillwright.print.text.Typefaces;
import org.drillwright.school.SchoolFolder;

/** A sheet's PDF. */
public final class SheetFile {

    private final Invocation run;
    private final String shown;
    private final OutputFile file;

    /** Refuses a place that can't be written before anything is planned. */
    public SheetFile(Invocation run, String shown) {
        Path target = Locations.path(run.here(), shown)
                .filter(path -> path.getFileName() != null)
                .orElseThrow(() -> new CannotRun("'" + shown + "' cannot be the name of a file."));
        this.run = run;
        this.shown = shown;
        this.file = new OutputFile(target);
        file.mustBeFree();
    }

    /** Writes pages set in the school's faces, and says so. */
    public void write(SchoolFolder folder, String title, Function<Typefaces, List<Frame>> laid) {
        Family faces = SchoolFaces.of(folder);
        List<Frame> pages = laid.apply(faces);
        Printable.check(pages, faces);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            new PdfWriter(faces).write(pages, new DocumentInfo(title, Locale.ENGLISH), bytes);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
        file.write(bytes.toByteArray());
        run.out()
                .println(shown + ": " + title + ", " + pages.size() + (pages.size() == 1 ? " page" : " pages")
                        + ". Print at 100 % (actual size).");
    }
}
