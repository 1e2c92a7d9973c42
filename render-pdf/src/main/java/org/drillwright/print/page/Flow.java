package org.drillwright.print.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;

/** Fills pages with blocks, one under the other; a table that does not end on a page goes on with its head on the next. */
public final class Flow {

    private final Sheet sheet;
    private final int first;
    private final IntFunction<Block> foot;
    private final List<Frame> pages = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final List<Node> nodes = new ArrayList<>();
    private double y;

    /**
     * An empty flow.
     *
     * @param first the number of its first page in the document, from 1
     * @param foot what stands at the foot of the page of a number
     */
    public Flow(Sheet sheet, int first, IntFunction<Block> foot) {
        this.sheet = sheet;
        this.first = first;
        this.foot = foot;
        this.y = sheet.margin();
    }

    /** The number of the page that is being filled. */
    private int page() {
        return first + pages.size();
    }

    /** What is left of the page, in points. */
    public double room() {
        return sheet.bottom() - foot.apply(page()).height() - y;
    }

    /** On this page, or on the next if it holds it not. */
    public Flow add(Block block) {
        if (block.height() > room() && !nodes.isEmpty()) {
            turn();
        }
        nodes.addAll(put(block));
        return this;
    }

    /** All on one page, if a page holds them. */
    public Flow together(List<Block> blocks) {
        double height = blocks.stream().mapToDouble(Block::height).sum();
        if (height > room()) {
            turn();
        }
        blocks.forEach(this::add);
        return this;
    }

    public Flow table(Block head, List<Block> rows) {
        double begun = head.height() + (rows.isEmpty() ? 0 : rows.get(0).height());
        if (begun > room() && !nodes.isEmpty()) {
            turn();
        }
        List<Node> table = new ArrayList<>(put(head));
        for (Block row : rows) {
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

    private List<Node> put(Block block) {
        Block placed = block.moved(sheet.margin(), y);
        marks.addAll(placed.marks());
        y += block.height();
        return placed.nodes();
    }

    /** Begins a new page, if something stands on this one. */
    public void turn() {
        if (nodes.isEmpty()) {
            return;
        }
        Block end = foot.apply(page());
        Block placed = end.moved(sheet.margin(), sheet.bottom() - end.height());
        marks.addAll(placed.marks());
        nodes.addAll(placed.nodes());
        pages.add(new Frame(
                sheet.width(), sheet.height(), sheet.margin(), marks, List.of(new Node.Group(Role.CARD, nodes))));
        marks.clear();
        nodes.clear();
        y = sheet.margin();
    }

    /** All pages that were filled. */
    public List<Frame> pages() {
        turn();
        return List.copyOf(pages);
    }
}
