package org.drillwright.plan.pair;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drillwright.wording.Message;

/**
 * A drill in whose rounds some who are new work together under somebody's eyes: no shortage, but so by choice.
 *
 * @param drill the drill
 * @param fresh students who are new to it
 * @param knowing students who know it
 * @param posts for each who watches, how many groups: those of the drill's first round
 */
public record Watch(String drill, int fresh, int knowing, Map<String, Integer> posts) {

    public Watch {
        posts = Map.copyOf(posts);
    }

    static Watch of(Round round, int fresh, int knowing) {
        Map<String, Integer> posts = new TreeMap<>();
        round.groups().forEach(group -> group.eyes().ifPresent(name -> posts.merge(name, 1, Integer::sum)));
        return new Watch(round.drill(), fresh, knowing, posts);
    }

    /** Without the drill's name, such as 'new to all: pairs of two new by choice, 2 pairs under each pair of eyes'. */
    public Message sentence() {
        Message who = knowing == 0
                ? Message.of(Watch.class, "new.to.all")
                : Message.counted(Watch.class, "some.new", knowing, fresh);
        return Message.of(Watch.class, "watch", who, under());
    }

    private Message under() {
        List<Integer> counts = posts.values().stream().sorted().toList();
        int most = counts.get(counts.size() - 1);
        Message pairs = Message.or(Stream.of(counts.get(0), most)
                .distinct()
                .map(count -> Message.plain(String.valueOf(count)))
                .toList());
        return Message.counted(Watch.class, counts.size() == 1 ? "under.single" : "under.each", most, pairs);
    }
}
