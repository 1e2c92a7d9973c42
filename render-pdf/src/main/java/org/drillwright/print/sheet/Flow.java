package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;

/** Fills pages with pieces, one under the other; a table that doesn't end on a page goes on with its head on the next. */
final class Flow {

    private final Paper paper;
    private final Foot foot;
    private final List<Frame> pages = new ArrayList<>();
    private List<Mark> marks = new ArrayList<>();
    private List<Node> nodes = new ArrayList<>();
    private double y;

    /** What stands at the foot of each page. */
    interface Foot {
        /** Its top at 0. */
        Piece of(int page);
    }

    Flow(Paper paper, Foot foot) {
        this.paper = paper;
        this.foot = foot;
        this.y = paper.margin();
    }

    double width() {
        return paper.inner();
    }

    private double room() {
        return paper.bottom() - foot.of(99).height() - y;
    }

    Flow add(Piece piece) {
        return together(List.of(piece));
    }

    /** Pieces that stay on one page, if one page holds them. */
    Flow together(List<Piece> pieces) {
        double height = pieces.stream().mapToDouble(Piece::height).sum();
        if (height > room() && !nodes.isEmpty()) {
            turn();
        }
        for (Piece piece : pieces) {
            if (piece.height() > room() && !nodes.isEmpty()) {
                turn();
            }
            nodes.addAll(put(piece));
        }
        return this;
    }

    /** A table; a caption stays with its first row. */
    Flow table(List<Piece> caption, Piece head, List<Piece> rows) {
        double first = rows.isEmpty() ? 0 : rows.get(0).height();
        double begun = caption.stream().mapToDouble(Piece::height).sum() + head.height() + first;
        if (begun > room() && !nodes.isEmpty()) {
            turn();
        }
        caption.forEach(piece -> nodes.addAll(put(piece)));
        List<Node> table = new ArrayList<>(put(head));
        for (Piece row : rows) {
            if (row.height() > room()) {
                nodes.add(new Node.Group(Role.TABLE, table));
                turn();
                table = new ArrayList<>(put(head));
            }
            table.addAll(put(row));
        }
        nodes.add(new Node.Group(Role.TABLE, table));
        return this;
    }

    private List<Node> put(Piece piece) {
        marks.addAll(piece.marksAt(paper.margin(), y));
        List<Node> put = piece.nodesAt(paper.margin(), y);
        y += piece.height();
        return put;
    }

    private void turn() {
        Piece end = foot.of(pages.size() + 1);
        double top = paper.bottom() - end.height();
        marks.addAll(end.marksAt(paper.margin(), top));
        nodes.addAll(end.nodesAt(paper.margin(), top));
        pages.add(new Frame(
                paper.width(), paper.height(), paper.margin(), marks, List.of(new Node.Group(Role.CARD, nodes))));
        marks = new ArrayList<>();
        nodes = new ArrayList<>();
        y = paper.margin();
    }

    List<Frame> pages() {
        if (!nodes.isEmpty() || pages.isEmpty()) {
            turn();
        }
        return List.copyOf(pages);
    }
}
