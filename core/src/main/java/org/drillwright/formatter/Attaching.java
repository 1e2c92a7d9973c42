package org.drillwright.formatter;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.formatter.Landmark.Open;
import org.drillwright.formatter.Remarks.Remark;
import org.drillwright.read.SourceTree.Entries;

/** Finds what each remark of a file belongs to. */
final class Attaching {

    private final String text;
    private final Entries root;
    private final Remarks remarks = new Remarks();

    Attaching(String text, Entries root) {
        this.text = text;
        this.root = root;
    }

    Remarks attach() {
        List<Landmark> landmarks = Landmark.of(text, root);
        Landmark end = Landmark.end(text, root);
        int from = 0;
        for (int at = 0; at <= landmarks.size(); at++) {
            Landmark next = at < landmarks.size() ? landmarks.get(at) : end;
            List<Remark> found = between(from, next.span().start());
            if (at == 0) {
                atHead(found, next);
            } else {
                attach(found, landmarks.get(at - 1), next);
            }
            if (at < landmarks.size()) {
                inBlockHeader(next);
            }
            from = next.span().end();
        }
        return remarks;
    }

    /** What stands before the first key, parted from it by an empty line, belongs to the file. */
    private void atHead(List<Remark> found, Landmark first) {
        int last = found.size();
        if (!endsWithGap(first.span().start())) {
            last--;
            while (last > 0 && !found.get(last).afterGap()) {
                last--;
            }
        }
        for (int at = 0; at < found.size(); at++) {
            if (at < last) {
                remarks.addToHeader(found.get(at));
            } else {
                remarks.addAbove(first.below(), found.get(at));
            }
        }
    }

    private boolean endsWithGap(int key) {
        int line = text.lastIndexOf('\n', key - 1);
        int before = line <= 0 ? -1 : text.lastIndexOf('\n', line - 1);
        return line > 0 && text.substring(before + 1, line).isBlank();
    }

    private void attach(List<Remark> found, Landmark previous, Landmark next) {
        for (int at = 0; at < found.size(); at++) {
            Remark remark = found.get(at);
            if (at == 0 && !remark.alone() && isBeside(previous)) {
                remarks.addBeside(previous.beside(), remark);
            } else if (next.closes()) {
                remarks.addBelow(next.below(), remark);
            } else if (next.takesAll() || isBehindDash(remark, next)) {
                remarks.addAbove(next.below(), remark);
            } else {
                byColumn(remark, previous, next);
            }
        }
    }

    /** The remark in the line of a dash is that of the dash, however far in it stands. */
    private static boolean isBehindDash(Remark remark, Landmark next) {
        return !remark.alone() && next.column() >= 0;
    }

    /** Whether what follows a landmark in its line up to the remark is no dash and no bracket of something new. */
    private boolean isBeside(Landmark previous) {
        int end = previous.span().end();
        int sign = text.indexOf('#', end);
        String between = sign < 0 ? "" : text.substring(end, sign);
        return !between.contains("\n") && !between.contains("\r") && endedInLine(end);
    }

    /** A text written over several lines with its own line end holds the beginning of the next line. */
    private boolean endedInLine(int end) {
        return end == 0 || (text.charAt(end - 1) != '\n' && text.charAt(end - 1) != '\r');
    }

    /** A remark further in than what follows belongs to the end of what it stands in line with. */
    private void byColumn(Remark remark, Landmark previous, Landmark next) {
        List<Open> open = previous.open();
        for (int at = open.size() - 1; at >= 0; at--) {
            Open one = open.get(at);
            if (one.column() <= remark.column() && one.column() > next.column()) {
                remarks.addBelow(one.tree(), remark);
                return;
            }
        }
        if (next.column() < 0) {
            remarks.addBelow(root, remark);
        } else {
            remarks.addAbove(next.below(), remark);
        }
    }

    /** The remark in the line with which a text below its key begins ({@code note: >- # remark}). */
    private void inBlockHeader(Landmark landmark) {
        char sign = landmark.span().length() > 0 ? text.charAt(landmark.span().start()) : ' ';
        if (sign == '|' || sign == '>') {
            int end = lineEnd(landmark.span().start());
            between(landmark.span().start(), Math.min(end, landmark.span().end()))
                    .forEach(remark -> remarks.addBeside(landmark.beside(), remark));
        }
    }

    private List<Remark> between(int from, int to) {
        List<Remark> found = new ArrayList<>();
        int at = from;
        while (at < to) {
            if (text.charAt(at) == '#' && (at == 0 || Character.isWhitespace(text.charAt(at - 1)))) {
                int end = lineEnd(at);
                found.add(remark(at, end));
                at = end;
            } else {
                at++;
            }
        }
        return found;
    }

    private Remark remark(int at, int end) {
        int line = at;
        while (line > 0 && text.charAt(line - 1) != '\n' && text.charAt(line - 1) != '\r') {
            line--;
        }
        boolean alone = text.substring(line, at).isBlank();
        return new Remark(text.substring(at, end).stripTrailing(), at - line, alone, alone && endsWithGap(line));
    }

    private int lineEnd(int from) {
        int end = from;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return end;
    }
}
