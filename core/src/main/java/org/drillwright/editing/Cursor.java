package org.drillwright.editing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.source.FieldPath;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;

/**
 * Where somebody is writing, seen by indents, dashes and colons alone: a file that is being written is broken half of the
 * time. Texts that go on over several lines are followed by their indent.
 *
 * @param path the way to the value that is being written, or to the group whose key it is
 * @param onKey whether a key is being written
 * @param word what stands there on this line: all of it, before the cursor and behind
 * @param bracketed whether it stands between brackets
 * @param siblings keys that stand in the same group already, on other lines
 */
record Cursor(FieldPath path, boolean onKey, Span word, boolean bracketed, Set<String> siblings) {

    Cursor {
        siblings = Set.copyOf(siblings);
    }

    /** A line's own key, with its colon: plain, or between quotes. */
    private static final Pattern KEY =
            Pattern.compile("(\"[^\"]*\"|'[^']*'|[^\\s#\\-\\[{\"'&*!|>%@`,][^#]*?|-[^\\s#][^#]*?)\\s*:(?=\\s|$)");

    private static final Pattern FOLDED = Pattern.compile("[|>][-+0-9]*\\s*(#.*)?");

    /** The words of an open text are no keys. */
    private static final Pattern REMARK = Pattern.compile("(^|\\s)#.*$");

    /** Where a key is being written. */
    static Cursor onKey(FieldPath group, Span word, boolean bracketed, Set<String> siblings) {
        return new Cursor(group, true, word, bracketed, siblings);
    }

    /** Where a value is being written. */
    static Cursor onValue(FieldPath path, Span word, boolean bracketed) {
        return new Cursor(path, false, word, bracketed, Set.of());
    }

    static Cursor at(SourceFile file, int offset) {
        return new Scan(file, file.position(offset).line()).cursor(offset);
    }

    static String unquoted(String key) {
        boolean quoted = key.length() > 1 && (key.charAt(0) == '"' || key.charAt(0) == '\'');
        return quoted ? key.substring(1, key.length() - 1) : key;
    }

    /** A key or a dash that the lines below may stand under. */
    private record Level(int column, FieldPath path, boolean item, int index) {}

    /** Reads the lines from the top. */
    private static final class Scan {

        private final SourceFile file;
        private final int last;
        private final Deque<Level> open = new ArrayDeque<>();
        private final Set<FieldPath> keys = new HashSet<>();
        /** The column of the key whose folded text is being passed over; none below 0. */
        private int folded = -1;

        Scan(SourceFile file, int last) {
            this.file = file;
            this.last = last;
            for (int line = 1; line < last; line++) {
                pass(line);
            }
        }

        private void pass(int line) {
            String text = file.slice(file.line(line));
            String bare = REMARK.matcher(text).replaceFirst("");
            int column = indent(bare);
            if (bare.isBlank() || (folded >= 0 && column > folded)) {
                return;
            }
            folded = -1;
            column = dashes(bare, column);
            Matcher key = KEY.matcher(bare).region(column, bare.length());
            if (key.lookingAt()) {
                Level level = key(column, unquoted(key.group(1)));
                open.push(level);
                keys.add(level.path());
                if (FOLDED.matcher(bare.substring(key.end()).strip()).matches()) {
                    folded = column;
                }
            }
        }

        /** Takes the dashes at the beginning of a line; where what stands behind them begins. */
        private int dashes(String text, int from) {
            int column = from;
            while (column < text.length()
                    && text.charAt(column) == '-'
                    && (column + 1 == text.length() || Character.isWhitespace(text.charAt(column + 1)))) {
                int at = column;
                close(level -> level.column() > at);
                Level top = open.peek();
                boolean next = top != null && top.item() && top.column() == at;
                int index = next ? open.pop().index() + 1 : 0;
                open.push(new Level(at, group().item(index), true, index));
                column++;
                while (column < text.length() && text.charAt(column) == ' ') {
                    column++;
                }
            }
            return column;
        }

        private Level key(int column, String name) {
            close(level -> level.column() >= column);
            return new Level(column, group().key(name), false, 0);
        }

        private FieldPath group() {
            Level top = open.peek();
            return top == null ? FieldPath.ROOT : top.path();
        }

        private void close(Predicate<Level> over) {
            Iterator<Level> levels = open.iterator();
            while (levels.hasNext() && over.test(levels.next())) {
                levels.remove();
            }
        }

        Cursor cursor(int offset) {
            Span line = file.line(last);
            String text = file.slice(line);
            int within = Math.min(offset - line.start(), text.length());
            if (folded >= 0 && (text.isBlank() ? within : indent(text)) > folded) {
                return value(group(), line, text, indent(text), within);
            }
            int column = text.isBlank() ? within : dashes(text, indent(text));
            if (column < within && isBracket(text.charAt(column))) {
                return new BracketScan(group(), text, column).cursor(line.start(), within);
            }
            Matcher key = KEY.matcher(text).region(Math.min(column, text.length()), text.length());
            if (key.lookingAt() && key.end() <= within) {
                return value(key(column, unquoted(key.group(1))).path(), line, text, key.end(), within);
            }
            close(level -> level.column() >= column);
            int end = key.lookingAt() ? key.end(1) : text.stripTrailing().length();
            Span word = new Span(line.start() + Math.min(column, within), line.start() + Math.max(end, within));
            return onKey(group(), word, false, siblings());
        }

        /** The keys of the group that the cursor stands in; those below it are looked at as well. */
        private Set<String> siblings() {
            FieldPath group = group();
            for (int line = last + 1; line <= file.lineCount(); line++) {
                pass(line);
            }
            String lead = group.text().isEmpty() ? "" : group.text() + "/";
            Set<String> siblings = new HashSet<>();
            for (FieldPath one : keys) {
                String rest = one.text().startsWith(lead) ? one.text().substring(lead.length()) : "/";
                if (!rest.isEmpty() && rest.indexOf('/') < 0) {
                    siblings.add(rest);
                }
            }
            return siblings;
        }

        /** A value on the line of its key or its dash, which may be a list between brackets. */
        private Cursor value(FieldPath path, Span line, String text, int from, int within) {
            int start = from;
            while (start < text.length() && text.charAt(start) == ' ') {
                start++;
            }
            start = Math.min(start, within);
            if (start < within && isBracket(text.charAt(start))) {
                return new BracketScan(path, text, start).cursor(line.start(), within);
            }
            int end = Math.max(
                    within,
                    REMARK.matcher(text).replaceFirst("").stripTrailing().length());
            return onValue(path, new Span(line.start() + start, line.start() + end), false);
        }

        private static boolean isBracket(char sign) {
            return sign == '[' || sign == '{';
        }

        private static int indent(String text) {
            int column = 0;
            while (column < text.length() && text.charAt(column) == ' ') {
                column++;
            }
            return column;
        }
    }
}
