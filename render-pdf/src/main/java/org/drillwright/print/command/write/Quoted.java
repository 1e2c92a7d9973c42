package org.drillwright.print.command.write;

import java.util.regex.Pattern;

/** A text as a YAML value: plain if it can be, else in double quotes. */
final class Quoted {

    private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}]+([ ,'’-]{1,2}[\\p{L}\\p{M}\\p{N}]+)*");

    private Quoted() {}

    static String of(String text) {
        return PLAIN.matcher(text).matches()
                ? text
                : '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
