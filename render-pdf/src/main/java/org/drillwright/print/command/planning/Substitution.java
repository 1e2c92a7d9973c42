package org.drillwright.print.command.planning;

import java.util.List;

/**
 * Some go, others come.
 *
 * @param fromRound the first round that is planned anew, from 1
 * @param without names as they were typed
 * @param with names as they were typed
 */
public record Substitution(int fromRound, List<String> without, List<String> with) {

    public Substitution {
        without = List.copyOf(without);
        with = List.copyOf(with);
    }
}
