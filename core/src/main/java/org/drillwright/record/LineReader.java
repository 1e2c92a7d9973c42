package org.drillwright.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import org.drillwright.source.Findings;
import org.drillwright.table.CsvLine;
import org.drillwright.table.Heading;
import org.drillwright.table.Repeated;
import org.drillwright.table.TableText;

/** Reads the lines of a record one by one into its ledger. */
final class LineReader {

    private static final String NOT_COUNTED = "It wasn't counted.";

    private final Findings findings;
    private final Heading heading;
    private final RecordDates dates;
    private final Ledger ledger;
    private final Repeated repeated = new Repeated();
    private final Names people;
    private final Names drills;

    LineReader(Findings findings, Heading heading, RecordDates dates, RecordAround around, Ledger ledger) {
        this.findings = findings;
        this.heading = heading;
        this.dates = dates;
        this.ledger = ledger;
        this.people = Names.people(around.people(), repeated);
        this.drills = Names.drills(around.drills(), repeated);
    }

    void read(CsvLine line) {
        if (!line.ended()) {
            doubt(
                    line,
                    "The last line has no end: writing it was cut short.",
                    "It wasn't"
                            + " counted. If it's whole, put an end of line behind it; if it isn't, the next entry begins on a"
                            + " new line.");
        } else if (line.span().length() > RecordReader.MOST_LINE) {
            doubt(line, "This line has more than " + RecordReader.MOST_LINE + " characters.", NOT_COUNTED);
        } else if (findings.file().slice(line.span()).contains(TableText.NO_TEXT)) {
            doubt(line, "This line isn't whole: some of its bytes are no text.", NOT_COUNTED);
        } else if (leavesQuoteOpen(line)) {
            doubt(line, "A quotation mark in this line has no partner.", NOT_COUNTED);
        } else if (hasWrongLength(line)) {
            doubt(
                    line,
                    "This line has " + line.cells().size() + " cells; a line of the record has " + heading.width()
                            + ".",
                    NOT_COUNTED);
        } else if (!dates.isOpen(line)) {
            counted(line);
        }
    }

    /** Spreadsheets leave out empty cells at a line's end, or add some; a line that ends before its event was cut short. */
    private boolean hasWrongLength(CsvLine line) {
        return line.isLongerThan(heading.width())
                || line.cells().size()
                        <= Math.max(heading.column(RecordReader.DATE), heading.column(RecordReader.EVENT));
    }

    private boolean leavesQuoteOpen(CsvLine line) {
        long quotes = findings.file()
                .slice(line.span())
                .chars()
                .filter(unit -> unit == '"')
                .count();
        return quotes % 2 != 0;
    }

    private void doubt(CsvLine line, String what, String wayOut) {
        findings.warning(RecordRule.WHOLE_LINE.id(), line.span(), what, wayOut);
    }

    /** Tells of what stands in many lines alike. */
    void report() {
        repeated.report(findings);
    }

    private String cell(CsvLine line, String field) {
        return line.cell(heading.column(field));
    }

    private void counted(CsvLine line) {
        String words = cell(line, RecordReader.EVENT).toLowerCase(Locale.ROOT);
        Matcher first = BatchWords.readFirst(words);
        Matcher last = BatchWords.readLast(words);
        if (first.matches()) {
            dates.of(line, repeated)
                    .ifPresent(date -> ledger.begin(
                            line.span(),
                            new Batch(
                                    first.group(1),
                                    date,
                                    cell(line, RecordReader.DRILL),
                                    cell(line, RecordReader.WITH),
                                    List.of()),
                            Integer.parseInt(first.group(2))));
        } else if (last.matches()) {
            ledger.end(line.span(), last.group(1));
        } else {
            entry(line, words)
                    .ifPresent(entry -> ledger.add(line.span(), new RecordLine(entry, RecordLine.takesBack(words))));
        }
    }

    private Optional<Entry> entry(CsvLine line, String words) {
        Optional<LocalDate> date = dates.of(line, repeated);
        Optional<Event> event = Event.of(RecordLine.eventOf(words));
        if (event.isEmpty()) {
            repeated.add(
                    RecordRule.RIGHT_WORD.id(),
                    line.place(heading.column(RecordReader.EVENT)),
                    "'" + cell(line, RecordReader.EVENT) + "' is nothing that the record tells.",
                    "It tells: attended, worked with, signed off, each also taken back ('taken back: attended'). The line"
                            + " wasn't counted.");
        }
        if (date.isEmpty() || event.isEmpty() || !complete(line, event.get())) {
            return Optional.empty();
        }
        Optional<String> person = people.known(line, heading.column(RecordReader.PERSON));
        Optional<String> with = people.known(line, heading.column(RecordReader.WITH));
        Optional<String> drill = drills.known(line, heading.column(RecordReader.DRILL));
        return person.isPresent() && with.isPresent() && drill.isPresent()
                ? Optional.of(new Entry(date.get(), person.get(), drill.get(), event.get(), with.get()))
                : Optional.empty();
    }

    private boolean complete(CsvLine line, Event event) {
        boolean lacksPerson = cell(line, RecordReader.PERSON).isEmpty();
        boolean lacksDrill =
                event == Event.SIGNED_OFF && cell(line, RecordReader.DRILL).isEmpty();
        boolean lacksPartner =
                event == Event.WORKED_WITH && cell(line, RecordReader.WITH).isEmpty();
        if (lacksPerson || lacksDrill || lacksPartner) {
            String lacking = lacksPerson ? "whom" : lacksDrill ? "which drill" : "with whom";
            doubt(line, "This line doesn't say " + lacking + ": '" + event.word() + "' needs it.", NOT_COUNTED);
            return false;
        }
        return true;
    }
}
