package org.drillwright.read;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillwright.source.SourceFile;

/** Slips that show only beside the lines around: a line too far in or out, and a dash that is missing. */
final class IndentSlips {

    private static final Pattern KEY = Pattern.compile("^( *)(- +)?([\\w-]+):(?: .*)?$");
    private static final int LOOKED_AT = 12;

    private final SourceFile file;

    IndentSlips(SourceFile file) {
        this.file = file;
    }

    /** All that may be wrong with where a line stands, the likeliest first. */
    Stream<Mend> in(int number) {
        String line = text(number);
        String content = line.substring(Mend.indent(line).length());
        if (!KEY.matcher(content).matches()) {
            return continuation(number, line, content).stream();
        }
        Stream<Mend> aligned = columns(number, content.startsWith("-")).stream()
                .filter(column -> !" ".repeat(column).equals(Mend.indent(line)))
                .map(column -> new Mend(number, 0, said(line), " ".repeat(column) + content));
        return Stream.concat(missingDash(number, line, content), aligned);
    }

    private static String said(String line) {
        String indent = Mend.indent(line);
        if (indent.contains("\t")) {
            return "A tab stands at the beginning of this line; YAML wants spaces.";
        }
        return indent.contains("\u00a0")
                ? "A no-break space stands here; it looks like a space, but YAML does not take it for one."
                : "This line does not stand under the lines it belongs to.";
    }

    /** A key that its count has already, or the first under a key whose other items have dashes. */
    private Stream<Mend> missingDash(int number, String line, String content) {
        String indent = Mend.indent(line);
        if (content.startsWith("-") || !indent.equals(" ".repeat(indent.length()))) {
            return Stream.empty();
        }
        if (!isFirst(number) && !comesTwice(number, content)) {
            return Stream.empty();
        }
        int column = indent.length();
        return Stream.of(column, column - 2)
                .filter(dash -> dash >= 0)
                .map(dash -> new Mend(
                        number,
                        column,
                        "The dash is missing with which each item of a list begins.",
                        " ".repeat(dash) + "- " + content));
    }

    private boolean isFirst(int number) {
        return number > 1 && text(number - 1).matches("^ *[\\w-]+: *$");
    }

    /** What may be wrong with a line if the trouble shows far below it: the first dash of a list is missing. */
    Stream<Mend> farAbove(int number) {
        String line = text(number);
        String content = line.strip();
        return isFirst(number) && KEY.matcher(content).matches() ? missingDash(number, line, content) : Stream.empty();
    }

    private boolean comesTwice(int number, String content) {
        String key = content.substring(0, content.indexOf(':'));
        for (int above = number - 1; above >= 1; above--) {
            Matcher other = KEY.matcher(text(above));
            if (other.matches() && other.group(3).equals(key)) {
                return true;
            }
            if (other.matches() && other.group(2) != null) {
                return false;
            }
        }
        return false;
    }

    /** The columns at which lines nearby have their key, or their dash. */
    private Set<Integer> columns(int number, boolean dash) {
        Set<Integer> columns = new LinkedHashSet<>();
        for (int away = 1; away <= LOOKED_AT; away++) {
            column(number - away, dash).ifPresent(columns::add);
            column(number + away, dash).ifPresent(columns::add);
        }
        return columns;
    }

    private Optional<Integer> column(int number, boolean dash) {
        if (number < 1 || number > file.lineCount()) {
            return Optional.empty();
        }
        Matcher key = KEY.matcher(text(number));
        if (!key.matches() || (dash && key.group(2) == null)) {
            return Optional.empty();
        }
        return Optional.of(dash ? key.end(1) : key.start(3));
    }

    /** A sentence that goes on in a line of its own has to stand further in than its key. */
    private Optional<Mend> continuation(int number, String line, String content) {
        for (int above = number - 1; above >= 1 && !content.isEmpty() && !content.startsWith("#"); above--) {
            Matcher key = KEY.matcher(text(above));
            if (key.matches()) {
                return Optional.of(new Mend(
                        number,
                        Mend.indent(line).length(),
                        "A sentence that goes on in a new line has to stand further in than its key.",
                        " ".repeat(key.start(3) + 2) + content));
            }
        }
        return Optional.empty();
    }

    private String text(int number) {
        return file.slice(file.line(number));
    }
}
