package org.drillwright.read;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.drillwright.source.Finding;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.table.TableText;
import org.drillwright.wording.Message;

/**
 * A file's bytes as text.
 *
 * @param file the text, or as much of it as could be read
 * @param usable whether all of it could be read
 */
record FileText(SourceFile file, List<Finding> findings, boolean usable) {

    private static final String RULE = ReadingRule.NOT_PLAIN_TEXT.id();

    /** Reads bytes as UTF-8; a byte order mark is passed over with a note. */
    public static FileText decode(String name, byte[] bytes) {
        Optional<Message> foreign = ForeignFormat.recognise(bytes);
        if (bytes.length > ReadingLimits.FILE_BYTES) {
            return tooLarge(name, Message.of(FileText.class, "too.large.drill"));
        }
        if (foreign.isPresent()) {
            return refused(
                    name,
                    RULE,
                    Message.of(FileText.class, "foreign.text", foreign.get()),
                    Message.of(FileText.class, "foreign.text.way"));
        }
        return decodeText(name, bytes);
    }

    /** Reads the bytes of a table, in whatever way a spreadsheet wrote its text. */
    static FileText table(String name, byte[] bytes) {
        if (bytes.length > ReadingLimits.FILE_BYTES) {
            return tooLarge(name, Message.of(FileText.class, "too.large.roster"));
        }
        TableText table = TableText.of(bytes);
        Findings findings = new Findings(new SourceFile(name, table.text()));
        table.report(RULE, findings);
        int lost = table.text().indexOf(TableText.NO_TEXT);
        if (lost >= 0) {
            findings.error(
                    RULE,
                    new Span(lost, lost + 1),
                    Message.of(FileText.class, "no.text"),
                    Message.of(FileText.class, "no.text.way"));
        }
        ForeignFormat.recognise(table.text().getBytes(StandardCharsets.ISO_8859_1))
                .ifPresent(foreign -> findings.error(
                        RULE,
                        Span.at(0),
                        Message.of(FileText.class, "foreign.table", foreign),
                        Message.of(FileText.class, "foreign.table.way")));
        HiddenCharacters.report(findings);
        return new FileText(findings.file(), findings.list(), !findings.hasError());
    }

    private static FileText tooLarge(String name, Message wayOut) {
        Message what = Message.of(FileText.class, "too.large", ReadingLimits.FILE_BYTES / 1024);
        return refused(name, ReadingRule.SEVERAL_IN_ONE_FILE.id(), what, wayOut);
    }

    private static FileText refused(String name, String rule, Message what, Message wayOut) {
        Findings findings = new Findings(new SourceFile(name, ""));
        findings.error(rule, Span.at(0), what, wayOut);
        return new FileText(findings.file(), findings.list(), false);
    }

    private static FileText decodeText(String name, byte[] bytes) {
        int mark = hasByteOrderMark(bytes) ? 3 : 0;
        ByteBuffer in = ByteBuffer.wrap(bytes, mark, bytes.length - mark);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        CoderResult result = decoder.decode(in, out, true);
        SourceFile file = new SourceFile(name, out.flip().toString());
        Findings findings = new Findings(file);
        if (mark > 0) {
            findings.note(
                    RULE,
                    Span.at(0),
                    Message.of(FileText.class, "byte.order.mark"),
                    Message.of(FileText.class, "byte.order.mark.way"));
        }
        if (result.isError()) {
            findings.error(
                    RULE,
                    Span.at(file.text().length()),
                    Message.of(FileText.class, "not.utf8"),
                    Message.of(FileText.class, "not.utf8.way"));
            return new FileText(file, findings.list(), false);
        }
        HiddenCharacters.report(findings);
        return new FileText(file, findings.list(), !findings.hasError());
    }

    private static boolean hasByteOrderMark(byte[] bytes) {
        return bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF;
    }
}
