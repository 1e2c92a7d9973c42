package org.drillwright.print.command.write;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.wording.Message;

/** Makes a drill's id of its title: small letters, digits and hyphens, a name that every system can keep. */
final class DrillId {

    private static final int LENGTH = 80;

    /** Names that Windows keeps for devices. */
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul");

    private DrillId() {}

    static String of(String title) {
        String id = hyphenated(withoutAccents(title.toLowerCase(Locale.ROOT)));
        if (id.isEmpty()) {
            throw new CannotRun(Message.of(DrillId.class, "drill-id.a.title.needs.a"));
        }
        boolean taken = DEVICES.contains(id) || id.matches("(com|lpt)\\d") || id.equals("school");
        return taken ? id + "-drill" : id;
    }

    /** Latin letters lose their accents, which systems spell in two ways; other scripts keep theirs. */
    private static String withoutAccents(String text) {
        String parted = Normalizer.normalize(text, Normalizer.Form.NFD);
        return Normalizer.normalize(parted.replaceAll("(?<=\\p{IsLatin})\\p{M}+", ""), Normalizer.Form.NFC);
    }

    private static String hyphenated(String text) {
        String id = text.replaceAll("['’]", "").replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-");
        String cut =
                id.codePointCount(0, id.length()) > LENGTH ? id.substring(0, id.offsetByCodePoints(0, LENGTH)) : id;
        return cut.replaceAll("^-+|-+$", "");
    }
}
