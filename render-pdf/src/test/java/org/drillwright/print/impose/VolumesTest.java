package org.drillwright.print.impose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class VolumesTest {

    @Test
    void volumesHoldWholeDrillsInTheirOrder() {
        List<List<String>> drills = List.of(List.of("a1", "a2"), List.of("b1", "b2"), List.of("c1"));
        assertEquals(List.of(List.of("a1", "a2"), List.of("b1", "b2", "c1")), Volumes.of(drills, 3));
        assertEquals(List.of(List.of("a1", "a2", "b1", "b2", "c1")), Volumes.of(drills, 5));
    }

    @Test
    void aDrillOfMoreCardsThanAVolumeHoldsStandsAlone() {
        assertEquals(
                List.of(List.of("a"), List.of("b1", "b2"), List.of("c")),
                Volumes.of(List.of(List.of("a"), List.of("b1", "b2"), List.of("c")), 1));
    }

    @Test
    void noCardsNeedNoVolume() {
        assertEquals(List.of(), Volumes.of(List.of(), 10));
    }

    @Test
    void volumesAreNumberedInTheirNames() {
        assertEquals("cards.pdf", Volumes.file("cards.pdf", 1, 1));
        assertEquals("cards-2-of-3.pdf", Volumes.file("cards.pdf", 2, 3));
        assertEquals("cards-2-of-3", Volumes.file("cards", 2, 3));
    }
}
