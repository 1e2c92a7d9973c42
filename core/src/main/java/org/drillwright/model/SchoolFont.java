package org.drillwright.model;

import java.util.List;
import java.util.Optional;

/**
 * A school's own typefaces, as TrueType files in its folder.
 *
 * @param cuts what most words are set in; empty for the program's own typeface
 * @param also what letters are set in that it lacks, the first that has them
 */
public record SchoolFont(Optional<Cuts> cuts, List<String> also) {

    public SchoolFont {
        also = List.copyOf(also);
    }

    /**
     * @param regular the file for most words
     * @param bold the file for titles and numerals; the same file where there is no other
     */
    public record Cuts(String regular, String bold) {}
}
