package org.drillwright.plan.walk;

import org.drillwright.plan.rounds.Method;

/**
 * A movement that a class can walk, told of spots: parts in the movement that people take for all its rounds. Spots from 0
 * are those that stand still; then follow those that move.
 */
interface Formation {

    Method method();

    /** All spots: one for each student, helper and gap. */
    int spots();

    /** How many spots, from 0, stand still. */
    int still();

    /** The spot that a spot works with in a round, counted from 0 within the movement. */
    int facing(int round, int spot);

    /** At which post, counted from 0, the two at a spot are in a round. */
    int post(int round, int spot);
}
