package org.drillwright.register;

import java.util.List;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.table.CsvLine;
import org.drillwright.table.CsvTable;
import org.drillwright.table.Heading;
import org.drillwright.table.TableText;
import org.drillwright.wording.Message;

/**
 * Reads a record, also one that a spreadsheet has saved. A line that cannot be read counts for nothing and is a warning: the
 * record is never rewritten, so one bad line must not lock the rest away, and a sign-off that is lost makes a plan more
 * careful, not less.
 */
public final class RecordReader {

    /** Bytes of a record: years of classes, and no more than a machine reads in a moment. */
    public static final int MOST_BYTES = 32 * 1024 * 1024;

    /** Characters of one line. */
    public static final int MOST_LINE = 2_000;

    static final String DATE = "date";
    static final String PERSON = "person";
    static final String DRILL = "drill";
    static final String EVENT = "event";
    static final String WITH = "with";

    static final List<String> COLUMNS = List.of(DATE, PERSON, DRILL, EVENT, WITH);

    private final Findings findings;
    private final TableText text;
    private final RecordAround around;

    private RecordReader(String name, TableText text, RecordAround around) {
        this.findings = new Findings(new SourceFile(name, text.text()));
        this.text = text;
        this.around = around;
    }

    /** Reads a record's bytes; bytes that are no text spoil their own line only. */
    public static ReadHistory read(String name, byte[] bytes, RecordAround around) {
        if (bytes.length > MOST_BYTES) {
            Findings findings = new Findings(new SourceFile(name, ""));
            findings.error(
                    RecordRule.UNREADABLE.id(),
                    Span.at(0),
                    Message.of(RecordReader.class, "too.large", MOST_BYTES / (1024 * 1024)),
                    Message.of(RecordReader.class, "too.large.way"));
            return ReadHistory.nothing(findings.list());
        }
        return new RecordReader(name, TableText.of(bytes), around).read();
    }

    private ReadHistory read() {
        text.report(RecordRule.UNREADABLE.id(), findings);
        Ledger ledger = new Ledger(findings);
        CsvTable table = CsvTable.lineByLine(text.text());
        if (table.isEmpty()) {
            return ledger.closed(Members.NONE, form(table.separator(), List.of()));
        }
        Heading heading = Heading.of(table, COLUMNS, around.tables());
        List<String> order = heading.inOrder();
        if (!order.containsAll(COLUMNS)) {
            findings.error(
                    RecordRule.UNREADABLE.id(),
                    table.heading().span(),
                    Message.of(RecordReader.class, "no.heading"),
                    Message.of(RecordReader.class, "no.heading.way", String.join(",", COLUMNS)));
        }
        heading.report(RecordRule.UNREADABLE.id(), findings);
        if (!findings.hasError()) {
            return ledger.closed(lines(table.body(), heading, ledger), form(table.separator(), order));
        }
        return ledger.closed(Members.NONE, form(table.separator(), order));
    }

    private RecordForm form(char separator, List<String> order) {
        String all = text.text();
        return new RecordForm(text.form(), separator, order, all.isEmpty() || all.endsWith("\n"));
    }

    private Members lines(List<CsvLine> lines, Heading heading, Ledger ledger) {
        RecordDates dates = new RecordDates(lines, heading.column(DATE), around);
        dates.report(findings);
        LineReader reader = new LineReader(findings, heading, dates, around, ledger);
        Members members = reader.members(lines);
        lines.forEach(reader::read);
        reader.report();
        return members;
    }
}
