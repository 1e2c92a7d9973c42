package org.drillwright.model;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * One count of a drill.
 *
 * @param number the number that the author wrote, if any
 * @param call what the caller says; empty if it is the number
 * @param distance the distance cue in the author's words; empty if absent
 * @param safety the safety note; empty if absent
 * @param note a remark for the instructor; empty if absent
 */
public record Step(
        OptionalInt number,
        String call,
        Optional<Turn> leader,
        Optional<Turn> follower,
        String distance,
        String safety,
        String note) {

    public Optional<Turn> turn(Side side) {
        return switch (side) {
            case LEADER -> leader;
            case FOLLOWER -> follower;
        };
    }
}
