package org.drillwright.print.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.CardSize;
import org.drillwright.model.Drill;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.print.Flat;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.CardArea;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.text.Wording;

/** What holds of the cards of any drill: nothing is cut off, dropped, too small or overlapping, or the drill has no card. */
public final class WholeCards {

    private static final double HAIR = 0.02;

    private WholeCards() {}

    /** Either every word is on the cards, or there is no card and it is said why. */
    public static void of(CardSubject subject, Laid laid, CardSize size) {
        assertEquals(
                laid.cards().isEmpty(), laid.problems().stream().anyMatch(it -> it.kind() == Problem.Kind.NOT_PRINTED));
        if (laid.cards().isEmpty()) {
            return;
        }
        laid.cards().forEach(card -> inPlace(card, size));
        everyWordInOrder(subject, laid.cards());
        largeEnough(laid.cards(), size);
        assertEquals(
                laid.cards().size() > 2,
                laid.problems().stream().anyMatch(it -> it.sentence().startsWith("It needs")));
    }

    private static void inPlace(Frame card, CardSize size) {
        assertEquals(Millimetres.toPoints(size.width()), card.width(), 1e-9);
        double edge = Millimetres.toPoints(5) - HAIR;
        List<Box> boxes =
                new ArrayList<>(Flat.texts(card).stream().map(Flat::box).toList());
        Flat.figures(card).forEach(figure -> boxes.add(figure.box()));
        Box hole = CardArea.of(size).hole();
        for (int at = 0; at < boxes.size(); at++) {
            Box box = boxes.get(at);
            assertTrue(
                    box.x() >= edge
                            && box.y() >= edge
                            && box.right() <= card.width() - edge
                            && box.bottom() <= card.height() - edge,
                    () -> box + " leaves the card");
            assertFalse(Flat.overlap(hole, box), () -> box + " is punched");
            for (Box other : boxes.subList(at + 1, boxes.size())) {
                assertFalse(Flat.overlap(box, other), () -> box + " overlaps " + other);
            }
        }
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

    private static void largeEnough(List<Frame> cards, CardSize size) {
        Scale floor = Scale.floor(size, Family.dejaVu());
        for (Frame card : cards) {
            for (Node.Words words : Flat.words(card)) {
                double least = words.role() == Role.CELL || words.role() == Role.ROW_HEAD ? floor.cue() : floor.foot();
                for (Mark.Text text : words.lines()) {
                    assertTrue(text.size() >= least - 1e-9, () -> text + " is too small");
                }
            }
        }
    }
}
