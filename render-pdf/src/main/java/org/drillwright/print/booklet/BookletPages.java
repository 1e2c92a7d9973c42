package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.FootBlock;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Paragraph;

/** The pages of a booklet, one behind the other, each with its number outside; odd ones lie at the right. */
final class BookletPages {

    /** Between lines to write on, in points. */
    private static final double WRITING = Millimetres.toPoints(9);

    private final Press press;
    private final Labels labels;
    private final List<Frame> laid = new ArrayList<>();

    BookletPages(Press press, Labels labels) {
        this.press = press;
        this.labels = labels;
    }

    /** The number of the page that is laid next, from 1. */
    int next() {
        return laid.size() + 1;
    }

    /** Whether the next page lies at the left, so that it and the one behind it are seen at once. */
    boolean isLeft() {
        return next() % 2 == 0;
    }

    List<Frame> laid() {
        return laid;
    }

    /** Between the running head and a foot, in points. */
    static double room(Press press, Box foot) {
        return press.room() - head(press, "", 1).height() - foot.height();
    }

    /** The foot of a page that is no drill's. */
    Box foot() {
        return foot(press, labels, Paragraph.of(press.faces(), List.of()), press.words(Face.BOLD, ""));
    }

    /** On one line if it holds the caution and the mark; else neither is broken. */
    static Box foot(Press press, Labels labels, Paragraph remarks, Paragraph mark) {
        Paragraph caution = press.words(Face.REGULAR, labels.text(Label.DEFERRAL_SHORT));
        Type type = press.foot();
        double line = (caution.onOneLine() + 1) * type.size()
                + mark.onOneLine() * press.small().size();
        boolean one = mark.isEmpty() || line <= press.grid().inner();
        CardText.Foot foot =
                one ? new CardText.Foot(remarks, caution, mark) : new CardText.Foot(caution, remarks, mark);
        return new FootBlock(foot, press).set();
    }

    double room() {
        return room(press, foot());
    }

    /** @param standing what the running head says */
    void add(String standing, Box body) {
        add(standing, body, foot(), Optional.empty());
    }

    void add(String standing, Box body, Box foot, Optional<String> draft) {
        laid.add(page(next(), standing, body, foot, draft));
    }

    private Frame page(int number, String standing, Box body, Box foot, Optional<String> draft) {
        return press.side(Box.stack(head(press, standing, number), body), foot, List.of(), draft);
    }

    /** What goes on from page to page, the next one first. */
    Flow flow(String standing) {
        Box foot = foot();
        double room = room(press, foot);
        return new Flow(next(), number -> room, (number, body) -> page(number, standing, body, foot, Optional.empty()));
    }

    void add(Flow flow) {
        laid.addAll(flow.pages());
    }

    /** The name of what begins here. */
    Box title(String name) {
        Grid grid = press.grid();
        return Box.of(Role.TITLE, press.title().balanced(press.words(Face.BOLD, name), grid.left(), 0, grid.inner()));
    }

    /** A page without a running head, the first. */
    void cover(Box body) {
        laid.add(press.side(body, Box.NONE, List.of(), Optional.empty()));
    }

    /** Ruled for whoever has the booklet, where a page would stay blank. */
    void notes() {
        List<Box> rules = new ArrayList<>();
        for (double y = WRITING; y < room(); y += WRITING) {
            rules.add(Box.space(WRITING));
            rules.add(press.rule(LineWeight.THIN));
        }
        add(labels.text(Label.OWN_NOTES), Box.stack(rules));
    }

    private static Box head(Press press, String standing, int page) {
        Grid grid = press.grid();
        Type small = press.small();
        Paragraph number = press.words(Face.BOLD, String.valueOf(page));
        double wide = number.onOneLine() * small.size();
        boolean left = page % 2 == 0;
        Paragraph words = press.words(Face.REGULAR, standing);
        double longest = grid.inner() - wide - 2 * small.size();
        double from = left ? grid.right() - Math.min(longest, words.onOneLine() * small.size()) : grid.left();
        SetText said = small.set(words, from, 0, longest + 1);
        SetText numbered = small.set(number, left ? grid.left() : grid.right() - wide, 0, wide + 1);
        Box line = Box.abreast(List.of(Box.of(Role.PARAGRAPH, said), Box.of(Role.PARAGRAPH, numbered)));
        return Box.stack(
                line.padded(small.leading() - line.height()),
                press.space(0.25),
                press.rule(LineWeight.THIN),
                press.space(0.75));
    }
}
