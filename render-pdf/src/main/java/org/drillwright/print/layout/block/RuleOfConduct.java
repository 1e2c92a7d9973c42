package org.drillwright.print.layout.block;

import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.SafetyText;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Type;

/** A rule of the safety card. */
public final class RuleOfConduct {

    /** Where key words end and sentences begin, as a share of what lies between the margins: 31 of 95 mm on A6. */
    private static final double KEYS = 31 / 95.0;

    /** Sentences are between turns and small type, as a share of the turns' size: 10 on 12.2 points on A6. */
    private static final double SENTENCE = 10 / 11.0;

    private static final double LEADING = 12.2 / 10;

    private static final double PAD = 0.25;

    private static final double RUN_IN_PAD = 0.12;

    /** How a rule is set, the most open way first. */
    public enum Manner {
        /** Key word and sentence in a column each. */
        COLUMNS,
        /** The same in small type. */
        SMALL_COLUMNS,
        /** The key word runs in. */
        RUN_IN,
        /** The same in the smallest type. */
        SMALLEST_RUN_IN
    }

    private final Press press;
    private final Manner manner;

    public RuleOfConduct(Press press, Manner manner) {
        this.press = press;
        this.manner = manner;
    }

    /** @param behind whether it stands behind another card, where the hole is at the right */
    public static Box title(SafetyText text, Press press, boolean behind) {
        Grid grid = press.grid();
        double x = behind ? grid.left() : grid.axis();
        double width = grid.besideNumbers();
        SetText title = press.title().balanced(text.title(), x, 0, width);
        SetText how = press.small().set(text.how(), x, 0, width);
        Box both = Box.stack(Box.of(Role.TITLE, title), Box.of(Role.PARAGRAPH, how));
        double hole = Math.max(0, grid.hole().height() - both.height());
        return Box.stack(both, Box.space(hole), press.space(0.35));
    }

    private boolean isRunIn() {
        return manner == Manner.RUN_IN || manner == Manner.SMALLEST_RUN_IN;
    }

    public Box set(SafetyText.Rule rule) {
        Type small = press.small();
        Grid grid = press.grid();
        double pad = (isRunIn() ? RUN_IN_PAD : PAD) * small.leading();
        if (isRunIn()) {
            Type type = manner == Manner.RUN_IN ? small : press.foot();
            SetText whole = type.set(rule.whole(), grid.left(), pad, grid.inner());
            return Box.of(Role.PARAGRAPH, whole).padded(2 * pad);
        }
        boolean open = manner == Manner.COLUMNS;
        double size = SENTENCE * press.turns().size();
        Type sentence = open ? new Type(press.faces(), size, LEADING * size) : small;
        Type key = open ? press.turns() : small;
        double x = grid.left() + KEYS * grid.inner();
        SetText keys = key.balanced(rule.key(), grid.left(), pad, x - grid.left() - small.size() / 2);
        double level = key.baseline(0) - sentence.baseline(0);
        SetText said = sentence.set(rule.said(), x, pad + level, grid.right() - x);
        return Box.of(
                        Math.max(keys.height(), level + said.height()) + 2 * pad,
                        keys.as(Role.PARAGRAPH),
                        said.as(Role.PARAGRAPH))
                .breaking(keys, said);
    }
}
