package org.drillwright.print.text;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Parts a word that is wider than its column: behind its own hyphens and slashes and where the author allows it; what
 * is wider still, before the last character that fits, without a hyphen that nobody wrote.
 */
final class Splitting {

    private final Typefaces faces;
    private final double measure;
    private final List<Chunk> pieces = new ArrayList<>();
    private List<Styled> piece = new ArrayList<>();

    private Splitting(Typefaces faces, double measure) {
        this.faces = faces;
        this.measure = measure;
    }

    static List<Chunk> split(Typefaces faces, Chunk chunk, double measure) {
        if (chunk.atEnd() <= measure) {
            return List.of(chunk);
        }
        if (!chunk.pieces().isEmpty()) {
            return chunk.pieces().stream()
                    .flatMap(piece -> split(faces, piece, measure).stream())
                    .toList();
        }
        Splitting splitting = new Splitting(faces, measure);
        chunk.parts().forEach(splitting::append);
        splitting.finish(chunk);
        return splitting.pieces;
    }

    /** Whether a word is broken where neither its own signs nor its author part it. */
    static boolean isBroken(Chunk chunk, double measure) {
        return chunk.atEnd() > measure
                && (chunk.pieces().isEmpty() || chunk.pieces().stream().anyMatch(piece -> isBroken(piece, measure)));
    }

    private void append(Styled part) {
        BreakIterator characters = BreakIterator.getCharacterInstance(Locale.ROOT);
        characters.setText(part.text());
        int start = 0;
        for (int end = characters.next(); end != BreakIterator.DONE; end = characters.next()) {
            add(part.saying(part.text().substring(start, end)));
            start = end;
        }
    }

    private void add(Styled character) {
        List<Styled> longer = new ArrayList<>(piece);
        longer.add(character);
        longer = Styled.joined(longer);
        if (!piece.isEmpty() && Chunks.width(faces, longer) > measure) {
            double width = Chunks.width(faces, piece);
            pieces.add(new Chunk(piece, width, width, 0, false, Chunk.Manner.PLAIN));
            longer = List.of(character);
        }
        piece = longer;
    }

    /** The last piece goes on as the whole word did. */
    private void finish(Chunk whole) {
        double width = Chunks.width(faces, piece);
        double behind = whole.onward() - whole.width();
        pieces.add(new Chunk(piece, width, width + behind, whole.hyphen(), whole.spaced(), whole.manner()));
    }
}
