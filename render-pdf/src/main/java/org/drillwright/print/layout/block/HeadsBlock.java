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
import org.drillwright.print.text.Paragraph;

/** The head of the table, between a heavy rule and a thin one: which sign is whose, and over the pictures 'Distance'. */
public final class HeadsBlock {

    /** A sign and the room behind it, as a share of the type size. */
    private static final double SIGN = 1.15;

    /** Between the two roles. */
    private static final double APART = 1.6;

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
        double baseline = Setting.baseline(press.faces(), type, pad);
        double capitals = press.faces().of(Face.BOLD).capHeight() * type.size();
        double x = grid.axis();
        List<Mark> signs = new ArrayList<>(Sign.leader(new Sign.Place(x, baseline, capitals), type.size()));
        Setting leader = head(heads.leader(), x + SIGN * type.size(), pad);
        x += (SIGN + press.faces().of(Face.BOLD).width(heads.leader()) + APART) * type.size();
        signs.addAll(Sign.follower(new Sign.Place(x, baseline, capitals), type.size()));
        Setting follower = head(heads.follower(), x + SIGN * type.size(), pad);
        Setting distance = Setting.centred(
                press.faces(),
                press.words(Face.REGULAR, heads.distance()),
                type,
                new Setting.Column(grid.pictures(), pad, grid.picture()));
        List<Node> row = List.of(
                new Node.Words(Role.CELL, List.of()),
                new Node.Words(Role.COLUMN_HEAD, leader.lines()),
                new Node.Words(Role.COLUMN_HEAD, follower.lines()),
                new Node.Words(Role.COLUMN_HEAD, distance.lines()));
        Slab line = new Slab(type.leading() + 2 * pad, signs, List.of(new Node.Group(Role.ROW, row)), List.of());
        return Slab.stack(List.of(press.rule(Press.HEAVY), line, press.rule(Press.THIN)));
    }

    private Setting head(String word, double x, double top) {
        Paragraph words = press.words(Face.BOLD, word);
        return press.running(words, type, x, top, press.grid().right() - x);
    }
}
