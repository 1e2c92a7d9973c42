package org.drillwright.print.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.model.Drill;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.print.Flat;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.text.Wording;

/** What holds of the cards of any drill: nothing is cut off, dropped, too small or overlapping, or the drill has no card. */
public final class WholeCards {

    private static final double HAIR = 0.02;

    private WholeCards() {}

    /** Either every word is on the cards, or there is no card and it is said why. */
    public static void of(CardSubject subject, Laid laid, CardSize size) {
        assertEquals(
                laid.cards().isEmpty(),
                laid.problems().stream().anyMatch(it -> it.kind() == CardProblem.Kind.NOT_PRINTED));
        if (laid.cards().isEmpty()) {
            return;
        }
        Grid grid = Grid.of(size);
        for (CardSides card : laid.cards()) {
            inPlace(card.front(), grid, grid.hole());
            card.back().ifPresent(back -> inPlace(back, grid, grid.holeBehind()));
        }
        saysAll(subject, laid.sides(), grid);
        assertEquals(
                laid.cards().size() > (size.isForTheWall() ? 2 : 1),
                laid.problems().stream().anyMatch(it -> it.sentence().english().startsWith("It needs")));
    }

    /** Nothing stands outside the margins or on the hole, and nothing on anything else. */
    public static void inPlace(Frame card, Grid grid, Rectangle hole) {
        assertEquals(grid.width(), card.width(), 1e-9);
        inPlace(
                card,
                new Rectangle(grid.left(), grid.top(), grid.right() - grid.left(), grid.bottom() - grid.top()),
                Optional.of(hole));
    }

    /** Nothing stands on the edge that a page keeps clear, and nothing on anything else. */
    public static void inPlace(Frame page) {
        double clear = page.clear();
        inPlace(
                page,
                new Rectangle(clear, clear, page.width() - 2 * clear, page.height() - 2 * clear),
                Optional.empty());
    }

    private static void inPlace(Frame card, Rectangle inner, Optional<Rectangle> hole) {
        List<Rectangle> boxes =
                new ArrayList<>(Flat.texts(card).stream().map(Flat::box).toList());
        Flat.figures(card).forEach(figure -> boxes.add(figure.box()));
        for (int at = 0; at < boxes.size(); at++) {
            Rectangle box = boxes.get(at);
            assertTrue(
                    box.x() >= inner.x() - HAIR
                            && box.y() >= inner.y() - HAIR
                            && box.right() <= inner.right() + HAIR
                            && box.bottom() <= inner.bottom() + HAIR,
                    () -> box + " leaves the card");
            hole.ifPresent(punched -> assertFalse(Flat.overlap(punched, box), () -> box + " is punched"));
            for (Rectangle other : boxes.subList(at + 1, boxes.size())) {
                assertFalse(Flat.overlap(box, other), () -> box + " overlaps " + other);
            }
        }
    }

    /** Every word is there, in the order of reading, and in the sizes of the card. */
    static void saysAll(CardSubject subject, List<Frame> sides, Grid grid) {
        everyWordInOrder(subject, sides);
        inFiveSizes(sides, grid.scale());
    }

    private static void everyWordInOrder(CardSubject subject, List<Frame> cards) {
        String letters = Flat.letters(cards);
        int at = 0;
        for (String expected : printed(subject)) {
            String bare = Flat.bare(Wording.clean(expected));
            int found = letters.indexOf(bare, at);
            assertTrue(found >= 0, () -> "'" + expected + "' is missing or out of order");
            at = found + bare.length();
        }
    }

    private static void inFiveSizes(List<Frame> cards, Scale scale) {
        for (Frame card : cards) {
            for (Mark.Text text : Flat.texts(card)) {
                assertTrue(scale.sizes().contains(text.size()), () -> text + " is of no size of the card");
            }
        }
    }

    private static List<String> printed(CardSubject subject) {
        Drill drill = subject.drill();
        List<String> printed = new ArrayList<>(List.of(
                drill.title().isBlank() ? drill.id() : drill.title(),
                String.join("·", subject.school().gearOf(drill))));
        printed.add(drill.opening());
        printed.add(drill.start());
        // On a second card the title and the heads come again, so each cell is looked for on its own.
        for (int at = 0; at < drill.steps().size(); at++) {
            Step step = drill.steps().get(at);
            printed.add(String.valueOf(at + 1));
            printed.add(step.call());
            printed.add(step.leader().map(Turn::say).orElse("—"));
            printed.add(step.follower().map(Turn::say).orElse("—"));
            printed.add(step.distance());
            printed.add(step.safety());
        }
        printed.add(drill.closing());
        printed.addAll(drill.cautions());
        return printed;
    }
}
