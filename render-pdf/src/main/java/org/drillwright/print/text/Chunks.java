package org.drillwright.print.text;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.drillwright.print.frame.Face;

/** Cuts stretches of text where a line may end, and measures the pieces. */
final class Chunks {

    private final Typefaces faces;
    private final StringBuilder text = new StringBuilder();
    private final List<Face> faceAt = new ArrayList<>();

    private Chunks(Typefaces faces) {
        this.faces = faces;
    }

    static List<Chunk> of(Typefaces faces, List<Styled> stretches) {
        Chunks chunks = new Chunks(faces);
        stretches.forEach(chunks::append);
        return chunks.cut();
    }

    private void append(Styled stretch) {
        String clean = Wording.clean(stretch.text());
        if (clean.isEmpty()) {
            return;
        }
        if (text.length() > 0) {
            // A space belongs to the word before it, as when a line is put together.
            add(" ", faceAt.get(faceAt.size() - 1));
        }
        add(clean, stretch.face());
    }

    private void add(String added, Face face) {
        text.append(added);
        for (int at = 0; at < added.length(); at++) {
            faceAt.add(face);
        }
    }

    private List<Chunk> cut() {
        List<Chunk> chunks = new ArrayList<>();
        // The rules for ends of lines are the same in every locale that this is printed in.
        BreakIterator ends = BreakIterator.getLineInstance(Locale.ROOT);
        ends.setText(text.toString());
        int start = 0;
        for (int end = ends.next(); end != BreakIterator.DONE; end = ends.next()) {
            if (!isBehindElision(end)) {
                chunks.add(chunk(start, end));
                start = end;
            }
        }
        return chunks;
    }

    /** Behind the apostrophe of a word like {@code s’arrêter}, which the rules take for a closing quotation mark. */
    private boolean isBehindElision(int end) {
        return end > 1
                && end < text.length()
                && text.charAt(end - 1) == '’'
                && Character.isLetter(text.codePointBefore(end - 1))
                && Character.isLetter(text.codePointAt(end));
    }

    private Chunk chunk(int start, int end) {
        boolean spaced = text.charAt(end - 1) == ' ';
        int behind = spaced ? end - 1 : end;
        boolean soft = behind > start && text.charAt(behind - 1) == Wording.SOFT_HYPHEN;
        List<Styled> parts = parts(start, behind);
        double width = width(parts);
        Typeface face = faces.of(faceAt.get(end - 1));
        double onward = width + (spaced ? face.advance(' ') : kerning(end, face));
        double hyphen = soft ? face.advance(Wording.SOFT_HYPHEN) : 0;
        return new Chunk(parts, width, onward, hyphen, spaced, spaced && isOneLetter(parts));
    }

    private double kerning(int at, Typeface face) {
        return at < text.length() && faces.of(faceAt.get(at)) == face
                ? face.kerning(text.codePointBefore(at), text.codePointAt(at))
                : 0;
    }

    private List<Styled> parts(int start, int end) {
        List<Styled> parts = new ArrayList<>(1);
        StringBuilder run = new StringBuilder(end - start);
        for (int at = start; at < end; at++) {
            char unit = text.charAt(at);
            if (unit != Wording.SOFT_HYPHEN && unit != Wording.BREAK_HERE) {
                run.append(unit);
            }
            if (run.length() > 0 && (at == end - 1 || faceAt.get(at + 1) != faceAt.get(at))) {
                parts.add(new Styled(run.toString(), faceAt.get(at)));
                run.setLength(0);
            }
        }
        return parts;
    }

    private double width(List<Styled> parts) {
        return width(faces, parts);
    }

    static double width(Typefaces faces, List<Styled> parts) {
        double width = 0;
        for (Styled part : parts) {
            width += faces.of(part.face()).width(part.text());
        }
        return width;
    }

    private static boolean isOneLetter(List<Styled> parts) {
        if (parts.size() != 1) {
            return false;
        }
        String word = parts.get(0).text();
        return !word.isEmpty()
                && word.length() == Character.charCount(word.codePointAt(0))
                && Character.isLetter(word.codePointAt(0));
    }
}
