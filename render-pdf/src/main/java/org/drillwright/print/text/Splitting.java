package org.drillwright.print.text;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Breaks a word that is wider than its column, between whole characters, each piece but the last with a hyphen. */
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
        Splitting splitting = new Splitting(faces, measure);
        chunk.parts().forEach(splitting::append);
        splitting.finish(chunk);
        return splitting.pieces;
    }

    private void append(Styled part) {
        BreakIterator characters = BreakIterator.getCharacterInstance(Locale.ROOT);
        characters.setText(part.text());
        int start = 0;
        for (int end = characters.next(); end != BreakIterator.DONE; end = characters.next()) {
            add(new Styled(part.text().substring(start, end), part.face()));
            start = end;
        }
    }

    private void add(Styled character) {
        List<Styled> longer = new ArrayList<>(piece);
        longer.add(character);
        longer = Styled.joined(longer);
        double hyphen = faces.of(character.face()).advance(Wording.SOFT_HYPHEN);
        if (!piece.isEmpty() && Chunks.width(faces, longer) + hyphen > measure) {
            double width = Chunks.width(faces, piece);
            pieces.add(new Chunk(piece, width, width, hyphen, false, false));
            longer = List.of(character);
        }
        piece = longer;
    }

    /** The last piece goes on as the whole word did; it needs no hyphen, so the piece before it may fit there too. */
    private void finish(Chunk whole) {
        if (!pieces.isEmpty()) {
            List<Styled> longer = new ArrayList<>(pieces.get(pieces.size() - 1).parts());
            longer.addAll(piece);
            if (Chunks.width(faces, Styled.joined(longer)) + whole.hyphen() <= measure) {
                pieces.remove(pieces.size() - 1);
                piece = Styled.joined(longer);
            }
        }
        double width = Chunks.width(faces, piece);
        double behind = whole.onward() - whole.width();
        pieces.add(new Chunk(piece, width, width + behind, whole.hyphen(), whole.spaced(), false));
    }
}
