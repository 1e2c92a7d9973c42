package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.TypeSize;
import org.drillwright.print.layout.words.CardText;
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
    private final TypeSize type;

    public HeadsBlock(CardText.Heads heads, Press press) {
        this.heads = heads;
        this.press = press;
        this.type = press.scale().small();
    }

    public Slab set() {
        Grid grid = press.grid();
        double pad = 0.2 * type.leading();
        double baseline = SetText.baseline(press.faces(), type, pad);
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
        List<Node> row = List.of(
                new Node.Words(Role.CELL, List.of()),
                new Node.Words(Role.COLUMN_HEAD, leader.lines()),
                new Node.Words(Role.COLUMN_HEAD, follower.lines()),
                new Node.Words(Role.COLUMN_HEAD, distance.lines()));
        List<String> broken = Stream.of(leader, follower, distance)
                .flatMap(set -> set.broken().stream())
                .toList();
        double height = Math.max(below + follower.height(), distance.height());
        Slab line = new Slab(height + 2 * pad, signs, List.of(new Node.Group(Role.ROW, row)), broken);
        return Slab.stack(List.of(press.rule(Press.HEAVY), line, press.rule(Press.THIN)));
    }

    private double width(String head) {
        return press.faces().of(Face.BOLD).width(head);
    }

    /** Over the pictures, and farther to the left if a word of it is wider than they are. */
    private SetText distance(double top) {
        Grid grid = press.grid();
        Paragraph words = press.words(Face.REGULAR, heads.distance());
        double wide = Math.max(grid.picture(), Math.min(words.onOneLine() * type.size(), grid.besideNumbers() / 2));
        return SetText.centred(press.faces(), words, type, new SetText.Column(grid.right() - wide, top, wide));
    }

    private SetText head(String word, double x, double top, double end) {
        return press.running(press.words(Face.BOLD, word), type, x, top, end - x);
    }
}
