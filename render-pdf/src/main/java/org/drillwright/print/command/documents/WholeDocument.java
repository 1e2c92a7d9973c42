package org.drillwright.print.command.documents;

import java.util.List;
import org.drillwright.print.command.write.NamedFile;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.pdf.Contents;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PdfWriter;

/** One whole document and its place. */
record WholeDocument(NamedFile file, DocumentInfo info, Family faces) {

    String shown() {
        return file.shown();
    }

    void write(List<Frame> pages, Contents contents) {
        file.write(new PdfWriter(faces).bytes(pages, contents, info));
    }
}
