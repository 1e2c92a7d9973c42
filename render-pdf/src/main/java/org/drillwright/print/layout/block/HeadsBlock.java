package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Paragraph;

/** The head of the table, between a heavy rule and a thin one: which sign is whose, and over the pictures 'Distance'. */
public final class HeadsBlock {

    /** A sign and the room behind it, as a share of the type size. */
    private static final double SIGN = 1.15;

    /** Between the two roles. */
    private static final double APART = 1.6;

    /** Between the roles and 'Distance'; where there is less, one role stands under the other. */
    private static final double BEFORE_DISTANCE = 0.3;

    private final CardText.Heads heads;
    private final Press press;
    private final Type type;

    public HeadsBlock(CardText.Heads heads, Press press) {
        this.heads = heads;
        this.press = press;
        this.type = press.small();
    }

    public Box set() {
        Grid grid = press.grid();
        double pad = 0.2 * type.leading();
        double baseline = type.baseline(pad);
        double capitals = press.faces().of(Face.BOLD).capHeight() * type.size();
        SetText distance = distance(pad);
        double end = distance.lines().stream().mapToDouble(Mark.Text::x).min().orElse(grid.right())
                - BEFORE_DISTANCE * type.size();
        double x = grid.axis();
        List<Mark> signs = new ArrayList<>(Sign.leader(new Sign.Place(x, baseline, capitals), type.size()));
        SetText leader = head(heads.leader(), x + SIGN * type.size(), pad, end);
        double beside = x + (SIGN + width(heads.leader()) + APART) * type.size();
        boolean abreast = beside + (SIGN + width(heads.follower())) * type.size() <= end;
        double below = abreast ? 0 : leader.height();
        x = abreast ? beside : x;
        signs.addAll(Sign.follower(new Sign.Place(x, baseline + below, capitals), type.size()));
        SetText follower = head(heads.follower(), x + SIGN * type.size(), pad + below, end);
        Node row = new Node.Group(
                Role.ROW,
                List.of(
                        new Node.Words(Role.CELL, List.of()),
                        leader.as(Role.COLUMN_HEAD),
                        follower.as(Role.COLUMN_HEAD),
                        distance.as(Role.COLUMN_HEAD)));
        double height = Math.max(below + follower.height(), distance.height());
        Box line = Box.of(height + 2 * pad, signs, List.of(row)).breaking(leader, follower, distance);
        return Box.stack(press.rule(LineWeight.HEAVY), line, press.rule(LineWeight.THIN));
    }

    private double width(String head) {
        return press.faces().of(Face.BOLD).width(head);
    }

    /** Over the pictures, and farther to the left if a word of it is wider than they are. */
    private SetText distance(double top) {
        Grid grid = press.grid();
        Paragraph words = press.words(Face.REGULAR, heads.distance());
        double wide = Math.max(grid.picture(), Math.min(words.onOneLine() * type.size(), grid.besideNumbers() / 2));
        return type.about(grid.right() - wide / 2, words, grid.right() - wide, top, wide);
    }

    private SetText head(String word, double x, double top, double end) {
        return type.set(press.words(Face.BOLD, word), x, top, end - x);
    }
}
