package org.drillwright.print.booklet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.print.booklet.Chart.Spot;
import org.junit.jupiter.api.Test;

class ChartTest {

    private static List<Set<Integer>> layers(Chart chart) {
        return chart.layers().stream()
                .map(layer -> layer.stream()
                        .filter(spot -> !spot.isKnot())
                        .map(spot -> spot.drill)
                        .collect(Collectors.<Integer, Set<Integer>>toCollection(TreeSet::new)))
                .toList();
    }

    /** By hand: 3 needs 1 and 2, which need 0; 4 needs 3 and 0, and 0 comes with 3 already; 5 needs 0 alone. */
    @Test
    void aDrillStandsBehindAllThatItNeeds() {
        Chart chart = new Chart(List.of(Set.of(), Set.of(0), Set.of(0), Set.of(1, 2), Set.of(3, 0), Set.of(0)));
        assertEquals(List.of(Set.of(0), Set.of(1, 2, 5), Set.of(3), Set.of(4)), layers(chart));
        long knots = chart.layers().stream()
                .flatMap(List::stream)
                .filter(Spot::isKnot)
                .count();
        assertEquals(0, knots, "what comes with another need has no line of its own");
    }

    /** By hand: 3 needs 2, 2 needs 1, and 4 needs 0 and 3; the line from 0 to 4 runs through layers 1 and 2. */
    @Test
    void aLineOverLayersHasAKnotInEach() {
        Chart chart = new Chart(List.of(Set.of(), Set.of(), Set.of(1), Set.of(2), Set.of(0, 3)));
        assertEquals(List.of(Set.of(0, 1), Set.of(2), Set.of(3), Set.of(4)), layers(chart));
        assertEquals(
                List.of(0L, 1L, 1L, 0L),
                chart.layers().stream()
                        .map(layer -> layer.stream().filter(Spot::isKnot).count())
                        .toList());
    }

    @Test
    void aCircleEndsSomewhere() {
        Chart chart = new Chart(List.of(Set.of(1), Set.of(2), Set.of(0)));
        assertEquals(3, layers(chart).stream().mapToInt(Set::size).sum());
    }

    /** Two ladders side by side, given crosswise: no lines need to cross. */
    @Test
    void linesThatNeedNotCrossDoNot() {
        Chart chart = new Chart(List.of(Set.of(), Set.of(), Set.of(1), Set.of(0)));
        List<Spot> first = chart.layers().get(0);
        List<Spot> second = chart.layers().get(1);
        assertEquals(first.get(0).after.get(0), second.get(0));
        assertEquals(first.get(1).after.get(0), second.get(1));
    }

    @Test
    void nothingOverlapsAndNothingLeavesThePage() {
        List<Set<Integer>> needs = IntStream.range(0, 40)
                .mapToObj(at -> at < 6 ? Set.<Integer>of() : Set.copyOf(List.of(at % 6, (at * at) % (at - 1))))
                .toList();
        Chart chart = new Chart(needs);
        Spread spread = new Spread(2000, 20, 4, 3);
        Map<Spot, Double> middles = spread.middles(chart.layers());
        for (List<Spot> layer : chart.layers()) {
            double end = 0;
            for (Spot spot : layer) {
                double half = spot.isKnot() ? 2 : 10;
                double middle = middles.getOrDefault(spot, -1.0);
                assertTrue(middle - half >= end - 1e-6, () -> middle + " in " + layer.size());
                end = middle + half + 3;
            }
            assertTrue(end - 3 <= 2000 + 1e-6);
        }
    }
}
