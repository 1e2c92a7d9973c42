package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.School;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.page.Foot;
import org.drillwright.print.sheet.wall.ChangeSentences;
import org.drillwright.print.sheet.wall.PlaceKind;
import org.drillwright.print.sheet.wall.Supervision;
import org.drillwright.print.sheet.wall.WallText;
import org.drillwright.print.sheet.wall.WallTexts;

/**
 * What a sheet for the wall says.
 *
 * @param foot at the end of each page
 * @param words of the sheets in the school's language
 */
record WallWords(List<Block> blocks, String foot, WallTexts words) {

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

    static WallWords of(ClassPlan plan, PairingPlan pairs, Naming names, School school, String mark) {
        WallTexts words = WallTexts.in(school.language());
        List<Block> blocks = pairs.rounds().stream()
                .skip(pairs.firstPlanned())
                .map(round -> block(round, plan, pairs, names, words))
                .toList();
        String foot = Foot.line(
                mark.isEmpty() ? "" : words.text(WallText.PLAN, mark),
                school.name(),
                words.day(plan.brief().date()),
                words.text(WallText.PRINT) + ".");
        return new WallWords(blocks, foot, words);
    }

    private static Block block(Round round, ClassPlan plan, PairingPlan pairs, Naming names, WallTexts words) {
        List<String> movers = pairs.movers(round.number());
        List<Row> rows = new ArrayList<>();
        for (Group group : round.groups()) {
            rows.add(new Row(
                    group.place() == 0 ? "\u2013" : String.valueOf(group.place()),
                    people(group, movers, names, words)));
        }
        return new Block(
                words.text(WallText.ROUND_OF, round.number(), pairs.rounds().size()),
                plan.title(round.drill()),
                told(
                        movers.isEmpty() ? "" : moving(round, pairs, new ChangeSentences(words, names)),
                        words.capitalised(Supervision.said(round, PlaceKind.PLACE, names, words))),
                rows);
    }

    /** How to change over, and who watches whom. */
    private static String told(String moving, String watching) {
        return (moving + " " + (watching.isEmpty() ? "" : watching + ".")).strip();
    }

    /** Sentences on who stands still name people; the arrows tell that on this sheet. */
    private static String moving(Round round, PairingPlan pairs, ChangeSentences sentences) {
        String arrows = sentences.words().text(WallText.ARROWS);
        return pairs.isStepped(round.number())
                ? arrows + " "
                        + sentences.of(pairs.changes().get(pairs.changes().size() - 1))
                : arrows;
    }

    private static List<String> people(Group group, List<String> movers, Naming names, WallTexts words) {
        List<String> shown = new ArrayList<>(group.people().stream()
                .map(person -> (movers.contains(person) ? COMES : "") + names.of(person))
                .toList());
        group.helper().ifPresent(helper -> shown.add(words.helper(helper, names)));
        int last = shown.size() - 1;
        switch (group.kind()) {
            case SOLO -> shown.set(last, words.text(WallText.SOLO, shown.get(last)));
            case WATCHED, BOTH_NEW -> shown.set(last, words.text(WallText.PAIR_NEW, shown.get(last)));
            case PAIR, THREE, HELPED -> {
                // Who stands together says it all.
            }
        }
        return shown;
    }
}
