package org.drillwright.print.layout;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;

/**
 * A piece of a card that is set as one, its top at 0.
 *
 * @param height in points
 * @param broken words that were wider than their column
 */
record Slab(double height, List<Mark> backdrop, List<Node> content, List<String> broken) {

    static final Slab NONE = space(0);

    Slab {
        backdrop = List.copyOf(backdrop);
        content = List.copyOf(content);
        broken = List.copyOf(broken);
    }

    static Slab space(double height) {
        return new Slab(height, List.of(), List.of(), List.of());
    }

    Slab moved(double dy) {
        return new Slab(
                height,
                backdrop.stream().map(mark -> mark.moved(0, dy)).toList(),
                content.stream().map(node -> node.moved(0, dy)).toList(),
                broken);
    }

    /** One under the other. */
    static Slab stack(List<Slab> slabs) {
        List<Mark> backdrop = new ArrayList<>();
        List<Node> content = new ArrayList<>();
        List<String> broken = new ArrayList<>();
        double y = 0;
        for (Slab slab : slabs) {
            Slab there = slab.moved(y);
            backdrop.addAll(there.backdrop());
            content.addAll(there.content());
            broken.addAll(there.broken());
            y += slab.height();
        }
        return new Slab(y, backdrop, content, broken);
    }

    /** The same with marks behind it. */
    Slab on(List<Mark> marks) {
        List<Mark> all = new ArrayList<>(marks);
        all.addAll(backdrop);
        return new Slab(height, all, content, broken);
    }
}
