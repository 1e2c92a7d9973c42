package org.drillwright.print.command.printing;

import java.util.List;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.impose.Duplex;
import org.drillwright.print.impose.RegistrationSheet;
import org.drillwright.print.impose.Shift;
import org.drillwright.print.impose.Stock;
import org.drillwright.print.layout.block.SheetNote;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Contents;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PdfWriter;
import org.drillwright.wording.Message;

/** The sheet by which one measures how far a printer prints backs beside their place. */
public final class TestSheet {

    private TestSheet() {}

    public static byte[] of(School school, SheetSize sheet, Duplex duplex, Shift shift, Family faces) {
        Labels labels = Labels.in(school.language());
        List<Frame> pages = RegistrationSheet.pages(
                Stock.of(sheet),
                duplex,
                shift,
                SheetNote.measuringFront(labels, faces),
                SheetNote.measuringBack(labels, faces));
        return new PdfWriter(faces)
                .bytes(
                        pages,
                        Contents.PLAIN,
                        new DocumentInfo(
                                Message.of(TestSheet.class, "test-sheet.test.sheet")
                                        .in(school.language().locale()),
                                school.language().locale()));
    }
}
