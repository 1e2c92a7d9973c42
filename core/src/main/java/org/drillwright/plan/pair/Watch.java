package org.drillwright.plan.pair;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

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
    public String sentence() {
        return (knowing == 0
                        ? "new to all: pairs of two new by choice"
                        : fresh + " new, " + knowing + (knowing == 1 ? " knows it" : " know it")
                                + ": some pairs of two new by choice")
                + ", " + under();
    }

    private String under() {
        List<Integer> counts = posts.values().stream().sorted().toList();
        int least = counts.get(0);
        int most = counts.get(counts.size() - 1);
        return (least == most ? String.valueOf(least) : least + " or " + most)
                + (most == 1 ? " pair" : " pairs")
                + (counts.size() == 1 ? " under one pair of eyes" : " under each pair of eyes");
    }
}
