package org.drillwright.print.svg;

import java.util.List;

/** A part of a drawing that may occur in others, too. */
sealed interface Piece {

    /**
     * An outline.
     *
     * @param look how it is filled and stroked, as the properties of a style
     * @param path its data
     */
    record Outline(String look, String path) implements Piece {}

    /** Outlines of one look that follow each other. */
    record Run(String look, List<String> paths) implements Piece {
        public Run {
            paths = List.copyOf(paths);
        }
    }

    /** What together shows one thing. */
    record Group(List<Piece> parts) implements Piece {
        public Group {
            parts = List.copyOf(parts);
        }
    }

    /** What is no outline, written out. */
    record Written(String markup) implements Piece {}
}
