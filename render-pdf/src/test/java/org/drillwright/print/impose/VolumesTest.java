package org.drillwright.print.impose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class VolumesTest {

    @Test
    void volumes_are_numbered_in_their_names() {
        assertEquals("cards.pdf", Volumes.file("cards.pdf", 1, 1));
        assertEquals("cards-2-of-3.pdf", Volumes.file("cards.pdf", 2, 3));
        assertEquals("cards-2-of-3", Volumes.file("cards", 2, 3));
    }
}
