package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.page.Block;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Styled;

/** Two lines of which one walks: place by place who stays and who is opposite first, and the rule in words. */
final class LinesPage {

    private static final double USUAL = 33;
    private static final double LEADING = 50.0 / 33;
    private static final double LOOSEST = 1.2;
    private static final double HEAD = 14;

    /** About the place, as shares of the type. */
    private static final double GAP = 0.4;

    private final Notice notice;
    private final List<String> left;
    private final List<String> right;
    private final Block head;
    private final double place;

    /**
     * @param left what is written of who stays, from place 1
     * @param step how many places the others go on, 1 or -1
     * @param toKnow sentences that everybody should know
     */
    LinesPage(
            Notice notice,
            List<Evening.Column> rounds,
            List<String> left,
            List<String> right,
            int step,
            List<String> toKnow) {
        this.notice = notice;
        this.left = shown(left, right, left);
        this.right = shown(left, right, right);
        this.head = notice.head(
                notice.day(),
                List.of(
                        rule(left.size(), step, several(rounds)),
                        drills(notice, rounds),
                        toKnow.stream().map(Notice::plain).toList()));
        this.place = notice.type(1).width(Face.REGULAR, String.valueOf(left.size())) + 2 * GAP;
    }

    private List<String> shown(List<String> left, List<String> right, List<String> some) {
        List<String> all = Stream.concat(left.stream(), right.stream()).toList();
        Map<String, String> shown =
                ShortNames.of(all, name -> notice.type(1).width(Face.BOLD, name) > EveningGrid.LONGEST_NAME);
        return some.stream().map(name -> shown.getOrDefault(name, name)).toList();
    }

    private static List<Styled> rule(int places, int step, boolean several) {
        String walk = step < 0
                ? "from place 2 to place 1 and so on, and from place 1 to place " + places
                : "from place 1 to place 2 and so on, and from place " + places + " to place 1";
        return List.of(
                Notice.bold("Left stays. Right walks"),
                Notice.plain("at each change " + walk + (several ? ", also when the drill changes" : "")
                        + ". The left leads first in odd rounds, the right in even ones."));
    }

    private static boolean several(List<Evening.Column> rounds) {
        return rounds.stream().map(Evening.Column::drill).distinct().count() > 1;
    }

    private static List<Styled> drills(Notice notice, List<Evening.Column> rounds) {
        Map<String, Integer> partners = new LinkedHashMap<>();
        rounds.forEach(round -> partners.merge(round.drill(), 1, Integer::sum));
        List<Styled> words = new ArrayList<>();
        partners.forEach((drill, count) -> {
            words.add(Notice.bold(notice.title().apply(drill) + ":"));
            words.add(Notice.plain(counted(count, "partner") + ", "
                    + counted(notice.repetitions().applyAsInt(drill), "time") + " in each role."));
        });
        return words;
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    /** Whether all names find room in type that is large enough. */
    boolean fits() {
        return across() >= EveningGrid.LEAST;
    }

    private double across() {
        double widest = Stream.concat(left.stream(), right.stream())
                .mapToDouble(name -> notice.type(1).width(Face.BOLD, name))
                .max()
                .orElse(0);
        return Math.min(USUAL * notice.scale(), notice.sheet().inner() / (2 * (widest + GAP) + place));
    }

    List<Frame> pages() {
        double room = notice.bottom() - notice.sheet().margin() - head.height() - headHeight();
        int most = Math.max(1, (int) (room / (EveningGrid.LEAST * LEADING)));
        int parts = (left.size() + most - 1) / most;
        int longest = (left.size() + parts - 1) / parts;
        double size = Math.min(across(), room / (longest * LEADING));
        double height = Math.min(LOOSEST * LEADING * size, room / longest);
        List<Frame> pages = new ArrayList<>();
        for (int from = 0; from < left.size(); from += longest) {
            pages.add(page(from, Math.min(left.size(), from + longest), size, height, pages.size() + 1));
        }
        return pages;
    }

    private double headHeight() {
        return 1.5 * HEAD * notice.scale();
    }

    private Frame page(int from, int end, double size, double height, int number) {
        double margin = notice.sheet().margin();
        Type type = notice.type(size);
        Block placed = head.moved(margin, margin);
        double y = margin + head.height() + headHeight();
        List<Mark> marks = new ArrayList<>();
        List<Node> table = new ArrayList<>();
        Type small = notice.type(HEAD * notice.scale());
        table.add(row(
                small,
                Face.REGULAR,
                y - 0.4 * HEAD * notice.scale(),
                size,
                Role.COLUMN_HEAD,
                "stays",
                "place",
                "walks"));
        marks.add(rule(y, Press.HEAVY));
        double top = y;
        for (int at = from; at < end; at++) {
            double baseline = y + (height + type.capHeight()) / 2;
            table.add(row(
                    type, Face.BOLD, baseline, size, Role.CELL, left.get(at), String.valueOf(at + 1), right.get(at)));
            y += height;
            marks.add(rule(y, Press.THIN));
        }
        for (int side = -1; side <= 1; side += 2) {
            double x = middle() + side * place * size / 2;
            marks.add(new Mark.Line(x, top, x, y, Press.HEAVY, Ink.BLACK));
        }
        List<Node> nodes = new ArrayList<>(placed.nodes());
        nodes.add(new Node.Group(Role.TABLE, table));
        return notice.page(marks, nodes, notice.distance(type) + " \u00B7 Page " + number);
    }

    private double middle() {
        return notice.sheet().width() / 2;
    }

    private Mark rule(double y, double width) {
        double margin = notice.sheet().margin();
        return new Mark.Line(margin, y, margin + notice.sheet().inner(), y, width, Ink.BLACK);
    }

    private Node row(
            Type type, Face face, double baseline, double size, Role role, String one, String at, String other) {
        double off = place * size / 2 + GAP * size;
        return new Node.Group(
                Role.ROW,
                List.of(
                        words(type, face, one, middle() - off - type.width(face, one), baseline, role),
                        words(
                                type,
                                Face.REGULAR,
                                at,
                                middle() - type.width(Face.REGULAR, at) / 2,
                                baseline,
                                role == Role.CELL ? Role.ROW_HEAD : role),
                        words(type, face, other, middle() + off, baseline, role)));
    }

    private static Node words(Type type, Face face, String words, double x, double baseline, Role role) {
        return new Node.Words(role, List.of(type.line(face, words, x, baseline)));
    }
}
