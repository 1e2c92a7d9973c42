package org.drillwright.source;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** What tells one text from another: its SHA-256 (FIPS 180-4). */
public final class Fingerprint {

    private Fingerprint() {}

    /** The 32 bytes of a text's fingerprint; the text is taken as UTF-8. */
    public static byte[] of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    public static byte[] of(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** The first figures of it, to the base of 16. */
    public static String figures(byte[] bytes, int count) {
        byte[] all = of(bytes);
        StringBuilder figures = new StringBuilder();
        for (int at = 0; figures.length() < count; at++) {
            figures.append(String.format("%02x", all[at]));
        }
        return figures.substring(0, count);
    }
}
