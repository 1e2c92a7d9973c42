package org.drillwright.print.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;

/** A font's file cut down to some characters. */
final class FaceSubset {

    /**
     * What a browser asks of a font, and what the outlines need to be drawn on coarse screens. Kerning and substitution
     * name glyphs by numbers that are others afterwards; they stay out.
     */
    private static final List<String> KEPT = List.of(
            "head", "hhea", "maxp", "hmtx", "glyf", "loca", "cmap", "name", "OS/2", "post", "cvt ", "fpgm", "prep",
            "gasp");

    private FaceSubset() {}

    /** Characters that the font lacks are passed over. */
    static byte[] of(TrueTypeFont font, Set<Integer> codePoints) throws IOException {
        TTFSubsetter subset = new TTFSubsetter(font, KEPT);
        subset.addAll(codePoints);
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        subset.writeToStream(file);
        return file.toByteArray();
    }
}
