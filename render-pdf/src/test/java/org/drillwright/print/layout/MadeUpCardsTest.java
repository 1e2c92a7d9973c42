package org.drillwright.print.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;
import org.drillwright.print.Example;
import org.drillwright.print.Flat;
import org.drillwright.print.MadeUp;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.layout.fit.Format;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.Back;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.text.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Cards of every size hold words half as long again, and words from the right. */
class MadeUpCardsTest {

    static Stream<Arguments> sizes() {
        return Stream.of(MadeUp.values())
                .flatMap(language -> Stream.of(CardSize.values()).map(size -> Arguments.of(language, size)));
    }

    private static Laid lay(CardSubject card, CardSize size, Back back, Language language) {
        return CardLayout.lay(List.of(card), Format.of(size), back, Labels.in(language), Family.dejaVu());
    }

    private static Rectangle side(MadeUp language, Grid grid, boolean front) {
        return (language == MadeUp.FROM_THE_RIGHT) == front ? grid.holeBehind() : grid.hole();
    }

    private static boolean isSaid(Laid laid) {
        return laid.problems().stream().anyMatch(problem -> problem.kind() == CardProblem.Kind.NOT_PRINTED);
    }

    /**
     * On the size that most cards have every drill, on the others each third. On the smallest a count may be longer than a
     * card; then there is none, and that is said.
     */
    @ParameterizedTest
    @MethodSource("sizes")
    void nothing_is_cut_off_dropped_too_small_or_overlapping(MadeUp language, CardSize size) {
        Grid grid = Grid.of(size);
        List<Subject> drills = Example.drills();
        int step = size == CardSize.A6 ? 1 : 3;
        for (int at = 0; at < drills.size(); at += step) {
            CardSubject card = language.card(drills.get(at));
            Laid laid = lay(card, size, Back.PICTURES, language.language());
            if (laid.cards().isEmpty()) {
                assertTrue(
                        size == CardSize.A7 && isSaid(laid), () -> card.drill().id() + ": " + laid.problems());
                continue;
            }
            for (CardSides sides : laid.cards()) {
                WholeCards.inPlace(sides.front(), grid, side(language, grid, true));
                sides.back().ifPresent(back -> WholeCards.inPlace(back, grid, side(language, grid, false)));
            }
            WholeCards.saysAll(card, laid.sides(), grid);
        }
    }

    /** On one side of all but the smallest size. */
    @ParameterizedTest
    @MethodSource("sizes")
    void the_safety_card_is_whole(MadeUp language, CardSize size) {
        Grid grid = Grid.of(size);
        Labels labels = Labels.in(language.language());
        CardSides card = SafetyCard.lay(grid, language.said("Saltmarsh Hall (invented)"), labels, Family.dejaVu());
        WholeCards.inPlace(card.front(), grid, side(language, grid, true));
        card.back().ifPresent(back -> WholeCards.inPlace(back, grid, side(language, grid, false)));
        assertTrue(card.back().isEmpty() || size == CardSize.A7);
        String letters = Flat.letters(card.printed());
        for (Label label : Label.values()) {
            boolean wanted = label.name().startsWith("SAFETY_") || label == Label.DEFERRAL;
            assertTrue(
                    !wanted || letters.contains(Flat.bare(Wording.clean(labels.text(label)))),
                    () -> label + " is not in " + letters);
        }
        card.printed()
                .forEach(side -> Flat.texts(side)
                        .forEach(text -> assertTrue(
                                text.size() >= grid.scale().foot().size() - 1e-9, () -> text + " is too small")));
    }

    /** A drill that is written in English in a school that reads from the right, and the other way round. */
    @ParameterizedTest
    @EnumSource
    void behind_a_card_of_another_direction_the_hole_is_still_behind_the_hole(CardSize size) {
        Grid grid = Grid.of(size);
        Subject drill = Example.drill("straight-thrust-with-lunge");
        Laid english = lay(Example.card(drill), size, Back.SAFETY, MadeUp.FROM_THE_RIGHT.language());
        Laid turned = lay(MadeUp.FROM_THE_RIGHT.card(drill), size, Back.SAFETY, Language.ENGLISH);
        for (CardSides card : english.cards()) {
            card.back().ifPresent(back -> WholeCards.inPlace(back, grid, grid.holeBehind()));
        }
        for (CardSides card : turned.cards()) {
            card.back().ifPresent(back -> WholeCards.inPlace(back, grid, grid.hole()));
        }
    }

    /** Made so that it tests what it says. */
    @Test
    void words_are_longer_by_half() {
        Labels labels = Labels.in(MadeUp.LONG.language());
        Labels english = Labels.in(Language.ENGLISH);
        int longer = Stream.of(Label.values())
                .mapToInt(label -> labels.text(label).length())
                .sum();
        int plain = Stream.of(Label.values())
                .mapToInt(label -> english.text(label).length())
                .sum();
        assertEquals(1.5, (double) longer / plain, 0.1);
    }
}
