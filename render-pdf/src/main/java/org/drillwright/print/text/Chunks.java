package org.drillwright.print.text;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Cuts stretches of text where a line may end, and measures the pieces. */
final class Chunks {

    /** Behind a stretch it stands for the space to the next, and no line ends there. */
    private static final char NO_BREAK = '\u00A0';

    private final Typefaces faces;
    private final StringBuilder text = new StringBuilder();
    private final List<Styled> styleAt = new ArrayList<>();

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
        if (text.length() > 0 && text.charAt(text.length() - 1) != NO_BREAK) {
            // A space belongs to the word before it, as when a line is put together.
            add(" ", styleAt.get(styleAt.size() - 1));
        }
        add(clean, stretch);
    }

    private void add(String added, Styled style) {
        text.append(added);
        for (int at = 0; at < added.length(); at++) {
            styleAt.add(style);
        }
    }

    private List<Chunk> cut() {
        List<Integer> ends = new ArrayList<>();
        // The rules for ends of lines are the same in every locale that this is printed in.
        BreakIterator rules = BreakIterator.getLineInstance(Locale.ROOT);
        rules.setText(text.toString());
        for (int end = rules.next(); end != BreakIterator.DONE; end = rules.next()) {
            if (end == text.length() || !(isInWord(end) || isBehindElision(end))) {
                ends.add(end);
            }
        }
        List<Chunk> chunks = new ArrayList<>();
        int start = 0;
        for (int at = 0; at < ends.size(); at++) {
            int end = ends.get(at);
            int next = at + 1 < ends.size() ? ends.get(at + 1) : end;
            chunks.add(word(at == 0 ? "" : chunks.get(at - 1).text(), start, end, next));
            start = end;
        }
        return chunks;
    }

    private Chunk word(String before, int start, int end, int next) {
        String word = bare(start, end);
        Chunk.Manner manner =
                next == end || word.isEmpty() ? Chunk.Manner.PLAIN : Holding.between(before, word, bare(end, next));
        Chunk whole = chunk(start, end, manner);
        List<Chunk> pieces = pieces(start, end, manner);
        return pieces.size() == 1
                ? whole
                : new Chunk(
                        whole.parts(), whole.width(), whole.onward(), whole.hyphen(), whole.spaced(), manner, pieces);
    }

    private String bare(int start, int end) {
        return text.substring(start, end)
                .replace(String.valueOf(Wording.SOFT_HYPHEN), "")
                .replace(String.valueOf(Wording.BREAK_HERE), "")
                .strip();
    }

    /** Behind a word's own hyphens and slashes, and its author's soft hyphens. */
    private List<Chunk> pieces(int start, int end, Chunk.Manner manner) {
        List<Chunk> pieces = new ArrayList<>();
        int from = start;
        for (int at = start + 1; at < end - 1; at++) {
            if (isInWord(at)) {
                pieces.add(chunk(from, at, Chunk.Manner.PLAIN));
                from = at;
            }
        }
        pieces.add(chunk(from, end, manner));
        return pieces;
    }

    /** Behind the apostrophe of a word like {@code s’arrêter}, which the rules take for a closing quotation mark. */
    private boolean isBehindElision(int end) {
        return end > 1
                && text.charAt(end - 1) == '’'
                && Character.isLetter(text.codePointBefore(end - 1))
                && Character.isLetter(text.codePointAt(end));
    }

    /** Behind a sign that joins: lines end there only if a word is wider than its column. */
    private boolean isInWord(int at) {
        char before = text.charAt(at - 1);
        boolean between =
                at > 1 && Character.isLetterOrDigit(text.charAt(at - 2)) && Character.isLetterOrDigit(text.charAt(at));
        return before == Wording.SOFT_HYPHEN || (between && "-/\u2010\u2013".indexOf(before) >= 0);
    }

    private Chunk chunk(int start, int end, Chunk.Manner manner) {
        boolean spaced = text.charAt(end - 1) == ' ';
        int behind = spaced ? end - 1 : end;
        boolean soft = behind > start && text.charAt(behind - 1) == Wording.SOFT_HYPHEN;
        List<Styled> parts = parts(start, behind);
        double width = width(parts);
        Typeface face = faces.of(styleAt.get(end - 1).face());
        double onward = width + (spaced ? face.advance(' ') : kerning(end, face));
        double hyphen = soft ? face.advance(Wording.SOFT_HYPHEN) : 0;
        return new Chunk(parts, width, onward, hyphen, spaced, manner);
    }

    private double kerning(int at, Typeface face) {
        return at < text.length() && faces.of(styleAt.get(at).face()) == face
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
            if (run.length() > 0 && (at == end - 1 || !styleAt.get(at + 1).isStyledAs(styleAt.get(at)))) {
                parts.add(styleAt.get(at).saying(run.toString()));
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
}
