package org.drillwright.lexicon;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** The lines of a table of words, constructions or frames. */
public final class TableLines {

    private static final Pattern REMARK = Pattern.compile("(^|\\s)#.*");

    private TableLines() {}

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
