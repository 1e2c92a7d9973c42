package org.drillwright.print.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * What the glyphs of a font say, for whoever copies or hears the text (ISO 32000-1, 9.10.3). The library writes it for glyphs
 * that stand for one character; those that only a word of several letters has are added.
 */
final class UnicodeMap {

    private static final String END = "endcmap";

    /** Said by a glyph whose letters another says. */
    private static final String NOTHING = "\u200B";

    /** So many lines may follow one another, at most. */
    private static final int LINES = 100;

    private UnicodeMap() {}

    /** @param said by the number of the glyph, in ascending order */
    static void add(Map<Integer, String> said, PDType0Font font) throws IOException {
        if (!(font.getCOSObject().getDictionaryObject(COSName.TO_UNICODE) instanceof COSStream stream)) {
            throw new IllegalStateException("a font that was cut down says what its glyphs stand for");
        }
        String known = new String(stream.createInputStream().readAllBytes(), StandardCharsets.US_ASCII);
        int end = known.lastIndexOf(END);
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(
                    (known.substring(0, end) + lines(said) + known.substring(end)).getBytes(StandardCharsets.US_ASCII));
        }
    }

    private static String lines(Map<Integer, String> said) {
        StringBuilder lines = new StringBuilder();
        int at = 0;
        for (Map.Entry<Integer, String> glyph : said.entrySet()) {
            if (at % LINES == 0) {
                lines.append(at == 0 ? "" : "endbfchar\n")
                        .append(Math.min(LINES, said.size() - at))
                        .append(" beginbfchar\n");
            }
            String text = glyph.getValue().isEmpty() ? NOTHING : glyph.getValue();
            lines.append(String.format(Locale.ROOT, "<%04X> <", glyph.getKey()));
            text.chars().forEach(unit -> lines.append(String.format(Locale.ROOT, "%04X", unit)));
            lines.append(">\n");
            at++;
        }
        return lines.append("endbfchar\n").toString();
    }
}
