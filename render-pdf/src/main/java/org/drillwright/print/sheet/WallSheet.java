package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.sheet.wall.ShortNames;
import org.drillwright.print.text.Typefaces;

/**
 * Rounds of partners for a wall that is far, round by round and place by place: names and places readable from 3 m, drills from half of that, how to change over
 * from where one stands before it. On as few pages as that allows, by first names if these take fewer, then as large as these
 * allow.
 */
public final class WallSheet {

    /** Type is never larger than this, as a share of the least. */
    private static final double LARGEST = 1.6;

    private static final double STEP = 0.05;
    private static final int MOST_COLUMNS = 3;

    /** With so many pages larger type is not looked for. */
    private static final int MANY = 60;

    private final WallWords words;
    private final Typefaces faces;

    private WallSheet(WallWords words, Typefaces faces) {
        this.words = words;
        this.faces = faces;
    }

    /**
     * The rounds that are still to be worked.
     *
     * @param mark of the plan; empty if it has none
     */
    public static List<Frame> pages(
            ClassPlan plan,
            PairingPlan pairs,
            Naming names,
            SheetSize size,
            School school,
            String mark,
            Typefaces faces) {
        List<Frame> whole = pages(WallWords.of(plan, pairs, names, school, mark), size, faces);
        Naming brief = brief(pairs, names);
        List<Frame> shorter = pages(WallWords.of(plan, pairs, brief, school, mark), size, faces);
        return Mirrored.pages(
                shorter.size() < whole.size() ? shorter : whole,
                school.language().locale(),
                faces);
    }

    /** Everyone by first name where that is enough. */
    private static Naming brief(PairingPlan pairs, Naming names) {
        List<String> people = pairs.rounds().stream()
                .flatMap(round -> round.groups().stream())
                .flatMap(group -> Stream.concat(group.people().stream(), group.helper().stream()))
                .distinct()
                .toList();
        Naming first =
                ShortNames.first(people.stream().map(names::of).distinct().toList());
        return new Naming(people.stream().collect(Collectors.toMap(name -> name, name -> first.of(names.of(name)))));
    }

    static List<Frame> pages(WallWords words, SheetSize size, Typefaces faces) {
        WallSheet sheet = new WallSheet(words, faces);
        List<WallGrid> ways = new ArrayList<>();
        for (int columns = 1; columns <= MOST_COLUMNS; columns++) {
            ways.add(new WallGrid(Sheet.upright(size, Sheet.NARROW), columns, 1, faces));
            ways.add(new WallGrid(Sheet.lying(size, Sheet.NARROW), columns, 1, faces));
        }
        return sheet.best(ways);
    }

    private List<Frame> best(List<WallGrid> ways) {
        Optional<WallGrid> best = Optional.empty();
        int fewest = Integer.MAX_VALUE;
        for (WallGrid way : ways) {
            Optional<List<Frame>> laid = way.lay(words, false);
            if (laid.isPresent() && laid.get().size() < fewest) {
                best = Optional.of(way);
                fewest = laid.get().size();
            }
        }
        if (best.isEmpty()) {
            return new WallGrid(ways.get(1).sheet(), 1, 1, faces)
                    .lay(words, true)
                    .orElseThrow();
        }
        return fewest > MANY ? best.get().lay(words, true).orElseThrow() : largest(best.get(), fewest);
    }

    /** The largest type that needs no more pages. */
    private List<Frame> largest(WallGrid way, int pages) {
        List<Frame> laid = way.lay(words, true).orElseThrow();
        for (double scale = 1 + STEP; scale <= LARGEST; scale += STEP) {
            Optional<List<Frame>> larger = way.at(scale).lay(words, false);
            if (larger.isEmpty() || larger.get().size() > pages) {
                return laid;
            }
            laid = larger.get();
        }
        return laid;
    }
}
