package org.drillwright.print.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PdfWriter;

/** Lays drills as A6 cards and writes them, as the program does: {@code PrintCards DRILLS FILE}. */
public final class PrintCards {

    private PrintCards() {}

    public static void main(String[] args) throws IOException {
        List<Frame> cards = lay(Integer.parseInt(args[0]));
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(Path.of(args[1])))) {
            new PdfWriter(Family.dejaVu()).write(cards, new DocumentInfo("Invented drills", Locale.ENGLISH), out);
        }
    }

    static List<Frame> lay(int drills) {
        return CardLayout.lay(InventedDrills.first(drills), CardSize.A6, Labels.in(Language.ENGLISH), Family.dejaVu())
                .fronts();
    }
}
