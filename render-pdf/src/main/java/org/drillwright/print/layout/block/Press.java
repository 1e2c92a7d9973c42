package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.layout.fit.TypeSize;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;

/** Sets the pieces of cards on one grid. */
public record Press(Grid grid, Typefaces faces) {

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

    public Type type(TypeSize size) {
        return new Type(faces, size.size(), size.leading());
    }

    public Type title() {
        return type(scale().title());
    }

    /** What each one does. */
    public Type turns() {
        return type(scale().turns());
    }

    /** Everything else that is read. */
    public Type small() {
        return type(scale().small());
    }

    public Type foot() {
        return type(scale().foot());
    }

    /** A paragraph of the small size, from a place to the right margin. */
    public Box paragraph(Paragraph words, double x) {
        return Box.of(Role.PARAGRAPH, small().set(words, x, 0, grid.right() - x));
    }

    /** Paragraphs of a bold name and what is said of it, as a list, from a place to the right margin. */
    public Box list(List<Paragraph> paragraphs, double x) {
        List<Box> items = new ArrayList<>();
        for (Paragraph words : paragraphs) {
            SetText set = small().set(words, x, 0, grid.right() - x);
            items.add(Box.of(set.height(), item(set.lines())).breaking(set));
        }
        return items.isEmpty() ? Box.NONE : Box.stack(items).as(Role.LIST);
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

    /** A rule from margin to margin, its middle at the box's top. */
    public Box rule(LineWeight rule) {
        return Box.NONE.on(rule.across(grid.left(), grid.right(), 0));
    }

    /** A share of the small size's leading. */
    public Box space(double share) {
        return Box.space(share * scale().small().leading());
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
    public Frame side(Box body, Box foot, List<Mark> hole, Optional<String> draft) {
        Box all = Box.abreast(List.of(body.moved(0, grid.top()), foot.moved(0, grid.bottom() - foot.height())));
        List<Mark> behind = new ArrayList<>();
        draft.ifPresent(word -> behind.add(DraftMark.across(grid, word, faces)));
        behind.addAll(hole);
        behind.addAll(all.marks());
        return new Frame(
                grid.width(), grid.height(), grid.clear(), behind, List.of(new Node.Group(Role.CARD, all.nodes())));
    }
}
