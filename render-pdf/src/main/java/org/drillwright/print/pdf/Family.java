package org.drillwright.print.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.apache.fontbox.ttf.OS2WindowsMetricsTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.drillwright.print.frame.Face;
import org.drillwright.print.text.Typeface;
import org.drillwright.print.text.Typefaces;

/** A family of type that documents embed, each cut read once: DejaVu Sans Condensed, or a school's own. */
public final class Family implements Typefaces {

    private static final String FOLDER = "net/sf/jasperreports/fonts/dejavu/";

    /** A font without it is for another script: it comes in only where letters of that script stand. */
    private static final int LATIN = 'a';

    private final Map<Face, FaceChain> faces = new EnumMap<>(Face.class);

    private Family(Function<Face, List<FontFace>> fonts) {
        for (Face face : Face.values()) {
            faces.put(face, new FaceChain(fonts.apply(face)));
        }
    }

    /** Held here, so that it is read when first asked for. */
    private static final class Shared {
        private static final Family DEJAVU = new Family(face -> List.of(new FontFace(packed(face))));
    }

    /**
     * DejaVu Sans Condensed: tabular numerals, accents for every language of the labels and many more, arrows and
     * signs.
     */
    public static Family dejaVu() {
        return Shared.DEJAVU;
    }

    /**
     * A family of TrueType files; what they lack is set in this program's own.
     *
     * @throws UnusableFont if one of them is no TrueType font, or forbids being embedded
     */
    public static Family of(byte[] regular, byte[] bold) throws UnusableFont {
        FontFace upright = new FontFace(own(regular));
        FontFace heavy = new FontFace(own(bold));
        return new Family(face -> {
            FontFace font = face == Face.BOLD ? heavy : upright;
            FontFace packed = dejaVu().known(face).first();
            return font.covers(LATIN) ? List.of(font, packed) : List.of(packed, font);
        });
    }

    /**
     * The same with a further TrueType file, which both cuts use for what they lack.
     *
     * @throws UnusableFont as {@link #of(byte[], byte[])}
     */
    public Family with(byte[] file) throws UnusableFont {
        FontFace more = new FontFace(own(file));
        return new Family(face -> {
            List<FontFace> fonts = new ArrayList<>(known(face).fonts());
            fonts.add(more);
            return fonts;
        });
    }

    @Override
    public Typeface of(Face face) {
        return known(face);
    }

    /** The file of a cut, as it was read. */
    public byte[] file(Face face) {
        try (InputStream in = known(face).first().font().getOriginalData()) {
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException("a font cannot be read", broken);
        }
    }

    /** The file of a cut with the glyphs of these characters only, so far as it has them. */
    public byte[] file(Face face, Set<Integer> codePoints) {
        try {
            return FaceSubset.of(known(face).first().font(), codePoints);
        } catch (IOException broken) {
            throw new UncheckedIOException("a font cannot be cut down", broken);
        }
    }

    FaceChain known(Face face) {
        FaceChain known = faces.get(face);
        if (known == null) {
            throw new IllegalStateException("no file for " + face);
        }
        return known;
    }

    private static String packedName(Face face) {
        return switch (face) {
            case REGULAR -> "DejaVuSansCondensed.ttf";
            case BOLD -> "DejaVuSansCondensed-Bold.ttf";
        };
    }

    private static TrueTypeFont packed(Face face) {
        // From the loader rather than the class: they are in an archive, and as modules in a module, of their own.
        try (InputStream in = Family.class.getClassLoader().getResourceAsStream(FOLDER + packedName(face))) {
            if (in == null) {
                throw new IllegalStateException("the font " + packedName(face) + " is not on the class path");
            }
            return parse(in.readAllBytes());
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + packedName(face) + " cannot be read", broken);
        }
    }

    private static TrueTypeFont own(byte[] file) throws UnusableFont {
        try {
            TrueTypeFont font = parse(file);
            if (font.getGlyph() == null || font.getUnicodeCmapLookup() == null) {
                throw new UnusableFont("it is not a TrueType font");
            }
            if (forbidsEmbedding(font)) {
                throw new UnusableFont("its maker forbids that it is embedded in documents");
            }
            return font;
        } catch (IOException | RuntimeException broken) {
            throw new UnusableFont("it is not a TrueType font", broken);
        }
    }

    /** As the OpenType specification has it for {@code fsType}: bit 1 alone, Restricted License embedding. */
    private static boolean forbidsEmbedding(TrueTypeFont font) throws IOException {
        OS2WindowsMetricsTable rights = font.getOS2Windows();
        return rights != null && (rights.getFsType() & 0x000F) == OS2WindowsMetricsTable.FSTYPE_RESTRICTED;
    }

    private static TrueTypeFont parse(byte[] file) throws IOException {
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
        // Without substitution a drawn width is the sum of advances, and copied text holds no ligatures.
        font.setEnableGsub(false);
        return font;
    }
}
