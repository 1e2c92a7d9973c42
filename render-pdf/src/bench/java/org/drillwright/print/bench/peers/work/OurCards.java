package org.drillwright.print.bench.peers.work;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PdfWriter;
import org.drillwright.school.SchoolFolder;

/**
 * Lays a school's drills on A6 and writes them: {@code OurCards SCHOOL FILE plain|pictures}; answers the bytes of the file.
 */
public final class OurCards {

    private static final Family FACES = Family.dejaVu();

    private OurCards() {}

    public static void main(String[] args) throws Exception {
        List<CardSubject> drills = drills(Path.of(args[0]), args[2].equals("pictures"));
        Path file = Path.of(args[1]);
        Work.of(() -> write(lay(drills), file), List.of(args));
    }

    /** What the cards of a school are to say. */
    public static List<CardSubject> drills(Path school, boolean pictures) throws IOException {
        return SchoolFolder.open(school).entries().stream()
                .flatMap(entry -> entry.subject().stream())
                .map(subject -> card(subject, pictures))
                .toList();
    }

    private static CardSubject card(Subject subject, boolean pictures) {
        return new CardSubject(
                subject.drill(),
                subject.school(),
                Optional.empty(),
                false,
                List.of(),
                pictures ? Optional.of(subject.replay()) : Optional.empty());
    }

    public static List<Frame> lay(List<CardSubject> drills) {
        return CardLayout.lay(drills, CardSize.A6, Labels.in(Language.ENGLISH), FACES)
                .fronts();
    }

    private static long write(List<Frame> cards, Path file) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            new PdfWriter(FACES).write(cards, new DocumentInfo("Cards", Locale.ENGLISH), out);
        }
        return Files.size(file);
    }
}
