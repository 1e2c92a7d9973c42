package org.drillwright.print.layout.block;

import java.util.Optional;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.SetText;
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
    public Box first(Optional<String> ofSeveral) {
        return Box.stack(
                title(ofSeveral), press.space(0.35), press.list(text.before(), grid.axis()), press.space(0.35));
    }

    /** Of a further card's front. */
    public Box further(String continued, Optional<String> ofSeveral) {
        return Box.stack(title(ofSeveral), press.space(0.35), continued(continued), press.space(0.35));
    }

    /** Of a card's back, where the hole is at the right. */
    public Box behind(Optional<String> continued) {
        double width = grid.inner() - (grid.isRinged() ? grid.hole().width() + 0.5 * grid.number() : 0);
        SetText title = press.small().balanced(text.title(), grid.left(), 0, width);
        Box words = Box.of(Role.TITLE, title);
        double hole = grid.hole().height() + 0.3 * press.small().leading();
        return Box.stack(
                words,
                continued
                        .map(said -> Box.stack(press.space(0.35), continued(said)))
                        .orElse(Box.NONE),
                Box.space(continued.isPresent() ? 0 : Math.max(0, hole - words.height())),
                press.space(0.35));
    }

    private Box continued(String words) {
        return press.paragraph(press.words(Face.BOLD, words), grid.axis());
    }

    private Box title(Optional<String> ofSeveral) {
        SetText title = press.title().balanced(text.title(), grid.axis(), 0, grid.besideNumbers());
        Paragraph about = ofSeveral
                .map(part -> text.about().followedBy(new Styled("· " + part, Face.BOLD)))
                .orElse(text.about());
        Box both = Box.stack(Box.of(Role.TITLE, title), press.paragraph(about, grid.axis()));
        return Box.stack(both, Box.space(Math.max(0, grid.hole().height() - both.height())));
    }
}
