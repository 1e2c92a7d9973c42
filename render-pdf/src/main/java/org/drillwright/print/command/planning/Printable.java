package org.drillwright.print.command.planning;

import java.util.List;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Node;
import org.drillwright.print.text.GlyphCoverage;
import org.drillwright.print.text.Typefaces;
import org.drillwright.wording.Message;

/** Looks for characters that the typeface lacks: a name must not lose letters in print. */
final class Printable {

    private final GlyphCoverage coverage;

    private Printable(Typefaces faces) {
        this.coverage = new GlyphCoverage(faces);
    }

    static void check(List<Frame> pages, Typefaces faces) {
        Printable printable = new Printable(faces);
        pages.forEach(page -> page.content().forEach(printable::check));
    }

    private void check(Node node) {
        if (node instanceof Node.Group group) {
            group.parts().forEach(this::check);
        } else if (node instanceof Node.Words words) {
            words.lines().forEach(line -> check(line.text()));
        }
    }

    private void check(String text) {
        List<Integer> missing = coverage.missing(text);
        if (!missing.isEmpty()) {
            throw new CannotRun(
                    Message.of(Printable.class, "unprintable", text, String.format("U+%04X", missing.get(0))));
        }
    }
}
