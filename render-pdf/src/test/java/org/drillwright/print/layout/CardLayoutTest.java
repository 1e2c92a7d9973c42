package org.drillwright.print.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.drillwright.model.CardSize;
import org.drillwright.model.Drill;
import org.drillwright.model.Language;
import org.drillwright.model.Step;
import org.drillwright.print.Drills;
import org.drillwright.print.Flat;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Family;
import org.junit.jupiter.api.Test;

class CardLayoutTest {

    private static final Step HOLD = Drills.step("Extend and lunge.", "Hold and take the touch.", "lunge", "");

    private static Laid lay(CardSubject subject, CardSize size) {
        return CardLayout.lay(List.of(subject), size, Labels.in(Language.ENGLISH), Family.dejaVu());
    }

    private static Laid lay(Drill drill) {
        return lay(Drills.subject(drill), CardSize.A6);
    }

    private static List<String> words(Frame card, Role role) {
        return Flat.words(card).stream()
                .filter(words -> words.role() == role)
                .map(CardLayoutTest::text)
                .toList();
    }

    private static String text(Node.Words words) {
        List<String> lines = words.lines().stream().map(Mark.Text::text).toList();
        return String.join(" ", lines).replace("  ", " ");
    }

    @Test
    void aCardSaysWhatTheDrillSays() {
        Frame card = lay(Drills.riposte()).cards().get(0);
        assertEquals(List.of("Parry of quarte, direct riposte"), words(card, Role.TITLE));
        assertEquals(List.of("Count", "Leader", "Follower", "Distance", "Safety"), words(card, Role.COLUMN_HEAD));
        assertEquals(List.of("1", "2", "3"), words(card, Role.ROW_HEAD));
        assertEquals(
                List.of(
                        "Hold the lunge and take the touch.",
                        "Riposte straight to the high inside line.",
                        "extension",
                        "Stop the point on the jacket; if a blade snaps, call halt."),
                words(card, Role.CELL).subList(4, 8));
        List<String> paragraphs = words(card, Role.PARAGRAPH);
        assertTrue(paragraphs.contains("Go through 6 times, then change roles."), paragraphs::toString);
        assertTrue(paragraphs.contains("Opening Salute. Masks on. On guard in sixte."), paragraphs::toString);
        assertTrue(
                paragraphs
                        .get(paragraphs.size() - 1)
                        .matches(".*3 of 12\u00A0· Revised 2026-11-02\u00A0· Mark\u00A0\\w{4}-\\w{4}"),
                paragraphs::toString);
    }

    @Test
    void aSoloDrillHasACallerAndAClass() {
        Frame card = lay(Drills.solo()).cards().get(0);
        assertEquals(List.of("Count", "Caller", "Class", "Distance", "Safety"), words(card, Role.COLUMN_HEAD));
    }

    @Test
    void aCallIsPrintedWithItsNumber() {
        List<Frame> cards = lay(Drills.second()).cards();
        assertTrue(cards.stream()
                .flatMap(card -> words(card, Role.ROW_HEAD).stream())
                .anyMatch("2 Call Attack!"::equals));
    }

    @Test
    void whatDoesNotFitGoesOnToASecondCardUnderTheSameHeads() {
        List<Frame> cards = lay(Drills.second()).cards();
        assertEquals(2, cards.size());
        assertEquals(words(cards.get(0), Role.COLUMN_HEAD), words(cards.get(1), Role.COLUMN_HEAD));
        assertEquals(words(cards.get(0), Role.TITLE), words(cards.get(1), Role.TITLE));
        assertTrue(words(cards.get(0), Role.PARAGRAPH).contains("1 of 2"));
        assertTrue(words(cards.get(1), Role.PARAGRAPH).contains("2 of 2"));
        assertTrue(has(cards.get(0), "Opening ") && !has(cards.get(1), "Opening "));
        assertTrue(has(cards.get(1), "Closing ") && !has(cards.get(0), "Closing "));
        assertTrue(has(cards.get(0), "The rules of your national") && has(cards.get(1), "The rules of your national"));
    }

    private static boolean has(Frame card, String beginning) {
        return words(card, Role.PARAGRAPH).stream().anyMatch(words -> words.startsWith(beginning));
    }

    @Test
    void theTypeOfAShortDrillIsLargerThanThatOfALongOne() {
        double few = largestCell(lay(Drills.drill("few", "Few", List.of(HOLD, HOLD))));
        double many = largestCell(lay(Drills.drill("many", "Many", Collections.nCopies(5, HOLD))));
        assertTrue(few > many, few + " and " + many);
        assertTrue(
                largestCell(lay(Drills.subject(Drills.riposte()), CardSize.A5)) > largestCell(lay(Drills.riposte())));
    }

    private static double largestCell(Laid laid) {
        return laid.cards().stream()
                .flatMap(card -> Flat.words(card).stream())
                .filter(words -> words.role() == Role.CELL)
                .flatMap(words -> words.lines().stream())
                .mapToDouble(Mark.Text::size)
                .max()
                .orElseThrow();
    }

    @Test
    void numeralsThatTurnIntoOthersUpsideDownAreUnderlined() {
        Drill drill = Drills.drill("nine", "Nine", Collections.nCopies(9, HOLD));
        Drill five = Drills.drill("five", "Five", Collections.nCopies(5, HOLD));
        assertEquals(2, underlines(lay(drill)));
        assertEquals(0, underlines(lay(five)));
    }

    /** Lines in the column of numerals that are no rule across the card. */
    private static long underlines(Laid laid) {
        return laid.cards().stream()
                .flatMap(card -> card.backdrop().stream())
                .filter(mark -> mark instanceof Mark.Line line && line.y1() == line.y2() && line.x2() - line.x1() < 30)
                .count();
    }

    @Test
    void aDraftIsMarkedAcrossTheCardAndInWords() {
        Frame card = lay(Drills.draft(Drills.riposte()), CardSize.A6).cards().get(0);
        assertTrue(words(card, Role.PARAGRAPH).contains("DRAFT"));
        assertTrue(words(card, Role.PARAGRAPH).contains("Not fully checked: counts 2, 5."));
        assertTrue(watermarked(card));
        assertFalse(watermarked(lay(Drills.riposte()).cards().get(0)));
    }

    private static boolean watermarked(Frame card) {
        return card.backdrop().stream().anyMatch(mark -> mark instanceof Mark.Text text && text.size() > 50);
    }

    @Test
    void aCharacterThatTheFontLacksIsNamedAndNoCardIsMade() {
        Drill drill = Drills.drill("odd", "Odd", List.of(HOLD, Drills.step("Lunge \uD83E\uDD3A.", "Hold.", "", "")));
        Laid laid = lay(drill);
        assertEquals(List.of(), laid.cards());
        assertEquals(
                List.of(new Problem(
                        Problem.Kind.NOT_PRINTED,
                        "odd",
                        "step 2, leader",
                        "The character U+1F93A (FENCER) cannot be printed: the card's typeface lacks it.")),
                laid.problems());
        assertEquals(laid.problems(), CardLayout.unprintable(Drills.subject(drill), Family.dejaVu()));
    }

    @Test
    void aWordThatBreaksAtTheFloorIsReported() {
        String word = "Donaudampfschifffahrtsgesellschaftsparade";
        Laid laid = lay(Drills.drill("long", "Long", List.of(Drills.step(word, "Hold.", "", ""))));
        assertEquals(1, laid.cards().size());
        assertEquals(
                List.of(new Problem(
                        Problem.Kind.PRINTED,
                        "long",
                        "step 1, leader",
                        "'" + word + "' is wider than its column and is broken with a hyphen.")),
                laid.problems());
    }

    @Test
    void moreThanTwoCardsAreMadeAndReported() {
        Laid laid = lay(Drills.drill("long", "Long", Collections.nCopies(60, HOLD)));
        assertTrue(laid.cards().size() > 2);
        assertEquals(1, laid.problems().size());
        assertEquals(Problem.Kind.PRINTED, laid.problems().get(0).kind());
    }

    @Test
    void aCountLongerThanACardMakesNoneAndIsReported() {
        Step endless = Drills.step("Lunge. ".repeat(200), "Hold.", "lunge", "");
        Laid laid = lay(Drills.drill("endless", "Endless", List.of(endless)));
        assertEquals(List.of(), laid.cards());
        assertEquals(Problem.Kind.NOT_PRINTED, laid.problems().get(0).kind());
    }

    /** One count of 60 words is too much for an A7 card: 64 x 95 mm hold about 20 lines of 20 letters in each column. */
    @Test
    void aSizeThatCannotHoldADrillIsRefusedWithTheSmallestThatCan() {
        Step heavy = Drills.step("Lunge and hold still. ".repeat(15), "Hold.", "lunge", "");
        Drill drill = Drills.drill("heavy", "Heavy", List.of(heavy));
        Laid laid = lay(Drills.subject(drill), CardSize.A7);
        assertEquals(List.of(), laid.cards());
        String sentence = laid.problems().get(0).sentence();
        CardSize named = Arrays.stream(CardSize.values())
                .filter(size -> sentence.contains("choose size " + size.word() + ","))
                .findFirst()
                .orElseThrow(() -> new AssertionError(sentence));
        double area = named.width() * named.height();
        for (CardSize size : CardSize.values()) {
            boolean holds = !lay(Drills.subject(drill), size).cards().isEmpty();
            if (size == named) {
                assertTrue(holds, named + " does not hold it");
            } else if (size.width() * size.height() < area) {
                assertFalse(holds, size + " is smaller and would do");
            }
        }
    }

    @Test
    void moreThanTwoCardsAreReportedWithTheReasonAndASizeThatNeedsNoMore() {
        Drill drill = Drills.drill("long", "Long", Collections.nCopies(14, HOLD));
        Laid laid = lay(Drills.subject(drill), CardSize.A7);
        assertTrue(laid.cards().size() > 2);
        String sentence = laid.problems().get(0).sentence();
        assertTrue(sentence.startsWith("It needs " + laid.cards().size() + " cards of size a7, for"), sentence);
        assertTrue(sentence.endsWith("the smallest that needs no more than two."), sentence);
    }

    /**
     * The mark '10 of 12' is wider than '1 of 2' and may push level, weapon and form beside it on to one more line. Which
     * level's name does so depends on the typeface, so that names of many lengths are tried.
     */
    @Test
    void tenCardsAndMoreHaveRoomForTheirWiderMarks() {
        for (int letters = 1; letters <= 30; letters++) {
            Drill drill = ofLevel("m".repeat(letters), Drills.drill("long", "Long", Collections.nCopies(120, HOLD)));
            List<Frame> cards = lay(Drills.draft(drill), CardSize.INDEX_3X5).cards();
            assertTrue(cards.size() > 9, () -> "only " + cards.size() + " cards");
            cards.forEach(CardLayoutTest::assertApart);
        }
    }

    private static void assertApart(Frame card) {
        List<Box> boxes = Flat.texts(card).stream().map(Flat::box).toList();
        for (int at = 0; at < boxes.size(); at++) {
            for (Box other : boxes.subList(at + 1, boxes.size())) {
                assertFalse(Flat.overlap(boxes.get(at), other), () -> "words overlap at " + other);
            }
        }
    }

    private static Drill ofLevel(String level, Drill drill) {
        return new Drill(
                drill.id(),
                drill.title(),
                level,
                drill.form(),
                drill.weapon(),
                drill.hands(),
                drill.worksOn(),
                drill.needs(),
                drill.gear(),
                drill.purpose(),
                drill.start(),
                drill.opening(),
                drill.steps(),
                drill.closing(),
                drill.repeat(),
                drill.swap(),
                drill.tempo(),
                drill.note(),
                drill.cautions(),
                drill.variantOf(),
                drill.tags(),
                drill.revised(),
                drill.accept());
    }

    @Test
    void whoWantsASheetForTheWallIsNotSentToACardForTheHand() {
        Drill drill = Drills.drill("long", "Long", Collections.nCopies(40, HOLD));
        String sentence =
                lay(Drills.subject(drill), CardSize.WALL_A3).problems().get(0).sentence();
        assertTrue(sentence.endsWith("; no size that is read from as far needs fewer than three."), sentence);
    }

    @Test
    void cardsComeInTheOrderOfTheirDrills() {
        List<CardSubject> both =
                new ArrayList<>(List.of(Drills.subject(Drills.solo()), Drills.subject(Drills.riposte())));
        Laid laid = CardLayout.lay(both, CardSize.A6, Labels.in(Language.FRENCH), Family.dejaVu());
        assertEquals(List.of("Advance and retreat by call"), words(laid.cards().get(0), Role.TITLE));
        assertEquals(
                List.of("Parry of quarte, direct riposte"), words(laid.cards().get(1), Role.TITLE));
        assertEquals(
                List.of("Temps", "Meneur", "Suiveur", "Distance", "Sécurité"),
                words(laid.cards().get(1), Role.COLUMN_HEAD));
    }
}
