package org.drillwright.plan.roster;

/**
 * How a class works where not everyone has a partner who knows the drill, and who leads first.
 *
 * @param leftOver what those do who have no partner
 * @param bothNew when two who are new may work together
 * @param eyes posts of such pairs that one pair of eyes can watch, 1 or more; 12 is common practice, no source
 * @param first who of two leads first
 */
public record ClassPractice(LeftOver leftOver, BothNew bothNew, int eyes, First first) {

    public static final ClassPractice USUAL = of(LeftOver.THREES);

    /** The usual ones but for those who have no partner. */
    public static ClassPractice of(LeftOver leftOver) {
        return new ClassPractice(
                leftOver, leftOver == LeftOver.BOTH_NEW ? BothNew.WANTED : BothNew.NEEDED, 12, First.TURNS);
    }

    /** Whether a third may join a pair. */
    public boolean threes() {
        return leftOver != LeftOver.SOLO;
    }

    public ClassPractice with(BothNew choice) {
        return new ClassPractice(leftOver, choice, eyes, first);
    }
}
