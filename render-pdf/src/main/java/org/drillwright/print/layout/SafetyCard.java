package org.drillwright.print.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.block.FootBlock;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.block.RuleOfConduct;
import org.drillwright.print.layout.block.Slab;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.layout.words.SafetyText;
import org.drillwright.print.text.Typefaces;

/**
 * The conduct of the hall on one side of a card, deferring to the national federation, local codes and a qualified
 * instructor: a key word, what it asks, in two columns; on small cards the key word runs in.
 */
public final class SafetyCard {

    private SafetyCard() {}

    /**
     * A card of its own.
     *
     * @param school whose card it is; may be empty
     */
    public static Frame lay(Grid grid, String school, Labels labels, Typefaces faces) {
        return lay(grid, school, false, labels, faces);
    }

    /** The same behind another card, where the hole is at the right. */
    static Frame behind(Grid grid, String school, Labels labels, Typefaces faces) {
        return lay(grid, school, true, labels, faces);
    }

    private static Frame lay(Grid grid, String school, boolean behind, Labels labels, Typefaces faces) {
        Press press = new Press(grid, faces);
        SafetyText text = SafetyText.of(school, labels, faces);
        return Stream.of(RuleOfConduct.Manner.values())
                .map(manner -> laid(press, text, manner, behind))
                .flatMap(Optional::stream)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("a card cannot hold the rules of conduct"));
    }

    private static Optional<Frame> laid(Press press, SafetyText text, RuleOfConduct.Manner manner, boolean behind) {
        List<Slab> slabs = new ArrayList<>();
        slabs.add(RuleOfConduct.title(text, press, behind));
        slabs.add(press.rule(Press.HEAVY));
        for (int at = 0; at < text.rules().size(); at++) {
            slabs.add(new RuleOfConduct(press, manner).set(text.rules().get(at)));
            slabs.add(press.rule(at == text.rules().size() - 1 ? Press.HEAVY : Press.THIN));
        }
        slabs.add(press.space(0.3));
        slabs.add(press.paragraph(text.risk(), press.grid().left()));
        Slab body = Slab.stack(slabs);
        Slab foot = new FootBlock(text.foot(), press).set();
        return body.height() + foot.height() > press.room() || !body.broken().isEmpty()
                ? Optional.empty()
                : Optional.of(press.side(body, foot, press.hole(behind), Optional.empty()));
    }
}
