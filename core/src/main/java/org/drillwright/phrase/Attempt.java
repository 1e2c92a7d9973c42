package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Utterance;

/** Plays a drill once more with something done otherwise where it was refused. */
public final class Attempt {

    private final Rehearsal rehearsal;
    private final Replay replay;
    private final Rehearsal.Words words;
    private final Spot spot;
    private final Key refused;
    private final Map<Rehearsal.Words, Leaves> tried = new HashMap<>();

    /**
     * @param rehearsal the drill as it was played
     * @param spot where it was refused
     */
    public Attempt(Rehearsal rehearsal, Spot spot, Refusal refusal) {
        this.rehearsal = rehearsal;
        this.replay = rehearsal.replay();
        this.words = rehearsal.words();
        this.spot = spot;
        this.refused = new Key(spot.part(), spot.by(), refusal.getClass());
    }

    /** A refusal as one of its kind; how it is told may change with what stands before it. */
    private record Key(int part, Side by, Class<? extends Refusal> kind) {}

    /** What a change leaves refused in its count; the first is best. */
    public enum Leaves {
        /** Nothing. */
        NOTHING,
        /** Nothing of who was refused, and the partner's turn has to be told otherwise as well. */
        PARTNERS_TURN,
        /** Some of what was refused before. */
        OTHER_FAULTS,
        /** Some of what was refused of the same one before, and the partner's turn has to be told otherwise as well. */
        FAULTS_OF_BOTH,
        /** The refusal itself, or a new one: it is no way out. */
        REFUSED
    }

    /**
     * Plays the drill with a change, as far as the end of its count. It is a way out if the refusal is gone, nothing is refused
     * that was not refused before, and nothing more is left unknown.
     */
    public Leaves leaves(Amendment change) {
        return tried.computeIfAbsent(change.made(words, spot), this::leaves);
    }

    private Leaves leaves(Rehearsal.Words changed) {
        int last = spot.part() + changed.counts().size() - words.counts().size();
        Replay again = rehearsal.otherwise(changed.first(last + 2)).replay();
        List<Side> one = List.of(spot.by());
        List<Side> both = List.of(Side.values());
        if (!isWayOut(again, last, one)) {
            return Leaves.REFUSED;
        }
        boolean whole = isWayOut(again, last, both);
        boolean clean = refused(again, last, whole ? both : one).stream().noneMatch(key -> key.part() >= spot.part());
        return whole
                ? clean ? Leaves.NOTHING : Leaves.OTHER_FAULTS
                : clean ? Leaves.PARTNERS_TURN : Leaves.FAULTS_OF_BOTH;
    }

    private boolean isWayOut(Replay again, int last, List<Side> whose) {
        List<Key> before = refused(replay, spot.part(), whose);
        for (Key key : refused(again, last, whose)) {
            if (!before.remove(key)) {
                return false;
            }
        }
        return before.contains(refused) && unknown(again, last, whose) <= unknown(replay, spot.part(), whose);
    }

    /** What is refused up to a part, that included; in the part of the fault and behind it only what is refused of some. */
    private List<Key> refused(Replay played, int last, List<Side> whose) {
        List<Key> keys = new ArrayList<>();
        add(keys, Rehearsal.Words.OPENING, played.opening());
        for (int part = 0; part <= last && part < played.counts().size(); part++) {
            Count count = played.counts().get(part);
            add(keys, part, count.moves());
            int at = part;
            count.unmet().forEach((side, refusal) -> keys.add(new Key(at, side, refusal.getClass())));
        }
        if (spot.part() == words.counts().size()) {
            add(keys, spot.part(), played.closing());
        }
        keys.removeIf(key -> key.part() >= spot.part() && !whose.contains(key.by()));
        return keys;
    }

    private static void add(List<Key> keys, int part, List<Played> moves) {
        for (Played played : moves) {
            played.refusals()
                    .forEach(refusal -> keys.add(new Key(part, played.move().by(), refusal.getClass())));
        }
    }

    /**
     * A turn told otherwise.
     *
     * @param step the count, numbered from 0
     */
    public record Otherwise(int step, Side side, List<Action> actions) {
        public Otherwise {
            actions = List.copyOf(actions);
        }
    }

    /** The turn that a change tells otherwise; none if it changes more than one turn, or what stands around the counts. */
    public Optional<Otherwise> otherwise(Amendment change) {
        Rehearsal.Words changed = change.made(words, spot);
        boolean around = changed.opening().equals(words.opening())
                && changed.start().equals(words.start())
                && changed.closing().equals(words.closing());
        if (!around || changed.counts().size() != words.counts().size()) {
            return Optional.empty();
        }
        List<Otherwise> turns = new ArrayList<>();
        for (int step = 0; step < changed.counts().size(); step++) {
            for (Side side : Side.values()) {
                Utterance now = changed.counts().get(step).getOrDefault(side, Utterance.NOTHING);
                Utterance before = words.counts().get(step).getOrDefault(side, Utterance.NOTHING);
                if (!now.equals(before)) {
                    turns.add(new Otherwise(step, side, now.actions()));
                }
            }
        }
        return turns.size() == 1 ? Optional.of(turns.get(0)) : Optional.empty();
    }

    private long unknown(Replay played, int last, List<Side> whose) {
        return IntStream.rangeClosed(
                        Math.max(0, spot.part()), Math.min(last, played.counts().size() - 1))
                .mapToObj(part -> played.counts().get(part).moves())
                .flatMap(List::stream)
                .filter(one -> whose.contains(one.move().by()))
                .flatMap(one -> one.asked().stream())
                .filter(question -> !question.known())
                .count();
    }
}
