package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.print.booklet.Chart.Spot;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.layout.block.Setting;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Type;

/** The drills of a school and what they need, drawn from left to right; a box is greyer the higher its drill's level. */
final class NeedsMap {

    private static final double LARGEST = 9;
    private static final double SMALLEST = 5.5;

    /** Between two layers, where the lines run. */
    private static final double BETWEEN = 16;

    private static final double GAP = 7;

    /** How wide a box is that holds a number alone. */
    private static final double NUMBER = 20;

    /** The greys of the levels, black words stand out on each; above the last all are alike. */
    private static final List<Ink> GREYS = List.of(new Ink(1), new Ink(0.9), new Ink(0.78), new Ink(0.68));

    private final List<Drill> drills;
    private final School school;
    private final Labels labels;
    private final Type type;
    private final Map<String, Integer> numbers = new HashMap<>();

    /** @param drills in the order of the contents, whose numbers stand in the boxes */
    NeedsMap(List<Drill> drills, School school, Labels labels, Type type) {
        this.drills = List.copyOf(drills);
        this.school = school;
        this.labels = labels;
        this.type = type;
        for (int at = 0; at < drills.size(); at++) {
            numbers.putIfAbsent(drills.get(at).id(), at);
        }
    }

    /** A size of type, and whether the boxes hold the titles or the numbers alone. */
    private record Fit(Type type, boolean titled, double box) {}

    /** As wide and as high as asked. */
    Node.Figure draw(double width, double height) {
        Chart chart = new Chart(drills.stream().map(this::needs).toList());
        List<Mark> marks = new ArrayList<>(legend());
        double top = 2.2 * type.size();
        double column = (width + BETWEEN) / Math.max(1, chart.layers().size());
        double widest = Math.max(1, column - BETWEEN);
        Fit fit = fit(chart, widest, height - top);
        double across = fit.titled() ? widest : Math.min(widest, NUMBER);
        Spread spread = spread(fit, height - top);
        Map<Spot, Double> middles = spread.middles(chart.layers());
        middles.replaceAll((spot, middle) -> middle + top);
        for (List<Spot> layer : chart.layers()) {
            for (Spot spot : layer) {
                double x = spot.layer * column;
                spot.after.forEach(next -> line(spot, next, x, column, across, middles, marks));
                if (!spot.isKnot()) {
                    box(spot.drill, x, middles.getOrDefault(spot, 0.0), across, fit, marks);
                }
            }
        }
        return new Node.Figure(said(), new Box(0, 0, width, height), marks);
    }

    private Set<Integer> needs(Drill drill) {
        return drill.needs().stream()
                .filter(numbers::containsKey)
                .map(numbers::get)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The largest type at which all titles fit; else numbers, in boxes as high as there is room. */
    private Fit fit(Chart chart, double across, double room) {
        for (double size = LARGEST; size >= SMALLEST; size -= 0.25) {
            Type tried = new Type(type.faces(), size);
            double box = 0;
            boolean whole = true;
            for (int at = 0; at < drills.size(); at++) {
                Setting set = words(at, tried, true, across);
                box = Math.max(box, set.height() + 0.8 * size);
                whole &= set.broken().isEmpty();
            }
            Fit fit = new Fit(tried, true, box);
            if (whole && chart.layers().stream().allMatch(spread(fit, room)::holds)) {
                return fit;
            }
        }
        int most = chart.layers().stream().mapToInt(List::size).max().orElse(1);
        double box = Math.min(16, 0.7 * room / most);
        return new Fit(new Type(type.faces(), Math.min(0.75 * box, Math.min(across, NUMBER) / 3)), false, box);
    }

    private static Spread spread(Fit fit, double room) {
        double gap = fit.titled() ? GAP : 0.3 * fit.box();
        return new Spread(room, fit.box(), Math.min(GAP, fit.box()), gap);
    }

    private Setting words(int drill, Type size, boolean titled, double across) {
        double pad = 0.35 * size.size();
        String title = drills.get(drill).title().isBlank()
                ? drills.get(drill).id()
                : drills.get(drill).title();
        return size.set(
                Face.REGULAR, titled ? (drill + 1) + " " + title : String.valueOf(drill + 1), pad, 0, across - 2 * pad);
    }

    private void box(int drill, double x, double middle, double across, Fit fit, List<Mark> marks) {
        double top = middle - fit.box() / 2;
        var outline = Outline.box(new Box(x, top, across, fit.box()));
        marks.add(Mark.Shape.filled(outline, grey(drills.get(drill).level())));
        marks.add(Mark.Shape.stroked(outline, 0.75, Ink.BLACK));
        Setting set = words(drill, fit.type(), fit.titled(), across);
        double down = top + (fit.box() - set.height()) / 2;
        set.lines().forEach(line -> marks.add(line.moved(x, down)));
    }

    /** Through a knot straight on; into a drill with an arrow's head. */
    private static void line(
            Spot from, Spot to, double x, double column, double across, Map<Spot, Double> middles, List<Mark> marks) {
        double y1 = middles.getOrDefault(from, 0.0);
        double y2 = middles.getOrDefault(to, 0.0);
        double left = x + across;
        double right = x + column;
        if (from.isKnot()) {
            marks.add(new Mark.Line(x, y1, left, y1, 0.75, Ink.BLACK));
        }
        marks.add(new Mark.Line(left, y1, right, y2, 0.75, Ink.BLACK));
        if (!to.isKnot()) {
            double angle = StrictMath.atan2(y2 - y1, right - left);
            double cos = StrictMath.cos(angle);
            double sin = StrictMath.sin(angle);
            marks.add(Mark.Shape.filled(
                    Outline.polygon(
                            right,
                            y2,
                            right - 5 * cos + 2 * sin,
                            y2 - 5 * sin - 2 * cos,
                            right - 5 * cos - 2 * sin,
                            y2 - 5 * sin + 2 * cos),
                    Ink.BLACK));
        }
    }

    private Ink grey(String level) {
        return GREYS.get(Math.max(0, Math.min(GREYS.size() - 1, school.rank(level))));
    }

    /** The levels and their greys, along the top. */
    private List<Mark> legend() {
        List<Mark> marks = new ArrayList<>();
        double x = 0;
        double side = type.capHeight();
        for (var level : school.levels()) {
            boolean used = drills.stream().anyMatch(drill -> drill.level().equals(level.name()));
            if (used) {
                var outline = Outline.box(new Box(x, 0, 1.6 * side, side));
                marks.add(Mark.Shape.filled(outline, grey(level.name())));
                marks.add(Mark.Shape.stroked(outline, 0.75, Ink.BLACK));
                x += 2.2 * side;
                marks.add(new Mark.Text(x, side, type.size(), Face.REGULAR, level.name(), Ink.BLACK));
                x += type.width(Face.REGULAR, level.name()) + 2 * type.size();
            }
        }
        return marks;
    }

    /** Every drill with all it needs, those included that have no line of their own. */
    private String said() {
        StringBuilder said = new StringBuilder(labels.text(Label.MAP_TITLE)).append('.');
        for (int at = 0; at < drills.size(); at++) {
            String needs = needs(drills.get(at)).stream()
                    .map(need -> String.valueOf(need + 1))
                    .collect(Collectors.joining(", "));
            said.append(' ')
                    .append(labels.text(
                            Label.MAP_SAID,
                            at + 1,
                            drills.get(at).title(),
                            needs.isEmpty() ? labels.text(Label.MAP_NOTHING) : needs));
        }
        return said.toString();
    }
}
