package org.drillwright.read;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drillwright.wording.Message;

/** Recognises files of other programs by their first bytes, whatever their name says. */
final class ForeignFormat {

    private static final int LOOKED_AT = 64;

    /** First characters, each byte read as one, and what they are called; the signatures are those of the formats' own specifications. */
    private static final Map<String, String> SIGNATURES = new LinkedHashMap<>();

    static {
        SIGNATURES.put("pk\u0003\u0004", "format.zip");
        SIGNATURES.put("\u00d0\u00cf\u0011\u00e0", "format.old");
        SIGNATURES.put("{\\rtf", "format.rtf");
        SIGNATURES.put("%pdf-", "format.pdf");
        SIGNATURES.put("<!doctype html", "format.html");
        SIGNATURES.put("<html", "format.html");
        SIGNATURES.put("<?xml", "format.xml");
        SIGNATURES.put("\u00ff\u00fe", "format.utf16");
        SIGNATURES.put("\u00fe\u00ff", "format.utf16");
    }

    private ForeignFormat() {}

    /** As the end of a sentence that begins with {@code This is}. */
    static Optional<Message> recognise(byte[] bytes) {
        String beginning = new String(bytes, 0, Math.min(LOOKED_AT, bytes.length), StandardCharsets.ISO_8859_1);
        String plain = beginning.stripLeading();
        if (plain.length() > 3 && (plain.charAt(1) == 0 || plain.charAt(0) == 0)) {
            return Optional.of(Message.of(ForeignFormat.class, "format.utf16"));
        }
        return SIGNATURES.entrySet().stream()
                .filter(entry -> startsWith(beginning, entry.getKey()) || startsWith(plain, entry.getKey()))
                .map(entry -> Message.of(ForeignFormat.class, entry.getValue()))
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
