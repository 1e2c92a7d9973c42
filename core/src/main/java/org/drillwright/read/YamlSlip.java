package org.drillwright.read;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Says in plain words which slip a syntax error comes from, and shows the line mended.
 *
 * <p>The YAML library often notices a slip only lines later. So each way of mending a line nearby is tried on the whole
 * file, and the one is shown that lets the library read furthest.
 */
final class YamlSlip {

    private static final Message NOT_READ = Message.of(YamlSlip.class, "nothing.read");
    private static final int FAR = 60;

    private final SourceFile file;
    private final MarkedYAMLException problem;
    private final MarkOffsets offsets;
    private final FileKeys keys;

    private YamlSlip(SourceFile file, MarkedYAMLException problem, MarkOffsets offsets, FileKeys keys) {
        this.file = file;
        this.problem = problem;
        this.offsets = offsets;
        this.keys = keys;
    }

    static void explain(MarkedYAMLException problem, MarkOffsets offsets, Findings findings, FileKeys keys) {
        YamlSlip slip = new YamlSlip(findings.file(), problem, offsets, keys);
        Optional<Mend> mend = KnownStops.isSure(problem) ? Optional.empty() : slip.best();
        if (mend.isPresent()) {
            slip.report(mend.get(), findings);
        } else {
            slip.reportUnknown(findings);
        }
    }

    /** Where the library stopped; where the thing began that it was reading if it went on to the end of the file. */
    static int place(MarkedYAMLException problem, MarkOffsets offsets) {
        Mark at = problem.getProblemMark();
        Mark began = problem.getContextMark();
        boolean ranOut = at == null || offsets.offset(at) >= offsets.text().length();
        Mark mark = ranOut && began != null ? began : at;
        return mark == null ? 0 : offsets.offset(mark);
    }

    private Optional<Mend> best() {
        int left = file.text().length() - place(problem, offsets);
        Optional<Mend> best = Optional.empty();
        for (Mend mend : (Iterable<Mend>) candidates()::iterator) {
            int leftNow = leftBy(mend);
            if (leftNow < left) {
                best = Optional.of(mend);
                left = leftNow;
            }
        }
        return best;
    }

    /** How much of the file would still not be read; less than nothing if all of it would. */
    private int leftBy(Mend mend) {
        Span line = file.line(mend.line());
        String text = file.text().substring(0, line.start())
                + mend.mended()
                + file.text().substring(line.end());
        OptionalInt stop = YamlDocument.stop(text);
        return stop.isPresent() ? text.length() - stop.getAsInt() : -1;
    }

    private Stream<Mend> candidates() {
        int line = lastWrittenLine(line(problem.getProblemMark()));
        int stopped = line(problem.getProblemMark());
        int began = problem.getContextMark() == null ? line : line(problem.getContextMark());
        IndentSlips indents = new IndentSlips(file, keys);
        LineSlips lines = new LineSlips(keys);
        List<Integer> nearby = Stream.of(line, began, line - 1, began - 1, stopped)
                .filter(number -> number >= 1)
                .distinct()
                .toList();
        Stream<Mend> near = Stream.concat(
                nearby.stream().flatMap(number -> lines.in(number, text(number))),
                nearby.stream().flatMap(indents::in));
        Stream<Mend> far = IntStream.iterate(
                        line - 1, number -> number >= Math.max(1, line - FAR), number -> number - 1)
                .boxed()
                .flatMap(number -> Stream.concat(lines.farAbove(number, text(number)), indents.farAbove(number)));
        return Stream.concat(near, far);
    }

    private int line(@Nullable Mark mark) {
        return file.position(mark == null ? place(problem, offsets) : offsets.offset(mark))
                .line();
    }

    private int lastWrittenLine(int line) {
        int written = line;
        while (written > 1 && text(written).isBlank()) {
            written--;
        }
        return written;
    }

    private String text(int number) {
        return file.slice(file.line(number));
    }

    private void report(Mend mend, Findings findings) {
        Span line = file.line(mend.line());
        int start = Math.min(line.start() + mend.column(), line.end());
        findings.error(
                ReadingRule.BROKEN_YAML.id(),
                new Span(start, line.end()),
                mend.what().then(NOT_READ),
                Mend.advice(text(mend.line()), mend.mended()));
    }

    private String key(int number) {
        if (text(number).matches("\\s*(?:- +)*: .*")) {
            return "stop.colon.first";
        }
        if (text(number).matches("\\s*(?:- +)*(?:\"[^\"]*\"|'[^']*')\\s+[^:\\s].*")) {
            return "stop.no.colon";
        }
        if (isBelowEmptyLine(number)) {
            return "stop.empty.line";
        }
        boolean isText = !text(number).contains(":");
        if (number > 1 && isText && text(number - 1).matches("\\s*#.*")) {
            return "stop.remark.inside";
        }
        return KnownStops.key(problem).orElse("stop.unknown");
    }

    /** Whether an empty line before the first of a text below its key has more spaces than that. */
    private boolean isBelowEmptyLine(int number) {
        int spaces = 0;
        int above = number - 1;
        while (above >= 1 && text(above).isBlank()) {
            spaces = Math.max(spaces, text(above).length());
            above--;
        }
        return above >= 1
                && text(above).matches(".*: *[|>][-+1-9]*\\s*")
                && spaces > Mend.indent(text(number)).length();
    }

    private void reportUnknown(Findings findings) {
        int number = lastWrittenLine(line(problem.getProblemMark()));
        Span line = file.line(number);
        String key = key(number);
        findings.error(
                ReadingRule.BROKEN_YAML.id(),
                new Span(line.start() + Mend.indent(text(number)).length(), line.end()),
                KnownStops.what(key).then(NOT_READ),
                KnownStops.wayOut(key));
    }
}
