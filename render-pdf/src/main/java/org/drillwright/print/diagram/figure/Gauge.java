package org.drillwright.print.diagram.figure;

/**
 * Sizes of what is drawn, by the width of the picture of two. Tuned by eye at 30 mm on a card and 55 mm on a back, and
 * tried there in one bit and after two copies; wider pictures are seen from farther off, and all grows with them.
 *
 * @param scale points a metre
 * @param line of an outline, in points
 * @param halo white round what lies over something else, in points
 * @param seam white between the parts of a black person, in points
 * @param forte a blade's width at the bell, in points
 * @param foible a blade's width at its end, in points
 * @param fat by how much limbs are thicker than they are, so that they hold as the picture shrinks
 * @param mark half the size of the signs, in points
 * @param hatch the width of the strokes of a hatch, in points
 * @param pitch between strokes of a hatch, square to them, in points
 */
public record Gauge(
        double scale,
        double line,
        double halo,
        double seam,
        double forte,
        double foible,
        double fat,
        double mark,
        double hatch,
        double pitch) {

    /** The thinnest stroke, in points: half a point is what common printers and copiers still hold. */
    public static final double HAIR = 0.5;

    /** Points a metre below which two do not tell anything any more, and only the one attacked is drawn: 20 mm for two. */
    public static final double LEAST_SCALE = 20 * 72 / 25.4 / 4.25;

    /** How much of the piste a picture of two holds, in metres: out of distance, from rear hand to rear hand. */
    public static final double SPAN = 4.25;

    /** The same of one alone, with a pad at the reach of a lunge. */
    public static final double ALONE = SPAN * 20 / 28;

    private static final double CARD = 30 * 72 / 25.4;

    /** The gauge of a picture. */
    public static Gauge of(double width, boolean alone) {
        double scale = width / (alone ? ALONE : SPAN);
        return atScale(scale);
    }

    /** The gauge of the same drawn smaller: where the two take more room than the picture has. */
    public Gauge smaller(double share) {
        return atScale(share * scale);
    }

    /** Whether there is no room for more than what matters most: 24 mm for two, or less. */
    public boolean isSmall() {
        return scale * SPAN < CARD * 24.5 / 30;
    }

    /** Whether two are too small to tell anything. */
    public boolean isTiny() {
        return scale < LEAST_SCALE;
    }

    /** The gauge of what is drawn at so many points a metre. */
    private static Gauge atScale(double scale) {
        double share = scale * SPAN / CARD;
        double pitch = Math.max(1.55, 1.55 * Math.pow(share, 0.8)) * (share < 24.5 / 30 ? 1.3 : 1);
        double line = Math.min(1.6, Math.max(HAIR, 0.52 * Math.pow(share, 0.75)));
        double wide = Math.pow(share, 0.6);
        return new Gauge(
                scale,
                line,
                Math.max(0.5, 0.55 * wide),
                Math.max(0.33, 0.36 * wide),
                Math.max(0.85, 0.89 * wide),
                Math.max(0.54, 0.56 * wide),
                Math.max(0.05, Math.min(0.14, 0.12 - 0.0756 * (share - 1))),
                Math.max(1.75, 1.75 * Math.pow(share, 0.8)),
                Math.max(HAIR, 0.50 * Math.pow(share, 0.5)),
                pitch);
    }
}
