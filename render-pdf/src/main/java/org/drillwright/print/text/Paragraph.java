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
    private final List<Chunk> chunks;
    private final double widest;

    /** As it was broken last: columns of a like width mostly break it alike. */
    private volatile Broken last = new Broken(List.of(), List.of());

    /** Where lines end, and the lines. */
    private record Broken(List<Integer> ends, List<TextLine> lines) {}

    private Paragraph(Typefaces faces, List<Chunk> chunks) {
        this.faces = faces;
        this.chunks = chunks;
        this.widest = chunks.stream().mapToDouble(Chunk::atEnd).max().orElse(0);
    }

    /** Stretches one behind the other, with a space between. */
    public static Paragraph of(Typefaces faces, List<Styled> stretches) {
        return new Paragraph(faces, Chunks.of(faces, stretches));
    }

    public static Paragraph of(Typefaces faces, Face face, String text) {
        return of(faces, List.of(new Styled(text, face)));
    }

    public boolean isEmpty() {
        return chunks.isEmpty();
    }

    /** The narrowest column that holds it without breaking a word. */
    public double widest() {
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

    /** The lines in a column so wide; a word that is wider is broken, with a hyphen. */
    public List<TextLine> lines(double measure) {
        if (widest > measure) {
            List<Chunk> set = split(measure);
            return lines(set, TotalFit.ends(set, measure));
        }
        List<Integer> ends = TotalFit.ends(chunks, measure);
        Broken known = last;
        if (!known.ends().equals(ends)) {
            known = new Broken(ends, lines(chunks, ends));
            last = known;
        }
        return known.lines();
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

    /** How many lines a column so wide needs, quickly: rarely less than {@link #lines} makes, to spare a lonely letter. */
    public int lineCount(double measure) {
        int lines = chunks.isEmpty() ? 0 : 1;
        double x = 0;
        for (int at = 0; at < chunks.size(); at++) {
            Chunk chunk = chunks.get(at);
            if (x > 0 && x + chunk.atEnd() > measure) {
                lines++;
                x = 0;
            }
            x += chunk.onward();
        }
        return lines;
    }

    /** The words that a column so wide would break. */
    public List<String> tooWide(double measure) {
        if (widest <= measure) {
            return List.of();
        }
        return chunks.stream()
                .filter(chunk -> chunk.atEnd() > measure)
                .map(Chunk::text)
                .toList();
    }

    private List<Chunk> split(double measure) {
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
                parts.add(new Styled(" ", face(parts)));
            }
            width += chunk.onward();
        }
        Chunk last = on.get(on.size() - 1);
        parts.addAll(last.parts());
        if (last.hyphen() > 0) {
            parts.add(new Styled(String.valueOf(Wording.SOFT_HYPHEN), face(parts)));
        }
        return new TextLine(Styled.joined(parts), width + last.atEnd());
    }

    private static Face face(List<Styled> parts) {
        return parts.get(parts.size() - 1).face();
    }
}
