package org.drillwright.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Who was called what and when, and who has left, as lines of the record tell it. A name stands for whoever had it on that
 * day; one that was given up may be used again from that day on.
 */
public final class Members {

    /** A record in which nobody was renamed and nobody left. */
    public static final Members NONE = new Members();

    /** Before all lines of a day. */
    private static final int FIRST = -1;

    /**
     * When something was told.
     *
     * @param at where its line stands; of two of one day the later line came later
     */
    private record Moment(LocalDate date, int at) implements Comparable<Moment> {

        @Override
        public int compareTo(Moment other) {
            int days = date.compareTo(other.date);
            return days != 0 ? days : Integer.compare(at, other.at);
        }
    }

    private record Renamed(Moment when, String now) {}

    private record Going(Moment when, boolean gone) {}

    private final Map<String, List<Renamed>> renamed = new HashMap<>();
    private final Map<String, Going> going = new HashMap<>();

    void renamed(LocalDate date, int at, String old, String now) {
        if (!old.equals(now)) {
            renamed.computeIfAbsent(old, none -> new ArrayList<>()).add(new Renamed(new Moment(date, at), now));
        }
    }

    /** @param person as the person is called now */
    void going(LocalDate date, int at, String person, boolean gone) {
        Going one = new Going(new Moment(date, at), gone);
        going.merge(person, one, (old, other) -> other.when().compareTo(old.when()) > 0 ? other : old);
    }

    /** How whoever had a name at that line is called now. Each step is later than the one before, so it ends. */
    String now(String name, LocalDate date, int at) {
        if (!renamed.containsKey(name)) {
            return name;
        }
        String called = name;
        Moment when = new Moment(date, at);
        Optional<Renamed> next = next(called, when);
        while (next.isPresent()) {
            called = next.get().now();
            when = next.get().when();
            next = next(called, when);
        }
        return called;
    }

    Members() {}

    /** How whoever had a name on a day, before anything was told of it, is called now. */
    public String now(String name, LocalDate date) {
        return now(name, date, FIRST);
    }

    private Optional<Renamed> next(String name, Moment after) {
        return renamed.getOrDefault(name, List.of()).stream()
                .filter(one -> one.when().compareTo(after) > 0)
                .min((one, other) -> one.when().compareTo(other.when()));
    }

    /** Those who left and did not return, as they are called now. */
    public Set<String> gone() {
        Set<String> gone = new HashSet<>();
        going.forEach((person, last) -> {
            if (last.gone()) {
                gone.add(person);
            }
        });
        return gone;
    }
}
