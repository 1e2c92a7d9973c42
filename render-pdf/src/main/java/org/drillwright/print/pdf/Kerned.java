package org.drillwright.print.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.drillwright.print.text.Shaped;
import org.drillwright.print.text.Stretch;
import org.drillwright.print.text.Visual;

/** Shows a run of text, with the pen shifted between glyphs where the face kerns them. */
final class Kerned {

    /** Shifts are stated in thousandths of the type size, and backwards. */
    private static final double THOUSANDTHS = -1000;

    /** All of a run's letters up to here are single, in one font, and from left to right. */
    private static final int PLAIN = 0x0300;

    private final double size;
    private final Fonts fonts;
    private final Operators page;

    /** Where the pen stands, as a share of the type size. */
    private double pen;

    private boolean open;
    private EmbeddedFace inUse;

    private Kerned(FontFace font, double size, Fonts fonts, Operators page) throws IOException {
        this.size = size;
        this.fonts = fonts;
        this.page = page;
        this.inUse = use(font);
    }

    /**
     * @param joint what is written behind it, beyond its end; may be empty
     * @param rightToLeft whether the line is read so
     */
    static void show(
            String run, String joint, boolean rightToLeft, FaceChain face, double size, Fonts fonts, Operators page)
            throws IOException {
        Kerned kerned = new Kerned(face.first(), size, fonts, page);
        String text = run + joint;
        if (!rightToLeft
                && text.chars().allMatch(unit -> unit < PLAIN && face.first().covers(unit))) {
            kerned.plain(text);
        } else {
            kerned.placed(Letter.of(text, face), rightToLeft, rightToLeft ? face.width(joint) : 0);
        }
    }

    private EmbeddedFace use(FontFace font) throws IOException {
        EmbeddedFace used = fonts.embedded(font);
        page.put('/').word(used.name().getName()).number(size).op("Tf");
        return used;
    }

    private void plain(String text) throws IOException {
        FontFace measures = inUse.measures();
        page.put('[').put('<');
        int before = -1;
        for (int at = 0; at < text.length(); at++) {
            int letter = text.charAt(at);
            double shift = before < 0 ? 0 : measures.kerning(before, letter);
            if (shift != 0) {
                page.put('>').number(shift * THOUSANDTHS).put('<');
            }
            page.hex(inUse.glyph(letter));
            before = letter;
        }
        page.put('>').put(']').op("TJ");
    }

    /**
     * Letters in the order of reading, each with the pen moved to its place: so they are copied and read aloud aright.
     *
     * @param beyond how far it begins before its place
     */
    private void placed(List<Letter> run, boolean rightToLeft, double beyond) throws IOException {
        List<Letter> letters = run;
        List<Integer> seen = new ArrayList<>();
        StringBuilder firsts = new StringBuilder();
        letters.forEach(letter -> firsts.appendCodePoint(letter.codePoint()));
        if (Visual.isNeeded(firsts.toString(), rightToLeft)) {
            Visual visual = Visual.of(firsts.toString(), rightToLeft);
            letters = turned(letters, visual);
            for (int place = 0; place < letters.size(); place++) {
                seen.add(visual.places().indexOf(place));
            }
        } else {
            for (int at = 0; at < letters.size(); at++) {
                seen.add(at);
            }
        }
        double[] lefts = lefts(letters, seen, beyond);
        for (int at = 0; at < letters.size(); at++) {
            show(letters.get(at), lefts[at]);
        }
        close();
    }

    private static List<Letter> turned(List<Letter> letters, Visual visual) {
        List<Letter> turned = new ArrayList<>();
        for (int at = 0; at < letters.size(); at++) {
            turned.add(letters.get(at).turned(visual.codePoints().get(at)));
        }
        return turned;
    }

    /** @param seen from the left, the number of each letter in the order of reading */
    private static double[] lefts(List<Letter> letters, List<Integer> seen, double beyond) {
        double[] lefts = new double[letters.size()];
        double end = -beyond;
        int before = -1;
        for (int at : seen) {
            Letter letter = letters.get(at);
            boolean follows = before >= 0 && at == before + 1;
            lefts[at] = end + (follows ? letters.get(before).kerning(letter) : 0);
            end = lefts[at] + letter.advance();
            before = at;
        }
        return lefts;
    }

    private void show(Letter letter, double left) throws IOException {
        if (letter.font() != inUse.measures()) {
            close();
            inUse = use(letter.font());
        }
        if (letter.word().isPresent()) {
            word(letter.word().get(), letter.says(), left);
        } else {
            move(left);
            page.put('<').hex(inUse.glyph(letter.codePoint())).put('>');
            pen = left + letter.advance();
        }
    }

    /** A word from left to right at once; of one from right to left its syllables in the order of reading, as letters are. */
    private void word(Shaped word, String says, double left) throws IOException {
        if (!Visual.isNeeded(says, false)) {
            said(word.glyphs(), says, left);
            return;
        }
        List<Shaped.Glyph> read = word.glyphs().stream()
                .sorted(Comparator.comparingInt(Shaped.Glyph::at))
                .toList();
        int begin = 0;
        for (int at = 1; at <= read.size(); at++) {
            int end = at < read.size() ? read.get(at).at() : says.length();
            int first = read.get(begin).at();
            boolean same = at < read.size() && (end == read.get(at - 1).at() || Stretch.isMark(says.codePointAt(end)));
            if (!same) {
                said(read.subList(begin, at), says.substring(first, end), left);
                begin = at;
            }
        }
    }

    /** Glyphs, some of them over or under the line, and what they say together. */
    private void said(List<Shaped.Glyph> glyphs, String says, double left) throws IOException {
        close();
        page.word("/Span <</ActualText").put('<').put('F').put('E').put('F').put('F');
        for (byte one : says.getBytes(StandardCharsets.UTF_16BE)) {
            page.put(Character.forDigit((one >> 4) & 0xF, 16)).put(Character.forDigit(one & 0xF, 16));
        }
        page.op(">>> BDC");
        double rise = 0;
        for (Shaped.Glyph glyph : glyphs) {
            if (glyph.y() != rise) {
                close();
                rise = glyph.y();
                page.number(rise * size).op("Ts");
            }
            move(left + glyph.x());
            inUse.glyph(glyph);
            page.put('<').hex(glyph.number()).put('>');
            pen = left + glyph.x() + inUse.measures().advanceOf(glyph.number());
        }
        close();
        if (rise != 0) {
            page.number(0).op("Ts");
        }
        page.op("EMC");
    }

    private void move(double to) {
        if (!open) {
            page.put('[');
            open = true;
        }
        if (to != pen) {
            page.number((to - pen) * THOUSANDTHS);
        }
    }

    private void close() {
        if (open) {
            page.put(']').op("TJ");
            open = false;
        }
    }
}
