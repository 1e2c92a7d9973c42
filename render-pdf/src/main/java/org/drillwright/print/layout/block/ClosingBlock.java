package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.SetText;
import org.drillwright.print.text.Paragraph;

/** What is read behind the last count: closing, how often to go through it, cautions. */
public final class ClosingBlock {

    private final CardText text;
    private final Press press;

    public ClosingBlock(CardText text, Press press) {
        this.text = text;
        this.press = press;
    }

    public Box set() {
        double axis = press.grid().axis();
        List<Box> pieces = new ArrayList<>(List.of(press.space(0.3)));
        if (!text.closing().isEmpty()) {
            pieces.add(press.list(List.of(text.closing()), axis));
        }
        pieces.add(press.paragraph(text.repeat(), axis));
        text.cautions().forEach(caution -> pieces.add(caution(caution)));
        return Box.stack(pieces);
    }

    private Box caution(Paragraph words) {
        Grid grid = press.grid();
        SetText set = press.small().balanced(words, grid.words(), 0, grid.right() - grid.words());
        Sign.Place place = Sign.Place.before(press.small(), grid.axis(), 0);
        Node sign = new Node.Sign(text.heads().safety() + ":", Sign.safety(place, press.scale()));
        return Box.of(set.height(), sign, set.as(Role.PARAGRAPH)).breaking(set);
    }
}
