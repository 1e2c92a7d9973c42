package org.drillwright.autofix;

import java.util.List;
import java.util.Optional;
import org.drillwright.source.Field;
import org.drillwright.source.FieldPath;
import org.drillwright.source.SourceFile;
import org.drillwright.source.SourcePlaces;
import org.drillwright.source.Span;

/** A file's text as someone sees it who wants to write a key into it. */
final class KeyInsertion {

    private final SourcePlaces places;
    private final String text;

    KeyInsertion(SourceFile file, SourcePlaces places) {
        this.places = places;
        this.text = file.text();
    }

    /** A key and its value, written below or behind the last of those keys that are there. */
    Optional<Edit> keyAfter(FieldPath group, List<String> keys, String line) {
        return keys.stream()
                .map(group::key)
                .filter(path -> places.field(path).isPresent())
                .reduce((first, second) -> second)
                .map(path -> isBracketed(group) ? Edit.insert(end(path), ", " + line) : below(path, line));
    }

    /** Items at the end of a list that has some. */
    Edit itemsBehind(FieldPath list, int size, List<String> items) {
        FieldPath last = list.item(size - 1);
        if (isBracketed(list)) {
            return Edit.insert(end(last), ", " + String.join(", ", items));
        }
        int value = start(last);
        int line = lineStart(value);
        String indent = text.substring(line, text.indexOf('-', line));
        return newLines(end(last), indent + "- ", items);
    }

    private Edit below(FieldPath path, String line) {
        int key = places.field(path).map(Field::key).orElse(places.span(path)).start();
        return newLines(end(path), " ".repeat(key - lineStart(key)), List.of(line));
    }

    /** New lines behind the one in which a value ends. */
    private Edit newLines(int end, String lead, List<String> lines) {
        boolean ended = end > 0 && text.charAt(end - 1) == '\n';
        int at = ended ? end : lineEnd(end);
        StringBuilder made = new StringBuilder();
        for (String line : lines) {
            made.append(ended ? lead + line + newLine() : newLine() + lead + line);
        }
        return Edit.insert(at, made.toString());
    }

    /** Whether what stands there stands between brackets. */
    boolean isBracketed(FieldPath path) {
        int start = path.equals(FieldPath.ROOT) ? 0 : start(path);
        return start < text.length() && "[{".indexOf(text.charAt(start)) >= 0;
    }

    private int start(FieldPath path) {
        return places.span(path).start();
    }

    /** Where a value ends; of a list or a group in lines of its own, where the last of its texts does. */
    private int end(FieldPath path) {
        Span value = places.span(path);
        boolean known = isBracketed(path) || "\"'".indexOf(text.charAt(value.start())) >= 0;
        return known
                ? value.end()
                : places.fields().entrySet().stream()
                        .filter(field -> field.getKey().text().startsWith(path.text() + "/"))
                        .map(field -> field.getValue())
                        .mapToInt(KeyInsertion::end)
                        .max()
                        .orElse(value.end());
    }

    private static int end(Field field) {
        return field.words().text().isEmpty() ? 0 : field.value().end();
    }

    private int lineStart(int at) {
        int start = at;
        while (start > 0 && text.charAt(start - 1) != '\n' && text.charAt(start - 1) != '\r') {
            start--;
        }
        return start;
    }

    private int lineEnd(int at) {
        int end = at;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return end;
    }

    private String newLine() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }
}
