package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.drillwright.plan.pair.Walk;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Styled;

/** The lines that walk on one page: the two rows of posts, the rule in words, and names from A to Z with line and post. */
final class LinesPage {

    private static final double MOST = 40;
    private static final double LEADING = 24.6 / 19;
    private static final double LOOSEST = 1.5;
    private static final double HEAD = 11;
    private static final int MOST_BLOCKS = 4;

    /** Between columns, as shares of the type. */
    private static final double GAP = 0.7;

    /** Between blocks of names, as a share of the type. */
    private static final double BETWEEN = 1.2;

    private static final String JOINS = "*";

    private final Notice notice;
    private final LineRounds lines;
    private final String heading;
    private final List<List<Styled>> said;
    private final List<Box> drawings;
    private final Map<String, String> shown;
    private final double name;
    private final double[] posts;

    /**
     * @param heading of the sheet
     * @param said paragraphs above the drawing
     * @param staying names of the line that stays, forming by forming
     */
    LinesPage(Notice notice, LineRounds lines, String heading, List<List<Styled>> said, List<List<String>> staying) {
        this.notice = notice;
        this.lines = lines;
        this.heading = heading;
        this.said = said;
        Type unit = notice.type(1);
        List<String> names = lines.rows().stream().map(LineRounds.Row::name).toList();
        this.shown = ShortNames.of(names, one -> unit.width(Face.REGULAR, one) > EveningGrid.LONGEST_NAME);
        this.drawings = IntStream.range(0, staying.size())
                .mapToObj(at -> drawing(lines.walks().get(at), staying.get(at)))
                .toList();
        this.name = names.stream()
                .mapToDouble(one -> Math.min(EveningGrid.LONGEST_NAME, unit.width(Face.REGULAR, shown(one))))
                .max()
                .orElse(0);
        this.posts = IntStream.range(0, lines.walks().size())
                .mapToDouble(at -> lines.rows().stream()
                        .mapToDouble(row -> unit.width(Face.BOLD, post(row, at)))
                        .max()
                        .orElse(0))
                .toArray();
    }

    private Box drawing(Walk walk, List<String> staying) {
        Box drawn =
                new LinesDrawing(notice, walk, staying.stream().map(this::shown).toList()).block();
        if (lines.walks().size() == 1) {
            return drawn;
        }
        WallTexts words = notice.wording();
        String caption = words.text(
                walk.from() == walk.to() ? WallText.ROUND : WallText.ROUNDS, LineRounds.numbers(walk, words));
        return Box.stack(
                notice.type(HEAD * notice.scale())
                        .paragraph(Face.BOLD, caption, notice.sheet().inner()),
                drawn);
    }

    private String shown(String one) {
        return shown.getOrDefault(one, one);
    }

    private static String post(LineRounds.Row row, int at) {
        return row.posts().get(at) + (row.joins() ? JOINS : "");
    }

    /** A block of names is so wide, as a share of the type. */
    private double across() {
        return name
                + IntStream.range(0, posts.length)
                        .mapToDouble(at -> GAP + posts[at])
                        .sum();
    }

    /** How the names of a page are set. */
    private record Layout(int blocks, int deep, double size) {}

    List<Frame> pages() {
        // A forming that can't be drawn without another sheet is read from the list, as all of them can be.
        int few = parts(1);
        int drawn = drawings.size();
        while (drawn > 1 && parts(drawn) > few) {
            drawn--;
        }
        int parts = parts(drawn);
        List<Frame> pages = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            pages.add(page(part(parts, part), parts == 1, drawn, pages.size() + 1));
        }
        return pages;
    }

    /** On how many pages names find room below so many drawings. */
    private int parts(int drawn) {
        int parts = 1;
        while (parts < lines.rows().size()
                && layout(part(parts, 0), parts == 1, drawn).size() < EveningGrid.LEAST) {
            parts++;
        }
        return parts;
    }

    private List<LineRounds.Row> part(int parts, int part) {
        int count = lines.rows().size();
        int longest = (count + parts - 1) / parts;
        return lines.rows().subList(Math.min(count, part * longest), Math.min(count, (part + 1) * longest));
    }

    private Box head(List<LineRounds.Row> rows, boolean all, int drawn) {
        String told = all || rows.isEmpty()
                ? heading
                : notice.wording()
                        .text(
                                WallText.NAMES,
                                heading,
                                shown(rows.get(0).name()),
                                shown(rows.get(rows.size() - 1).name()));
        List<Box> blocks = new ArrayList<>(List.of(notice.head(told, said)));
        blocks.addAll(drawings.subList(0, drawn));
        return Box.stack(blocks);
    }

    private Layout layout(List<LineRounds.Row> rows, boolean all, int drawn) {
        double room = notice.room() - head(rows, all, drawn).height() - heads();
        Layout best = new Layout(1, rows.size(), 0);
        for (int blocks = 1; blocks <= MOST_BLOCKS; blocks++) {
            int deep = (rows.size() + blocks - 1) / blocks;
            double wide = notice.sheet().inner() / (blocks * across() + (blocks - 1) * BETWEEN);
            double size = Math.min(MOST * notice.scale(), Math.min(wide, room / (deep * LEADING)));
            best = size > best.size() ? new Layout(blocks, deep, size) : best;
        }
        return best;
    }

    private double heads() {
        return lines.walks().size() > 1 ? 1.4 * HEAD * notice.scale() : 0;
    }

    private Frame page(List<LineRounds.Row> rows, boolean all, int drawn, int number) {
        Box head = head(rows, all, drawn);
        Layout layout = layout(rows, all, drawn);
        double top = heads();
        double room = notice.room() - head.height() - top;
        double height = Math.min(LOOSEST * LEADING * layout.size(), room / layout.deep());
        double apart = (notice.sheet().inner() + BETWEEN * layout.size()) / layout.blocks();
        List<Mark> marks = new ArrayList<>();
        List<Node> table = new ArrayList<>();
        for (int block = 0; block < layout.blocks(); block++) {
            int from = block * layout.deep();
            int end = Math.min(rows.size(), from + layout.deep());
            double left = block * apart;
            double right = left + apart - BETWEEN * layout.size();
            if (from < end) {
                if (heads() > 0) {
                    table.add(headRow(left, top, layout.size()));
                }
                marks.add(LineWeight.HEAVY.across(left, right, top));
            }
            for (int at = from; at < end; at++) {
                double y = top + (at - from) * height;
                table.add(row(rows.get(at), left, y + height / 2, layout.size()));
                boolean heavy = (at - from) % 4 == 3 || at == end - 1;
                marks.add((heavy ? LineWeight.HEAVY : LineWeight.THIN).across(left, right, y + height));
            }
        }
        Box names = Box.of(top + layout.deep() * height, marks, List.of(new Node.Group(Role.TABLE, table)));
        return notice.page(Box.stack(head, names), notice.end(notice.type(layout.size()), number));
    }

    private double x(int forming, double left, double size) {
        double x = left + (name + GAP) * size;
        for (int at = 0; at < forming; at++) {
            x += (posts[at] + GAP) * size;
        }
        return x;
    }

    private Node headRow(double left, double top, double size) {
        List<Node> cells = new ArrayList<>();
        Type first = notice.type(HEAD * notice.scale());
        cells.add(new Node.Words(
                Role.COLUMN_HEAD,
                List.of(first.line(
                        Face.REGULAR, notice.wording().text(WallText.COLUMN_ROUNDS), left, top - 0.4 * first.size()))));
        for (int at = 0; at < posts.length; at++) {
            Walk walk = lines.walks().get(at);
            String rounds = walk.from() == walk.to() ? "" + walk.from() : walk.from() + "\u2013" + walk.to();
            Type small = notice.type(Math.min(
                    HEAD * notice.scale(),
                    (posts[at] + 0.8 * GAP) * size / notice.type(1).width(Face.REGULAR, rounds)));
            cells.add(new Node.Words(
                    Role.COLUMN_HEAD,
                    List.of(small.line(Face.REGULAR, rounds, x(at, left, size), top - 0.4 * small.size()))));
        }
        return new Node.Group(Role.ROW, cells);
    }

    private Node row(LineRounds.Row row, double left, double middle, double size) {
        Type type = notice.type(size);
        List<Node> cells = new ArrayList<>();
        double baseline = middle + type.capHeight() / 2;
        cells.add(name(row, left, baseline, size));
        for (int at = 0; at < posts.length; at++) {
            cells.add(new Node.Words(
                    Role.CELL,
                    row.posts().get(at).isEmpty()
                            ? List.of()
                            : List.of(type.line(Face.BOLD, post(row, at), x(at, left, size), baseline))));
        }
        return new Node.Group(Role.ROW, cells);
    }

    /** A name that nothing shortens is set smaller, so that it stays on its line. */
    private Node name(LineRounds.Row row, double left, double baseline, double size) {
        String words = shown(row.name());
        double wide = notice.type(size).width(Face.REGULAR, words);
        Type type = notice.type(size * Math.min(1, name * size / wide));
        return new Node.Words(Role.ROW_HEAD, List.of(type.line(Face.REGULAR, words, left, baseline)));
    }
}
