package org.drillwright.read;

/** How large a file may be; far above any drill, far below what would hurt the machine. */
public final class ReadingLimits {

    /** Drill files below one folder. */
    public static final int DRILLS = 10_000;

    /** Bytes of one file. */
    public static final int FILE_BYTES = 256 * 1024;

    /** Lists and mappings inside one another. */
    public static final int DEPTH = 12;

    /** Counts of one drill. */
    public static final int STEPS = 200;

    /** Items of any other list. */
    public static final int ITEMS = 2_000;

    /** Characters of a title or a short word. */
    public static final int SHORT_TEXT = 120;

    /** Characters of a turn, a cue or a caution. */
    public static final int LINE_TEXT = 400;

    /** Characters of a longer text. */
    public static final int LONG_TEXT = 2_000;

    /** Hidden characters of one file that are told one by one. */
    public static final int HIDDEN = 20;

    private ReadingLimits() {}
}
