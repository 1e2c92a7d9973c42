package org.drillwright.print.command.packet;

import java.nio.file.Path;
import java.util.List;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.pdf.Contents;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PdfWriter;

/**
 * One whole document and its place.
 *
 * @param shown the file as whoever runs the program named it
 */
record PacketDocument(Path target, String shown, DocumentInfo info, Family faces) {

    void write(List<Frame> pages, Contents contents) {
        WholeFile file = new WholeFile(target);
        file.mustBeFree(Kind.PDF);
        file.write(new PdfWriter(faces).bytes(pages, contents, info));
    }
}
