package org.drillwright.register;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import org.drillwright.source.Findings;
import org.drillwright.source.Span;
import org.drillwright.table.CsvLine;
import org.drillwright.table.Heading;
import org.drillwright.table.Repeated;
import org.drillwright.table.TableText;
import org.drillwright.wording.Message;

/** Reads the lines of a record one by one into its ledger. */
final class LineReader {

    private static final Message NOT_COUNTED = Message.of(LineReader.class, "not.counted");

    private final Findings findings;
    private final Heading heading;
    private final RecordDates dates;
    private final Ledger ledger;
    private final Repeated repeated = new Repeated();
    private final KnownNames people;
    private final KnownNames drills;
    private Members members = Members.NONE;
    private Set<String> gone = Set.of();

    LineReader(Findings findings, Heading heading, RecordDates dates, RecordAround around, Ledger ledger) {
        this.findings = findings;
        this.heading = heading;
        this.dates = dates;
        this.ledger = ledger;
        this.people = KnownNames.people(around, repeated);
        this.drills = KnownNames.drills(around.drills(), repeated);
    }

    /** Looks first for who was renamed and who left: lines above speak of them, too. */
    Members members(List<CsvLine> lines) {
        Members found = new Members();
        lines.stream()
                .filter(line -> tells(line, Event.RENAMED) && isWhole(line))
                .forEach(line -> dates.of(line)
                        .filter(date -> !cell(line, RecordReader.WITH).isEmpty())
                        .ifPresent(date -> found.renamed(
                                date, at(line), cell(line, RecordReader.PERSON), cell(line, RecordReader.WITH))));
        lines.stream()
                .filter(line -> (tells(line, Event.LEFT) || tells(line, Event.RETURNED)) && isWhole(line))
                .forEach(line -> dates.of(line)
                        .ifPresent(date -> found.going(
                                date,
                                at(line),
                                found.now(cell(line, RecordReader.PERSON), date, at(line)),
                                tells(line, Event.LEFT))));
        members = found;
        gone = found.gone();
        return found;
    }

    private boolean isWhole(CsvLine line) {
        return line.ended() && !cell(line, RecordReader.PERSON).isEmpty();
    }

    private static int at(CsvLine line) {
        return line.span().start();
    }

    private boolean tells(CsvLine line, Event event) {
        return cell(line, RecordReader.EVENT).equalsIgnoreCase(event.word());
    }

    void read(CsvLine line) {
        if (!line.ended()) {
            doubt(
                    line,
                    Message.of(LineReader.class, "line.cut.short"),
                    Message.of(LineReader.class, "line.cut.short.way"));
        } else if (line.span().length() > RecordReader.MOST_LINE) {
            doubt(line, Message.of(LineReader.class, "line.too.long", RecordReader.MOST_LINE), NOT_COUNTED);
        } else if (findings.file().slice(line.span()).contains(TableText.NO_TEXT)) {
            doubt(line, Message.of(LineReader.class, "line.damaged"), NOT_COUNTED);
        } else if (leavesQuoteOpen(line)) {
            doubt(line, Message.of(LineReader.class, "line.quote.open"), NOT_COUNTED);
        } else if (hasWrongLength(line)) {
            doubt(
                    line,
                    Message.counted(LineReader.class, "line.cells", line.cells().size(), heading.width()),
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

    private void doubt(CsvLine line, Message what, Message wayOut) {
        findings.warning(RecordRule.LINE_BROKEN.id(), line.span(), what, wayOut);
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
        Optional<Event> event = Event.of(RecordLine.eventOf(words))
                .filter(one -> one.isOfAClass() || one.isOfTwo() || !RecordLine.takesBack(words));
        if (event.isEmpty()) {
            repeated.add(
                    RecordRule.WRONG_WORD.id(),
                    line.place(heading.column(RecordReader.EVENT)),
                    Message.of(LineReader.class, "no.event", cell(line, RecordReader.EVENT)),
                    Message.of(LineReader.class, "no.event.way"));
        }
        if (date.isEmpty() || event.isEmpty() || !complete(line, event.get())) {
            return Optional.empty();
        }
        if (event.get() == Event.RENAMED) {
            return Optional.of(
                    Entry.renamed(date.get(), cell(line, RecordReader.PERSON), cell(line, RecordReader.WITH)));
        }
        Optional<String> person = person(line, RecordReader.PERSON, date.get());
        Optional<String> with = person(line, RecordReader.WITH, date.get());
        Optional<String> drill = event.get() == Event.WORKED_MINUTES
                ? Optional.of(Event.minutes(words))
                : drills.known(cell(line, RecordReader.DRILL), place(line, RecordReader.DRILL));
        return person.isPresent() && with.isPresent() && drill.isPresent()
                ? Optional.of(new Entry(date.get(), person.get(), drill.get(), event.get(), with.get()))
                : Optional.empty();
    }

    /** Whoever had that name on that day, as the person is called now. */
    private Optional<String> person(CsvLine line, String field, LocalDate date) {
        String now = members.now(cell(line, field), date, at(line));
        return gone.contains(now) ? Optional.of(now) : people.known(now, place(line, field));
    }

    private Span place(CsvLine line, String field) {
        return line.place(heading.column(field));
    }

    private boolean complete(CsvLine line, Event event) {
        boolean lacksPerson = cell(line, RecordReader.PERSON).isEmpty();
        boolean lacksDrill = (event == Event.SIGNED_OFF || event == Event.LED_FIRST)
                && cell(line, RecordReader.DRILL).isEmpty();
        boolean lacksPartner = (event == Event.WORKED_WITH || event == Event.RENAMED || event.isOfTwo())
                && cell(line, RecordReader.WITH).isEmpty();
        if (lacksPerson || lacksDrill || lacksPartner) {
            String lacking = lacksPerson
                    ? "lacks.who"
                    : lacksDrill ? "lacks.drill" : event == Event.RENAMED ? "lacks.new.name" : "lacks.partner";
            doubt(line, Message.of(LineReader.class, lacking, event.word()), NOT_COUNTED);
            return false;
        }
        return true;
    }
}
