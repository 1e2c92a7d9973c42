package org.drillwright.table;

import java.util.regex.Pattern;

/**
 * Signs that nobody sees and that come along when cells are copied from web pages: spaces that don't break become plain
 * ones, soft hyphens and signs without width fall away. Joiners stay: some scripts need them inside a word.
 */
public final class Unseen {

    private static final Pattern SPACES = Pattern.compile("[\\u00A0\\u2007\\u202F]");
    private static final Pattern NOTHING = Pattern.compile("[\\u00AD\\u200B\\u2060\\uFEFF]");

    private Unseen() {}

    /** A text without them. */
    public static String without(String text) {
        return NOTHING.matcher(SPACES.matcher(text).replaceAll(" ")).replaceAll("");
    }
}
