package org.drillwright.print.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.frame.Segment;
import org.drillwright.print.pdf.Family;

class SymbolsTest {

    private static final Rectangle BOX = new Rectangle(0, 0, 100, 50);

    private static Node.Figure figure(String said, Mark... marks) {
        return new Node.Figure(said, BOX, List.of(marks));
    }

    private static Mark disc(double x) {
        return Mark.Shape.filled(Outline.circle(x, 20, 9), Ink.BLACK);
    }

    @Example
    void equal_drawings_are_written_once_however_they_are_spoken() {
        Symbols symbols = new Symbols(Family.dejaVu());
        String one = symbols.picture(figure("One <thing>.", disc(10)), "picture");
        String same = symbols.picture(figure("Another.", new Mark.Named("disc", List.of(disc(10)))), "picture");
        String other = symbols.picture(figure("One <thing>.", disc(30)), "picture");
        assertEquals(called(one), called(same));
        assertNotEquals(called(one), called(other));
        Drawn drawn = Drawn.read(symbols.drawings());
        assertEquals(2, drawn.elements("symbol").size());
        assertEquals(1, drawn.elements("path").size());
        assertEquals("One <thing>.", Drawn.read(one).elements("svg").get(0).getAttribute("aria-label"));
        assertEquals("img", Drawn.read(one).elements("svg").get(0).getAttribute("role"));
    }

    private static String called(String picture) {
        return Drawn.read(picture).elements("use").get(0).getAttribute("href");
    }

    @Example
    void lines_words_and_greys_are_drawn_too() {
        Symbols symbols = new Symbols(Family.dejaVu());
        symbols.sign(
                BOX,
                List.of(
                        new Mark.Line(1, 2, 3, 4, 0.5, Ink.BLACK),
                        Mark.Shape.stroked(Outline.circle(5, 5, 2), 1, new Ink(0.5)),
                        Mark.Shape.filled(Outline.circle(5, 5, 2), Ink.WHITE),
                        new Mark.Text(1, 10, 9, Face.BOLD, "1 < 2", Ink.BLACK)),
                "sign");
        Drawn drawn = Drawn.read(symbols.drawings());
        assertEquals("fill:none;stroke:#000;stroke-width:3", look(symbols, drawn, 0));
        assertEquals("fill:none;stroke:rgb(128,128,128);stroke-width:6", look(symbols, drawn, 1));
        assertEquals("fill:#fff", look(symbols, drawn, 2));
        assertEquals("1 < 2", drawn.elements("text").get(0).getTextContent().strip());
    }

    private static String look(Symbols symbols, Drawn drawn, int path) {
        String name = drawn.elements("path").get(path).getAttribute("class");
        Matcher rule = Pattern.compile("\\." + name + "\\{([^}]*)}").matcher(symbols.rules());
        assertTrue(rule.find(), name);
        return rule.group(1);
    }

    /** What two drawings share is written once: a disc in both, alone in one of them. */
    @Example
    void shared_outlines_are_written_once() {
        Symbols symbols = new Symbols(Family.dejaVu());
        Mark shared = Mark.Shape.filled(
                Outline.polygon(0, 0, 11, 3, 7, 20, 30, 41, 2, 33, 9, 17, 44, 5, 13, 49, 21, 6), Ink.BLACK);
        symbols.picture(figure("One.", shared, disc(10)), "picture");
        symbols.picture(figure("Two.", disc(60), shared), "picture");
        symbols.picture(figure("Three.", shared), "picture");
        Drawn drawn = Drawn.read(symbols.drawings());
        assertEquals(
                1,
                drawn.elements("path").stream()
                        .filter(path -> path.getAttribute("d")
                                .endsWith(Path.of(((Mark.Shape) shared).outline(), 6)
                                        .steps()))
                        .count());
        assertEquals(3, drawn.elements("symbol").size());
    }

    /** The same outlines elsewhere, in one drawing or two, are called there; what is drawn is where it was. */
    @Example
    void what_stands_elsewhere_is_written_once_as_well() {
        Symbols symbols = new Symbols(Family.dejaVu());
        List<Mark> thing = List.of(
                new Mark.Contour(
                        Outline.polygon(0, 0, 11, 3, 7, 20, 30, 41, 2, 33, 9, 17, 44, 5, 13, 49, 21, 6), 2, Ink.WHITE),
                Mark.Shape.filled(
                        Outline.polygon(0, 0, 11, 3, 7, 20, 30, 41, 2, 33, 9, 17, 44, 5, 13, 49, 21, 6), Ink.BLACK));
        symbols.picture(figure("One.", new Mark.Named("thing", thing)), "picture");
        symbols.picture(
                figure("Two.", new Mark.Named("thing", thing).moved(10, -5), new Mark.Named("thing", thing)),
                "picture");
        Drawn drawn = Drawn.read(symbols.drawings());
        assertEquals(1, drawn.elements("path").size());
        assertEquals(
                List.of(" ", "60 -30", " "),
                drawn.elements("use").stream()
                        .filter(call -> call.getParentNode().getNodeName().equals("symbol"))
                        .map(call -> call.getAttribute("x") + " " + call.getAttribute("y"))
                        .toList());
    }

    @Provide
    Arbitrary<List<Segment>> outlines() {
        Arbitrary<Double> place = Arbitraries.doubles().between(-20, 20).ofScale(3);
        Arbitrary<Segment> to = Combinators.combine(place, place).as(Segment.To::new);
        Arbitrary<Segment> curve =
                Combinators.combine(place, place, place, place, place, place).as(Segment.Curve::new);
        Arbitrary<Segment> start = Combinators.combine(place, place).as(Segment.Start::new);
        Arbitrary<List<Segment>> rest = Arbitraries.oneOf(to, curve, to, curve, start)
                .list()
                .ofMinSize(1)
                .ofMaxSize(12);
        return Combinators.combine(start, rest).as((first, more) -> {
            List<Segment> outline = new ArrayList<>(List.of(first));
            outline.addAll(more);
            return outline;
        });
    }

    /**
     * Read by the grammar of SVG 1.1, 8.3: no place of the outline is farther from what is drawn than two units, which are
     * half a unit for a curve made straight, half a unit for a corner left out, and what is lost by whole numbers.
     */
    @Property(tries = 60)
    void paths_read_back_are_where_they_were(@ForAll("outlines") List<Segment> outline) {
        List<double[]> meant = places(outline, 25);
        List<double[]> drawn = places(read(Path.of(outline, 1).data()), 400);
        for (double[] place : meant) {
            double nearest = drawn.stream()
                    .mapToDouble(other -> Math.hypot(place[0] - other[0], place[1] - other[1]))
                    .min()
                    .orElseThrow();
            assertTrue(
                    nearest < 2, () -> nearest + " from " + Path.of(outline, 1).data());
        }
    }

    /** Places along an outline, so many on each of its segments; of 400 none is farther than half a unit from the next. */
    private static List<double[]> places(List<Segment> outline, int many) {
        List<double[]> places = new ArrayList<>();
        double x = 0;
        double y = 0;
        for (Segment segment : outline) {
            if (segment instanceof Segment.Start start) {
                x = start.x();
                y = start.y();
                places.add(new double[] {x, y});
            } else {
                Segment.Curve curve = segment instanceof Segment.To to
                        ? new Segment.Curve(x, y, to.x(), to.y(), to.x(), to.y())
                        : (Segment.Curve) segment;
                for (int at = 1; at <= many; at++) {
                    double t = at / (double) many;
                    double u = 1 - t;
                    places.add(new double[] {
                        u * u * u * x + 3 * u * u * t * curve.x1() + 3 * u * t * t * curve.x2() + t * t * t * curve.x(),
                        u * u * u * y + 3 * u * u * t * curve.y1() + 3 * u * t * t * curve.y2() + t * t * t * curve.y()
                    });
                }
                x = curve.x();
                y = curve.y();
            }
        }
        return places;
    }

    private static List<Segment> read(String path) {
        List<Segment> outline = new ArrayList<>();
        Matcher command = Pattern.compile("([Mmlc])([^Mmlc]*)").matcher(path);
        double x = 0;
        double y = 0;
        while (command.find()) {
            List<Double> numbers = Pattern.compile("-?\\d+")
                    .matcher(command.group(2))
                    .results()
                    .map(number -> Double.valueOf(number.group()))
                    .toList();
            int step = command.group(1).equals("c") ? 6 : 2;
            assertEquals(0, numbers.size() % step, path);
            for (int at = 0; at < numbers.size(); at += step) {
                if (command.group(1).equals("c")) {
                    outline.add(new Segment.Curve(
                            x + numbers.get(at),
                            y + numbers.get(at + 1),
                            x + numbers.get(at + 2),
                            y + numbers.get(at + 3),
                            x + numbers.get(at + 4),
                            y + numbers.get(at + 5)));
                } else if (command.group(1).equals("l")) {
                    outline.add(new Segment.To(x + numbers.get(at), y + numbers.get(at + 1)));
                }
                boolean whole = command.group(1).equals("M");
                x = (whole ? 0 : x) + numbers.get(at + step - 2);
                y = (whole ? 0 : y) + numbers.get(at + step - 1);
                if (whole || command.group(1).equals("m")) {
                    outline.add(new Segment.Start(x, y));
                }
            }
        }
        return outline;
    }
}
