package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;

/**
 * A piece of a card that is set as one, its top at 0.
 *
 * @param height in points
 * @param pieces what it is made of, each at its own height: put in place only once it is known that they are printed
 * @param broken words that were wider than their column
 */
public record Slab(double height, List<Piece> pieces, List<String> broken) {

    public static final Slab NONE = space(0);

    /** Marks and parts, moved down by so many points. */
    record Piece(double y, List<Mark> marks, List<Node> parts) {
        Piece {
            marks = List.copyOf(marks);
            parts = List.copyOf(parts);
        }

        private Piece moved(double dy) {
            return dy == 0 ? this : new Piece(y + dy, marks, parts);
        }
    }

    public Slab {
        pieces = List.copyOf(pieces);
        broken = List.copyOf(broken);
    }

    public Slab(double height, List<Mark> backdrop, List<Node> content, List<String> broken) {
        this(height, List.of(new Piece(0, backdrop, content)), broken);
    }

    public static Slab space(double height) {
        return new Slab(height, List.of(), List.of());
    }

    public List<Mark> backdrop() {
        List<Mark> backdrop = new ArrayList<>();
        for (Piece piece : pieces) {
            piece.marks().forEach(mark -> backdrop.add(mark.moved(0, piece.y())));
        }
        return backdrop;
    }

    public List<Node> content() {
        List<Node> content = new ArrayList<>();
        for (Piece piece : pieces) {
            piece.parts().forEach(part -> content.add(part.moved(0, piece.y())));
        }
        return content;
    }

    public Slab moved(double dy) {
        return new Slab(height, pieces.stream().map(piece -> piece.moved(dy)).toList(), broken);
    }

    /** The same further to the right. */
    public Slab beside(double dx) {
        return new Slab(
                height,
                backdrop().stream().map(mark -> mark.moved(dx, 0)).toList(),
                content().stream().map(part -> part.moved(dx, 0)).toList(),
                broken);
    }

    /** One under the other. */
    public static Slab stack(List<Slab> slabs) {
        List<Piece> pieces = new ArrayList<>();
        List<String> broken = new ArrayList<>();
        double y = 0;
        for (Slab slab : slabs) {
            for (Piece piece : slab.pieces()) {
                pieces.add(piece.moved(y));
            }
            broken.addAll(slab.broken());
            y += slab.height();
        }
        return new Slab(y, pieces, broken);
    }

    /** The same with marks behind it. */
    Slab on(List<Mark> marks) {
        List<Piece> all = new ArrayList<>();
        all.add(new Piece(0, marks, List.of()));
        all.addAll(pieces);
        return new Slab(height, all, broken);
    }
}
