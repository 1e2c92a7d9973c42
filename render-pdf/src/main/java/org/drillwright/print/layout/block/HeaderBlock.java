package org.drillwright.print.layout.block;

import java.util.List;
import java.util.Optional;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;

/** The head of a side: the title beside the hole, what the drill is, and what is read before the first count. */
public final class HeaderBlock {

    private final CardText text;
    private final Press press;
    private final Grid grid;

    public HeaderBlock(CardText text, Press press) {
        this.text = text;
        this.press = press;
        this.grid = press.grid();
    }

    /** Of a drill's first side, with a mark such as '1 of 2' where it has several cards. */
    public Slab first(Optional<String> ofSeveral) {
        return Slab.stack(List.of(
                title(ofSeveral), press.space(0.35), press.list(text.before(), grid.axis()), press.space(0.35)));
    }

    /** Of a further card's front. */
    public Slab further(String continued, Optional<String> ofSeveral) {
        return Slab.stack(List.of(title(ofSeveral), press.space(0.35), continued(continued), press.space(0.35)));
    }

    /** Of a card's back, where the hole is at the right. */
    public Slab behind(Optional<String> continued) {
        double width = grid.inner() - (grid.isRinged() ? grid.hole().width() + 0.5 * grid.number() : 0);
        SetText title = press.balanced(text.title(), press.scale().small(), grid.left(), 0, width);
        Slab words = Press.slab(Role.TITLE, title);
        double hole = grid.hole().height() + 0.3 * press.scale().small().leading();
        return Slab.stack(List.of(
                words,
                continued
                        .map(said -> Slab.stack(List.of(press.space(0.35), continued(said))))
                        .orElse(Slab.NONE),
                Slab.space(continued.isPresent() ? 0 : Math.max(0, hole - words.height())),
                press.space(0.35)));
    }

    private Slab continued(String words) {
        return press.paragraph(press.words(Face.BOLD, words), grid.axis());
    }

    private Slab title(Optional<String> ofSeveral) {
        SetText title = press.balanced(text.title(), press.scale().title(), grid.axis(), 0, grid.besideNumbers());
        Paragraph about = ofSeveral
                .map(part -> text.about().followedBy(new Styled("· " + part, Face.BOLD)))
                .orElse(text.about());
        Slab both = Slab.stack(List.of(Press.slab(Role.TITLE, title), press.paragraph(about, grid.axis())));
        return Slab.stack(List.of(both, Slab.space(Math.max(0, grid.hole().height() - both.height()))));
    }
}
