package org.drillwright.editing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Span;

/** Reads what stands between brackets and braces on one line, up to where somebody writes; it need not be closed. */
final class BracketScan {

    private final FieldPath path;
    private final String text;
    private final Deque<Group> open = new ArrayDeque<>();
    private int at;
    private int begun;

    /** A bracket or a brace that is open. */
    private static final class Group {
        private final FieldPath path;
        private final boolean keyed;
        private final Set<String> keys = new HashSet<>();
        private int index;
        private Optional<String> key = Optional.empty();

        Group(FieldPath path, boolean keyed) {
            this.path = path;
            this.keyed = keyed;
        }

        FieldPath value() {
            return keyed ? key.map(path::key).orElse(path) : path.item(index);
        }
    }

    /**
     * A scan of a line.
     *
     * @param path of the value that begins with a bracket
     * @param from where that bracket stands
     */
    BracketScan(FieldPath path, String text, int from) {
        this.path = path;
        this.text = text;
        this.at = from;
        this.begun = from;
    }

    /**
     * Where somebody writes.
     *
     * @param line where the line begins in its file
     * @param within the column
     */
    Cursor cursor(int line, int within) {
        while (at < within) {
            step();
        }
        Group group = open.peek();
        int start = begun;
        while (start < within && text.charAt(start) == ' ') {
            start++;
        }
        boolean onKey = group != null && group.keyed && group.key.isEmpty();
        Span word = new Span(line + start, line + Math.max(within, end(start, onKey)));
        if (group == null) {
            return Cursor.onValue(path, Span.at(line + within), false);
        }
        FieldPath value = group.value();
        return onKey
                ? Cursor.onKey(value, word, true, keys(group, Math.max(within, end(start, true))))
                : Cursor.onValue(value, word, true);
    }

    private int end(int start, boolean onKey) {
        int end = start;
        while (end < text.length() && ",]}#".indexOf(text.charAt(end)) < 0 && !(onKey && text.charAt(end) == ':')) {
            end++;
        }
        return start + text.substring(start, end).stripTrailing().length();
    }

    /** The keys of a group, those behind the place as well; not the one that is being written. */
    private Set<String> keys(Group group, int from) {
        at = from;
        group.key = Optional.of("");
        while (at < text.length() && open.contains(group)) {
            step();
        }
        return group.keys;
    }

    private void step() {
        char sign = text.charAt(at++);
        Group group = open.peek();
        boolean fresh = text.substring(begun, at - 1).isBlank();
        if ((sign == '"' || sign == '\'') && fresh) {
            int closed = text.indexOf(sign, at);
            at = closed < 0 ? text.length() : closed + 1;
        } else if ((sign == '[' || sign == '{') && fresh) {
            open.push(new Group(group == null ? path : group.value(), sign == '{'));
            begun = at;
        } else if (sign == ']' || sign == '}') {
            open.poll();
            begun = at;
        } else if (sign == ',' && group != null) {
            group.index++;
            group.key = Optional.empty();
            begun = at;
        } else if (sign == ':' && group != null && group.keyed && group.key.isEmpty() && endsKey()) {
            String key = text.substring(begun, at - 1).strip();
            group.key = Optional.of(Cursor.unquoted(key));
            group.keys.add(Cursor.unquoted(key));
            begun = at;
        }
    }

    private boolean endsKey() {
        return at == text.length() || text.charAt(at) == ' ' || text.charAt(begun) == '"';
    }
}
