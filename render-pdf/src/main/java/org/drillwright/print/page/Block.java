package org.drillwright.print.page;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;

/**
 * A piece of a page, its top at 0 and its left edge at 0.
 *
 * @param height in points
 * @param marks behind what is read
 */
public record Block(double height, List<Mark> marks, List<Node> nodes) {

    public static final Block NONE = space(0);

    public Block {
        marks = List.copyOf(marks);
        nodes = List.copyOf(nodes);
    }

    public static Block space(double height) {
        return new Block(height, List.of(), List.of());
    }

    public Block moved(double x, double y) {
        return new Block(
                height,
                marks.stream().map(mark -> mark.moved(x, y)).toList(),
                nodes.stream().map(node -> node.moved(x, y)).toList());
    }

    /** Taller by so much at its end. */
    public Block padded(double more) {
        return new Block(height + more, marks, nodes);
    }

    /** One under the other. */
    public static Block stack(List<Block> blocks) {
        List<Mark> marks = new ArrayList<>();
        List<Node> nodes = new ArrayList<>();
        double y = 0;
        for (Block block : blocks) {
            Block placed = block.moved(0, y);
            marks.addAll(placed.marks());
            nodes.addAll(placed.nodes());
            y += block.height();
        }
        return new Block(y, marks, nodes);
    }
}
