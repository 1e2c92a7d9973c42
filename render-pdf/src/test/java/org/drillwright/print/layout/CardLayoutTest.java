package org.drillwright.print.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drillwright.model.CardSize;
import org.drillwright.model.Drill;
import org.drillwright.model.Language;
import org.drillwright.model.Step;
import org.drillwright.print.Drills;
import org.drillwright.print.Flat;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Format;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.layout.words.Back;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.layout.words.Sentences;
import org.drillwright.print.pdf.Family;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

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
    void a_card_says_what_the_drill_says() {
        Frame card = lay(Drills.riposte()).fronts().get(0);
        assertEquals(List.of("Parry of quarte, direct riposte"), words(card, Role.TITLE));
        assertEquals(List.of("Leader", "Follower", "Distance"), words(card, Role.COLUMN_HEAD));
        assertEquals(List.of("1", "2", "3"), words(card, Role.ROW_HEAD));
        List<String> paragraphs = words(card, Role.PARAGRAPH);
        int second = paragraphs.indexOf("Hold the lunge and take the touch.");
        assertEquals(
                List.of(
                        "Hold the lunge and take the touch.",
                        "Riposte straight to the high inside line.",
                        "extension",
                        "Stop the point on the jacket; if a blade snaps, call halt."),
                paragraphs.subList(second, second + 4));
        assertTrue(paragraphs.contains("Go through 6 times, then change roles."), paragraphs::toString);
        assertEquals(List.of("Gear ", "Opening ", "Start ", "Closing "), words(card, Role.ITEM_NAME));
        assertEquals(
                "Salute. Masks on. On guard in sixte.",
                words(card, Role.ITEM_BODY).get(1));
        int end = paragraphs.size();
        assertEquals(
                "Your federation’s rules, local codes and a qualified instructor come first.", paragraphs.get(end - 3));
        assertTrue(
                paragraphs.get(end - 2).endsWith("3\u00A0of\u00A012\u00A0· Revised 2026-11-02"), paragraphs::toString);
        assertTrue(paragraphs.get(end - 1).matches("\\w{4}-\\w{4}"), paragraphs::toString);
    }

    /** Whoever hears the card hears who is meant, though on paper there is only a sign. */
    @Test
    void signs_are_said() {
        Frame card = lay(Drills.riposte()).fronts().get(0);
        List<String> said = new ArrayList<>();
        card.content().forEach(node -> signs(node, said));
        assertEquals(
                List.of(
                        "Leader:",
                        "Follower:",
                        "Safety:",
                        "Leader:",
                        "Follower:",
                        "Safety:",
                        "Leader:",
                        "Follower:",
                        "Safety:"),
                said);
    }

    private static void signs(Node node, List<String> into) {
        if (node instanceof Node.Group group) {
            group.parts().forEach(part -> signs(part, into));
        } else if (node instanceof Node.Sign sign) {
            into.add(sign.said());
        }
    }

    @Test
    void a_solo_drill_has_a_caller_and_a_class() {
        Frame card = lay(Drills.solo()).fronts().get(0);
        assertEquals(List.of("Caller", "Class", "Distance"), words(card, Role.COLUMN_HEAD));
    }

    @Test
    void a_call_is_printed_with_its_number() {
        assertTrue(lay(Drills.second()).sides().stream()
                .flatMap(card -> words(card, Role.ROW_HEAD).stream())
                .anyMatch("2 Attack!"::equals));
    }

    @Test
    void what_does_not_fit_goes_over_to_the_back_under_the_same_heads() {
        Laid laid = lay(Drills.second());
        assertEquals(1, laid.cards().size());
        List<Frame> sides = laid.sides();
        assertEquals(2, sides.size());
        assertEquals(words(sides.get(0), Role.COLUMN_HEAD), words(sides.get(1), Role.COLUMN_HEAD));
        assertEquals(words(sides.get(0), Role.TITLE), words(sides.get(1), Role.TITLE));
        int over = words(sides.get(0), Role.ROW_HEAD).size();
        assertEquals(7, over + words(sides.get(1), Role.ROW_HEAD).size());
        String rest = over == 6 ? "ount 7" : "ounts " + (over + 1) + "–7";
        assertTrue(has(sides.get(0), "C" + rest + ", closing and cautions: turn over."));
        assertTrue(has(sides.get(1), "Continued: c" + rest));
        assertTrue(named(sides.get(0), "Opening ") && !named(sides.get(1), "Opening "));
        assertTrue(named(sides.get(1), "Closing ") && !named(sides.get(0), "Closing "));
        assertTrue(has(sides.get(0), "Your federation’s rules") && has(sides.get(1), "Your federation’s rules"));
    }

    @Test
    void a_second_card_says_that_it_is_one() {
        Laid laid = lay(Drills.drill("long", "Long", Collections.nCopies(24, HOLD)));
        assertEquals(2, laid.cards().size());
        assertTrue(words(laid.cards().get(0).front(), Role.PARAGRAPH).get(0).endsWith("· 1 of 2"));
        assertTrue(words(laid.cards().get(1).front(), Role.PARAGRAPH).get(0).endsWith("· 2 of 2"));
    }

    /** A sheet on the wall has no back: what goes over hangs below. */
    @Test
    void what_does_not_fit_a_sheet_for_the_wall_goes_to_a_next_sheet() {
        Laid laid = lay(Drills.subject(Drills.second()), CardSize.WALL_A4);
        assertEquals(2, laid.cards().size());
        assertTrue(laid.cards().stream().allMatch(card -> card.back().isEmpty()));
        assertTrue(words(laid.fronts().get(0), Role.PARAGRAPH).stream().anyMatch(it -> it.endsWith(": next sheet.")));
        assertTrue(words(laid.fronts().get(0), Role.PARAGRAPH).stream().anyMatch(it -> it.endsWith("from 1.8 m")));
    }

    private static boolean named(Frame card, String name) {
        return words(card, Role.ITEM_NAME).contains(name);
    }

    private static boolean has(Frame card, String beginning) {
        return words(card, Role.PARAGRAPH).stream().anyMatch(words -> words.startsWith(beginning));
    }

    /** Whatever a drill says, its type is that of its card's size. */
    @Test
    void the_type_of_a_short_drill_is_that_of_a_long_one() {
        Set<Double> few = sizes(lay(Drills.drill("few", "Few", List.of(HOLD, HOLD))));
        Set<Double> many = sizes(lay(Drills.drill("many", "Many", Collections.nCopies(12, HOLD))));
        assertEquals(few, many);
        assertEquals(new TreeSet<>(Scale.HAND.sizes()), few);
    }

    private static Set<Double> sizes(Laid laid) {
        return laid.sides().stream()
                .flatMap(side -> Flat.texts(side).stream())
                .map(Mark.Text::size)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void large_print_is_the_next_scale_on_the_same_paper() {
        Laid laid = CardLayout.lay(
                List.of(Drills.subject(Drills.riposte())),
                Format.of(CardSize.A6).inLargePrint(),
                Back.NONE,
                Labels.in(Language.ENGLISH),
                Family.dejaVu());
        assertEquals(new TreeSet<>(Scale.RING.sizes()), sizes(laid));
        assertEquals(Grid.of(CardSize.A6).width(), laid.fronts().get(0).width());
    }

    /** All that is read begins on one axis; left of it stand only numbers. */
    @ParameterizedTest
    @EnumSource
    void words_begin_on_one_axis(CardSize size) {
        Grid grid = Grid.of(size);
        Frame card = lay(Drills.subject(Drills.riposte()), size).fronts().get(0);
        for (Node.Words words : Flat.words(card)) {
            boolean foot = words.lines().stream()
                    .allMatch(line -> line.size() == grid.scale().foot().size());
            for (Mark.Text line : words.lines()) {
                assertTrue(foot || words.role() == Role.ROW_HEAD || line.x() >= grid.axis() - 1e-9, line::toString);
            }
        }
    }

    @Test
    void a_draft_is_marked_across_both_sides_and_in_words() {
        Laid laid = lay(Drills.draft(Drills.second()), CardSize.A6);
        for (Frame side : laid.sides()) {
            List<String> paragraphs = words(side, Role.PARAGRAPH);
            assertEquals("DRAFT", paragraphs.get(paragraphs.size() - 1));
            String line = paragraphs.get(paragraphs.size() - 2);
            assertTrue(line.startsWith("Not fully checked: counts 2, 5.\u00A0· "), line);
            assertTrue(watermarked(side));
        }
        assertFalse(watermarked(lay(Drills.riposte()).fronts().get(0)));
    }

    /** Black on white and rules of two weights: a copier keeps them. */
    @Test
    void all_is_black_on_white_and_rules_are_of_two_weights() {
        for (Frame side : lay(Drills.second()).sides()) {
            for (Mark mark : side.backdrop()) {
                if (mark instanceof Mark.Line rule) {
                    assertTrue(rule.width() == 0.5 || rule.width() == 1.5, rule::toString);
                    assertEquals(Ink.BLACK, rule.ink());
                } else if (mark instanceof Mark.Shape shape) {
                    shape.fill().ifPresent(ink -> assertTrue(ink.equals(Ink.BLACK) || ink.equals(Ink.WHITE)));
                    shape.stroke().ifPresent(stroke -> assertEquals(Ink.BLACK, stroke.ink()));
                }
            }
            Flat.texts(side).forEach(text -> assertEquals(Ink.BLACK, text.ink()));
        }
    }

    private static boolean watermarked(Frame card) {
        return card.backdrop().stream().anyMatch(mark -> mark instanceof Mark.Text text && text.size() > 50);
    }

    @Test
    void a_character_that_the_font_lacks_is_named_and_no_card_is_made() {
        Drill drill = Drills.drill("odd", "Odd", List.of(HOLD, Drills.step("Lunge \uD83E\uDD3A.", "Hold.", "", "")));
        Laid laid = lay(drill);
        assertEquals(List.of(), laid.cards());
        assertEquals(
                List.of(new CardProblem(
                        CardProblem.Kind.NOT_PRINTED,
                        "odd",
                        "step 2, leader",
                        Message.of(Sentences.class, "lacking", "U+1F93A", "FENCER"))),
                laid.problems());
        assertEquals(laid.problems(), CardLayout.unprintable(Drills.subject(drill), Family.dejaVu()));
    }

    @Test
    void a_word_that_breaks_is_reported() {
        String word = "Donaudampfschifffahrtsgesellschaftsparade";
        Laid laid = lay(Drills.drill("long", "Long", List.of(Drills.step(word, "Hold.", "", ""))));
        assertEquals(1, laid.cards().size());
        assertEquals(
                List.of(new CardProblem(
                        CardProblem.Kind.PRINTED,
                        "long",
                        "step 1, leader",
                        Message.of(Sentences.class, "broken", word))),
                laid.problems());
    }

    @Test
    void many_cards_are_made_and_reported() {
        Laid laid = lay(Drills.drill("long", "Long", Collections.nCopies(60, HOLD)));
        assertTrue(laid.cards().size() > 2);
        assertEquals(1, laid.problems().size());
        assertEquals(CardProblem.Kind.PRINTED, laid.problems().get(0).kind());
    }

    @Test
    void a_count_longer_than_a_card_makes_none_and_is_reported() {
        Step endless = Drills.step("Lunge. ".repeat(200), "Hold.", "lunge", "");
        Laid laid = lay(Drills.drill("endless", "Endless", List.of(endless)));
        assertEquals(List.of(), laid.cards());
        assertEquals(CardProblem.Kind.NOT_PRINTED, laid.problems().get(0).kind());
    }

    /** One count of 60 words is too much for an A7 card: beside the pictures' place a line has some 21 letters. */
    @Test
    void a_size_that_cannot_hold_a_drill_is_refused_with_the_smallest_that_can() {
        Step heavy = Drills.step("Lunge and hold still. ".repeat(15), "Hold.", "lunge", "");
        Drill drill = Drills.drill("heavy", "Heavy", List.of(heavy));
        Laid laid = lay(Drills.subject(drill), CardSize.A7);
        assertEquals(List.of(), laid.cards());
        String sentence = laid.problems().get(0).sentence().english();
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
    void a_second_card_is_reported_with_the_reason_and_a_size_that_needs_none() {
        Drill drill = Drills.drill("long", "Long", Collections.nCopies(8, HOLD));
        Laid laid = lay(Drills.subject(drill), CardSize.A7);
        assertTrue(laid.cards().size() > 1);
        String sentence = laid.problems().get(0).sentence().english();
        assertTrue(sentence.startsWith("It needs " + laid.cards().size() + " cards of size a7, as"), sentence);
        assertTrue(sentence.endsWith("the smallest that needs only one."), sentence);
    }

    @Test
    void who_wants_a_sheet_for_the_wall_is_not_sent_to_a_card_for_the_hand() {
        Drill drill = Drills.drill("long", "Long", Collections.nCopies(40, HOLD));
        String sentence = lay(Drills.subject(drill), CardSize.WALL_A3)
                .problems()
                .get(0)
                .sentence()
                .english();
        assertTrue(sentence.endsWith("; no size that can be read from as far needs fewer."), sentence);
    }

    @Test
    void cards_come_in_the_order_of_their_drills() {
        List<CardSubject> both =
                new ArrayList<>(List.of(Drills.subject(Drills.solo()), Drills.subject(Drills.riposte())));
        Laid laid = CardLayout.lay(both, CardSize.A6, Labels.in(new Language("fr")), Family.dejaVu());
        assertEquals(List.of("Advance and retreat by call"), words(laid.fronts().get(0), Role.TITLE));
        assertEquals(
                List.of("Parry of quarte, direct riposte"), words(laid.fronts().get(1), Role.TITLE));
        assertEquals(
                List.of("Meneur", "Suiveur", "Distance"), words(laid.fronts().get(1), Role.COLUMN_HEAD));
    }
}
