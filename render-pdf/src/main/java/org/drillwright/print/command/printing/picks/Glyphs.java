package org.drillwright.print.command.printing.picks;

import java.util.List;
import org.drillwright.check.Subject;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.Problem;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.text.Coverage;
import org.drillwright.print.text.Typefaces;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.Span;
import org.drillwright.source.Written;

/** Finds the characters that cannot be printed, each at its place in the drill's file. */
public final class Glyphs {

    static final String RULE = "printable";

    private static final String WAY_OUT = "Write it in letters and signs that the card's typeface has.";

    private final Typefaces faces;
    private final Coverage coverage;

    public Glyphs(Typefaces faces) {
        this.faces = faces;
        this.coverage = new Coverage(faces);
    }

    /** One finding for each character that a card of the drill would lack. */
    public List<Finding> lacking(Subject drill, CardSubject card) {
        return CardLayout.unprintable(card, faces).stream()
                .map(problem ->
                        new Finding(RULE, Severity.ERROR, drill.file(), place(drill, problem), said(problem), WAY_OUT))
                .toList();
    }

    private static String said(Problem problem) {
        return problem.sentence() + " It stands in: " + problem.field() + ".";
    }

    /** Where the character stands; the file's beginning if it comes from the settings. */
    private Span place(Subject drill, Problem problem) {
        for (Written words : PrintedWords.of(drill, problem.field())) {
            for (int codePoint : coverage.missing(words.text())) {
                int at = words.text().indexOf(codePoint);
                if (at >= 0 && problem.sentence().contains(String.format("U+%04X ", codePoint))) {
                    return words.span(at, at + Character.charCount(codePoint));
                }
            }
        }
        return Span.at(0);
    }
}
