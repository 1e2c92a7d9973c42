package org.drillwright.print.command.planning;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.printing.SchoolFaces;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.command.write.NamedFile;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.pdf.Contents;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PdfWriter;
import org.drillwright.print.svg.SvgWriter;
import org.drillwright.print.text.Typefaces;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;

/** A sheet's PDF. */
public final class SheetFile {

    private static final String PICTURE = ".svg";

    private final Invocation run;
    private final NamedFile file;

    /** Refuses a place that can't be written before anything is planned. */
    public SheetFile(Invocation run, String shown) {
        this.run = run;
        this.file = new NamedFile(run, shown, Kind.PDF, Kind.SVG);
    }

    /** Refuses pages that can't be set in the school's faces. */
    public void mustBePrintable(SchoolFolder folder, Function<Typefaces, List<Frame>> laid) {
        Family faces = SchoolFaces.of(folder);
        Printable.check(laid.apply(faces), faces);
    }

    /** Writes pages set in the school's faces, and says so. */
    public void write(SchoolFolder folder, String title, Function<Typefaces, List<Frame>> laid) {
        Family faces = SchoolFaces.of(folder);
        List<Frame> pages = laid.apply(faces);
        Printable.check(pages, faces);
        int count = pages.size();
        Locale language = folder.school().language().locale();
        if (isPicture()) {
            pictures(title, pages, new SvgWriter(faces, language), language);
            run.say(Message.counted(SheetFile.class, "pictures", count, file.shown(), title, numbered(count)));
        } else {
            DocumentInfo info = new DocumentInfo(title, language);
            file.write(new PdfWriter(faces).bytes(pages, Contents.PLAIN, info));
            run.say(Message.counted(SheetFile.class, "pdf", count, file.shown(), title));
        }
    }

    private boolean isPicture() {
        return file.shown().toLowerCase(Locale.ROOT).endsWith(PICTURE);
    }

    /** The first page in the file itself, the others beside it. */
    private void pictures(String title, List<Frame> pages, SvgWriter writer, Locale language) {
        List<NamedFile> files = IntStream.rangeClosed(1, pages.size())
                .mapToObj(page -> new NamedFile(run, page == 1 ? file.shown() : numbered(page), Kind.SVG))
                .toList();
        for (int page = 0; page < pages.size(); page++) {
            String name = pages.size() == 1
                    ? title
                    : Message.of(SheetFile.class, "picture.page", title, page + 1)
                            .in(language);
            files.get(page).write(writer.write(pages.get(page), name));
        }
    }

    private String numbered(int page) {
        String shown = file.shown();
        return shown.substring(0, shown.length() - PICTURE.length()) + "-" + page + PICTURE;
    }
}
