package org.drillwright.print.layout;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.print.frame.Frame;

/**
 * One card of paper.
 *
 * @param back as large as the front; nothing if it stays blank
 */
public record CardSides(Frame front, Optional<Frame> back) {

    /** The sides that are printed, the front first. */
    public List<Frame> printed() {
        return Stream.concat(Stream.of(front), back.stream()).toList();
    }
}
