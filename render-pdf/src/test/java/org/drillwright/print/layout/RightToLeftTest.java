package org.drillwright.print.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.model.Drill;
import org.drillwright.model.Language;
import org.drillwright.model.Step;
import org.drillwright.print.Drills;
import org.drillwright.print.Example;
import org.drillwright.print.Flat;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Format;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.Back;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.pdf.Family;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A card in Hebrew: number and hole at the right, pictures at the left, and these not turned round. */
class RightToLeftTest {

    private static CardSubject hebrew() {
        Step first = Drills.step("דקירה ישרה לקו הפנימי הגבוה עם מכרע.", "הדיפת קוורטה.", "lunge", "פרק יד רך.");
        Step second = Drills.step("קבלו את הנגיעה.", "תשובה ישרה.", "extension", "");
        Step third = Drills.step("חזרו למשמר.", "שובו למשמר.", "lunge", "");
        Drill drill = Drills.drill("parry", "הדיפת קוורטה ותשובה ישרה", List.of(first, second, third));
        return new CardSubject(
                drill,
                Drills.SCHOOL,
                Optional.empty(),
                false,
                List.of(),
                Optional.of(Example.drill("parry-of-quarte").replay()));
    }

    private static Laid lay(CardSubject card, CardSize size) {
        return CardLayout.lay(
                List.of(card), Format.of(size), Back.PICTURES, Labels.in(Language.ENGLISH), Family.dejaVu());
    }

    @ParameterizedTest
    @EnumSource
    void all_stays_on_the_card_and_clear_of_the_hole(CardSize size) {
        Grid grid = Grid.of(size);
        Laid laid = lay(hebrew(), size);
        assertTrue(!laid.cards().isEmpty());
        for (CardSides card : laid.cards()) {
            WholeCards.inPlace(card.front(), grid, grid.holeBehind());
            card.back().ifPresent(back -> WholeCards.inPlace(back, grid, grid.hole()));
        }
    }

    @Test
    void the_grid_is_mirrored_and_the_pictures_are_not() {
        Frame card = lay(hebrew(), CardSize.A6).fronts().get(0);
        Grid grid = Grid.of(CardSize.A6);
        Mark.Text one = Flat.texts(card).stream()
                .filter(text ->
                        text.text().equals("1") && text.size() == grid.scale().number())
                .findFirst()
                .orElseThrow();
        assertEquals(grid.right(), Flat.box(one).right(), 0.01);
        List<Node.Figure> pictures = Flat.figures(card);
        pictures.forEach(picture -> assertEquals(grid.left(), picture.box().x(), 0.01));
        Laid english = lay(Example.card(Example.drill("parry-of-quarte")), CardSize.A6);
        assertEquals(
                Flat.figures(english.fronts().get(0)).stream()
                        .map(Node.Figure::marks)
                        .toList(),
                pictures.stream().map(Node.Figure::marks).toList());
        Rectangle title = Flat.box(Flat.texts(card).get(0));
        assertEquals(grid.width() - grid.axis(), title.right(), 0.01);
    }

    /** A day that stands upright at the left is read from below at the right, as far from the edge; an arrow points back. */
    @Test
    void what_is_mirrored_twice_is_as_it_was() {
        Mark.Text day = new Mark.Text(40, 90, 10, Face.REGULAR, "2026-12-09", Ink.BLACK, 90);
        Mark.Text pages = new Mark.Text(10, 20, 10, Face.BOLD, "\u2190 16, 19", Ink.BLACK);
        Frame page = new Frame(200, 100, 5, List.of(), List.of(new Node.Words(Role.PARAGRAPH, List.of(day, pages))));
        Frame turned = Mirrored.of(page, Family.dejaVu());
        List<Mark.Text> texts = Flat.texts(turned);
        assertEquals(
                40 - day.size() * Family.dejaVu().of(Face.REGULAR).capHeight(),
                200 - texts.get(0).x(),
                1e-9);
        assertEquals("\u2192 16, 19", texts.get(1).text());
        assertEquals(190, Flat.box(texts.get(1)).right(), 0.01);
        assertEquals(page, Mirrored.of(turned, Family.dejaVu()));
    }
}
