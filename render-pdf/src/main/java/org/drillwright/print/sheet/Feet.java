package org.drillwright.print.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Setting;

/** What stands at the foot of a sheet's pages. */
final class Feet {

    private Feet() {}

    /** Parts that are blank are left out. */
    static Flow.Foot of(Type type, Paper paper, String... parts) {
        String words = Stream.of(parts)
                .filter(part -> !part.isBlank())
                .reduce((one, other) -> one + " · " + other)
                .orElse("");
        return page -> {
            double pad = 0.6 * type.size();
            Setting set = type.set(Face.REGULAR, words + " · Page " + page, 0, pad, paper.inner());
            return new Piece(set.height() + pad, List.of(), List.of(new Node.Words(Role.PARAGRAPH, set.lines())), true);
        };
    }
}
