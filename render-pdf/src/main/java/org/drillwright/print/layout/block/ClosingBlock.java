package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.text.Paragraph;

/** What is read behind the last count: closing, how often to go through it, cautions. */
public final class ClosingBlock {

    private final CardText text;
    private final Press press;

    public ClosingBlock(CardText text, Press press) {
        this.text = text;
        this.press = press;
    }

    public Slab set() {
        double axis = press.grid().axis();
        List<Slab> pieces = new ArrayList<>(List.of(press.space(0.3)));
        if (!text.closing().isEmpty()) {
            pieces.add(press.list(List.of(text.closing()), axis));
        }
        pieces.add(press.paragraph(text.repeat(), axis));
        text.cautions().forEach(caution -> pieces.add(caution(caution)));
        return Slab.stack(pieces);
    }

    private Slab caution(Paragraph words) {
        Grid grid = press.grid();
        SetText set = press.balanced(words, press.scale().small(), grid.words(), 0, grid.right() - grid.words());
        Sign.Place place = new Sign.Place(
                grid.axis(),
                SetText.baseline(press.faces(), press.scale().small(), 0),
                press.faces().of(Face.REGULAR).capHeight()
                        * press.scale().small().size());
        Node sign = new Node.Sign(text.heads().safety() + ":", Sign.safety(place, press.scale()));
        return new Slab(
                set.height(), List.of(), List.of(sign, new Node.Words(Role.PARAGRAPH, set.lines())), set.broken());
    }
}
