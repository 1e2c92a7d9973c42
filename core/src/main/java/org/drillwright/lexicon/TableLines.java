package org.drillwright.lexicon;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** The lines of a table of words, constructions or frames. */
public final class TableLines {

    private static final Pattern REMARK = Pattern.compile("(^|\\s)#.*");

    private TableLines() {}

    /** The words of a line, parted by blanks; without a pattern, as all tables are read at each start. */
    public static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        int begin = -1;
        for (int at = 0; at <= line.length(); at++) {
            boolean blank = at == line.length() || line.charAt(at) <= ' ';
            if (blank && begin >= 0) {
                words.add(line.substring(begin, at));
                begin = -1;
            } else if (!blank && begin < 0) {
                begin = at;
            }
        }
        return words;
    }

    /**
     * What the lines say, in their order: without remarks, and without lines that hold nothing else.
     *
     * @throws IllegalArgumentException if a line says what one before it says, with the line
     */
    public static List<String> of(List<String> lines) {
        Set<String> seen = new HashSet<>();
        return lines.stream()
                .map(line -> line.indexOf('#') < 0
                        ? line.strip()
                        : REMARK.matcher(line).replaceFirst("").strip())
                .filter(line -> !line.isEmpty())
                .peek(line -> {
                    if (!seen.add(line)) {
                        throw new IllegalArgumentException("stands twice: " + line);
                    }
                })
                .toList();
    }
}
