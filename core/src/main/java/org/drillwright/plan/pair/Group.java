package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Who works together in a round.
 *
 * @param place on the floor, counted from 1; 0 for solo work, which needs no lane
 * @param people one, two or three students, whoever leads first before the others; of a three the one whom the others work with by turns, a partner, and the one who
 *     joined them, who counts first
 * @param helper the instructor or assistant who works with them, if one does
 * @param eyes the instructor or assistant who has an eye on them, if one needs to
 * @param middle of a three in which only one knows the drill, that one
 */
public record Group(
        Kind kind,
        int place,
        List<String> people,
        Optional<String> helper,
        Optional<String> eyes,
        Optional<String> middle) {

    /** What sort of group it is. */
    public enum Kind {
        PAIR("pair"),
        /** A pair that a third has joined. */
        THREE("three"),
        /** One student with the instructor or an assistant. */
        HELPED("helped"),
        /** Two who are both new to the drill, the eyes of the instructor or an assistant on them. */
        WATCHED("watched"),
        /** Solo work, or watching. */
        SOLO("solo"),
        /** Two who are both new to the drill, and nobody is there to watch them; only where the instructor asked for it. */
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

    /** A group that nobody watches. */
    public Group(Kind kind, int place, List<String> people, Optional<String> helper) {
        this(kind, place, people, helper, Optional.empty(), Optional.empty());
    }

    /** Somebody who works alone. */
    static Group solo(String name) {
        return new Group(Kind.SOLO, 0, List.of(name), Optional.empty());
    }

    /** The people, and behind them the helper. */
    public List<String> everyone() {
        return Stream.concat(people.stream(), helper.stream()).toList();
    }

    public boolean holds(String person) {
        return people.contains(person);
    }

    /** Whether two in it are partners; the two at the ends of a three are not. */
    public boolean joins(String one, String other) {
        return people.size() > 1
                && holds(one)
                && holds(other)
                && !one.equals(other)
                && (people.get(0).equals(one) || people.get(0).equals(other));
    }

    Group at(int spot) {
        return new Group(kind, spot, people, helper, eyes, middle);
    }

    Group under(String watcher) {
        return new Group(kind, place, people, helper, Optional.of(watcher), middle);
    }

    /** The group when a third has joined the pair of one of them. */
    Group joinedBy(String third, String at, boolean alike) {
        List<String> all = new ArrayList<>(List.of(at));
        people.stream().filter(name -> !name.equals(at)).forEach(all::add);
        all.add(third);
        return new Group(Kind.THREE, place, all, helper, eyes, alike ? Optional.empty() : Optional.of(at));
    }

    /** The same with one of two standing first. */
    Group ledBy(String leader) {
        List<String> two = people.get(0).equals(leader) ? people : List.of(people.get(1), people.get(0));
        return new Group(kind, place, two, helper, eyes, middle);
    }

    Group of(Kind other) {
        return new Group(other, place, people, helper, eyes, middle);
    }
}
