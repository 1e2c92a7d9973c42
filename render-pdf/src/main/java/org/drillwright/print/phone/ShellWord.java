package org.drillwright.print.phone;

import java.util.regex.Pattern;

/** A word of a line that somebody copies into a shell: whatever it holds, it stays one word and is not run. */
final class ShellWord {

    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9_][A-Za-z0-9_.-]*");

    private ShellWord() {}

    /** As it is if it holds nothing that a shell reads, else in the quotes of POSIX shells, in which nothing is read. */
    static String of(String word) {
        return PLAIN.matcher(word).matches() ? word : "'" + word.replace("'", "'\\''") + "'";
    }
}
