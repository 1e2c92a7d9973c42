package org.drillwright.print.pose;

import java.util.Optional;

/**
 * The lines of one of the two in a count.
 *
 * @param known whether it is known if there is an attack
 * @param threat the stroke at that one, empty if there is none
 * @param closing what the hand closes when the stroke arrives, or at the end of a count without one
 * @param carriedRound whether a circular parry carries the blade from the line attacked to the line that is closed
 */
public record Aimed(boolean known, Optional<Threat> threat, Closing closing, boolean carriedRound) {}
