package org.drillwright.plan.walk;

import java.util.List;

/**
 * Who stands in two lines of one length, by their posts. Numbers are those of a {@link org.drillwright.plan.rounds.Problem}:
 * students, helpers, and its blank for a gap.
 *
 * @param stays who stays
 * @param moves who stands opposite in the first round
 */
record LinePosts(List<Integer> stays, List<Integer> moves) {

    LinePosts {
        stays = List.copyOf(stays);
        moves = List.copyOf(moves);
    }
}
