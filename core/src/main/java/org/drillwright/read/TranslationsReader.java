package org.drillwright.read;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.model.Translations;
import org.drillwright.model.Translations.Entry;
import org.drillwright.source.FieldPath;
import org.drillwright.wording.Message;

/**
 * Reads a school's translations into one language.
 *
 * <pre>{@code
 * texts:
 *   # title of parry-of-quarte
 *   - from: Parry of quarte and straight riposte
 *     to: Parade de quarte et riposte directe
 * }</pre>
 */
public final class TranslationsReader {

    /** Texts of one file. */
    public static final int MOST = ReadingLimits.ITEMS;

    private TranslationsReader() {}

    /** @param name the file's name as it is shown */
    public static Reading<ReadTranslations> read(String name, byte[] bytes) {
        return NodeReader.reading(name, bytes, () -> FileKeys.of(shape()), nodes -> {
            MappingReader keys = nodes.root();
            List<Entry> entries = entries(keys);
            keys.finish();
            twice(entries, nodes);
            return new ReadTranslations(
                    new Translations(entries), nodes.findings().file(), nodes.places());
        });
    }

    /** What such a file may hold. */
    public static Shape.Group shape() {
        return ShapeRecorder.of(TranslationsReader::entries);
    }

    private static List<Entry> entries(Keys keys) {
        return keys.groups("texts", MOST, TranslationsReader::entry);
    }

    private static Entry entry(Keys keys) {
        Entry entry = new Entry(
                keys.needed("from", ReadingLimits.LONG_TEXT),
                keys.textToCome("to", ReadingLimits.LONG_TEXT).orElse(""),
                keys.yesOrNo("unused").orElse(false));
        keys.finish();
        return entry;
    }

    /** Which of two should be printed cannot be known. */
    private static void twice(List<Entry> entries, NodeReader nodes) {
        Map<String, String> seen = new HashMap<>();
        for (int at = 0; at < entries.size(); at++) {
            Entry entry = entries.get(at);
            String from = Translations.plain(entry.from());
            String before = entry.isFilled() ? seen.putIfAbsent(from, entry.to()) : null;
            if (before != null && !before.equals(entry.to())) {
                nodes.findings()
                        .error(
                                ReadingRule.KEY_TWICE.id(),
                                nodes.places()
                                        .span(FieldPath.of("texts").item(at).key("to")),
                                Message.of(TranslationsReader.class, "translated.before", before),
                                Message.of(TranslationsReader.class, "translated.before.way"));
            }
        }
    }
}
