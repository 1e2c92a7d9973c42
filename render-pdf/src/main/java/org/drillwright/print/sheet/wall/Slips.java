package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Type;
import org.drillwright.register.History;

/** A slip for each person's hand: with whom and where, round by round. To be cut along the rules. */
final class Slips {

    private static final double WIDTH = Millimetres.toPoints(63);
    private static final double USUAL_HEIGHT = Millimetres.toPoints(34);
    private static final double PAD = 4;
    private static final double NAME = 13;
    private static final double WORDS = 9;
    private static final double SMALL = 7.5;
    private static final String LEADS = "\u25CF";

    private final Notice notice;
    private final WallTexts words;
    private final String foot;
    private final Naming names;
    private final PairingPlan pairs;
    private final List<Round> rounds;
    private final List<String> people;
    private final Map<String, String> shown;

    Slips(Notice notice, PairingPlan pairs, Naming names) {
        this.notice = notice;
        this.words = notice.wording();
        this.foot = words.text(WallText.CUT);
        this.names = names;
        this.pairs = pairs;
        this.rounds = pairs.rounds().stream().skip(pairs.firstPlanned()).toList();
        this.people = ByName.people(rounds, names, words);
        Type type = notice.type(WORDS);
        this.shown = ShortNames.of(
                people.stream().map(names::of).toList(), name -> type.width(Face.REGULAR, name) > 0.5 * column());
    }

    private static double column() {
        return (WIDTH - 3 * PAD) / 2;
    }

    private String shown(String person) {
        return shown.getOrDefault(names.of(person), names.of(person));
    }

    List<Frame> pages() {
        int abreast = Math.max(1, (int) (notice.sheet().inner() / WIDTH));
        double room = room();
        List<Frame> pages = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        double filled = 0;
        for (int from = 0; from < people.size(); from += abreast) {
            Row row = Row.of(people.subList(from, Math.min(people.size(), from + abreast)).stream()
                    .map(this::slip)
                    .toList());
            if (!rows.isEmpty() && filled + row.height() > room) {
                pages.add(page(rows, abreast));
                rows.clear();
                filled = 0;
            }
            rows.add(row);
            filled += row.height();
        }
        pages.add(page(rows, abreast));
        return pages;
    }

    private double room() {
        return notice.room(foot);
    }

    /** Slips side by side, cut off by one cut, all as high as the highest needs. */
    private record Row(List<Box> slips, double height) {

        static Row of(List<Box> slips) {
            return new Row(slips, slips.stream().mapToDouble(Box::height).max().orElse(0));
        }

        /** Of the usual height, if it is no higher already. */
        Row usual() {
            return new Row(slips, Math.max(USUAL_HEIGHT, height));
        }
    }

    /** Of the usual height if the page has room for it; else they share what room there is. */
    private List<Row> spread(List<Row> rows) {
        List<Row> usual = rows.stream().map(Row::usual).toList();
        if (height(usual) <= room()) {
            return usual;
        }
        double more = (room() - height(rows)) / rows.size();
        return rows.stream()
                .map(row -> new Row(row.slips(), row.height() + Math.max(0, more)))
                .toList();
    }

    private static double height(List<Row> rows) {
        return rows.stream().mapToDouble(Row::height).sum();
    }

    private Frame page(List<Row> rows, int abreast) {
        double left = (notice.sheet().inner() - abreast * WIDTH) / 2;
        List<Mark> marks = new ArrayList<>();
        List<Node> nodes = new ArrayList<>();
        double y = 0;
        for (Row row : spread(rows)) {
            double below = y + row.height();
            for (int at = 0; at < row.slips().size(); at++) {
                double x = left + at * WIDTH;
                nodes.addAll(row.slips().get(at).moved(x, y).nodes());
                marks.add(LineWeight.THIN.across(x, x + WIDTH, below));
                marks.add(LineWeight.THIN.down(x + WIDTH, y, below));
                if (y == 0) {
                    marks.add(LineWeight.THIN.across(x, x + WIDTH, y));
                }
            }
            marks.add(LineWeight.THIN.down(left, y, below));
            y = below;
        }
        return notice.page(Box.of(y, marks, nodes), foot);
    }

    private Box slip(String person) {
        double inner = WIDTH - 2 * PAD;
        Type small = notice.type(SMALL);
        String lines = lines(person);
        Type large = notice.type(NAME);
        String before = lines + (lines.isEmpty() ? "" : " \u00B7 ") + LEADS + " ";
        String full = before + words.text(WallText.YOU_LEAD);
        String brief = before + words.text(WallText.LEAD_SHORT);
        double room = inner - 2 * PAD - large.width(Face.BOLD, names.of(person));
        String key = small.width(Face.REGULAR, full) > room && small.width(Face.REGULAR, brief) <= room ? brief : full;
        double keyed = small.width(Face.REGULAR, key);
        SetText beside = large.set(Face.BOLD, names.of(person), PAD, 0.4 * PAD, inner - keyed - PAD);
        List<Node> nodes = new ArrayList<>();
        double top = 0.4 * PAD;
        if (beside.broken().isEmpty()) {
            Mark.Text end = small.line(Face.REGULAR, key, PAD + inner - keyed, beside.baselineOr(NAME));
            nodes.add(beside.as(Role.PARAGRAPH));
            nodes.add(new Node.Words(Role.PARAGRAPH, List.of(end)));
            top += beside.height();
        } else {
            SetText name = large.set(Face.BOLD, names.of(person), PAD, top, inner);
            SetText below = small.set(Face.REGULAR, key, PAD, top + name.height(), inner);
            nodes.add(name.as(Role.PARAGRAPH));
            nodes.add(below.as(Role.PARAGRAPH));
            top += name.height() + below.height();
        }
        List<Box> entries = rounds.stream().map(round -> entry(person, round)).toList();
        int split = (entries.size() + 1) / 2;
        Box left = Box.stack(entries.subList(0, split)).moved(PAD, top);
        Box right = Box.stack(entries.subList(split, entries.size())).moved(2 * PAD + column(), top);
        return Box.abreast(List.of(Box.of(0, List.of(), nodes), left, right)).padded(top + 0.4 * PAD);
    }

    /** Line and first post in each forming. */
    private String lines(String person) {
        return pairs.walks().stream()
                .filter(walk -> !walk.line(person).isEmpty())
                .map(walk -> {
                    String first = walk.line(person) + "\u00A0" + walk.post(person, walk.from());
                    return walk.from() > pairs.firstPlanned() + 1
                            ? words.text(WallText.LINE_FROM, first, walk.from())
                            : first;
                })
                .collect(Collectors.joining(", "));
    }

    private Box entry(String person, Round round) {
        Type type = notice.type(WORDS);
        double number = type.width(Face.BOLD, "88") + 3.5;
        String figures = String.valueOf(round.number());
        List<String> said = said(person, round);
        String fitting = said.stream()
                .filter(one -> type.width(Face.REGULAR, one) <= column() - number)
                .findFirst()
                .orElse(said.get(said.size() - 1));
        SetText set = type.set(Face.REGULAR, fitting, number, 0, column() - number);
        List<Mark.Text> lines = new ArrayList<>();
        lines.add(type.line(Face.BOLD, figures, 0, set.lines().get(0).baseline()));
        lines.addAll(set.lines());
        return Box.of(set.height(), new Node.Words(Role.PARAGRAPH, lines));
    }

    /** In full, then in fewer words; the first that takes one line is the best. */
    private List<String> said(String person, Round round) {
        return round.groupOf(person)
                .map(group -> said(
                        person, group, pairs.walk(round.number()).isPresent() ? WallText.AT_POST : WallText.AT_PLACE))
                .orElseGet(() -> List.of(words.text(WallText.NOT_THERE)));
    }

    private List<String> said(String person, Group group, WallText place) {
        List<String> others = new ArrayList<>(group.people().stream()
                .filter(other -> !other.equals(person))
                .map(this::shown)
                .toList());
        group.helper()
                .map(helper ->
                        helper.equals(History.INSTRUCTOR) ? words.text(WallText.INSTRUCTOR_SHORT) : names.of(helper))
                .ifPresent(others::add);
        if (others.isEmpty()) {
            return List.of(words.text(WallText.ALONE));
        }
        String with = (Evening.leads(person, group) ? LEADS + " " : "")
                + others.stream()
                        .reduce((one, other) -> words.text(WallText.AND, one, other))
                        .orElse("");
        String full = words.text(place, with, group.place());
        String brief = words.text(WallText.AT_NUMBER, with, group.place());
        boolean isNew = group.kind() == Group.Kind.BOTH_NEW || group.kind() == Group.Kind.WATCHED;
        return isNew
                ? List.of(
                        words.text(WallText.TWO_NEW, full),
                        words.text(WallText.SHORT_NEW, full),
                        words.text(WallText.SHORT_NEW, brief))
                : List.of(full, brief);
    }
}
