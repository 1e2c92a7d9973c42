package org.drillwright.print.command.planning;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.print.command.printing.SchoolFaces;
import org.drillwright.print.command.write.OutputFile;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.pdf.Contents;
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
        Path target = Locations.file(run.here(), shown);
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
        file.write(new PdfWriter(faces).bytes(pages, Contents.PLAIN, new DocumentInfo(title, Locale.ENGLISH)));
        run.out()
                .println(shown + ": " + title + ", " + pages.size() + (pages.size() == 1 ? " page" : " pages")
                        + ". Print at 100 % (actual size).");
    }
}
