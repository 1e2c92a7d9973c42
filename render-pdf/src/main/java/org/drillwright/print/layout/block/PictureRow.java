package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;

/** A count behind its card: its number, what its picture shows, the picture. */
public final class PictureRow {

    private static final double PAD = 0.3;

    private PictureRow() {}

    /** @param width of the picture, in points; 0 for none */
    public static Slab of(String numeral, Picture picture, double width, Press press) {
        Grid grid = press.grid();
        double pad = PAD * press.scale().small().leading();
        double beside = width == 0 ? 0 : width + 0.7 * press.scale().small().size();
        Setting words = press.running(
                press.words(Face.REGULAR, width == 0 ? picture.alternative() : picture.gist()),
                press.scale().small(),
                grid.axis(),
                pad,
                grid.besideNumbers() - beside);
        Optional<Node.Figure> figure =
                width == 0 ? Optional.empty() : Optional.of(picture.draw(grid.right() - width, pad, width));
        double capitals = press.faces().of(Face.BOLD).capHeight();
        double baseline = Setting.baseline(press.faces(), press.scale().small(), pad)
                + capitals * (press.scale().number() - press.scale().small().size());
        List<Node> content = new ArrayList<>();
        content.add(new Node.Words(
                Role.PARAGRAPH,
                List.of(new Mark.Text(grid.left(), baseline, press.scale().number(), Face.BOLD, numeral, Ink.BLACK))));
        content.add(new Node.Words(Role.PARAGRAPH, words.lines()));
        figure.ifPresent(content::add);
        double height = Math.max(
                Math.max(pad + words.height(), baseline),
                figure.map(drawn -> drawn.box().bottom()).orElse(0.0));
        return new Slab(height + pad, List.of(), content, words.broken());
    }
}
