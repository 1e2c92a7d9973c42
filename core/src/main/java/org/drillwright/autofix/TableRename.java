package org.drillwright.autofix;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.table.CsvLine;
import org.drillwright.table.CsvTable;

/**
 * Gives somebody in a roster's table another name: in the cell of the name, or in that of its two cells which is another now,
 * and where others are kept apart from them. The old name goes into the column {@code was} if the table has one. All other
 * bytes stay.
 */
final class TableRename {

    private static final String WAS = "was";
    private static final String BETWEEN = " / ";

    private final SourceFile file;
    private final CsvTable table;
    private final String old;
    private final String now;
    private final List<Edit> edits = new ArrayList<>();

    private TableRename(SourceFile file, String old, String now) {
        this.file = file;
        this.table = CsvTable.of(file.text());
        this.old = old;
        this.now = now;
    }

    static String text(SourceFile file, String old, String now) {
        TableRename rename = new TableRename(file, old, now);
        rename.table.body().forEach(rename::line);
        return Edit.apply(file.text(), rename.edits);
    }

    private void line(CsvLine line) {
        boolean named = false;
        for (int at = 0; at < line.cells().size(); at++) {
            named |= line.cell(at).equals(old);
            if (List.of(line.cell(at).split("\\s*/\\s*")).contains(old)) {
                edit(line.place(at), old, now);
            } else {
                named |= at + 1 < line.cells().size() && part(line, at);
            }
        }
        if (named) {
            was(line);
        }
    }

    /** A name in two cells, the first name in front or behind, of which one stays. */
    private boolean part(CsvLine line, int at) {
        String one = line.cell(at);
        String other = line.cell(at + 1);
        if (one.isEmpty() || other.isEmpty()) {
            return false;
        }
        if (old.equals(one + " " + other)) {
            return changed(line, at, at + 1);
        }
        return old.equals(other + " " + one) && changed(line, at + 1, at);
    }

    private boolean changed(CsvLine line, int first, int last) {
        if (now.endsWith(" " + line.cell(last))) {
            edit(
                    line.place(first),
                    line.cell(first),
                    now.substring(0, now.length() - 1 - line.cell(last).length()));
        } else if (now.startsWith(line.cell(first) + " ")) {
            edit(
                    line.place(last),
                    line.cell(last),
                    now.substring(line.cell(first).length() + 1));
        }
        return true;
    }

    private void was(CsvLine line) {
        IntStream.range(0, table.heading().cells().size())
                .filter(at -> table.heading().cell(at).toLowerCase(Locale.ROOT).equals(WAS)
                        && at < line.cells().size())
                .findFirst()
                .ifPresent(at -> {
                    String before = line.cell(at);
                    String both = before.isEmpty() ? old : before + BETWEEN + old;
                    edits.add(new Edit(line.place(at), quoted(both, file.slice(line.place(at)))));
                });
    }

    /** @param part of the cell, the same in it being left that only begins or ends like it */
    private void edit(Span cell, String part, String instead) {
        String slice = file.slice(cell);
        Matcher found = Pattern.compile("(?<![^\\s/\"])" + Pattern.quote(part) + "(?![^\\s/\"])")
                .matcher(slice);
        Optional<String> made = found.find()
                ? Optional.of(slice.substring(0, found.start()) + instead + slice.substring(found.end()))
                : Optional.empty();
        made.ifPresent(text -> edits.add(new Edit(cell, slice.startsWith("\"") ? text : quoted(text, slice))));
    }

    private String quoted(String text, String slice) {
        boolean needed = slice.startsWith("\"") || text.indexOf(table.separator()) >= 0;
        return needed ? '"' + text + '"' : text;
    }
}
