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
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Segment;
import org.drillwright.print.pdf.Family;

class SymbolsTest {

    private static final Box BOX = new Box(0, 0, 100, 50);

    private static Node.Figure figure(String said, Mark... marks) {
        return new Node.Figure(said, BOX, List.of(marks));
    }

    private static Mark disc(double x) {
        return Mark.Shape.filled(Outline.circle(x, 20, 9), Ink.BLACK);
    }

    @Example
    void equalDrawingsAreWrittenOnceHoweverTheyAreSpoken() {
        Symbols symbols = new Symbols(Family.dejaVu());
        String one = symbols.picture(figure("One <thing>.", disc(10)), "picture");
        String same = symbols.picture(figure("Another.", new Mark.Named("disc", List.of(disc(10)))), "picture");
        String other = symbols.picture(figure("One <thing>.", disc(30)), "picture");
        assertEquals(called(one), called(same));
        assertNotEquals(called(one), called(other));
        Drawn drawn = Drawn.read(symbols.drawings());
        assertEquals(2, drawn.elements("symbol").size());
        assertEquals(2, drawn.elements("path").size());
        assertEquals("One <thing>.", Drawn.read(one).elements("svg").get(0).getAttribute("aria-label"));
        assertEquals("img", Drawn.read(one).elements("svg").get(0).getAttribute("role"));
    }

    private static String called(String picture) {
        return Drawn.read(picture).elements("use").get(0).getAttribute("href");
    }

    @Example
    void linesWordsAndGreysAreDrawnToo() {
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
        assertEquals("#000", drawn.elements("path").get(0).getAttribute("stroke"));
        assertEquals("none", drawn.elements("path").get(1).getAttribute("fill"));
        assertEquals("rgb(128,128,128)", drawn.elements("path").get(1).getAttribute("stroke"));
        assertEquals("#fff", drawn.elements("path").get(2).getAttribute("fill"));
        assertEquals("1 < 2", drawn.elements("text").get(0).getTextContent().strip());
    }

    @Provide
    Arbitrary<List<Segment>> outlines() {
        Arbitrary<Double> place = Arbitraries.doubles().between(-200, 200).ofScale(3);
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

    /** Read by the grammar of SVG 1.1, 8.3: every point is where it was, to half a unit, however many came before. */
    @Property(tries = 200)
    void pathsReadBackAreWhereTheyWere(@ForAll("outlines") List<Segment> outline) {
        List<Double> meant = new ArrayList<>();
        for (Segment segment : outline) {
            if (segment instanceof Segment.Start start) {
                meant.addAll(List.of(start.x(), start.y()));
            } else if (segment instanceof Segment.To to) {
                meant.addAll(List.of(to.x(), to.y()));
            } else if (segment instanceof Segment.Curve curve) {
                meant.addAll(List.of(curve.x1(), curve.y1(), curve.x2(), curve.y2(), curve.x(), curve.y()));
            }
        }
        List<Double> read = points(Path.of(outline, 30));
        assertEquals(meant.size(), read.size());
        for (int at = 0; at < meant.size(); at++) {
            assertEquals(meant.get(at) * 30, read.get(at), 0.5000001);
        }
    }

    private static List<Double> points(String path) {
        assertTrue(path.endsWith("z"), path);
        List<Double> points = new ArrayList<>();
        Matcher command = Pattern.compile("([Mlc])([^Mlcz]*)").matcher(path);
        double x = 0;
        double y = 0;
        while (command.find()) {
            List<Double> numbers = Pattern.compile("-?\\d+")
                    .matcher(command.group(2))
                    .results()
                    .map(number -> Double.valueOf(number.group()))
                    .toList();
            int pairs = command.group(1).equals("c") ? 3 : 1;
            boolean whole = command.group(1).equals("M");
            for (int at = 0; at < numbers.size(); at += 2) {
                double nextX = (whole ? 0 : x) + numbers.get(at);
                double nextY = (whole ? 0 : y) + numbers.get(at + 1);
                points.addAll(List.of(nextX, nextY));
                if (at / 2 % pairs == pairs - 1) {
                    x = nextX;
                    y = nextY;
                }
            }
        }
        return points;
    }
}
