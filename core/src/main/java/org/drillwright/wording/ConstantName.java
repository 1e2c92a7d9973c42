package org.drillwright.wording;

import java.util.Locale;

/** The name of a constant as words and files of data write it. */
public final class ConstantName {

    private ConstantName() {}

    /** Such as {@code advance-lunge}. */
    public static String hyphened(Enum<?> constant) {
        return small(constant).replace('_', '-');
    }

    /** Such as {@code solo.only}: the key of words. */
    public static String dotted(Enum<?> constant) {
        return small(constant).replace('_', '.');
    }

    private static String small(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
