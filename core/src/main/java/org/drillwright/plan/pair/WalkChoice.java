package org.drillwright.plan.pair;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.drillwright.wording.Message;

/**
 * One way for a class to change over, and its price, counted in the plan that comes of it.
 *
 * @param formings how often the class forms two lines; 0 if everybody reads the sheet each time
 * @param read drills that are read from the sheet
 * @param change how many change line, and how often at most
 * @param again how many pairs meet again in which round
 * @param pairs how many pairs meet more than once
 * @param usual whether it is taken where nothing is asked for
 */
public record WalkChoice(
        int formings, List<String> read, Changes change, Map<Integer, Integer> again, int pairs, boolean usual) {

    /** So many formings are said in words. */
    private static final int IN_WORDS = 6;

    /**
     * Who stands in another line later on.
     *
     * @param people how many
     * @param most how often one of them changes at most
     */
    public record Changes(int people, int most) {}

    public WalkChoice {
        read = List.copyOf(read);
        again = Map.copyOf(again);
    }

    /** What it is asked for by: {@code 1}, {@code 2} or {@code free}; empty for more formings. */
    public String word() {
        return formings == 0 ? "free" : formings > 2 ? "" : String.valueOf(formings);
    }

    /** Such as {@code two formings}. */
    public Message name() {
        return formings == 0
                ? Message.of(WalkChoice.class, "forming.free")
                : formings > IN_WORDS
                        ? Message.of(WalkChoice.class, "forming.more", formings)
                        : Message.of(WalkChoice.class, "forming." + formings);
    }

    /** What people have to do for it. */
    public Message effort() {
        if (formings == 0) {
            return Message.of(WalkChoice.class, "effort.sheet");
        }
        Message said = change.people() == 0
                ? Message.of(WalkChoice.class, "effort.nobody")
                : change.most() < 2
                        ? Message.counted(WalkChoice.class, "effort.once", change.people())
                        : Message.counted(WalkChoice.class, "effort.often", change.people(), change.most());
        return read.isEmpty() ? said : Message.of(WalkChoice.class, "effort.read", said, Message.words(read));
    }

    /** Who meets again for it. */
    public Message price() {
        if (pairs == 0) {
            return Message.of(WalkChoice.class, "price.nobody");
        }
        List<Integer> rounds = List.copyOf(new TreeMap<>(again).keySet());
        int last = rounds.get(rounds.size() - 1);
        return rounds.size() == 1
                ? Message.counted(WalkChoice.class, "price.round", pairs, last)
                : Message.counted(
                        WalkChoice.class,
                        rounds.size() == 2 ? "price.two" : "price.rounds",
                        pairs,
                        rounds.get(0),
                        last);
    }
}
