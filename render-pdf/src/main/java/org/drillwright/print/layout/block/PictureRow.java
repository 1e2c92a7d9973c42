package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.SetText;

/**
 * A count behind its card: its number, what its picture shows, the picture; of a count that holds several strokes, each of
 * them side by side under the words.
 */
public final class PictureRow {

    private static final double PAD = 0.3;

    /** Of the size of the words, between a picture and what is beside it. */
    private static final double GAP = 0.7;

    /** Words beside a picture have at least so much room, in sizes of their type: some twenty letters. */
    private static final double WORDS = 10;

    private final Press press;
    private final Grid grid;
    private final double pad;
    private final double gap;

    private PictureRow(Press press) {
        this.press = press;
        this.grid = press.grid();
        this.pad = PAD * press.small().leading();
        this.gap = GAP * press.small().size();
    }

    /** @param width of the picture at most, in points; 0 for none */
    public static Box of(String numeral, Picture picture, double width, Press press) {
        PictureRow row = new PictureRow(press);
        if (width == 0) {
            return row.box(numeral, row.words(picture.alternative(), row.grid.besideNumbers()), List.of());
        }
        if (picture.strokes().isEmpty()) {
            double least = WORDS * press.small().size();
            double drawn = Math.min(width, row.grid.besideNumbers() - row.gap - least);
            SetText words = row.words(picture.gist(), row.grid.besideNumbers() - drawn - row.gap);
            return row.box(numeral, words, row.sideBySide(List.of(picture), drawn, row.pad));
        }
        SetText words = row.words(picture.gist(), row.grid.besideNumbers());
        return row.box(numeral, words, row.sideBySide(picture.strokes(), width, 2 * row.pad + words.height()));
    }

    private SetText words(String said, double width) {
        return press.small().set(press.words(Face.REGULAR, said), grid.axis(), pad, width);
    }

    /** As wide as they may be and as fit, on one floor. */
    private List<Node.Figure> sideBySide(List<Picture> pictures, double width, double top) {
        int many = pictures.size();
        double each = Math.min(width, (grid.besideNumbers() - (many - 1) * gap) / many);
        double floor = pictures.stream()
                .mapToDouble(picture -> picture.floor(each))
                .max()
                .orElse(0);
        List<Node.Figure> figures = new ArrayList<>();
        for (int at = 0; at < many; at++) {
            Picture picture = pictures.get(at);
            double x = grid.right() - (many - at) * each - (many - at - 1) * gap;
            figures.add(picture.draw(x, top + floor - picture.floor(each), each));
        }
        return figures;
    }

    private Box box(String numeral, SetText words, List<Node.Figure> figures) {
        double capitals = press.faces().of(Face.BOLD).capHeight();
        double baseline = press.small().baseline(pad)
                + capitals * (press.scale().number() - press.small().size());
        List<Node> content = new ArrayList<>();
        content.add(new Node.Words(
                Role.PARAGRAPH,
                List.of(new Mark.Text(grid.left(), baseline, press.scale().number(), Face.BOLD, numeral, Ink.BLACK))));
        content.add(words.as(Role.PARAGRAPH));
        content.addAll(figures);
        double drawn = figures.stream()
                .map(Node.Figure::box)
                .mapToDouble(Rectangle::bottom)
                .max()
                .orElse(0);
        double height = Math.max(Math.max(pad + words.height(), baseline), drawn);
        return Box.of(height + pad, List.of(), content).breaking(words);
    }
}
