package org.drillwright.notation;

import java.util.Optional;

/**
 * A way in, named from the one attacked. Thrusting weapons have four, parted by the hand; at sabre the lines are the
 * targets that a cut goes to.
 */
public enum Line {
    HIGH_INSIDE("high inside line", Optional.of(Height.HIGH), Optional.of(Width.INSIDE)),
    HIGH_OUTSIDE("high outside line", Optional.of(Height.HIGH), Optional.of(Width.OUTSIDE)),
    LOW_INSIDE("low inside line", Optional.of(Height.LOW), Optional.of(Width.INSIDE)),
    LOW_OUTSIDE("low outside line", Optional.of(Height.LOW), Optional.of(Width.OUTSIDE)),
    HEAD("head", Optional.empty(), Optional.empty()),
    INSIDE("inside (cheek or chest)", Optional.empty(), Optional.of(Width.INSIDE)),
    OUTSIDE("outside (cheek or flank)", Optional.empty(), Optional.of(Width.OUTSIDE)),
    ARM("arm", Optional.empty(), Optional.empty());

    private final String words;
    private final Optional<Height> height;
    private final Optional<Width> width;

    Line(String words, Optional<Height> height, Optional<Width> width) {
        this.words = words;
        this.height = height;
        this.width = width;
    }

    /** As it is said in a sentence, behind 'the'. */
    public String words() {
        return words;
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
