package org.drillwright.notation;

/**
 * What words that were not read leave open about the action they stand beside.
 *
 * <p>A doubt is no guess: whoever plays a clause with doubts makes unknown what they name, and rests neither a fault nor
 * an all-clear on it. Common practice, no source.
 */
public enum Doubt {
    /**
     * Whether it is done at all: the word stands in the place of a verb or before one ("pretend to lunge", "hardly
     * lunge"). All of its doer is unknown then: feet, hand, point and mask.
     */
    DONE,
    /**
     * How it is done: its line, path, kind or hand. The word stands beside a stroke, a parry or another action of the
     * blade ("parry quarte frobly", "with the left hand").
     */
    MANNER,
    /** Which way or how many steps, and so the measure: the word stands beside a step. */
    STEPS,
    /** Who does it: the word stands beside a subject, or is an unknown one. All of both fencers is unknown then. */
    WHO,
    /** Whether the mask is on: the word stands beside a mask. */
    MASK,
    /** Which of several things is done, or on what condition: 'or', 'if', 'may'. Each of them may be what comes out. */
    CHOICE
}
