package org.drillwright.print.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.drillwright.model.CardSize;
import org.drillwright.model.Drill;
import org.drillwright.model.Language;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.print.Drills;
import org.drillwright.print.Example;
import org.drillwright.print.Flat;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.text.Wording;

/** What holds of every card, whatever the drill. */
class CardLayoutProperties {

    private static final double HAIR = 0.02;

    @Provide
    Arbitrary<Drill> drills() {
        return DrillArbitraries.drills();
    }

    @Property(tries = 150)
    void nothingIsCutOffDroppedOrOverlapping(
            @ForAll("drills") Drill drill,
            @ForAll CardSize size,
            @ForAll Language language,
            @ForAll boolean draft,
            @ForAll boolean pictures) {
        CardSubject plain = draft ? Drills.draft(drill) : Drills.subject(drill);
        CardSubject subject = pictures ? pictured(plain) : plain;
        Laid laid = CardLayout.lay(List.of(subject), size, Labels.in(language), Family.dejaVu());
        if (laid.cards().isEmpty()) {
            assertTrue(laid.problems().stream().anyMatch(it -> it.kind() == Problem.Kind.NOT_PRINTED));
            return;
        }
        laid.cards().forEach(card -> inPlace(card, size));
        everyWordInOrder(drill, laid.cards());
        largeEnough(laid.cards(), size);
        assertEquals(
                laid.cards().size() > 2,
                laid.problems().stream().anyMatch(it -> it.sentence().startsWith("It needs")));
    }

    /** With the pictures of some played drill: as many counts have one as that drill has. */
    private static CardSubject pictured(CardSubject plain) {
        return new CardSubject(
                plain.drill(),
                plain.school(),
                plain.place(),
                plain.draft(),
                plain.footerRemarks(),
                Optional.of(Example.drill("double-against-the-circle").replay()));
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

    private static void everyWordInOrder(Drill drill, List<Frame> cards) {
        String letters = Flat.letters(cards);
        int at = 0;
        for (String expected : printed(drill)) {
            String bare = Flat.bare(Wording.clean(expected));
            int found = letters.indexOf(bare, at);
            assertTrue(found >= 0, () -> "'" + expected + "' is missing or out of order");
            at = found + bare.length();
        }
    }

    private static List<String> printed(Drill drill) {
        List<String> printed = new ArrayList<>(List.of(drill.title(), String.join("·", drill.gear())));
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
