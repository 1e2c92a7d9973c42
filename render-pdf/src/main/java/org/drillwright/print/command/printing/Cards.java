package org.drillwright.print.command.printing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.model.School;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.impose.Imposition;
import org.drillwright.print.impose.Leaf;
import org.drillwright.print.layout.Back;
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
    private final Choices choices;
    private final DejaVu faces;
    private final Labels labels;

    Cards(School school, Choices choices, DejaVu faces) {
        this.school = school;
        this.choices = choices;
        this.faces = faces;
        this.labels = Labels.in(school.language());
    }

    /** Lays drill after drill; the safety cards behind them take turns over the whole, so these are laid at once. */
    Laid lay(List<CardSubject> drills, SchoolFolder.Progress progress) {
        if (choices.back() == Back.SAFETY) {
            return CardLayout.lay(drills, choices.size(), choices.back(), labels, faces);
        }
        List<Frame> cards = new ArrayList<>();
        List<Frame> backs = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (int at = 0; at < drills.size(); at++) {
            Laid laid = CardLayout.lay(List.of(drills.get(at)), choices.size(), choices.back(), labels, faces);
            cards.addAll(laid.cards());
            backs.addAll(laid.backs());
            problems.addAll(laid.problems());
            progress.read(at + 1, drills.size());
        }
        return new Laid(cards, backs, problems);
    }

    /** The pages of the document. */
    List<Frame> pages(Laid laid) {
        List<Leaf> leaves = leaves(laid);
        return choices.plan()
                .map(plan -> Imposition.impose(leaves, plan, SheetNote.of(labels, faces)))
                .orElseGet(() -> leaves.stream()
                        .flatMap(leaf -> Stream.concat(Stream.of(leaf.front()), leaf.back().stream()))
                        .toList());
    }

    private static List<Leaf> leaves(Laid laid) {
        return IntStream.range(0, laid.cards().size())
                .mapToObj(at -> new Leaf(
                        laid.cards().get(at),
                        laid.backs().isEmpty()
                                ? Optional.empty()
                                : Optional.of(laid.backs().get(at))))
                .toList();
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
