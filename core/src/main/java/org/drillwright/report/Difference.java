package org.drillwright.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Two texts as a unified difference (POSIX {@code diff -u}): lines that go begin with a minus, lines that come with a plus.
 */
public final class Difference {

    private static final int CONTEXT = 3;

    /** Comparisons of lines; beyond, all that differs is shown as one stretch. */
    private static final long MOST = 4_000_000;

    private final List<String> before;
    private final List<String> after;
    private final List<Change> changes = new ArrayList<>();

    /** A line of the difference: its sign, and its number in each text, from 0. */
    private record Change(char sign, int before, int after) {}

    private Difference(List<String> before, List<String> after) {
        this.before = before;
        this.after = after;
    }

    /** The difference; empty if there is none. */
    public static String unified(String name, String before, String after) {
        if (before.equals(after)) {
            return "";
        }
        Difference difference = new Difference(lines(before), lines(after));
        difference.compare();
        String shown = DisplayWidth.shown(name);
        return "--- " + shown + "\n+++ " + shown + "\n" + difference.hunks();
    }

    /** Lines with their ends. */
    private static List<String> lines(String text) {
        List<String> lines = new ArrayList<>();
        int start = 0;
        for (int at = 0; at < text.length(); at++) {
            char unit = text.charAt(at);
            boolean lone = unit == '\r' && (at + 1 == text.length() || text.charAt(at + 1) != '\n');
            if (unit == '\n' || lone) {
                lines.add(text.substring(start, at + 1));
                start = at + 1;
            }
        }
        if (start < text.length()) {
            lines.add(text.substring(start));
        }
        return lines;
    }

    private void compare() {
        int head = 0;
        int shorter = Math.min(before.size(), after.size());
        while (head < shorter && before.get(head).equals(after.get(head))) {
            changes.add(new Change(' ', head, head));
            head++;
        }
        int tail = 0;
        while (tail < shorter - head && same(before.size() - 1 - tail, after.size() - 1 - tail)) {
            tail++;
        }
        middle(head, before.size() - tail, after.size() - tail);
        for (int at = tail; at > 0; at--) {
            changes.add(new Change(' ', before.size() - at, after.size() - at));
        }
    }

    private boolean same(int one, int other) {
        return before.get(one).equals(after.get(other));
    }

    /** The longest common subsequence of what lies between equal heads and tails. */
    private void middle(int head, int oldEnd, int newEnd) {
        int rows = oldEnd - head;
        int columns = newEnd - head;
        boolean few = (long) rows * columns <= MOST;
        int[][] common = few ? common(head, rows, columns) : new int[0][0];
        int row = 0;
        int column = 0;
        while (row < rows || column < columns) {
            boolean both = few && row < rows && column < columns;
            if (both && same(head + row, head + column)) {
                changes.add(new Change(' ', head + row++, head + column++));
            } else if (row < rows && (!both || common[row + 1][column] >= common[row][column + 1])) {
                changes.add(new Change('-', head + row++, head + column));
            } else {
                changes.add(new Change('+', head + row, head + column++));
            }
        }
    }

    private int[][] common(int head, int rows, int columns) {
        int[][] common = new int[rows + 1][columns + 1];
        for (int row = rows - 1; row >= 0; row--) {
            for (int column = columns - 1; column >= 0; column--) {
                common[row][column] = same(head + row, head + column)
                        ? common[row + 1][column + 1] + 1
                        : Math.max(common[row + 1][column], common[row][column + 1]);
            }
        }
        return common;
    }

    private String hunks() {
        StringBuilder text = new StringBuilder();
        int at = 0;
        while (at < changes.size()) {
            int first = nextChange(at);
            if (first == changes.size()) {
                break;
            }
            int last = first;
            int next = nextChange(first + 1);
            while (next < changes.size() && next - last <= 2 * CONTEXT + 1) {
                last = next;
                next = nextChange(next + 1);
            }
            int end = Math.min(changes.size(), last + CONTEXT + 1);
            hunk(Math.max(at, first - CONTEXT), end, text);
            at = end;
        }
        return text.toString();
    }

    private int nextChange(int from) {
        int at = from;
        while (at < changes.size() && changes.get(at).sign() == ' ') {
            at++;
        }
        return at;
    }

    private void hunk(int from, int to, StringBuilder text) {
        List<Change> hunk = changes.subList(from, to);
        long gone = hunk.stream().filter(change -> change.sign() != '+').count();
        long come = hunk.stream().filter(change -> change.sign() != '-').count();
        text.append("@@ -")
                .append(range(hunk.get(0).before(), gone))
                .append(" +")
                .append(range(hunk.get(0).after(), come))
                .append(" @@\n");
        for (Change change : hunk) {
            String line = change.sign() == '+' ? after.get(change.after()) : before.get(change.before());
            String words = line.replaceAll("[\\r\\n]+$", "");
            text.append(change.sign()).append(DisplayWidth.shown(words)).append('\n');
            if (words.equals(line)) {
                text.append("\\ No newline at end of file\n");
            }
        }
    }

    private static String range(int first, long count) {
        return (count == 0 ? first : first + 1) + (count == 1 ? "" : "," + count);
    }
}
