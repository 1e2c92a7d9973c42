package org.drillwright.print.layout.block;

import java.util.List;
import java.util.stream.Stream;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.TypeSize;
import org.drillwright.print.layout.words.SafetyText;

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
    public static Slab title(SafetyText text, Press press, boolean behind) {
        Grid grid = press.grid();
        double x = behind ? grid.left() : grid.axis();
        double width = grid.besideNumbers();
        SetText title = press.balanced(text.title(), press.scale().title(), x, 0, width);
        SetText how = press.running(text.how(), press.scale().small(), x, 0, width);
        Slab both = Slab.stack(List.of(Press.slab(Role.TITLE, title), Press.slab(Role.PARAGRAPH, how)));
        double hole = Math.max(0, grid.hole().height() - both.height());
        return Slab.stack(List.of(both, Slab.space(hole), press.space(0.35)));
    }

    private boolean isRunIn() {
        return manner == Manner.RUN_IN || manner == Manner.SMALLEST_RUN_IN;
    }

    public Slab set(SafetyText.Rule rule) {
        TypeSize small = press.scale().small();
        Grid grid = press.grid();
        double pad = (isRunIn() ? RUN_IN_PAD : PAD) * small.leading();
        if (isRunIn()) {
            TypeSize type = manner == Manner.RUN_IN ? small : press.scale().foot();
            SetText whole = press.running(rule.whole(), type, grid.left(), pad, grid.inner());
            return new Slab(
                    whole.height() + 2 * pad,
                    List.of(),
                    List.of(new Node.Words(Role.PARAGRAPH, whole.lines())),
                    whole.broken());
        }
        boolean open = manner == Manner.COLUMNS;
        double size = SENTENCE * press.scale().turns().size();
        TypeSize sentence = open ? new TypeSize(size, LEADING * size) : small;
        TypeSize key = open ? press.scale().turns() : small;
        double x = grid.left() + KEYS * grid.inner();
        SetText keys = press.balanced(rule.key(), key, grid.left(), pad, x - grid.left() - small.size() / 2);
        double level = SetText.baseline(press.faces(), key, 0) - SetText.baseline(press.faces(), sentence, 0);
        SetText said = press.running(rule.said(), sentence, x, pad + level, grid.right() - x);
        return new Slab(
                Math.max(keys.height(), level + said.height()) + 2 * pad,
                List.of(),
                List.of(new Node.Words(Role.PARAGRAPH, keys.lines()), new Node.Words(Role.PARAGRAPH, said.lines())),
                Stream.of(keys, said).flatMap(set -> set.broken().stream()).toList());
    }
}
