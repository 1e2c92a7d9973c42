package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.layout.fit.TypeSize;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;

/** Sets the pieces of cards on one grid. */
public record Press(Grid grid, Typefaces faces) {

    /** A rule that begins and ends the drill, in points. */
    public static final double HEAVY = 1.5;

    /** A rule between its parts. */
    public static final double THIN = 0.5;

    /** Behind a numeral, as a share of its size. */
    private static final double BEHIND_NUMERAL = 0.25;

    public static Press of(CardText text, Grid grid, Typefaces faces) {
        double numerals = text.counts().stream()
                .mapToDouble(count -> faces.of(Face.BOLD).width(count.numeral()) + BEHIND_NUMERAL)
                .max()
                .orElse(0);
        Grid fitted = grid.forNumbers(numerals * grid.scale().number());
        return new Press(text.alone() ? fitted.forOne() : fitted, faces);
    }

    public Scale scale() {
        return grid.scale();
    }

    public Paragraph words(Face face, String text) {
        return Paragraph.of(faces, face, text);
    }

    public Paragraph labelled(String label, String text) {
        return Paragraph.of(faces, List.of(new Styled(label, Face.BOLD), new Styled(text, Face.REGULAR)));
    }

    public SetText balanced(Paragraph words, TypeSize type, double x, double top, double width) {
        return SetText.balanced(faces, words, type, new SetText.Column(x, top, width));
    }

    public SetText running(Paragraph words, TypeSize type, double x, double top, double width) {
        return SetText.running(faces, words, type, new SetText.Column(x, top, width));
    }

    /** A paragraph of the small size, from a place to the right margin. */
    public Slab paragraph(Paragraph words, double x) {
        SetText set = running(words, scale().small(), x, 0, grid.right() - x);
        return slab(Role.PARAGRAPH, set);
    }

    public static Slab slab(Role role, SetText set) {
        List<Node> content = set.lines().isEmpty() ? List.of() : List.of(new Node.Words(role, set.lines()));
        return new Slab(set.height(), List.of(), content, set.broken());
    }

    /** Paragraphs of a bold name and what is said of it, as a list, from a place to the right margin. */
    public Slab list(List<Paragraph> paragraphs, double x) {
        List<Node> items = new ArrayList<>();
        List<String> broken = new ArrayList<>();
        double y = 0;
        for (Paragraph words : paragraphs) {
            SetText set = running(words, scale().small(), x, y, grid.right() - x);
            items.add(item(set.lines()));
            broken.addAll(set.broken());
            y += set.height();
        }
        List<Node> list = items.isEmpty() ? List.of() : List.of(new Node.Group(Role.LIST, items));
        return new Slab(y, List.of(), list, broken);
    }

    private static Node item(List<Mark.Text> runs) {
        int name = 0;
        while (name < runs.size() && runs.get(name).face() == Face.BOLD) {
            name++;
        }
        List<Node> parts = new ArrayList<>();
        if (name > 0) {
            parts.add(new Node.Words(Role.ITEM_NAME, runs.subList(0, name)));
        }
        parts.add(new Node.Words(Role.ITEM_BODY, runs.subList(name, runs.size())));
        return new Node.Group(Role.ITEM, parts);
    }

    /** A rule from margin to margin, its middle at the slab's top. */
    public Slab rule(double width) {
        Mark rule = new Mark.Line(grid.left(), 0, grid.right(), 0, width, Ink.BLACK);
        return new Slab(0, List.of(rule), List.of(), List.of());
    }

    /** A share of the small size's leading. */
    public Slab space(double share) {
        return Slab.space(share * scale().small().leading());
    }

    /** Where the punch goes, if the card is worn on a ring. */
    public List<Mark> hole(boolean behind) {
        return grid.isRinged() ? List.of(Sign.hole(behind ? grid.holeBehind() : grid.hole())) : List.of();
    }

    /** From the top margin to the foot's end, in points. */
    public double room() {
        return grid.bottom() - grid.top();
    }

    /** A side of a card: its body from the top, its foot at the bottom. */
    public Frame side(Slab body, Slab foot, List<Mark> hole, Optional<String> draft) {
        Slab all = body.moved(grid.top());
        Slab end = foot.moved(grid.bottom() - foot.height());
        List<Mark> backdrop = new ArrayList<>();
        draft.ifPresent(word -> backdrop.add(DraftMark.across(grid, word, faces)));
        backdrop.addAll(hole);
        backdrop.addAll(all.backdrop());
        backdrop.addAll(end.backdrop());
        List<Node> content =
                Stream.concat(all.content().stream(), end.content().stream()).toList();
        return new Frame(
                grid.width(), grid.height(), grid.clear(), backdrop, List.of(new Node.Group(Role.CARD, content)));
    }
}
