package org.drillwright.print.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.HorizontalHeaderTable;
import org.apache.fontbox.ttf.KerningSubtable;
import org.apache.fontbox.ttf.KerningTable;
import org.apache.fontbox.ttf.OS2WindowsMetricsTable;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.drillwright.print.text.Shaped;
import org.drillwright.print.text.Typeface;

/** A face measured from its file: advances, the {@code kern} table, the heights that it states. */
final class FontFace implements Typeface {

    /** Characters below this, Latin letters with their accents, and their pairs are looked up once and remembered. */
    private static final int COMMON = 0x180;

    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final Optional<KerningSubtable> kerning;
    private final double unitsPerEm;
    private final double capHeight;
    private final double ascent;
    private final double descent;
    private final Map<Integer, Double> rareAdvances = new ConcurrentHashMap<>();
    private final Map<String, Shaped> shaped = new ConcurrentHashMap<>();
    private final AtomicReference<Shaper> shaper = new AtomicReference<>();
    private final float[] advances = new float[COMMON];
    private final float[] kernings = new float[COMMON * COMMON];

    FontFace(TrueTypeFont font) {
        try {
            this.font = font;
            this.glyphs = font.getUnicodeCmapLookup();
            this.kerning = Optional.ofNullable(font.getKerning()).map(KerningTable::getHorizontalKerningSubtable);
            this.unitsPerEm = font.getUnitsPerEm();
            this.capHeight = capHeight(font) / unitsPerEm;
            Arrays.fill(advances, Float.NaN);
            Arrays.fill(kernings, Float.NaN);
            HorizontalHeaderTable header = font.getHorizontalHeader();
            this.ascent = header.getAscender() / unitsPerEm;
            this.descent = -header.getDescender() / unitsPerEm;
        } catch (IOException broken) {
            throw new UncheckedIOException("a font's tables cannot be read", broken);
        }
    }

    /** The height of H, because old versions of the font's table do not state it. */
    private static double capHeight(TrueTypeFont font) throws IOException {
        OS2WindowsMetricsTable stated = font.getOS2Windows();
        if (stated != null && stated.getCapHeight() > 0) {
            return stated.getCapHeight();
        }
        return font.getPath("H").getBounds2D().getHeight();
    }

    TrueTypeFont font() {
        return font;
    }

    @Override
    public boolean covers(int codePoint) {
        return glyphs.getGlyphId(codePoint) != 0;
    }

    @Override
    public double advance(int codePoint) {
        if (codePoint >= COMMON) {
            return rareAdvances.computeIfAbsent(codePoint, this::read);
        }
        if (Float.isNaN(advances[codePoint])) {
            advances[codePoint] = (float) read(codePoint);
        }
        return advances[codePoint];
    }

    private double read(int codePoint) {
        return advanceOf(glyphs.getGlyphId(codePoint));
    }

    /** How far a glyph moves the pen, whatever stands beside it. */
    double advanceOf(int glyph) {
        try {
            return font.getAdvanceWidth(glyph) / unitsPerEm;
        } catch (IOException broken) {
            throw new UncheckedIOException("a glyph's width cannot be read", broken);
        }
    }

    @Override
    public double kerning(int left, int right) {
        if (left >= COMMON || right >= COMMON) {
            return lookedUp(left, right);
        }
        int pair = left * COMMON + right;
        // Shares of the em are multiples of 1/2048, which a float holds exactly.
        if (Float.isNaN(kernings[pair])) {
            kernings[pair] = (float) lookedUp(left, right);
        }
        return kernings[pair];
    }

    private double lookedUp(int left, int right) {
        if (Character.isSpaceChar(left) || Character.isSpaceChar(right)) {
            return 0;
        }
        return kerning.map(table -> table.getKerning(glyphs.getGlyphId(left), glyphs.getGlyphId(right)) / unitsPerEm)
                .orElse(0.0);
    }

    @Override
    public double capHeight() {
        return capHeight;
    }

    @Override
    public double ascent() {
        return ascent;
    }

    @Override
    public double descent() {
        return descent;
    }

    @Override
    public double shapedWidth(String word) {
        return shape(word).advance();
    }

    /** A word whose letters take form and place from one another. */
    Shaped shape(String word) {
        return shaped.computeIfAbsent(word, letters -> shaper().shape(letters));
    }

    private Shaper shaper() {
        Shaper known = shaper.get();
        if (known == null) {
            known = Shaper.of(font, this::letter);
            shaper.set(known);
        }
        return known;
    }

    /** The character that a glyph is the usual sign of; 0 if it is that of none. */
    int letter(int glyph) {
        List<Integer> letters = glyphs.getCharCodes(glyph);
        return letters == null || letters.isEmpty() ? 0 : letters.get(0);
    }
}
