package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.sheet.wall.Watching;
import org.drillwright.tell.ClassHead;
import org.drillwright.tell.GroupWords;

/**
 * What a sheet for the wall says.
 *
 * @param foot at the end of each page
 */
record WallWords(List<Block> blocks, String foot) {

    /** Before the name of somebody who comes from another place. */
    private static final String COMES = "\u2192\u00A0";

    WallWords {
        blocks = List.copyOf(blocks);
    }

    /**
     * One round.
     *
     * @param moving how to change over to it and who watches whom; may be empty
     */
    record Block(String head, String drill, String moving, List<Row> rows) {
        Block {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A place on the floor and who works there.
     *
     * @param people each with what is said of them, the last with what is said of all
     */
    record Row(String place, List<String> people) {
        Row {
            people = List.copyOf(people);
        }
    }

    static WallWords of(ClassPlan plan, PairingPlan pairs, Naming names, String school, String mark) {
        List<Block> blocks = pairs.rounds().stream()
                .skip(pairs.firstPlanned())
                .map(round -> block(round, plan, pairs, names))
                .toList();
        String foot = Feet.words(Feet.mark(mark), school, ClassHead.date(plan), "Print at 100 % (actual size).");
        return new WallWords(blocks, foot);
    }

    private static Block block(Round round, ClassPlan plan, PairingPlan pairs, Naming names) {
        List<String> movers = pairs.movers(round.number());
        List<Row> rows = new ArrayList<>();
        for (Group group : round.groups()) {
            rows.add(new Row(
                    group.place() == 0 ? "\u2013" : String.valueOf(group.place()), people(group, movers, names)));
        }
        return new Block(
                "Round " + round.number() + " of " + pairs.rounds().size(),
                plan.title(round.drill()),
                told(movers.isEmpty() ? "" : moving(round, pairs), Watching.said(round, "place", names)),
                rows);
    }

    /** How to change over, and who watches whom. */
    private static String told(String moving, String watching) {
        String sentence = watching.isEmpty()
                ? ""
                : watching.substring(0, 1).toUpperCase(Locale.ROOT) + watching.substring(1) + ".";
        return (moving + " " + sentence).strip();
    }

    /** Sentences on who stands still name people; the arrows tell that on this sheet. */
    private static String moving(Round round, PairingPlan pairs) {
        String arrows = "\u2192 comes from another place; all others stay.";
        return pairs.isStepped(round.number())
                ? arrows + " " + pairs.walk().get(pairs.walk().size() - 1)
                : arrows;
    }

    private static List<String> people(Group group, List<String> movers, Naming names) {
        List<String> shown = new ArrayList<>(group.people().stream()
                .map(person -> (movers.contains(person) ? COMES : "") + names.of(person))
                .toList());
        group.helper().ifPresent(helper -> shown.add(GroupWords.helper(helper, names)));
        int last = shown.size() - 1;
        switch (group.kind()) {
            case SOLO -> shown.set(last, shown.get(last) + ": solo work");
            case WATCHED, BOTH_NEW -> shown.set(last, shown.get(last) + " (both new)");
            case PAIR, THREE, HELPED -> {
                // Who stands together says it all.
            }
        }
        return shown;
    }
}
