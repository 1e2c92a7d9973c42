package org.drillwright.print.layout.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PaginationTest {

    private static final Pagination ROOM = new Pagination(100, 120, 150, 130);

    @Test
    void whatFitsOneCardStaysOnIt() {
        assertEquals(Optional.of(List.of(2)), ROOM.share(List.of(50.0, 50.0)));
    }

    @Test
    void whatDoesNotIsSharedEvenly() {
        // 120 and 130: three counts leave 30 and 40 blank, 900 + 1600; two leave 60 and 10, 3600 + 100.
        assertEquals(Optional.of(List.of(3, 4)), ROOM.share(List.of(30.0, 30.0, 30.0, 30.0, 30.0, 30.0, 30.0)));
    }

    @Test
    void aCardMayHoldNoCountIfOpeningOrClosingFillsIt() {
        // On the first card it leaves 0 and 130 blank, on the last 120 and 10: less by squares.
        assertEquals(Optional.of(List.of(0, 1)), ROOM.share(List.of(120.0)));
    }

    @Test
    void asManyCardsAsAreNeeded() {
        // 120 + 150 + 130 hold 2, 3 and 2 counts of 50; eight need a fourth card.
        assertEquals(7, total(ROOM.share(Collections.nCopies(7, 50.0))));
        assertEquals(3, ROOM.share(Collections.nCopies(7, 50.0)).orElseThrow().size());
        assertEquals(4, ROOM.share(Collections.nCopies(8, 50.0)).orElseThrow().size());
    }

    @Test
    void aCountLongerThanAnyCardFitsNone() {
        assertEquals(Optional.empty(), ROOM.share(List.of(151.0)));
    }

    @Test
    void closingMatterLongerThanACardFitsNone() {
        assertEquals(Optional.empty(), new Pagination(-10, 100, 150, -5).share(List.of(50.0)));
    }

    private static int total(Optional<List<Integer>> shares) {
        return shares.orElseThrow().stream().mapToInt(Integer::intValue).sum();
    }
}
