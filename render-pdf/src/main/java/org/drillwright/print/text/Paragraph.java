package org.drillwright.print.text;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Face;

/**
 * Words measured once, to be broken into lines at any size. Lengths are shares of the type size, so a column of 60
 * points at 12 points is 5 wide.
 */
public final class Paragraph {

    private final Typefaces faces;
    private final List<Styled> stretches;
    private final List<Chunk> chunks;
    private final double widest;

    private Paragraph(Typefaces faces, List<Styled> stretches, List<Chunk> chunks) {
        this.faces = faces;
        this.stretches = List.copyOf(stretches);
        this.chunks = chunks;
        this.widest = chunks.stream().mapToDouble(Chunk::atEnd).max().orElse(0);
    }

    /** Stretches one behind the other, with a space between. */
    public static Paragraph of(Typefaces faces, List<Styled> stretches) {
        return new Paragraph(faces, stretches, Chunks.of(faces, stretches));
    }

    public static Paragraph of(Typefaces faces, Face face, String text) {
        return of(faces, List.of(new Styled(text, face)));
    }

    /** The same with a stretch behind it, and a space between. */
    public Paragraph followedBy(Styled more) {
        List<Styled> all = new ArrayList<>(stretches);
        all.add(more);
        return of(faces, all);
    }

    public boolean isEmpty() {
        return chunks.isEmpty();
    }

    /** The narrowest column that breaks none of its words. */
    public double widestWord() {
        return widest;
    }

    /** The column that holds it on one line. */
    public double onOneLine() {
        double width = 0;
        for (int at = 0; at < chunks.size(); at++) {
            width += at < chunks.size() - 1
                    ? chunks.get(at).onward()
                    : chunks.get(at).width();
        }
        return width;
    }

    /** Running text in a column so wide, line after line; a word that is wider is broken. */
    public List<TextLine> lines(double measure) {
        List<Chunk> set = split(measure);
        return lines(set, Breaking.running(set, measure));
    }

    /** Words that are taken in at a glance, in a column so wide: as few lines as can be, about as long as each other. */
    public List<TextLine> balanced(double measure) {
        List<Chunk> set = split(measure);
        return lines(set, Breaking.balanced(set, measure));
    }

    private List<TextLine> lines(List<Chunk> set, List<Integer> ends) {
        List<TextLine> lines = new ArrayList<>();
        int start = 0;
        for (int end : ends) {
            lines.add(line(set.subList(start, end)));
            start = end;
        }
        return List.copyOf(lines);
    }

    /** The words that a column so wide would break where nothing in them parts them. */
    public List<String> tooWide(double measure) {
        if (widest <= measure) {
            return List.of();
        }
        return chunks.stream()
                .filter(chunk -> Splitting.isBroken(chunk, measure))
                .map(Chunk::text)
                .toList();
    }

    private List<Chunk> split(double measure) {
        if (widest <= measure) {
            return chunks;
        }
        return chunks.stream()
                .flatMap(chunk -> Splitting.split(faces, chunk, measure).stream())
                .toList();
    }

    private TextLine line(List<Chunk> on) {
        List<Styled> parts = new ArrayList<>();
        double width = 0;
        for (int at = 0; at < on.size() - 1; at++) {
            Chunk chunk = on.get(at);
            parts.addAll(chunk.parts());
            if (chunk.spaced()) {
                parts.add(last(parts).saying(" "));
            }
            width += chunk.onward();
        }
        Chunk last = on.get(on.size() - 1);
        parts.addAll(last.parts());
        if (last.hyphen() > 0) {
            parts.add(last(parts).saying(String.valueOf(Wording.SOFT_HYPHEN)));
        }
        return new TextLine(Styled.joined(parts), width + last.atEnd());
    }

    private static Styled last(List<Styled> parts) {
        return parts.get(parts.size() - 1);
    }
}
