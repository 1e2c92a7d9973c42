package org.drillwright.print.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.block.FootBlock;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.block.RuleOfConduct;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.layout.words.SafetyText;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Typefaces;
import org.drillwright.wording.Direction;
import org.drillwright.wording.Message;

/**
 * The conduct of the hall, deferring to the national federation, local codes and a qualified instructor: a key word, what
 * it asks, in two columns; on small cards the key word runs in. It takes one side of a card; in a language with long words a
 * small card is printed on both.
 */
public final class SafetyCard {

    private final Press press;
    private final SafetyText text;
    private final Labels labels;

    private SafetyCard(Grid grid, String school, Labels labels, Typefaces faces) {
        this.press = new Press(grid, faces);
        this.text = SafetyText.of(school, labels, faces);
        this.labels = labels;
    }

    /**
     * A card of its own.
     *
     * @param school whose card it is; may be empty
     */
    public static CardSides lay(Grid grid, String school, Labels labels, Typefaces faces) {
        SafetyCard card = new SafetyCard(grid, school, labels, faces);
        CardSides sides = card.oneSide(false)
                .map(front -> new CardSides(front, Optional.empty()))
                .orElseGet(card::bothSides);
        return isRightToLeft(labels)
                ? new CardSides(Mirrored.of(sides.front(), faces), sides.back().map(back -> Mirrored.of(back, faces)))
                : sides;
    }

    /**
     * The same behind another card, where the hole is on the other side; nothing if it takes more than one side.
     *
     * @param mirrored whether both are mirrored when all is laid, as the words of the other card want it
     */
    static Optional<Frame> behind(Grid grid, String school, boolean mirrored, Labels labels, Typefaces faces) {
        boolean alike = isRightToLeft(labels) == mirrored;
        Optional<Frame> card = new SafetyCard(grid, school, labels, faces).oneSide(alike);
        return alike ? card : card.map(frame -> Mirrored.of(frame, faces));
    }

    private static boolean isRightToLeft(Labels labels) {
        return Direction.of(labels.language().locale()).isRightToLeft();
    }

    /** In the most open manner that one side holds. */
    private Optional<Frame> oneSide(boolean behind) {
        int all = text.rules().size();
        return Stream.of(RuleOfConduct.Manner.values())
                .flatMap(manner -> side(manner, 0, all, behind).stream())
                .findFirst();
    }

    /** With as many rules in front as it holds. */
    private CardSides bothSides() {
        int all = text.rules().size();
        for (RuleOfConduct.Manner manner : RuleOfConduct.Manner.values()) {
            for (int to = all - 1; to > 0; to--) {
                Optional<Frame> front = side(manner, 0, to, false);
                Optional<Frame> back = side(manner, to, all, true);
                if (front.isPresent() && back.isPresent()) {
                    return new CardSides(front.get(), back);
                }
            }
        }
        throw new IllegalStateException("a card cannot hold the rules of conduct");
    }

    private Optional<Frame> side(RuleOfConduct.Manner manner, int from, int to, boolean behind) {
        List<Box> parts = new ArrayList<>();
        parts.add(RuleOfConduct.title(text, press, behind));
        parts.add(press.rule(LineWeight.HEAVY));
        for (int at = from; at < to; at++) {
            parts.add(new RuleOfConduct(press, manner).set(text.rules().get(at)));
            parts.add(press.rule(at == to - 1 ? LineWeight.HEAVY : LineWeight.THIN));
        }
        parts.add(press.space(0.3));
        parts.add(press.paragraph(
                to < text.rules().size() ? onTheBack() : text.risk(),
                press.grid().left()));
        Box body = Box.stack(parts);
        Box foot = new FootBlock(text.foot(), press).set();
        return body.height() + foot.height() > press.room() || !body.broken().isEmpty()
                ? Optional.empty()
                : Optional.of(press.side(body, foot, press.hole(behind), Optional.empty()));
    }

    private Paragraph onTheBack() {
        Message where = Message.plain(labels.text(Label.OVER_BACK)).sentence();
        return press.words(Face.BOLD, where.in(labels.language().locale()));
    }
}
