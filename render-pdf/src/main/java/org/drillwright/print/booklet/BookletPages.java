package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.FootBlock;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.block.SetText;
import org.drillwright.print.layout.block.Slab;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.TypeSize;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
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
    static double room(Press press, Slab foot) {
        return press.room() - head(press, "", 1).height() - foot.height();
    }

    /** The foot of a page that is no drill's. */
    Slab foot() {
        return foot(press, labels, Paragraph.of(press.faces(), List.of()), press.words(Face.BOLD, ""));
    }

    /** On one line if it holds the caution and the mark; else neither is broken. */
    static Slab foot(Press press, Labels labels, Paragraph remarks, Paragraph mark) {
        Paragraph caution = press.words(Face.REGULAR, labels.text(Label.DEFERRAL_SHORT));
        TypeSize type = press.scale().foot();
        double line = (caution.onOneLine() + 1) * type.size()
                + mark.onOneLine() * press.scale().small().size();
        boolean one = mark.isEmpty() || line <= press.grid().inner();
        CardText.Foot foot =
                one ? new CardText.Foot(remarks, caution, mark) : new CardText.Foot(caution, remarks, mark);
        return new FootBlock(foot, press).set();
    }

    double room() {
        return room(press, foot());
    }

    /** @param standing what the running head says */
    void add(String standing, Slab body) {
        add(standing, body, foot(), Optional.empty());
    }

    void add(String standing, Slab body, Slab foot, Optional<String> draft) {
        laid.add(press.side(Slab.stack(List.of(head(press, standing, next()), body)), foot, List.of(), draft));
    }

    /** The name of what begins here. */
    Slab title(String name) {
        Grid grid = press.grid();
        return Press.slab(
                Role.TITLE,
                press.balanced(press.words(Face.BOLD, name), press.scale().title(), grid.left(), 0, grid.inner()));
    }

    /** A page without a running head, the first. */
    void cover(Slab body) {
        laid.add(press.side(body, Slab.NONE, List.of(), Optional.empty()));
    }

    /** Ruled for whoever has the booklet, where a page would stay blank. */
    void notes() {
        List<Slab> rules = new ArrayList<>();
        for (double y = WRITING; y < room(); y += WRITING) {
            rules.add(Slab.space(WRITING));
            rules.add(press.rule(Press.THIN));
        }
        add(labels.text(Label.OWN_NOTES), Slab.stack(rules));
    }

    private static Slab head(Press press, String standing, int page) {
        Grid grid = press.grid();
        TypeSize small = press.scale().small();
        Paragraph number = press.words(Face.BOLD, String.valueOf(page));
        double wide = number.onOneLine() * small.size();
        boolean left = page % 2 == 0;
        Paragraph words = press.words(Face.REGULAR, standing);
        double longest = grid.inner() - wide - 2 * small.size();
        double from = left ? grid.right() - Math.min(longest, words.onOneLine() * small.size()) : grid.left();
        SetText said = press.running(words, small, from, 0, longest + 1);
        SetText numbered = press.running(number, small, left ? grid.left() : grid.right() - wide, 0, wide + 1);
        List<Node> content = new ArrayList<>();
        for (List<Mark.Text> lines : List.of(said.lines(), numbered.lines())) {
            if (!lines.isEmpty()) {
                content.add(new Node.Words(Role.PARAGRAPH, lines));
            }
        }
        Slab line = new Slab(small.leading(), List.of(), content, List.of());
        return Slab.stack(List.of(line, press.space(0.25), press.rule(Press.THIN), press.space(0.75)));
    }
}
