package org.drillwright.read;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.model.Translations;
import org.drillwright.model.Translations.Entry;
import org.drillwright.source.Field;
import org.drillwright.source.FieldPath;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/**
 * The text of a file of translations in which texts are asked for: what stands there stays letter for letter, what is missing
 * is written behind it, and what no drill has any more is marked.
 */
public final class TranslationsText {

    /** The remark above all texts. */
    private static final Message BEGIN = Message.of(TranslationsText.class, "translations.begin");

    private static final String KEYS = "texts";

    private TranslationsText() {}

    /**
     * A new file.
     *
     * @param wanted texts without a translation, each with where it stands
     * @param language of the remarks in it
     */
    public static String of(Map<String, Message> wanted, Locale language) {
        return BEGIN.in(language) + KEYS + ":\n" + items(wanted, "  ", language);
    }

    /**
     * A file with more in it.
     *
     * @param wanted texts without a translation, each with where it stands
     * @param used all texts that the drills have, with one or without
     * @param language of the remarks that are added
     * @return nothing if the file is laid out so that nothing can be put into it without changing what is there
     */
    public static Optional<String> with(
            ReadTranslations read, Map<String, Message> wanted, Set<String> used, Locale language) {
        List<Entry> before = read.translations().entries();
        List<String> there =
                before.stream().map(entry -> Translations.plain(entry.from())).toList();
        Map<String, Message> fresh = new LinkedHashMap<>(wanted);
        fresh.keySet().removeAll(there);
        List<Edit> edits = new ArrayList<>();
        List<Entry> after = new ArrayList<>();
        for (int at = 0; at < before.size(); at++) {
            Entry entry = before.get(at);
            boolean unused = !used.contains(there.get(at));
            if (unused != entry.unused()) {
                edits.add(unused ? marked(read, at) : unmarked(read, at));
            }
            after.add(new Entry(entry.from(), entry.to(), unused));
        }
        fresh.keySet().forEach(text -> after.add(new Entry(text, "", false)));
        String text = read.file().text();
        for (Edit edit : edits.stream()
                .sorted(Comparator.comparingInt((Edit edit) -> edit.span().start())
                        .reversed())
                .toList()) {
            text = text.substring(0, edit.span().start())
                    + edit.words()
                    + text.substring(edit.span().end());
        }
        String whole = fresh.isEmpty() ? text : ended(text, before) + items(fresh, indent(read), language);
        return Optional.of(whole).filter(made -> isReadAs(made, after));
    }

    private record Edit(Span span, String words) {}

    private static Edit marked(ReadTranslations read, int at) {
        String text = read.file().text();
        Optional<Field> unused = field(read, at, "unused");
        if (unused.isPresent()) {
            return new Edit(unused.get().value(), "true");
        }
        int last = Stream.of("from", "to")
                .flatMap(key -> field(read, at, key).stream())
                .mapToInt(field -> Math.max(field.key().end(), field.value().end()))
                .max()
                .orElse(text.length());
        int end = text.indexOf('\n', Math.max(0, last - 1));
        int line = end < 0 ? text.length() : end;
        return new Edit(new Span(line, line), "\n" + " ".repeat(column(read, at)) + "unused: true");
    }

    private static Edit unmarked(ReadTranslations read, int at) {
        return new Edit(field(read, at, "unused").orElseThrow().value(), "false");
    }

    private static Optional<Field> field(ReadTranslations read, int at, String key) {
        return read.places().field(FieldPath.of(KEYS).item(at).key(key));
    }

    /** How far the keys of an item stand from the edge, from 0. */
    private static int column(ReadTranslations read, int at) {
        SourceFile file = read.file();
        return field(read, at, "from")
                .map(field -> file.position(field.key().start()).column() - 1)
                .orElse(0);
    }

    private static String indent(ReadTranslations read) {
        boolean none = read.translations().entries().isEmpty();
        return " ".repeat(none ? 2 : Math.max(0, column(read, 0) - 2));
    }

    /** With a line's end, and with the key that all stand under. */
    private static String ended(String text, List<Entry> before) {
        String ended = text.isEmpty() || text.endsWith("\n") ? text : text + "\n";
        boolean headed =
                !before.isEmpty() || ended.lines().anyMatch(line -> line.strip().equals(KEYS + ":"));
        return headed ? ended : ended + KEYS + ":\n";
    }

    private static String items(Map<String, Message> wanted, String indent, Locale language) {
        return wanted.entrySet().stream()
                .map(one -> indent + "# " + one.getValue().in(language) + "\n" + indent + "- from: "
                        + YamlLines.scalar(one.getKey()) + "\n" + indent + "  to:\n")
                .collect(Collectors.joining());
    }

    private static boolean isReadAs(String text, List<Entry> entries) {
        Reading<ReadTranslations> read = TranslationsReader.read("translations", text.getBytes(StandardCharsets.UTF_8));
        return read.value()
                .filter(value -> plain(value.translations().entries()).equals(plain(entries)))
                .isPresent();
    }

    private static List<Entry> plain(List<Entry> entries) {
        return entries.stream()
                .map(entry -> new Entry(Translations.plain(entry.from()), entry.to(), entry.unused()))
                .toList();
    }
}
