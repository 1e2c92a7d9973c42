package org.drillwright.print.sheet;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Setting;

/** What stands at the foot of a sheet's pages. */
public final class Feet {

    private Feet() {}

    /** At the foot of whatever hangs, so that it can be named when the class is recorded; nothing without a mark. */
    public static String mark(String mark) {
        return mark.isEmpty() ? "" : "Plan " + mark;
    }

    /** Parts that are blank are left out. */
    public static String words(String... parts) {
        return Stream.of(parts).filter(part -> !part.isBlank()).collect(Collectors.joining(" \u00B7 "));
    }

    static Flow.Foot of(Type type, Paper paper, String... parts) {
        String words = words(parts);
        return page -> {
            double pad = 0.6 * type.size();
            Setting set = type.set(Face.REGULAR, words + " · Page " + page, 0, pad, paper.inner());
            return new Piece(set.height() + pad, List.of(), List.of(new Node.Words(Role.PARAGRAPH, set.lines())), true);
        };
    }
}
