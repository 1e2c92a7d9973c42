package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.drillwright.print.phone.PhonePage;
import org.drillwright.wording.Message;

/** What this program makes and may therefore replace. */
enum Kind {
    PDF("kind.pdf", "%PDF"),
    PNG("kind.png", "\u0089PNG"),
    CALENDAR("kind.calendar", "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Drillwright//"),
    SVG("kind.picture", "<svg xmlns=\"http://www.w3.org/2000/svg\" xml:lang=\""),
    PAGE("kind.page", PhonePage.BEGINNING);

    private final String key;
    private final String beginning;

    /** @param beginning of each such file, a character to a byte */
    Kind(String key, String beginning) {
        this.key = key;
        this.beginning = beginning;
    }

    /** By the ending of the name. */
    static Kind of(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        int dot = name.lastIndexOf('.');
        return switch (name.substring(dot + 1)) {
            case "png" -> PNG;
            case "svg" -> SVG;
            case "html" -> PAGE;
            case "ics" -> CALENDAR;
            default -> PDF;
        };
    }

    /** In a sentence: is not … */
    Message said() {
        return Message.of(Kind.class, key);
    }

    boolean isOf(Path file) throws IOException {
        try (var in = Files.newInputStream(file)) {
            return new String(in.readNBytes(beginning.length()), StandardCharsets.ISO_8859_1).equals(beginning);
        }
    }
}
