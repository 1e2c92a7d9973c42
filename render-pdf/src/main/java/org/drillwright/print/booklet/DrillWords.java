package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.model.Drill;
import org.drillwright.print.frame.Face;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;

/** What a drill's page says beyond its card. */
record DrillWords(BookletEntry entry, List<BookletEntry> all, PageNumbers pages, Labels labels, Typefaces faces) {

    /** So many drills are named; of more the pages alone. */
    private static final int NAMED = 12;

    private static final String DOT = "\u00A0· ";

    DrillWords {
        all = List.copyOf(all);
    }

    private Drill drill() {
        return entry.drill();
    }

    /** In bold, as it heads a page that goes on with the drill. */
    Paragraph title() {
        return Paragraph.of(faces, List.of(new Styled(entry.title(), Face.BOLD, entry.span(labels, "title"))));
    }

    /** {@code foil · in pairs · works on line and timing}. */
    Paragraph about() {
        String works = drill().worksOn().isEmpty()
                ? ""
                : labels.text(Label.WORKS_ON_SAID, String.join(", ", drill().worksOn()));
        return Paragraph.of(
                faces,
                Face.REGULAR,
                Stream.of(labels.weapon(drill().weapon()), labels.form(drill().form()), works)
                        .filter(part -> !part.isEmpty())
                        .collect(Collectors.joining(DOT)));
    }

    List<Paragraph> purpose() {
        return drill().purpose().isBlank()
                ? List.of()
                : List.of(labelled(
                        Label.PURPOSE,
                        List.of(new Styled(drill().purpose(), Face.REGULAR, entry.span(labels, "purpose")))));
    }

    Paragraph note() {
        return drill().note().isBlank()
                ? Paragraph.of(faces, List.of())
                : labelled(Label.NOTE, List.of(new Styled(drill().note(), Face.REGULAR, entry.span(labels, "note"))));
    }

    /** What was not fully checked, and when the drill was revised. */
    Paragraph remarks() {
        String revised =
                drill().revised().map(date -> labels.text(Label.REVISED, date)).orElse("");
        String remarks = String.join(" ", entry.subject().footerRemarks());
        return Paragraph.of(faces, List.of(new Styled(remarks, Face.BOLD), new Styled(revised, Face.REGULAR)));
    }

    /** Which drills come before, and which behind. */
    List<Paragraph> related() {
        List<Paragraph> related = new ArrayList<>();
        for (boolean needed : new boolean[] {true, false}) {
            List<BookletEntry> others = entry.among(all, needed);
            if (!others.isEmpty()) {
                related.add(labelled(needed ? Label.NEEDS : Label.LEADS_TO, named(others)));
            }
        }
        return related;
    }

    private List<Styled> named(List<BookletEntry> others) {
        if (others.size() > NAMED) {
            return pages.listed(others.stream().map(BookletEntry::id).toList(), Face.BOLD);
        }
        List<Styled> named = new ArrayList<>();
        for (int at = 0; at < others.size(); at++) {
            BookletEntry other = others.get(at);
            String end = at == others.size() - 1 ? "." : ";";
            named.add(new Styled(pages.of(other.id()) + "\u00A0", Face.BOLD, PageNumbers.to(other.id())));
            named.add(other.linked(end, labels));
        }
        return named;
    }

    private Paragraph labelled(Label label, List<Styled> said) {
        List<Styled> all = new ArrayList<>(List.of(new Styled(labels.text(label), Face.BOLD)));
        all.addAll(said);
        return Paragraph.of(faces, all);
    }
}
