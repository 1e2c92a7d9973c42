package org.drillwright.editing;

import java.util.List;
import java.util.Optional;
import org.drillwright.read.SourceTree;
import org.drillwright.source.FieldPath;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;

/**
 * What stands at an offset of a file: a key, or a text.
 *
 * @param path the way to the value, or to the value of the key
 * @param span the key's words, or the value with its quotes
 */
record CaretPlace(FieldPath path, boolean onKey, Span span) {

    /** None between values, and in a file whose form is broken. */
    static Optional<CaretPlace> at(SourceFile file, int offset) {
        return SourceTree.of(file).flatMap(tree -> in(tree, FieldPath.ROOT, offset));
    }

    private static Optional<CaretPlace> in(SourceTree tree, FieldPath path, int offset) {
        if (tree instanceof SourceTree.Entries entries) {
            return entries.entries().stream()
                    .flatMap(entry -> in(entry, path, offset).stream())
                    .findFirst();
        }
        if (tree instanceof SourceTree.Items items) {
            return in(items.items(), path, offset);
        }
        return touches(tree.span(), offset) ? Optional.of(new CaretPlace(path, false, tree.span())) : Optional.empty();
    }

    private static Optional<CaretPlace> in(List<SourceTree> items, FieldPath path, int offset) {
        for (int at = 0; at < items.size(); at++) {
            Optional<CaretPlace> found = in(items.get(at), path.item(at), offset);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<CaretPlace> in(SourceTree.Entry entry, FieldPath path, int offset) {
        FieldPath value = path.key(entry.key().text());
        return touches(entry.key().span(), offset)
                ? Optional.of(new CaretPlace(value, true, entry.key().span()))
                : in(entry.value(), value, offset);
    }

    private static boolean touches(Span span, int offset) {
        return span.start() <= offset && offset <= span.end();
    }
}
