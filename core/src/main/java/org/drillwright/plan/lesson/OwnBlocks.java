package org.drillwright.plan.lesson;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.drillwright.plan.roster.OwnBlock;
import org.drillwright.plan.roster.Timing;
import org.drillwright.register.Entry;
import org.drillwright.register.Event;
import org.drillwright.register.History;

/**
 * The blocks that are a school's own, and whose turn it is to fill what is left.
 *
 * @param turn of those that fill spare minutes the number of the first, counted round; 0 or more
 */
public record OwnBlocks(List<OwnBlock> all, int turn) {

    public static final OwnBlocks NONE = new OwnBlocks(List.of(), 0);

    private static final int WEEK = 7;

    public OwnBlocks {
        all = List.copyOf(all);
    }

    /**
     * Of a class. The turn goes on with each class on that day of the week that is on record; where there is none, with each
     * week.
     */
    public static OwnBlocks on(LocalDate day, List<OwnBlock> all, History history) {
        long held = history.before(day).entries().stream()
                .filter(entry -> entry.event() == Event.ATTENDED)
                .map(Entry::date)
                .filter(date -> date.getDayOfWeek() == day.getDayOfWeek())
                .distinct()
                .count();
        return new OwnBlocks(all, Math.toIntExact(held > 0 ? held : Math.floorDiv(day.toEpochDay(), (long) WEEK)));
    }

    /** In the order in which they were written. */
    List<OwnBlock> at(OwnBlock.Place place) {
        return all.stream().filter(block -> block.place() == place).toList();
    }

    /** Those that fill spare minutes, whose turn it is first. */
    List<OwnBlock> inTurn() {
        List<OwnBlock> turned = new ArrayList<>(at(OwnBlock.Place.SPARE));
        Collections.rotate(turned, turned.isEmpty() ? 0 : -(turn % turned.size()));
        return turned;
    }

    /** Those that are laid in any case. */
    List<OwnBlock> laid() {
        return all.stream()
                .filter(block -> block.place() != OwnBlock.Place.SPARE)
                .toList();
    }

    /** What a class needs apart from its drills and what fills spare minutes. */
    public Duration fixed(Timing timing) {
        Duration own = laid().stream().map(OwnBlock::length).reduce(Duration.ZERO, Duration::plus);
        return timing.opening().plus(plainWarmUp(timing)).plus(own).plus(timing.closing());
    }

    /** Of no length where the school has its own. */
    Duration plainWarmUp(Timing timing) {
        return at(OwnBlock.Place.WARM_UP).isEmpty() ? timing.warmUp() : Duration.ZERO;
    }
}
