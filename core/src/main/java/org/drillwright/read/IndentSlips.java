package org.drillwright.read;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.source.SourceFile;
import org.drillwright.wording.Message;

/** Slips that show only beside the lines around: a line too far in or out, and a dash that is missing. */
final class IndentSlips {

    private static final Pattern KEY = Pattern.compile("^( *)(- +)?([\\w-]+):(?: .*)?$");
    private static final int LOOKED_AT = 12;

    private final SourceFile file;
    private final FileKeys keys;

    IndentSlips(SourceFile file, FileKeys keys) {
        this.file = file;
        this.keys = keys;
    }

    /** All that may be wrong with where a line stands, the likeliest first. */
    Stream<Mend> in(int number) {
        String line = text(number);
        String content = line.substring(Mend.indent(line).length());
        Matcher key = KEY.matcher(content);
        if (!key.matches()) {
            return Stream.of(
                            noTitle(number, line),
                            numbered(number, line),
                            listLeftOpen(number, line),
                            continuation(number, line, content).stream())
                    .flatMap(mends -> mends);
        }
        Stream<Mend> aligned = columns(number, content.startsWith("-")).stream()
                .filter(column -> !" ".repeat(column).equals(Mend.indent(line)))
                .filter(column -> mayStand(key.group(3), column))
                .map(column -> new Mend(number, 0, said(line), " ".repeat(column) + content));
        Stream<Mend> tabs = line.startsWith("\t")
                ? Stream.of(new Mend(number, 0, said(line), Mend.indent(line).replace("\t", "  ") + content))
                : Stream.empty();
        return Stream.of(noSteps(number, line), missingDash(number, line, content), aligned, tabs)
                .flatMap(mends -> mends);
    }

    /** Keys of the file stand at its left edge, keys of a count never do. */
    private boolean mayStand(String key, int column) {
        return column == 0 ? !keys.isOfAPart(key) : !keys.isOfTheFile(key);
    }

    /** A count that begins with its number, as lists do elsewhere. */
    private Stream<Mend> numbered(int number, String line) {
        Matcher count = Pattern.compile("^( *)(\\d+[.):]\\s*)(?:- +)?([A-Za-z-]+)( *:.*)$")
                .matcher(line);
        if (!count.matches()) {
            return Stream.empty();
        }
        return keys.key(count.group(3)).stream()
                .flatMap(key -> Stream.of(0, count.group(2).length() - 2)
                        .map(more -> new Mend(
                                number,
                                count.start(2),
                                Message.of(IndentSlips.class, "slip.numbered"),
                                count.group(1) + " ".repeat(more) + "- " + key + count.group(4))));
    }

    /** The title, written as a heading is. */
    private Stream<Mend> noTitle(int number, String line) {
        boolean titleIsThere = IntStream.rangeClosed(1, file.lineCount()).anyMatch(at -> text(at).startsWith("title"));
        boolean heads = number == 1 && !titleIsThere && keys.isOfTheFile("title");
        return heads && !line.contains(":") && !line.startsWith("#")
                ? Stream.of(new Mend(number, 0, Message.of(IndentSlips.class, "slip.title"), "title: " + line.strip()))
                : Stream.empty();
    }

    /** The last line of a list that was opened in a line above with a bracket. */
    private Stream<Mend> listLeftOpen(int number, String line) {
        int above = number - 1;
        while (above > 1 && !KEY.matcher(text(above)).matches()) {
            above--;
        }
        boolean open = above >= 1 && text(above).matches("^\\s*[\\w-]+: *\\[[^\\]]*$") && !line.contains("]");
        return open && !line.isBlank()
                ? Stream.of(new Mend(
                        number,
                        line.length(),
                        Message.of(IndentSlips.class, "slip.list.left.open", above),
                        line.stripTrailing().replaceFirst(",$", "") + "]"))
                : Stream.empty();
    }

    /** Items with keys of a part, under no key that could hold them. */
    private Stream<Mend> noSteps(int number, String line) {
        Matcher item = KEY.matcher(line);
        boolean stepsAreThere =
                IntStream.rangeClosed(1, file.lineCount()).anyMatch(at -> text(at).startsWith("steps:"));
        if (stepsAreThere
                || !keys.isList("steps")
                || !item.matches()
                || item.group(2) == null
                || !keys.isOfAPart(item.group(3))) {
            return Stream.empty();
        }
        return Stream.of(new Mend(
                number,
                item.end(1),
                Message.of(IndentSlips.class, "slip.no.steps"),
                "steps:\n" + (line.startsWith(" ") ? line : "  " + line)));
    }

    private static Message said(String line) {
        String indent = Mend.indent(line);
        if (indent.contains("\t")) {
            return Message.of(IndentSlips.class, "slip.tab.in.front");
        }
        return indent.contains("\u00a0")
                ? Message.of(IndentSlips.class, "slip.no.break.space")
                : Message.of(IndentSlips.class, "slip.not.lined.up");
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
                        Message.of(IndentSlips.class, "slip.missing.dash"),
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
        boolean tabbed = Mend.indent(line).contains("\t") && !content.startsWith("#");
        boolean isText = !content.isEmpty() && (tabbed || !content.matches("(?:#|%|- |---|\\.\\.\\.).*"));
        for (int above = number - 1; above >= 1 && isText; above--) {
            Matcher key = KEY.matcher(text(above));
            if (key.matches()) {
                boolean block = text(above).matches(".*: *[|>][-+1-9]*\\s*");
                return Optional.of(new Mend(
                        number,
                        Mend.indent(line).length(),
                        tabbed
                                ? said(line)
                                : Message.of(
                                        IndentSlips.class,
                                        block && Mend.indent(line).length() > key.start(3)
                                                ? "slip.block.column"
                                                : "slip.continued"),
                        " ".repeat(key.start(3) + 2) + content));
            }
        }
        return Optional.empty();
    }

    private String text(int number) {
        return file.slice(file.line(number));
    }
}
