package org.drillwright.print.command.printing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.CardSize;
import org.drillwright.model.School;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.impose.Imposition;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.CardSubject;
import org.drillwright.print.layout.Labels;
import org.drillwright.print.layout.Laid;
import org.drillwright.print.layout.Problem;
import org.drillwright.print.layout.SheetNote;
import org.drillwright.print.pdf.DejaVu;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.print.pdf.PdfWriter;
import org.drillwright.school.SchoolFolder;

/** Lays cards and writes them as a document. */
final class Cards {

    private final School school;
    private final CardSize size;
    private final Paper paper;
    private final DejaVu faces;
    private final Labels labels;

    Cards(School school, CardSize size, Paper paper, DejaVu faces) {
        this.school = school;
        this.size = size;
        this.paper = paper;
        this.faces = faces;
        this.labels = Labels.in(school.language());
    }

    /** Lays drill after drill. */
    Laid lay(List<CardSubject> drills, SchoolFolder.Progress progress) {
        List<Frame> cards = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (int at = 0; at < drills.size(); at++) {
            Laid laid = CardLayout.lay(List.of(drills.get(at)), size, labels, faces);
            cards.addAll(laid.cards());
            problems.addAll(laid.problems());
            progress.read(at + 1, drills.size());
        }
        return new Laid(cards, problems);
    }

    /** The pages of the document. */
    List<Frame> pages(List<Frame> cards) {
        return paper.sheet()
                .map(sheet -> Imposition.impose(cards, sheet, SheetNote.of(labels, faces)))
                .orElse(cards);
    }

    byte[] write(List<Frame> pages, String title) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DocumentInfo info = new DocumentInfo(title, school.language().locale());
        try {
            new PdfWriter(faces).write(pages, info, bytes);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
        return bytes.toByteArray();
    }
}
