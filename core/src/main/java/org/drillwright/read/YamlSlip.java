package org.drillwright.read;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Says in plain words which slip a syntax error comes from, and shows the line mended. The YAML library often notices a
 * slip only a line later, so the line before is looked at as well.
 */
final class YamlSlip {

    private static final String NOT_READ = " Nothing of this file was read.";

    /** A kind of slip: what to look for in a line, what to say, and how the line would look mended. */
    private interface Kind {
        Optional<Explanation> in(String line);
    }

    private record Explanation(int column, String what, String mended) {}

    private static final Pattern VALUE = Pattern.compile("^(\\s*(?:- +)*(?:[\\w-]+:[ \u00a0]+|- +))(.*?)\\s*$");

    private static final List<Kind> KINDS = List.of(
            YamlSlip::tab,
            YamlSlip::noBreakSpace,
            YamlSlip::curlyQuotes,
            YamlSlip::openQuote,
            YamlSlip::textBehindQuote,
            YamlSlip::specialSign,
            YamlSlip::colonInSentence,
            YamlSlip::noSpaceBehindColon,
            YamlSlip::lostRemark);

    private YamlSlip() {}

    static void explain(MarkedYAMLException problem, MarkOffsets offsets, Findings findings) {
        SourceFile file = findings.file();
        int at = place(problem, offsets);
        int line = lastWrittenLine(file, file.position(at).line());
        int began = problem.getContextMark() == null
                ? line
                : file.position(offsets.offset(problem.getContextMark())).line();
        for (int candidate : candidates(line, began)) {
            Optional<Explanation> found = inLine(file, candidate);
            if (found.isPresent()) {
                report(findings, file.line(candidate), found.get());
                return;
            }
        }
        unknownSlip(problem, file, line, findings);
    }

    private static int place(MarkedYAMLException problem, MarkOffsets offsets) {
        Mark mark = problem.getProblemMark() != null ? problem.getProblemMark() : problem.getContextMark();
        return mark == null ? 0 : offsets.offset(mark);
    }

    private static int lastWrittenLine(SourceFile file, int line) {
        int written = line;
        while (written > 1 && file.slice(file.line(written)).isBlank()) {
            written--;
        }
        return written;
    }

    /** The line of the problem, the line where the thing began, and the line before each. */
    private static List<Integer> candidates(int line, int began) {
        return Stream.of(line, began, line - 1, began - 1)
                .filter(number -> number >= 1)
                .distinct()
                .toList();
    }

    private static Optional<Explanation> inLine(SourceFile file, int number) {
        String line = file.slice(file.line(number));
        return KINDS.stream().flatMap(kind -> kind.in(line).stream()).findFirst();
    }

    private static void report(Findings findings, Span line, Explanation explanation) {
        int start = Math.min(line.start() + explanation.column(), line.end());
        findings.error(
                ReadingRule.YAML_SYNTAX.id(),
                new Span(start, line.end()),
                explanation.what() + NOT_READ,
                "Write: " + explanation.mended().strip());
    }

    private static void unknownSlip(MarkedYAMLException problem, SourceFile file, int line, Findings findings) {
        Span span = file.line(line);
        String text = file.slice(span);
        int indent = text.length() - text.stripLeading().length();
        Optional<String> aligned = alignedWithNeighbour(file, line, indent);
        String said = problem.getProblem() == null ? "it breaks off" : problem.getProblem();
        findings.error(
                ReadingRule.YAML_SYNTAX.id(),
                new Span(span.start() + indent, span.end()),
                aligned.isPresent()
                        ? "This line does not stand under the lines it belongs to." + NOT_READ
                        : "The form of the file breaks here (" + said + ")." + NOT_READ,
                aligned.map(mended -> "Write, with this many spaces: '" + mended + "'")
                        .orElse("Look for a missing colon, quote or dash in this line or the one before."));
    }

    /** A key that stands a little off the column of the key lines above it. */
    private static Optional<String> alignedWithNeighbour(SourceFile file, int line, int indent) {
        String text = file.slice(file.line(line)).strip();
        if (!text.matches("(- +)?[\\w-]+:.*")) {
            return Optional.empty();
        }
        for (int above = line - 1; above >= 1; above--) {
            String other = file.slice(file.line(above));
            Matcher key = Pattern.compile("^( *(?:- +)?)[\\w-]+:").matcher(other);
            if (key.find() && key.group(1).length() != indent) {
                boolean item = text.startsWith("-");
                int column = item ? key.group(1).indexOf('-') : key.group(1).length();
                if (column >= 0 && column != indent) {
                    return Optional.of(" ".repeat(column) + text);
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Explanation> tab(String line) {
        int at = line.indexOf('\t');
        if (at < 0 || !line.substring(0, at).matches("[\\s-]*([\\w-]+:)?\\s*")) {
            return Optional.empty();
        }
        return Optional.of(
                new Explanation(at, "A tab stands here; YAML wants spaces.", keepIndent(line.replace("\t", "  "))));
    }

    private static Optional<Explanation> noBreakSpace(String line) {
        Matcher odd = Pattern.compile("^[\\s-]*?(\u00a0|[\\w-]+:\u00a0)").matcher(line);
        if (!odd.find()) {
            return Optional.empty();
        }
        return Optional.of(new Explanation(
                odd.end() - 1,
                "A no-break space stands here; it looks like a space, but YAML does not take it for one.",
                keepIndent(line.replace('\u00a0', ' '))));
    }

    private static Optional<Explanation> curlyQuotes(String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches() || !value.group(2).matches("^[\u201c\u201e\u00ab\u2018].*")) {
            return Optional.empty();
        }
        String inner = value.group(2).replaceAll("^[\u201c\u201e\u00ab\u2018]\\s*|\\s*[\u201d\u201c\u00bb\u2019]$", "");
        return Optional.of(new Explanation(
                value.start(2),
                "Curly quotes do not quote in YAML; straight ones do.",
                value.group(1) + quoted(inner)));
    }

    private static Optional<Explanation> openQuote(String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches() || !value.group(2).matches("^[\"'].*")) {
            return Optional.empty();
        }
        char quote = value.group(2).charAt(0);
        String rest = value.group(2).substring(1);
        if (rest.replace("\\\"", "").replace("''", "").indexOf(quote) >= 0) {
            return Optional.empty();
        }
        return Optional.of(new Explanation(
                value.start(2), "A quote is opened here and never closed.", value.group(1) + quoted(rest)));
    }

    private static Optional<Explanation> textBehindQuote(String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches()) {
            return Optional.empty();
        }
        Matcher quote = Pattern.compile("^(\"[^\"]*\"|'[^']*')\\s*([^#\\s].*)$").matcher(value.group(2));
        if (!quote.matches()) {
            return Optional.empty();
        }
        return Optional.of(new Explanation(
                value.start(2) + quote.start(2),
                "Text stands behind the closing quote.",
                value.group(1) + "'" + value.group(2).replace("'", "''") + "'"));
    }

    private static Optional<Explanation> specialSign(String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches() || !value.group(2).matches("^([\\[{*&@%`!|>?]|- ).*")) {
            return Optional.empty();
        }
        boolean closedList = value.group(2).matches("^(\\[[^\\[\\]]*\\]|\\{[^{}]*\\}|[|>][+-]?\\d?)$");
        if (closedList) {
            return Optional.empty();
        }
        return Optional.of(new Explanation(
                value.start(2),
                "A text that begins with '" + value.group(2).charAt(0) + "' has a special meaning in YAML.",
                value.group(1) + quoted(value.group(2))));
    }

    private static Optional<Explanation> colonInSentence(String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches()
                || value.group(2).matches("^[\"'\\[{].*")
                || !value.group(2).matches(".*:(\\s.*|$)")) {
            return Optional.empty();
        }
        return Optional.of(new Explanation(
                value.start(2) + value.group(2).indexOf(':'),
                "A colon inside a sentence needs quotes round the whole text.",
                value.group(1) + quoted(value.group(2))));
    }

    private static Optional<Explanation> noSpaceBehindColon(String line) {
        Matcher tight =
                Pattern.compile("^(\\s*(?:- +)?[a-z][a-z-]*):([^\\s/].*)$").matcher(line);
        if (!tight.matches()) {
            return Optional.empty();
        }
        return Optional.of(new Explanation(
                tight.start(2), "A space is missing behind the colon.", tight.group(1) + ": " + tight.group(2)));
    }

    private static Optional<Explanation> lostRemark(String line) {
        Matcher value = VALUE.matcher(line);
        int sign = line.indexOf(" #");
        if (!value.matches() || sign < value.start(2) || value.group(2).matches("^[\"'].*")) {
            return Optional.empty();
        }
        return Optional.of(
                new Explanation(sign + 1, "All that follows ' #' is lost.", value.group(1) + quoted(value.group(2))));
    }

    static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private static String keepIndent(String line) {
        return line.stripTrailing();
    }
}
