package org.drillwright.print.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Role;

/** Fills pages with boxes, one under the other; a table that does not end on a page goes on with its head on the next. */
public final class Flow {

    /** Makes a page of what stands on it. */
    public interface PageMaker {
        Frame page(int number, Box body);
    }

    private final int first;
    private final IntToDoubleFunction room;
    private final PageMaker maker;
    private final List<Frame> pages = new ArrayList<>();
    private final List<Box> body = new ArrayList<>();
    private double filled;

    /**
     * An empty flow.
     *
     * @param first the number of its first page in the document, from 1
     * @param room of the page of a number, in points
     */
    public Flow(int first, IntToDoubleFunction room, PageMaker maker) {
        this.first = first;
        this.room = room;
        this.maker = maker;
    }

    /**
     * An empty flow on sheets.
     *
     * @param foot what stands at the foot of the page of a number, from 1
     */
    public Flow(Sheet sheet, int first, IntFunction<Box> foot) {
        this(first, number -> sheet.room(foot.apply(number)), (number, body) -> sheet.page(body, foot.apply(number)));
    }

    /** The number of the page that is being filled. */
    private int number() {
        return first + pages.size();
    }

    /** What is left of the page, in points. */
    public double room() {
        return room.applyAsDouble(number()) - filled;
    }

    /** On this page, or on the next if it holds it not. */
    public Flow add(Box box) {
        return makeRoom(box.height()).put(box);
    }

    /** On this page, whether or not it holds it. */
    public Flow put(Box box) {
        body.add(box);
        filled += box.height();
        return this;
    }

    /** All on one page, if a page holds them. */
    public Flow together(List<Box> boxes) {
        makeRoom(Box.height(boxes));
        boxes.forEach(this::add);
        return this;
    }

    public Flow table(Box head, List<Box> rows) {
        makeRoom(head.height() + (rows.isEmpty() ? 0 : rows.get(0).height()));
        List<Box> table = new ArrayList<>(List.of(head));
        for (Box row : rows) {
            if (Box.height(table) + row.height() > room()) {
                put(Box.stack(table).as(Role.TABLE));
                turn();
                table = new ArrayList<>(List.of(head));
            }
            table.add(row);
        }
        put(Box.stack(table).as(Role.TABLE));
        return this;
    }

    /** Begins a new page, unless this one has so much room. */
    public Flow makeRoom(double height) {
        if (height > room()) {
            turn();
        }
        return this;
    }

    /** Begins a new page, if something stands on this one. */
    public void turn() {
        if (!body.stream().allMatch(Box::isBlank)) {
            end();
        }
    }

    private void end() {
        pages.add(maker.page(number(), Box.stack(body)));
        body.clear();
        filled = 0;
    }

    /** All pages that were filled, at least one. */
    public List<Frame> pages() {
        turn();
        if (pages.isEmpty()) {
            end();
        }
        return List.copyOf(pages);
    }
}
