package org.drillwright.print.svg;

import java.util.List;
import java.util.Optional;

/** A part of a drawing that may occur in others, too, there or elsewhere. */
sealed interface SharedPart {

    /** What is drawn first, which tells where all of it is; nothing where that cannot be told. */
    Optional<Path> first();

    /** The same elsewhere, in units. */
    SharedPart moved(long dx, long dy);

    /** The same, begun at the origin: wherever it is drawn, this is what is drawn there. */
    default SharedPart anywhere() {
        return first().map(path -> moved(-path.x(), -path.y())).orElse(this);
    }

    /**
     * An outline.
     *
     * @param look how it is filled and stroked, as the properties of a style
     */
    record Outline(String look, Path path) implements SharedPart {
        @Override
        public Optional<Path> first() {
            return Optional.of(path);
        }

        @Override
        public Outline moved(long dx, long dy) {
            return new Outline(look, path.moved(dx, dy));
        }
    }

    /** Outlines of one look that follow each other, one or more. */
    record Run(String look, List<Path> paths) implements SharedPart {
        public Run {
            paths = List.copyOf(paths);
        }

        @Override
        public Optional<Path> first() {
            return Optional.of(paths.get(0));
        }

        @Override
        public Run moved(long dx, long dy) {
            return new Run(look, paths.stream().map(path -> path.moved(dx, dy)).toList());
        }
    }

    /** What together shows one thing. */
    record Group(List<SharedPart> parts) implements SharedPart {
        public Group {
            parts = List.copyOf(parts);
        }

        @Override
        public Optional<Path> first() {
            boolean told = parts.stream().allMatch(part -> part.first().isPresent());
            return told ? parts.stream().findFirst().flatMap(SharedPart::first) : Optional.empty();
        }

        @Override
        public Group moved(long dx, long dy) {
            return new Group(parts.stream().map(part -> part.moved(dx, dy)).toList());
        }
    }

    /** What is no outline, written out. */
    record Written(String markup) implements SharedPart {
        @Override
        public Optional<Path> first() {
            return Optional.empty();
        }

        @Override
        public Written moved(long dx, long dy) {
            return new Written("<g transform=\"translate(" + dx + " " + dy + ")\">" + markup + "</g>");
        }
    }
}
