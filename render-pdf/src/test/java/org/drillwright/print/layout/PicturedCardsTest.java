package org.drillwright.print.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.check.Subject;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;
import org.drillwright.print.Example;
import org.drillwright.print.Flat;
import org.drillwright.print.diagram.Legend;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.diagram.Pictures;
import org.drillwright.print.diagram.Sample;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.layout.words.Back;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.text.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Cards of the example school with pictures, their backs, and the safety card. */
class PicturedCardsTest {

    private static Laid lay(Subject drill, CardSize size, Back back, Language language) {
        return CardLayout.lay(List.of(Example.card(drill)), size, back, Labels.in(language), Family.dejaVu());
    }

    private static Laid lay(String drill, Back back) {
        return lay(Example.drill(drill), CardSize.A6, back, Language.ENGLISH);
    }

    @Test
    void eachCountHasItsPictureOnTheFront() {
        Laid laid = lay("parry-of-quarte", Back.NONE);
        List<String> expected = Pictures.of(Example.drill("parry-of-quarte").replay(), Language.ENGLISH).stream()
                .map(Picture::alternative)
                .toList();
        assertEquals(
                expected,
                Flat.figures(laid.cards().get(0)).stream()
                        .map(Node.Figure::alternative)
                        .toList());
        assertEquals(List.of(), laid.problems());
        assertEquals(List.of(), laid.backs());
    }

    /** Every count is on a picture, in front or behind. */
    @ParameterizedTest
    @EnumSource
    void noPictureIsLost(CardSize size) {
        for (Subject drill : Example.drills()) {
            Laid laid = lay(drill, size, Back.PICTURES, Language.ENGLISH);
            assertEquals(laid.cards().size(), laid.backs().size());
            int behind = laid.backs().stream()
                    .mapToInt(card -> Flat.figures(card).size())
                    .sum();
            assertEquals(drill.replay().counts().size(), behind, drill.drill().id());
        }
    }

    @Test
    void wherePicturesDoNotFitInFrontThatIsSaid() {
        Laid laid = lay("sabre-exchange", Back.NONE);
        assertEquals(List.of(), Flat.figures(laid.cards().get(0)));
        assertEquals(
                List.of("Its pictures do not fit on the front of a card of size a6: choose pictures for the back, or a"
                        + " larger card."),
                laid.problems().stream().map(Problem::sentence).toList());
        assertEquals(List.of(), lay("sabre-exchange", Back.PICTURES).problems());
    }

    /** Of neighbouring pictures that show the same, the words stand once on a card. */
    @Test
    void noCaptionStandsTwiceInARow() {
        int alike = 0;
        for (Subject drill : Example.drills()) {
            List<String> gists = Pictures.of(drill.replay(), Language.ENGLISH).stream()
                    .map(picture -> Flat.bare(picture.gist()))
                    .toList();
            List<Frame> backs =
                    lay(drill, CardSize.A5, Back.PICTURES, Language.ENGLISH).backs();
            String letters = Flat.bare(Flat.letters(backs));
            for (int at = 1; at < gists.size(); at++) {
                if (gists.get(at).equals(gists.get(at - 1))) {
                    alike++;
                    assertTrue(
                            !letters.contains(gists.get(at) + (at + 1) + gists.get(at)),
                            drill.drill().id());
                    assertTrue(
                            !letters.contains(gists.get(at) + gists.get(at)),
                            drill.drill().id());
                }
            }
        }
        assertTrue(alike > 0, "neighbours that look alike");
    }

    @ParameterizedTest
    @EnumSource
    void everythingIsInItsPlaceAndOverlapsNothing(CardSize size) {
        for (Subject drill : Example.drills()) {
            for (Language language : Language.values()) {
                Laid laid = lay(drill, size, Back.PICTURES, language);
                laid.cards().forEach(PicturedCardsTest::inPlace);
                laid.backs().forEach(PicturedCardsTest::inPlace);
            }
        }
    }

    private static void inPlace(Frame card) {
        double edge = Millimetres.toPoints(5) - 0.02;
        List<Box> boxes =
                new ArrayList<>(Flat.texts(card).stream().map(Flat::box).toList());
        Flat.figures(card).forEach(figure -> boxes.add(figure.box()));
        for (int at = 0; at < boxes.size(); at++) {
            Box box = boxes.get(at);
            assertTrue(
                    box.x() >= edge
                            && box.y() >= edge
                            && box.right() <= card.width() - edge
                            && box.bottom() <= card.height() - edge,
                    () -> box + " leaves the card");
            for (Box other : boxes.subList(at + 1, boxes.size())) {
                assertTrue(!Flat.overlap(box, other), () -> box + " overlaps " + other + " in " + Flat.texts(card));
            }
        }
    }

    @Test
    void aBackHoldsThePurposeAndTheNotes() {
        Subject drill = Example.drill("counter-riposte");
        Laid laid = lay("counter-riposte", Back.PICTURES);
        String letters = Flat.letters(laid.backs());
        assertTrue(letters.contains(Flat.bare(Wording.clean(drill.drill().purpose()))), letters);
        assertTrue(letters.contains(Flat.bare(Wording.clean(drill.drill().note()))), letters);
    }

    @Test
    void notesTooLongForTheBackKeepTheDrillFromPrinting() {
        Subject drill = Example.drill("parry-of-quarte");
        CardSubject card = Example.card(drill);
        CardSubject wordy = new CardSubject(
                LongNote.of(drill.drill()), card.school(), card.place(), false, List.of(), card.replay());
        Laid laid = CardLayout.lay(
                List.of(wordy), CardSize.A6, Back.PICTURES, Labels.in(Language.ENGLISH), Family.dejaVu());
        assertEquals(List.of(), laid.cards());
        assertEquals(Problem.Kind.NOT_PRINTED, laid.problems().get(0).kind());
    }

    @ParameterizedTest
    @EnumSource
    void theSafetyCardIsWholeOnEverySize(CardSize size) {
        for (Language language : Language.values()) {
            Labels labels = Labels.in(language);
            List<Frame> cards = SafetyCard.lay(size, labels, Family.dejaVu());
            cards.forEach(PicturedCardsTest::inPlace);
            String letters = Flat.letters(cards);
            for (Label label : Label.values()) {
                boolean wanted = label.name().startsWith("SAFETY_") || label == Label.DEFERRAL;
                assertTrue(
                        !wanted || letters.contains(Flat.bare(Wording.clean(labels.text(label)))),
                        () -> label + " is not in " + letters);
            }
            for (Sample sample : Legend.in(language)) {
                assertTrue(letters.contains(Flat.bare(Wording.clean(sample.words()))), sample.words());
            }
            double floor = Scale.floor(size, Family.dejaVu()).cue();
            for (Frame card : cards) {
                for (Mark.Text text : Flat.texts(card)) {
                    assertTrue(text.size() >= floor - 1e-9, () -> text + " is too small");
                }
            }
        }
    }

    @Test
    void theSafetyCardStandsBehindEachCard() {
        Laid laid = CardLayout.lay(
                Example.drills().stream().limit(3).map(Example::card).toList(),
                CardSize.A5,
                Back.SAFETY,
                Labels.in(Language.ENGLISH),
                Family.dejaVu());
        List<Frame> safety = SafetyCard.lay(CardSize.A5, Labels.in(Language.ENGLISH), Family.dejaVu());
        assertEquals(laid.cards().size(), laid.backs().size());
        assertEquals(safety.get(0), laid.backs().get(0));
    }
}
