package org.drillwright.print.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.drillwright.print.frame.Face;
import org.drillwright.print.text.Typeface;
import org.drillwright.print.text.Typefaces;

/**
 * DejaVu Sans Condensed, read once and shared: tabular numerals, accents for every language of the labels and many
 * more, arrows and signs.
 */
public final class DejaVu implements Typefaces {

    private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

    private final Map<Face, DejaVuFace> faces = new EnumMap<>(Face.class);

    private DejaVu() {
        for (Face face : Face.values()) {
            faces.put(face, new DejaVuFace(parse(file(face))));
        }
    }

    /** Held here, so that it is read when first asked for. */
    private static final class Shared {
        private static final DejaVu FAMILY = new DejaVu();
    }

    public static DejaVu family() {
        return Shared.FAMILY;
    }

    @Override
    public Typeface of(Face face) {
        return known(face);
    }

    DejaVuFace known(Face face) {
        DejaVuFace known = faces.get(face);
        if (known == null) {
            throw new IllegalStateException("no file for " + face);
        }
        return known;
    }

    private static String file(Face face) {
        return switch (face) {
            case REGULAR -> "DejaVuSansCondensed.ttf";
            case BOLD -> "DejaVuSansCondensed-Bold.ttf";
        };
    }

    private static TrueTypeFont parse(String file) {
        try (InputStream in = DejaVu.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new IllegalStateException("the font " + file + " is not on the class path");
            }
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            // Without substitution a drawn width is the sum of advances, and copied text holds no ligatures.
            font.setEnableGsub(false);
            return font;
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + file + " cannot be read", broken);
        }
    }
}
