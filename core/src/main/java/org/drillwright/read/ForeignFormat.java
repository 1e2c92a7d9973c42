package org.drillwright.read;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Recognises files of other programs by their first bytes, whatever their name says. */
final class ForeignFormat {

    private static final int LOOKED_AT = 64;

    /** First characters, each byte read as one; the signatures are those of the formats' own specifications. */
    private static final Map<String, String> SIGNATURES = new LinkedHashMap<>();

    static {
        SIGNATURES.put("pk\u0003\u0004", "a word processor's file (or another zip archive)");
        SIGNATURES.put("\u00d0\u00cf\u0011\u00e0", "an old word processor's file");
        SIGNATURES.put("{\\rtf", "a rich text file");
        SIGNATURES.put("%pdf-", "a PDF file");
        SIGNATURES.put("<!doctype html", "a web page");
        SIGNATURES.put("<html", "a web page");
        SIGNATURES.put("<?xml", "an XML file");
        SIGNATURES.put("\u00ff\u00fe", "text in UTF-16");
        SIGNATURES.put("\u00fe\u00ff", "text in UTF-16");
    }

    private ForeignFormat() {}

    static Optional<String> recognise(byte[] bytes) {
        String beginning = new String(bytes, 0, Math.min(LOOKED_AT, bytes.length), StandardCharsets.ISO_8859_1);
        String plain = beginning.stripLeading();
        if (plain.length() > 3 && (plain.charAt(1) == 0 || plain.charAt(0) == 0)) {
            return Optional.of("text in UTF-16");
        }
        return SIGNATURES.entrySet().stream()
                .filter(entry -> startsWith(beginning, entry.getKey()) || startsWith(plain, entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    private static boolean startsWith(String beginning, String signature) {
        return beginning.length() >= signature.length()
                && beginning
                        .substring(0, signature.length())
                        .toLowerCase(Locale.ROOT)
                        .equals(signature.toLowerCase(Locale.ROOT));
    }
}
