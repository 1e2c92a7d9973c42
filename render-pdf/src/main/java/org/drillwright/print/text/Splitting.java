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
        if (!piece.isEmpty() && Chunks.width(faces, Styled.joined(longer)) > measure) {
            int end = end(character);
            List<Styled> full = Styled.joined(piece.subList(0, end));
            double width = Chunks.width(faces, full);
            pieces.add(new Chunk(full, width, width, 0, false, Chunk.Manner.PLAIN));
            longer = new ArrayList<>(longer.subList(end, longer.size()));
        }
        piece = longer;
    }

    /** How much of the piece stays before a character: no line begins with a point, so it takes the letter before it along. */
    private int end(Styled next) {
        int end = piece.size();
        if (isLetter(next)) {
            return end;
        }
        do {
            end--;
        } while (end > 0 && !isLetter(piece.get(end)));
        return end > 0 ? end : piece.size();
    }

    private static boolean isLetter(Styled character) {
        return Character.isLetterOrDigit(character.text().codePointAt(0));
    }

    /** The last piece goes on as the whole word did. */
    private void finish(Chunk whole) {
        List<Styled> last = Styled.joined(piece);
        double width = Chunks.width(faces, last);
        double behind = whole.onward() - whole.width();
        pieces.add(new Chunk(last, width, width + behind, whole.hyphen(), whole.spaced(), whole.manner()));
    }
}
