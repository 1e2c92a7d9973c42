package org.drillwright.print.layout.block;

import java.util.List;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Type;

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

    public Box set() {
        Grid grid = press.grid();
        Type type = press.foot();
        Type marked = press.small();
        double y = UNDER_RULE * type.leading();
        SetText caution = type.set(foot.caution(), grid.left(), y, grid.inner());
        y += caution.height();
        double mark = foot.mark().onOneLine() * marked.size();
        double beside = mark == 0 ? 0 : mark + type.size();
        y += mark == 0 ? 0 : above(type, marked);
        SetText line = type.set(foot.line(), grid.left(), y, grid.inner() - beside);
        double end = Math.max(line.height(), foot.mark().isEmpty() ? 0 : type.leading());
        List<Node> said = Stream.of(caution, line, mark(mark, y + end))
                .filter(set -> !set.lines().isEmpty())
                .<Node>map(set -> set.as(Role.PARAGRAPH))
                .toList();
        Box words = Box.of(y + end, List.of(), said).breaking(line);
        return Box.stack(press.space(0.5), press.rule(LineWeight.THIN), words);
    }

    /** How much the mark, larger than its line, must be lowered to keep clear of the tails above it. */
    private double above(Type line, Type mark) {
        double needed = press.faces().of(Face.BOLD).capHeight() * mark.size()
                + press.faces().of(Face.REGULAR).descent() * line.size();
        return Math.max(0, needed - line.leading());
    }

    /** On the baseline of the last line. */
    private SetText mark(double width, double bottom) {
        Type type = press.foot();
        return press.small()
                .set(foot.mark(), press.grid().right() - width, 0, width + 1)
                .about(type.baseline(bottom - type.leading()));
    }
}
