package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.TypeSize;
import org.drillwright.print.layout.words.CardText;

/** The foot of a side: under a thin rule the caution, then where the card belongs, at the line's end its mark. */
public final class FootBlock {

    /** Under the rule, as a share of the foot's leading. */
    private static final double UNDER_RULE = 0.3;

    private final CardText.Foot foot;
    private final Press press;

    public FootBlock(CardText.Foot foot, Press press) {
        this.foot = foot;
        this.press = press;
    }

    public Slab set() {
        Grid grid = press.grid();
        TypeSize type = press.scale().foot();
        TypeSize marked = press.scale().small();
        double y = UNDER_RULE * type.leading();
        SetText caution = press.running(foot.caution(), type, grid.left(), y, grid.inner());
        y += caution.height();
        double mark = foot.mark().onOneLine() * marked.size();
        double beside = mark == 0 ? 0 : mark + type.size();
        y += mark == 0 ? 0 : above(type, marked);
        SetText line = press.running(foot.line(), type, grid.left(), y, grid.inner() - beside);
        double end = Math.max(line.height(), foot.mark().isEmpty() ? 0 : type.leading());
        List<Mark.Text> marks = mark(mark, y + end);
        List<Node> content = new ArrayList<>();
        add(caution.lines(), content);
        add(line.lines(), content);
        add(marks, content);
        Slab words = new Slab(y + end, List.of(), content, line.broken());
        return Slab.stack(List.of(press.space(0.5), press.rule(Press.THIN), words));
    }

    /** How much the mark, larger than its line, must be lowered to keep clear of the tails above it. */
    private double above(TypeSize line, TypeSize mark) {
        double needed = press.faces().of(Face.BOLD).capHeight() * mark.size()
                + press.faces().of(Face.REGULAR).descent() * line.size();
        return Math.max(0, needed - line.leading());
    }

    /** On the baseline of the last line. */
    private List<Mark.Text> mark(double width, double bottom) {
        Grid grid = press.grid();
        TypeSize type = press.scale().foot();
        double baseline = SetText.baseline(press.faces(), type, bottom - type.leading());
        SetText set = press.running(foot.mark(), press.scale().small(), grid.right() - width, 0, width + 1);
        return set.lines().stream()
                .map(run -> run.moved(0, baseline - run.baseline()))
                .toList();
    }

    private static void add(List<Mark.Text> lines, List<Node> content) {
        if (!lines.isEmpty()) {
            content.add(new Node.Words(Role.PARAGRAPH, lines));
        }
    }
}
