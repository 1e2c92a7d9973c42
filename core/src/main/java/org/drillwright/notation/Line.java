package org.drillwright.notation;

import java.util.Optional;

/**
 * A way in, named from the one attacked. Thrusting weapons have four, parted by the hand; at sabre the lines are the
 * targets that a cut goes to.
 */
public enum Line {
    HIGH_INSIDE(Optional.of(Height.HIGH), Optional.of(Width.INSIDE)),
    HIGH_OUTSIDE(Optional.of(Height.HIGH), Optional.of(Width.OUTSIDE)),
    LOW_INSIDE(Optional.of(Height.LOW), Optional.of(Width.INSIDE)),
    LOW_OUTSIDE(Optional.of(Height.LOW), Optional.of(Width.OUTSIDE)),
    HEAD(Optional.empty(), Optional.empty()),
    INSIDE(Optional.empty(), Optional.of(Width.INSIDE)),
    OUTSIDE(Optional.empty(), Optional.of(Width.OUTSIDE)),
    ARM(Optional.empty(), Optional.empty());

    private final Optional<Height> height;
    private final Optional<Width> width;

    Line(Optional<Height> height, Optional<Width> width) {
        this.height = height;
        this.width = width;
    }

    /** Empty at sabre, where lines are targets. */
    public Optional<Height> height() {
        return height;
    }

    public Optional<Width> width() {
        return width;
    }

    /** The line of a thrusting weapon at that height and side. */
    public static Line of(Height height, Width width) {
        if (height == Height.HIGH) {
            return width == Width.INSIDE ? HIGH_INSIDE : HIGH_OUTSIDE;
        }
        return width == Width.INSIDE ? LOW_INSIDE : LOW_OUTSIDE;
    }
}
