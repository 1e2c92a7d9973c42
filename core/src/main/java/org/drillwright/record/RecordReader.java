package org.drillwright.record;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import org.drillwright.source.Findings;
import org.drillwright.source.Nearest;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;

/**
 * Reads a record. A line that cannot be read counts for nothing and is a warning: the record is never rewritten, so one
 * bad line must not lock the rest away, and a sign-off that is lost makes a plan more careful, not less.
 */
public final class RecordReader {

    /** Bytes of a record: years of classes, and no more than a machine reads in a moment. */
    public static final int MOST_BYTES = 32 * 1024 * 1024;

    /** Characters of one line. */
    public static final int MOST_LINE = 2_000;

    static final List<String> COLUMNS = List.of("date", "person", "drill", "event", "with");

    /** What programs put before a text to say that it is Unicode. */
    private static final String MARK = "\uFEFF";

    private static final String NOT_COUNTED = "It wasn't counted.";
    private static final String NOT_UTF_8 = "\uFFFD";

    private final Findings findings;
    private final Set<String> people;
    private final Set<String> drills;
    private final Ledger ledger;

    private RecordReader(SourceFile file, Collection<String> people, Collection<String> drills) {
        this.findings = new Findings(file);
        this.people = new HashSet<>(people);
        this.people.add(History.INSTRUCTOR);
        this.drills = Set.copyOf(drills);
        this.ledger = new Ledger(findings);
    }

    /** Reads a record's bytes; bytes that are no UTF-8 spoil their own line only. */
    public static ReadHistory read(String name, byte[] bytes, Collection<String> people, Collection<String> drills) {
        if (bytes.length > MOST_BYTES) {
            Findings findings = new Findings(new SourceFile(name, ""));
            findings.error(
                    RecordRule.COLUMNS.id(),
                    Span.at(0),
                    "This record is larger than " + MOST_BYTES / (1024 * 1024) + " MiB. Nothing of it was read.",
                    "Give it another name; a new one is begun with the next class.");
            return ReadHistory.nothing(findings.list());
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        return read(new SourceFile(name, unmarked(text)), people, drills);
    }

    static String unmarked(String text) {
        return text.startsWith(MARK) ? text.substring(1) : text;
    }

    /**
     * Reads a record's lines.
     *
     * @param people everyone on the roster, assistants too; lines about others are kept, with a warning
     * @param drills the ids of the school's drills
     */
    public static ReadHistory read(SourceFile file, Collection<String> people, Collection<String> drills) {
        RecordReader reader = new RecordReader(file, people, drills);
        reader.lines(CsvTable.lineByLine(file.text()));
        return reader.ledger.closed();
    }

    private void lines(List<CsvLine> lines) {
        if (lines.isEmpty()) {
            return;
        }
        if (!lines.get(0).cells().stream().map(String::strip).toList().equals(COLUMNS)) {
            findings.error(
                    RecordRule.COLUMNS.id(),
                    lines.get(0).span(),
                    "The record's first line isn't its heading.",
                    "It reads: " + String.join(",", COLUMNS) + ". Nothing of this file was read.");
            return;
        }
        lines.stream().skip(1).forEach(this::line);
    }

    private void line(CsvLine line) {
        if (!line.ended()) {
            doubt(
                    RecordRule.WHOLE_LINE,
                    line,
                    "The last line has no end: writing it was cut short.",
                    "It wasn't"
                            + " counted. If it's whole, put an end of line behind it; if it isn't, the next entry begins on a"
                            + " new line.");
        } else if (line.span().length() > MOST_LINE) {
            doubt(RecordRule.WHOLE_LINE, line, "This line has more than " + MOST_LINE + " characters.", NOT_COUNTED);
        } else if (findings.file().slice(line.span()).contains(NOT_UTF_8)) {
            doubt(RecordRule.WHOLE_LINE, line, "This line isn't whole: some of its bytes are no text.", NOT_COUNTED);
        } else if (leavesQuoteOpen(line)) {
            doubt(RecordRule.WHOLE_LINE, line, "A quotation mark in this line has no partner.", NOT_COUNTED);
        } else if (line.cells().size() != COLUMNS.size()) {
            doubt(
                    RecordRule.WHOLE_LINE,
                    line,
                    "This line has " + line.cells().size() + " cells; a line of the record has " + COLUMNS.size() + ".",
                    NOT_COUNTED);
        } else {
            read(line);
        }
    }

    private boolean leavesQuoteOpen(CsvLine line) {
        long quotes = findings.file()
                .slice(line.span())
                .chars()
                .filter(unit -> unit == '"')
                .count();
        return quotes % 2 != 0;
    }

    private void doubt(RecordRule rule, CsvLine line, String what, String wayOut) {
        findings.warning(rule.id(), line.span(), what, wayOut);
    }

    private void read(CsvLine line) {
        String words = line.cell(3);
        Matcher first = BatchWords.readFirst(words);
        Matcher last = BatchWords.readLast(words);
        if (first.matches()) {
            date(line)
                    .ifPresent(date -> ledger.begin(
                            line.span(),
                            new Batch(first.group(1), date, line.cell(2), line.cell(4), List.of()),
                            Integer.parseInt(first.group(2))));
        } else if (last.matches()) {
            ledger.end(line.span(), last.group(1));
        } else {
            entry(line).ifPresent(entry -> {
                known(line, 1, people, "person");
                known(line, 4, people, "person");
                known(line, 2, drills, "drill");
                ledger.add(line.span(), new RecordLine(entry, RecordLine.takesBack(words)));
            });
        }
    }

    private Optional<Entry> entry(CsvLine line) {
        Optional<LocalDate> date = date(line);
        Optional<Event> event = Event.of(RecordLine.eventOf(line.cell(3)));
        if (event.isEmpty()) {
            findings.warning(
                    RecordRule.RIGHT_WORD.id(),
                    line.place(3),
                    "'" + line.cell(3) + "' is nothing that the record tells.",
                    "It tells: attended, worked with, signed off, each also taken back ('taken back: attended'). The line"
                            + " wasn't counted.");
        }
        if (date.isEmpty() || event.isEmpty() || !complete(line, event.get())) {
            return Optional.empty();
        }
        return Optional.of(new Entry(date.get(), line.cell(1), line.cell(2), event.get(), line.cell(4)));
    }

    private Optional<LocalDate> date(CsvLine line) {
        try {
            return Optional.of(LocalDate.parse(line.cell(0)));
        } catch (DateTimeParseException problem) {
            findings.warning(
                    RecordRule.RIGHT_WORD.id(),
                    line.place(0),
                    "'" + line.cell(0) + "' is no date.",
                    "Year, month and day in figures, such as 2026-09-01. The line wasn't counted.");
            return Optional.empty();
        }
    }

    private boolean complete(CsvLine line, Event event) {
        boolean lacksPerson = line.cell(1).isEmpty();
        boolean lacksDrill = event == Event.SIGNED_OFF && line.cell(2).isEmpty();
        boolean lacksPartner = event == Event.WORKED_WITH && line.cell(4).isEmpty();
        if (lacksPerson || lacksDrill || lacksPartner) {
            String lacking = lacksPerson ? "whom" : lacksDrill ? "which drill" : "with whom";
            doubt(
                    RecordRule.WHOLE_LINE,
                    line,
                    "This line doesn't say " + lacking + ": '" + event.word() + "' needs it.",
                    NOT_COUNTED);
            return false;
        }
        return true;
    }

    private void known(CsvLine line, int at, Set<String> names, String kind) {
        String name = line.cell(at);
        if (name.isEmpty() || names.contains(name)) {
            return;
        }
        findings.warning(
                RecordRule.KNOWN_NAME.id(),
                line.place(at),
                "There is no " + kind + " '" + name + "' now.",
                Nearest.to(name, names)
                        .map(near -> "Did you mean '" + near + "'? The line was kept as it is.")
                        .orElse("The line was kept; it counts again if the name comes back."));
    }
}
