package org.drillwright.plan.rounds;

/**
 * A movement that a class can walk, told of posts: parts in the movement that people take for all rounds. Posts from 0
 * are those that who is new to the drill may take; then follow the others, then the helpers', then the gaps.
 */
interface Formation {

    Method method();

    /** All posts: one for each student, helper and gap. */
    int posts();

    /** How many posts, from 0, those who are new may take. */
    int novicePosts();

    /** The post that a post works with in a round. */
    int facing(int round, int post);

    /** Where on the floor the two at a post are in a round, counted from 0. */
    int place(int round, int post);
}
