package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.print.phone.PhonePage;
import org.drillwright.wording.Message;

/** What this program makes and may therefore replace. */
public enum Kind {
    PDF("kind.pdf", ".pdf", "%PDF"),
    PNG("kind.png", ".png", "\u0089PNG"),
    CALENDAR("kind.calendar", ".ics", "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Drillwright//"),
    SVG("kind.picture", ".svg", "<svg xmlns=\"http://www.w3.org/2000/svg\" xml:lang=\""),
    PAGE("kind.page", ".html", PhonePage.BEGINNING),
    TABLE("kind.table", ".csv", "drill,level"),
    DATA("kind.data", ".json", "{");

    private final String key;
    private final String ending;
    private final String beginning;

    /**
     * @param ending of the names of such files
     * @param beginning of each such file, a character to a byte
     */
    Kind(String key, String ending, String beginning) {
        this.key = key;
        this.ending = ending;
        this.beginning = beginning;
    }

    /** By the ending of the name; none if it has none of these. */
    static Optional<Kind> of(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(kind -> name.endsWith(kind.ending))
                .findFirst();
    }

    /** Whether a name has an ending, be it that of a kind or of what other programs make. */
    static boolean isNamedByKind(Path file) {
        return String.valueOf(file.getFileName()).matches("(?s).+\\.\\p{L}{2,5}");
    }

    String ending() {
        return ending;
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
