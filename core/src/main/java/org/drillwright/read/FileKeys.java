package org.drillwright.read;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.drillwright.source.FieldPath;

/** The keys of one kind of file, as its reader asks for them: what advice on a slip knows of keys. */
final class FileKeys {

    /** Of files that nobody writes by hand. */
    static final FileKeys NONE = new FileKeys();

    private final Set<String> atEdge = new HashSet<>();
    private final Set<String> furtherIn = new HashSet<>();
    private final Set<String> lists = new HashSet<>();
    private final Set<String> words = new HashSet<>();

    private FileKeys() {}

    static FileKeys of(Shape.Group file) {
        FileKeys keys = new FileKeys();
        keys.atEdge.addAll(file.keys().keySet());
        keys.gather(file);
        return keys;
    }

    private void gather(Shape shape) {
        if (shape instanceof Shape.Items items) {
            below(items.item());
        } else if (shape instanceof Shape.Either either) {
            below(either.group());
        } else if (shape instanceof Shape.Group group) {
            group.keys().forEach((key, value) -> {
                if (value instanceof Shape.Items) {
                    lists.add(key);
                } else if (value instanceof Shape.Word) {
                    words.add(key);
                }
                if (value instanceof Shape.Group inner) {
                    below(inner);
                } else {
                    gather(value);
                }
            });
            group.others().ifPresent(this::below);
        }
    }

    private void below(Shape shape) {
        if (shape instanceof Shape.Group group) {
            furtherIn.addAll(group.keys().keySet());
        }
        gather(shape);
    }

    /** The key that somebody has written, be it in capitals; empty if the file has none that is called so. */
    Optional<String> key(String written) {
        String key = written.toLowerCase(Locale.ROOT);
        return atEdge.contains(key) || furtherIn.contains(key) ? Optional.of(key) : Optional.empty();
    }

    /** Whether the key stands at the left edge and nowhere else. */
    boolean isOfTheFile(String key) {
        return atEdge.contains(key) && !furtherIn.contains(key);
    }

    /** Whether the key stands further in and never at the left edge. */
    boolean isOfAPart(String key) {
        return furtherIn.contains(key) && !atEdge.contains(key);
    }

    boolean isList(String key) {
        return lists.contains(key);
    }

    /** Whether one of a few words stands at that path. */
    boolean isWord(FieldPath path) {
        return words.contains(path.text());
    }
}
