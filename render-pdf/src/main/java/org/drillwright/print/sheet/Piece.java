package org.drillwright.print.sheet;

import java.util.List;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;

/**
 * A piece of a page, its top at 0.
 *
 * @param height in points
 * @param marks behind the words
 * @param whole whether no word had to be broken
 */
record Piece(double height, List<Mark> marks, List<Node> nodes, boolean whole) {

    Piece {
        marks = List.copyOf(marks);
        nodes = List.copyOf(nodes);
    }

    static Piece space(double height) {
        return new Piece(height, List.of(), List.of(), true);
    }

    List<Mark> marksAt(double x, double y) {
        return marks.stream().map(mark -> mark.moved(x, y)).toList();
    }

    List<Node> nodesAt(double x, double y) {
        return nodes.stream().map(node -> node.moved(x, y)).toList();
    }
}
