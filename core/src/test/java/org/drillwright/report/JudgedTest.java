package org.drillwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** That all was judged is said only where it was. */
class JudgedTest {

    private static final Judged.Gap COUNTS = new Judged.Gap("a", List.of(2, 5), List.of());
    private static final Judged.Gap OPENING = new Judged.Gap("b", List.of(), List.of("opening"));
    private static final Judged.Gap BOTH = new Judged.Gap("c", List.of(1), List.of("start", "closing"));

    private static String sentence(int counts, List<Judged.Gap> gaps, List<String> unread) {
        return new Judged(counts, gaps, unread).sentence().english();
    }

    @Test
    void all_of_it() {
        assertEquals("1 count: all judged", sentence(1, List.of(), List.of()));
        assertEquals("9 counts: all judged", sentence(9, List.of(), List.of()));
    }

    @Test
    void not_all_of_it() {
        assertEquals("9 counts: 7 judged, 2 not (a: 2, 5)", sentence(9, List.of(COUNTS), List.of()));
        assertEquals(
                "9 counts: 6 judged, 3 not (a: 2, 5; c: start, closing, 1)",
                sentence(9, List.of(COUNTS, BOTH), List.of()));
        assertEquals(
                "9 counts: 9 judged, but not the text around them (b: opening)",
                sentence(9, List.of(OPENING), List.of()));
    }

    @Test
    void nothing_of_it() {
        assertEquals("There is no count to judge", sentence(0, List.of(), List.of()));
        assertEquals(
                "There is no count to judge. Not judged at all: a.yaml", sentence(0, List.of(), List.of("a.yaml")));
        assertEquals("9 counts: 9 judged. Not judged at all: a.yaml", sentence(9, List.of(), List.of("a.yaml")));
        List<String> many = IntStream.range(0, 8).mapToObj(at -> at + ".yaml").toList();
        assertEquals(
                "9 counts: 9 judged. Not judged at all: 0.yaml, 1.yaml, 2.yaml, 3.yaml, 4.yaml and 3 more",
                sentence(9, List.of(), many));
    }
}
