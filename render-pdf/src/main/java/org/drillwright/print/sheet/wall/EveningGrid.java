package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Styled;

/** Names down, rounds across, in each cell a place: large and bold where one walks there, small where one stays. */
final class EveningGrid {

    /** Names and places are never smaller than this, in points. */
    static final double LEAST = 19;

    private static final double MOST = 40;
    private static final int MOST_NAMES = 24;

    /** As a share of the type: 45 mm at the least. */
    static final double LONGEST_NAME = 6.7;

    private static final double GAP = 0.12;
    private static final double WIDEST_COLUMN = 3;

    private final Notice notice;
    private final Evening evening;
    private final List<String> rules;
    private final boolean whole;
    private final Map<String, String> shown;
    private final double cell;
    private final double name;

    /** @param whole whether these are all rounds that are left */
    EveningGrid(Notice notice, Evening evening, List<String> rules, boolean whole) {
        this.whole = whole;
        this.notice = notice;
        this.evening = evening;
        this.rules = List.copyOf(rules);
        Type unit = notice.type(1);
        List<String> names = evening.rows().stream().map(Evening.Row::name).toList();
        this.shown = ShortNames.of(names, name -> unit.width(Face.REGULAR, name) > LONGEST_NAME);
        this.name = names.stream()
                .mapToDouble(name -> Math.min(LONGEST_NAME, unit.width(Face.REGULAR, shown(name))))
                .max()
                .orElse(0);
        this.cell = evening.rows().stream()
                .flatMap(row -> row.cells().stream())
                .mapToDouble(this::width)
                .max()
                .orElse(1);
    }

    private String shown(String name) {
        return shown.getOrDefault(name, name);
    }

    private double width(Evening.Cell cell) {
        Type unit = notice.type(GridPage.size(cell, 1));
        return unit.width(GridPage.face(cell), cell.place()) + GridPage.SIGN * unit.width(Face.REGULAR, cell.sign());
    }

    /** @param before pages that come before these */
    List<Frame> pages(int before) {
        double inner = notice.sheet().inner();
        int most = Math.max(1, (int) ((inner / LEAST - name - GridPage.PAD) / (cell + GAP)));
        List<List<Evening.Column>> columns = even(evening.columns(), most);
        List<List<Evening.Row>> rows = even(evening.rows(), MOST_NAMES);
        while (size(rows, columns) < LEAST && rows.size() < evening.rows().size()) {
            rows = even(evening.rows(), rows.get(0).size() - 1);
        }
        double size = Math.max(LEAST, size(rows, columns));
        List<Frame> pages = new ArrayList<>();
        for (List<Evening.Row> some : rows) {
            int from = 0;
            for (List<Evening.Column> rounds : columns) {
                int first = from;
                int end = from + rounds.size();
                List<Evening.Row> part = some.stream()
                        .map(row ->
                                new Evening.Row(shown(row.name()), row.cells().subList(first, end)))
                        .toList();
                boolean all = rows.size() == 1;
                Box head = head(rounds, columns.size() == 1, some, all);
                GridPage page = new GridPage(notice, rounds, part, size, name, column(size, rounds.size()));
                pages.add(page.frame(head, before + pages.size() + 1));
                from = end;
            }
        }
        return pages;
    }

    /** In as few parts of about one length as have no more than so many. */
    private static <T> List<List<T>> even(List<T> all, int most) {
        int parts = (all.size() + most - 1) / most;
        List<List<T>> split = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            split.add(all.subList(part * all.size() / parts, (part + 1) * all.size() / parts));
        }
        return split;
    }

    /** The largest type in which each part fits its page. */
    private double size(List<List<Evening.Row>> rows, List<List<Evening.Column>> columns) {
        double size = MOST * notice.scale();
        for (List<Evening.Column> rounds : columns) {
            size = Math.min(size, notice.sheet().inner() / (name + GridPage.PAD + rounds.size() * (cell + GAP)));
            for (List<Evening.Row> some : rows) {
                Box head = head(rounds, columns.size() == 1, some, rows.size() == 1);
                List<String> names = some.stream().map(row -> shown(row.name())).toList();
                size = Math.min(size, GridPage.room(notice, head) / GridPage.height(notice, names, name));
            }
        }
        return size;
    }

    private double column(double size, int rounds) {
        double left = notice.sheet().inner() - size * (name + GridPage.PAD);
        return Math.min(left / rounds, WIDEST_COLUMN * size);
    }

    private Box head(List<Evening.Column> rounds, boolean allRounds, List<Evening.Row> some, boolean allNames) {
        WallTexts words = notice.wording();
        String heading = rounds(
                allNames
                        ? notice.day()
                        : words.text(
                                WallText.NAMES,
                                notice.day(),
                                shown(some.get(0).name()),
                                shown(some.get(some.size() - 1).name())),
                rounds,
                allRounds);
        List<Styled> how = List.of(
                Notice.bold(words.text(WallText.FIND_PLACE)),
                Notice.plain(words.text(allNames ? WallText.PARTNER : WallText.PARTNER_ELSEWHERE)),
                Notice.bold(words.text(WallText.LARGE)),
                Notice.plain(words.text(WallText.SMALL)));
        return notice.head(
                heading, List.of(how, rules.stream().map(Notice::plain).toList(), drills(rounds), keys()));
    }

    private String rounds(String heading, List<Evening.Column> rounds, boolean all) {
        WallTexts words = notice.wording();
        int first = rounds.get(0).round();
        if (!all || !whole) {
            List<Integer> numbers = rounds.stream().map(Evening.Column::round).toList();
            return words.text(
                    numbers.size() == 1 ? WallText.IN_ROUND : WallText.IN_ROUNDS, heading, Runs.of(numbers, words));
        }
        return first == 1 ? heading : words.text(WallText.FROM_ROUND, heading, first);
    }

    private List<Styled> drills(List<Evening.Column> rounds) {
        Map<String, String> titles = new LinkedHashMap<>();
        rounds.forEach(round -> titles.put(round.letter(), notice.title().apply(round.drill())));
        return explained(titles);
    }

    private List<Styled> keys() {
        return explained(evening.keys());
    }

    private static List<Styled> explained(Map<String, String> signs) {
        List<Styled> words = new ArrayList<>();
        signs.forEach((sign, meaning) -> {
            words.add(Notice.bold(sign));
            words.add(Notice.plain(meaning + (words.size() / 2 < signs.size() - 1 ? ";" : "")));
        });
        return words;
    }
}
