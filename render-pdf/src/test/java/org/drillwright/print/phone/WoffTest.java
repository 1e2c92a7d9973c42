package org.drillwright.print.phone;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.drillwright.print.frame.Face;
import org.drillwright.print.pdf.Family;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Fonts cut down and packed, read back by the numbers of WOFF File Format 1.0 (W3C 2012), sections 3 and 4. */
class WoffTest {

    private static final Set<Integer> LETTERS =
            "Épée: parry of quarte ● ✓".codePoints().boxed().collect(Collectors.toSet());

    @ParameterizedTest
    @EnumSource
    void the_cut_down_font_has_its_letters_at_their_widths_and_no_others(Face face) throws IOException {
        byte[] file = Family.dejaVu().file(face, LETTERS);
        assertTrue(file.length < 40_000, face + ": " + file.length);
        TrueTypeFont cut = new TTFParser().parse(new RandomAccessReadBuffer(file));
        TrueTypeFont whole =
                new TTFParser().parse(new RandomAccessReadBuffer(Family.dejaVu().file(face)));
        for (int letter : LETTERS) {
            int glyph = cut.getUnicodeCmapLookup().getGlyphId(letter);
            assertNotEquals(0, glyph, Character.toString(letter));
            assertEquals(
                    whole.getAdvanceWidth(whole.getUnicodeCmapLookup().getGlyphId(letter)),
                    cut.getAdvanceWidth(glyph),
                    Character.toString(letter));
        }
        assertEquals(0, cut.getUnicodeCmapLookup().getGlyphId('Z'));
        assertEquals(whole.getUnitsPerEm(), cut.getUnitsPerEm());
    }

    @ParameterizedTest
    @EnumSource
    void what_is_packed_is_the_font_table_by_table(Face face) throws DataFormatException {
        byte[] font = Family.dejaVu().file(face, LETTERS);
        byte[] packed = Woff.of(font);
        ByteBuffer in = ByteBuffer.wrap(packed);
        ByteBuffer plain = ByteBuffer.wrap(font);
        assertEquals("wOFF", new String(packed, 0, 4, StandardCharsets.US_ASCII));
        assertEquals(plain.getInt(0), in.getInt(4), "flavour");
        assertEquals(packed.length, in.getInt(8), "length");
        int tables = in.getShort(12);
        assertEquals(plain.getShort(4), tables);
        assertEquals(0, in.getShort(14), "reserved");
        int unpacked = 12 + 16 * tables;
        for (int at = 0; at < tables; at++) {
            int entry = 44 + 20 * at;
            int record = 12 + 16 * at;
            int offset = in.getInt(entry + 4);
            int length = in.getInt(entry + 8);
            int whole = in.getInt(entry + 12);
            assertEquals(0, offset % 4);
            assertEquals(plain.getInt(record), in.getInt(entry), "tag");
            assertEquals(plain.getInt(record + 4), in.getInt(entry + 16), "checksum");
            assertEquals(plain.getInt(record + 12), whole);
            int from = plain.getInt(record + 8);
            assertArrayEquals(
                    Arrays.copyOfRange(font, from, from + whole),
                    table(Arrays.copyOfRange(packed, offset, offset + length), whole));
            unpacked += (whole + 3) / 4 * 4;
        }
        assertEquals(unpacked, in.getInt(16), "size when unpacked");
    }

    private static byte[] table(byte[] packed, int length) throws DataFormatException {
        if (packed.length == length) {
            return packed;
        }
        Inflater inflater = new Inflater();
        inflater.setInput(packed);
        byte[] table = new byte[length];
        assertEquals(length, inflater.inflate(table));
        inflater.end();
        return table;
    }
}
