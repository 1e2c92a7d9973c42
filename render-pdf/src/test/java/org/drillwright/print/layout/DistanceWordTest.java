package org.drillwright.print.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import org.drillwright.check.Subject;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;
import org.drillwright.print.Example;
import org.drillwright.print.Flat;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.AuthorsWords;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Family;
import org.junit.jupiter.api.Test;

/** The first count of the parry of quarte begins at lunge distance and ends at extension: arrow and bar are a lunge long. */
class DistanceWordTest {

    private static final CardSize SIZE = CardSize.A5;

    private static Frame front(Set<Integer> ends) {
        Subject drill = Example.drill("parry-of-quarte");
        Locale english = Locale.ENGLISH;
        CardSubject card = new CardSubject(
                drill.drill(),
                drill.school(),
                Optional.empty(),
                false,
                List.of(),
                List.of(),
                List.of(),
                new AuthorsWords(english, english, english, ends),
                Optional.of(drill.replay()));
        return CardLayout.lay(List.of(card), SIZE, Labels.in(Language.ENGLISH), Family.dejaVu())
                .fronts()
                .get(0);
    }

    private static Rectangle word(Frame front) {
        Grid grid = Grid.of(SIZE);
        return Flat.texts(front).stream()
                .filter(text -> text.text().equals("lunge") && text.x() >= grid.pictures())
                .map(Flat::box)
                .findFirst()
                .orElseThrow();
    }

    /** The middle of what lines and arrows of a name cover. */
    private static double middle(Node.Figure figure, Predicate<String> name) {
        double[] across = figure.marks().stream()
                .filter(mark -> mark instanceof Mark.Named named && name.test(named.name()))
                .flatMap(mark -> ((Mark.Named) mark).marks().stream())
                .filter(Mark.Line.class::isInstance)
                .map(Mark.Line.class::cast)
                .flatMapToDouble(line -> DoubleStream.of(line.x1(), line.x2()))
                .sorted()
                .toArray();
        return figure.box().x() + (across[0] + across[across.length - 1]) / 2;
    }

    @Test
    void the_measure_of_the_beginning_stands_under_arrow_and_bar_and_that_of_the_end_under_the_bar() {
        Frame begins = front(Set.of());
        Frame ends = front(Set.of(0));
        Node.Figure picture = Flat.figures(begins).get(0);
        double bar = middle(picture, "measure"::equals);
        double both = middle(picture, name -> name.equals("measure") || name.startsWith("feet of the "));
        Grid grid = Grid.of(SIZE);
        assertTrue(both < bar - 2, "the leader's arrow lies left of the bar");
        assertEquals(both, word(begins).x() + word(begins).width() / 2, 2);
        double kept = Math.min(bar, grid.right() - word(ends).width() / 2);
        assertEquals(kept, word(ends).x() + word(ends).width() / 2, 0.1);
        assertTrue(word(ends).right() <= grid.right() + 0.01);
    }
}
