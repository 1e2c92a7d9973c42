package org.drillwright.print.page;

import java.util.List;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;

/**
 * Words set in a column.
 *
 * @param height of all lines, in points
 * @param broken words that were wider than the column
 */
public record SetText(double height, List<Mark.Text> lines, List<String> broken) {

    public SetText {
        lines = List.copyOf(lines);
        broken = List.copyOf(broken);
    }

    /** What they are to their reader. */
    public Node.Words as(Role role) {
        return new Node.Words(role, lines);
    }

    /** Their first baseline, or another if there are no words. */
    public double baselineOr(double other) {
        return lines.isEmpty() ? other : lines.get(0).baseline();
    }

    /** The same higher or lower, so that a baseline is in the middle between its first and its last. */
    public SetText about(double baseline) {
        if (lines.isEmpty()) {
            return this;
        }
        return lowered(baseline
                - (lines.get(0).baseline() + lines.get(lines.size() - 1).baseline()) / 2);
    }

    private SetText lowered(double by) {
        return new SetText(height, lines.stream().map(line -> line.moved(0, by)).toList(), broken);
    }
}
