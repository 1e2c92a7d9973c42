package org.drillwright.plan.pair;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Who works together in a round.
 *
 * @param place on the floor, counted from 1; 0 for solo work, which needs no lane
 * @param people one, two or three students, in the roster's order
 * @param helper the instructor or assistant who works with them, if one does
 */
public record Group(Kind kind, int place, List<String> people, Optional<String> helper) {

    /** What sort of group it is. */
    public enum Kind {
        PAIR("pair"),
        /** A pair that a third has joined. */
        THREE("three"),
        /** One student with the instructor or an assistant. */
        HELPED("helped"),
        /** Solo work, or watching. */
        SOLO("solo"),
        /** Two who are both new to the drill; made only where the instructor asked for it. */
        BOTH_NEW("both-new");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** What files and programs call it. */
        public String word() {
            return word;
        }
    }

    public Group {
        people = List.copyOf(people);
    }

    /** The people, and behind them the helper. */
    public List<String> everyone() {
        return Stream.concat(people.stream(), helper.stream()).toList();
    }

    public boolean holds(String person) {
        return people.contains(person);
    }

    Group at(int spot) {
        return new Group(kind, spot, people, helper);
    }
}
