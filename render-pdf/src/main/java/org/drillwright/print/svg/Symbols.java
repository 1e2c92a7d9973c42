package org.drillwright.print.svg;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.text.Typefaces;

/**
 * Pictures for a page that shows many, some of them more than once: each drawing stands in the page one time, and where
 * it is seen it is called by name. What drawings share, down to single outlines, stands there once, too.
 */
public final class Symbols {

    /** To a point: of a picture of 80 points that is as wide as a phone, less than a CSS pixel. */
    private static final double UNITS = 6;

    /** An outline that takes no more letters than to call it by name is written wherever it is drawn. */
    private static final int SHORT = 50;

    private final Pieces pieces;
    private final Map<String, List<SharedPart>> drawings = new LinkedHashMap<>();

    /** By all outlines of a drawing, however they are grouped. */
    private final Map<List<SharedPart>, String> names = new HashMap<>();

    /** How often each group, each run and each outline is drawn. */
    private final Map<Object, Integer> times = new HashMap<>();

    private final Map<String, String> looks = new LinkedHashMap<>();

    /** @param faces that the pictures' words were measured with */
    public Symbols(Typefaces faces) {
        this.pieces = new Pieces(UNITS, faces);
    }

    /** The picture where it is seen; it fills the width that the page's styles give to its class. */
    public String picture(Node.Figure figure, String style) {
        Markup markup = seen(figure.box(), style).with("role", "img").with("aria-label", figure.alternative());
        return called(markup, figure.marks());
    }

    /** A sign that says nothing that the words beside it do not say. */
    public String sign(Rectangle box, List<Mark> marks, String style) {
        return called(seen(box, style).with("aria-hidden", "true"), marks);
    }

    private static Markup seen(Rectangle box, String style) {
        String view = units(box.x()) + " " + units(box.y()) + " " + units(box.width()) + " " + units(box.height());
        return new Markup().tag("svg").with("viewBox", view).with("class", style);
    }

    private static long units(double points) {
        return Math.round(points * UNITS);
    }

    private String called(Markup markup, List<Mark> marks) {
        List<SharedPart> drawing = pieces.of(marks);
        String name = names.computeIfAbsent(Pieces.outlines(drawing), fresh -> {
            String next = "drawing-" + (names.size() + 1);
            drawings.put(next, drawing);
            drawing.forEach(this::count);
            return next;
        });
        return markup.inside() + "<use href=\"#" + name + "\"/></svg>";
    }

    private void count(SharedPart piece) {
        if (piece instanceof SharedPart.Group group) {
            if (times.merge(group.anywhere(), 1, Integer::sum) == 1) {
                group.parts().forEach(this::count);
            }
        } else if (piece instanceof SharedPart.Run run) {
            looks.computeIfAbsent(run.look(), look -> "k" + looks.size());
            boolean single = run.paths().size() == 1;
            if (single || times.merge(paths(run), 1, Integer::sum) == 1) {
                run.paths().forEach(path -> times.merge(path.steps(), 1, Integer::sum));
            }
        }
    }

    /** However they look. */
    private static List<Path> paths(SharedPart.Run run) {
        return ((SharedPart.Run) run.anywhere()).paths();
    }

    /** The rules by which outlines are filled and stroked, for the style of the page. */
    public String rules() {
        StringBuilder rules = new StringBuilder();
        looks.forEach((look, name) ->
                rules.append('.').append(name).append('{').append(look).append("}\n"));
        return rules.toString();
    }

    /** All drawings, to stand once anywhere in the page. */
    public String drawings() {
        return new Writing().all();
    }

    /** What is drawn more than once, and where it was drawn first. */
    private record Shared(String name, Optional<Path> first) {

        /** From there to another place. */
        String to(Optional<Path> place) {
            return first.flatMap(old -> place.map(now -> axis("x", now.x() - old.x()) + axis("y", now.y() - old.y())))
                    .orElse("");
        }

        private static String axis(String name, long units) {
            return units == 0 ? "" : " " + name + "=\"" + units + '"';
        }
    }

    /** The drawings being written. */
    private final class Writing {

        private final Map<Object, Shared> shared = new HashMap<>();
        private final StringBuilder definitions = new StringBuilder();

        String all() {
            StringBuilder symbols = new StringBuilder();
            drawings.forEach((name, drawing) -> symbols.append("<symbol id=\"")
                    .append(name)
                    .append("\" overflow=\"visible\">")
                    .append(drawn(drawing))
                    .append("</symbol>\n"));
            return "<svg class=\"drawings\" aria-hidden=\"true\" width=\"0\" height=\"0\"><defs>\n" + definitions
                    + "</defs>\n" + symbols + "</svg>";
        }

        private String drawn(List<SharedPart> drawing) {
            StringBuilder text = new StringBuilder();
            drawing.forEach(piece -> text.append(drawn(piece)));
            return text.toString();
        }

        private String drawn(SharedPart piece) {
            if (piece instanceof SharedPart.Group group) {
                return group(group);
            } else if (piece instanceof SharedPart.Run run) {
                return run(run);
            }
            return piece instanceof SharedPart.Written written ? written.markup() : "";
        }

        private String group(SharedPart.Group group) {
            SharedPart anywhere = group.anywhere();
            return isShared(anywhere)
                    ? called(anywhere, group.first(), "", "<g", () -> ">" + drawn(group.parts()) + "</g>")
                    : drawn(group.parts());
        }

        private String run(SharedPart.Run run) {
            String look = " class=\"" + looks.get(run.look()) + '"';
            if (run.paths().size() == 1) {
                return outline(run.paths().get(0), look);
            }
            List<Path> paths = paths(run);
            return isShared(paths)
                    ? called(paths, run.first(), look, "<g", () -> ">" + outlines(run.paths()) + "</g>")
                    : "<g" + look + ">" + outlines(run.paths()) + "</g>";
        }

        private String outlines(List<Path> paths) {
            return paths.stream().map(path -> outline(path, "")).collect(Collectors.joining());
        }

        private String outline(Path path, String look) {
            String data = " d=\"" + path.data() + "\"/>";
            return path.steps().length() > SHORT && isShared(path.steps())
                    ? called(path.steps(), Optional.of(path), look, "<path", () -> data)
                    : "<path" + look + data;
        }

        private boolean isShared(Object part) {
            return times.getOrDefault(part, 0) > 1;
        }

        /** By its name, which it gets where it is first drawn. */
        private String called(Object part, Optional<Path> place, String look, String tag, Supplier<String> rest) {
            Shared known = shared.get(part);
            if (known == null) {
                String inside = rest.get();
                known = new Shared("o" + Integer.toString(shared.size(), Character.MAX_RADIX), place);
                shared.put(part, known);
                definitions.append(tag + " id=\"" + known.name() + '"' + inside + '\n');
            }
            return "<use href=\"#" + known.name() + '"' + known.to(place) + look + "/>";
        }
    }
}
