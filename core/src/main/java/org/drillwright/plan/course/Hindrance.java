package org.drillwright.plan.course;

/**
 * Why a drill can't be new in a class.
 *
 * @param drill the drill that has to be new first, or the drill itself
 */
record Hindrance(Kind kind, int drill) {

    /** What hinders. */
    public enum Kind {
        /** Something that it needs wasn't new in an earlier class. */
        NEEDS_FIRST,
        /** Under half of those who need it are expected. */
        FEW_EXPECTED,
        /** Under two thirds of those expected have met what it needs. */
        FEW_READY
    }
}
