package org.drillwright.print.pdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The sRGB colour space as an ICC profile, made here because the JDK's own differs between versions. The layout is that
 * of ICC.1:2001-04 (version 2); the primaries are those of IEC 61966-2-1 adapted to D50, the curve is its transfer
 * function.
 */
final class SrgbProfile {

    static final String NAME = "sRGB IEC61966-2.1";

    static final int COLOURS = 3;

    private static final int HEADER = 128;
    private static final int ENTRY = 12;
    private static final int CURVE_POINTS = 1024;
    private static final double[] WHITE = {0.9642, 1, 0.8249};
    private static final double[] RED = {0.43607, 0.22249, 0.01392};
    private static final double[] GREEN = {0.38515, 0.71687, 0.09708};
    private static final double[] BLUE = {0.14307, 0.06061, 0.71410};

    private SrgbProfile() {}

    static byte[] bytes() {
        Map<String, byte[]> tags = tags();
        int start = HEADER + 4 + ENTRY * (tags.size() + 2);
        int size = start + tags.values().stream().mapToInt(tag -> tag.length).sum();
        ByteBuffer profile = ByteBuffer.allocate(size);
        header(profile, size);
        profile.position(HEADER);
        profile.putInt(tags.size() + 2);
        int offset = start;
        for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
            entry(profile, tag.getKey(), offset, tag.getValue().length);
            if (tag.getKey().equals("rTRC")) {
                entry(profile, "gTRC", offset, tag.getValue().length);
                entry(profile, "bTRC", offset, tag.getValue().length);
            }
            offset += tag.getValue().length;
        }
        tags.values().forEach(profile::put);
        return profile.array();
    }

    private static Map<String, byte[]> tags() {
        Map<String, byte[]> tags = new LinkedHashMap<>();
        tags.put("desc", description(NAME));
        tags.put("cprt", words("text", "No copyright, use freely"));
        tags.put("wtpt", xyz(WHITE));
        tags.put("rXYZ", xyz(RED));
        tags.put("gXYZ", xyz(GREEN));
        tags.put("bXYZ", xyz(BLUE));
        tags.put("rTRC", curve());
        return tags;
    }

    private static void header(ByteBuffer profile, int size) {
        profile.putInt(0, size);
        profile.putInt(8, 0x02100000);
        profile.position(12);
        profile.put(ascii("mntrRGB XYZ "));
        // A date is required: the first day of the year of the standard.
        for (short part : new short[] {1999, 1, 1, 0, 0, 0}) {
            profile.putShort(part);
        }
        profile.put(ascii("acsp"));
        profile.position(68);
        for (double part : WHITE) {
            profile.putInt(fixed(part));
        }
    }

    private static void entry(ByteBuffer profile, String name, int offset, int length) {
        profile.put(ascii(name)).putInt(offset).putInt(length);
    }

    private static byte[] xyz(double[] colour) {
        ByteBuffer tag = ByteBuffer.allocate(20).put(ascii("XYZ ")).putInt(0);
        for (double part : colour) {
            tag.putInt(fixed(part));
        }
        return tag.array();
    }

    private static byte[] curve() {
        ByteBuffer tag = ByteBuffer.allocate(12 + 2 * CURVE_POINTS);
        tag.put(ascii("curv")).putInt(0).putInt(CURVE_POINTS);
        for (int at = 0; at < CURVE_POINTS; at++) {
            tag.putShort((short) Math.round(0xFFFF * linear(at / (CURVE_POINTS - 1.0))));
        }
        return tag.array();
    }

    private static double linear(double value) {
        return value <= 0.04045 ? value / 12.92 : StrictMath.pow((value + 0.055) / 1.055, 2.4);
    }

    /** The type 'desc' of version 2 also has empty parts in other scripts, 78 bytes in all. */
    private static byte[] description(String text) {
        byte[] ascii = ascii(text + '\0');
        return padded(ByteBuffer.allocate(12 + ascii.length + 78)
                .put(ascii("desc"))
                .putInt(0)
                .putInt(ascii.length)
                .put(ascii)
                .array());
    }

    private static byte[] words(String type, String text) {
        byte[] ascii = ascii(text + '\0');
        return padded(ByteBuffer.allocate(8 + ascii.length)
                .put(ascii(type))
                .putInt(0)
                .put(ascii)
                .array());
    }

    /** Tags begin at multiples of four bytes. */
    private static byte[] padded(byte[] tag) {
        return Arrays.copyOf(tag, (tag.length + 3) / 4 * 4);
    }

    private static int fixed(double value) {
        return (int) Math.round(value * 0x10000);
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
