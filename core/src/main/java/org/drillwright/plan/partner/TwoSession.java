package org.drillwright.plan.partner;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.Drill;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Timing;
import org.drillwright.wording.Message;

/**
 * What two can work on together without a teacher: drills that both were signed off in, and nothing else.
 *
 * @param blocks in order
 * @param spare time that is left
 * @param shared drills that both know and that suit their hands; the latest of them were chosen
 */
public record TwoSession(String one, String other, List<Block> blocks, Duration spare, int shared) {

    /** Shorter than this no drill is worth beginning; common practice, no source. */
    private static final Duration SHORTEST = Duration.ofMinutes(5);

    /** Longer than this a drill loses attention; common practice, no source. */
    private static final Duration LONGEST = Duration.ofMinutes(12);

    /**
     * A drill for some minutes.
     *
     * @param start from the beginning
     * @param length of both roles together
     * @param leadsFirst who leads in the first half; the two take turns from block to block
     * @param worksOn what the drill works on
     */
    public record Block(String drill, Duration start, Duration length, String leadsFirst, List<String> worksOn) {

        public Block {
            worksOn = List.copyOf(worksOn);
        }
    }

    public TwoSession {
        blocks = List.copyOf(blocks);
    }

    /**
     * A session of a given length.
     *
     * @param drills the school's, in teaching order
     */
    public static TwoSession of(
            Person one, Person other, Duration length, List<Drill> drills, Knowledge knowledge, Timing timing) {
        List<Drill> shared = new SharedDrills(drills, knowledge).of(one, other);
        Duration room = length.minus(timing.fixed());
        int most = (int) (room.plus(timing.changeover()).toSeconds()
                / SHORTEST.plus(timing.changeover()).toSeconds());
        List<Drill> chosen = shared.subList(Math.max(0, shared.size() - Math.max(0, most)), shared.size());
        return laid(one.name(), other.name(), length, chosen, timing, shared.size());
    }

    private static TwoSession laid(
            String one, String other, Duration length, List<Drill> drills, Timing timing, int shared) {
        Duration room = length.minus(timing.fixed());
        Duration walks = timing.changeover().multipliedBy(Math.max(0, drills.size() - 1));
        Duration each = drills.isEmpty() ? Duration.ZERO : wholeMinutes(room.minus(walks), drills.size());
        List<Block> blocks = new ArrayList<>();
        Duration at = timing.opening().plus(timing.warmUp());
        for (Drill drill : drills) {
            String first = blocks.size() % 2 == 0 ? one : other;
            blocks.add(new Block(drill.id(), at, each, first, drill.worksOn()));
            at = at.plus(each).plus(timing.changeover());
        }
        Duration used =
                timing.fixed().plus(each.multipliedBy(drills.size())).plus(drills.isEmpty() ? Duration.ZERO : walks);
        return new TwoSession(one, other, blocks, length.minus(used), shared);
    }

    private static Duration wholeMinutes(Duration time, int parts) {
        Duration part = Duration.ofMinutes(time.dividedBy(parts).toMinutes());
        return part.compareTo(LONGEST) > 0 ? LONGEST : part;
    }

    /** How the drills were chosen, in one sentence. */
    public Message fact() {
        if (shared == 0) {
            return Message.of(TwoSession.class, "no.shared");
        }
        if (blocks.isEmpty()) {
            return Message.of(TwoSession.class, "no.time");
        }
        if (blocks.size() == shared) {
            return Message.counted(TwoSession.class, "all", shared);
        }
        return Message.of(TwoSession.class, "some", blocks.size(), shared);
    }
}
