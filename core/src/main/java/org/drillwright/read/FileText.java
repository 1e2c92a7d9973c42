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

/**
 * A file's bytes as text.
 *
 * @param file the text, or as much of it as could be read
 * @param usable whether all of it could be read
 */
public record FileText(SourceFile file, List<Finding> findings, boolean usable) {

    private static final String RULE = ReadingRule.NOT_PLAIN_TEXT.id();

    /** Reads bytes as UTF-8; a byte order mark is passed over with a note. */
    public static FileText decode(String name, byte[] bytes) {
        Optional<String> foreign = ForeignFormat.recognise(bytes);
        if (bytes.length > ReadingLimits.FILE_BYTES) {
            return tooLarge(name, "A drill is a page or two of text: put each drill in a file of its own.");
        }
        if (foreign.isPresent()) {
            return refused(
                    name,
                    RULE,
                    "This is " + foreign.get() + ", not plain text.",
                    "Open it in the program it came from and save it as plain text (UTF-8), ending in .yaml.");
        }
        return decodeText(name, bytes);
    }

    /** Reads the bytes of a table, in whatever way a spreadsheet wrote its text. */
    static FileText table(String name, byte[] bytes) {
        if (bytes.length > ReadingLimits.FILE_BYTES) {
            return tooLarge(name, "A roster has one line for each person: leave out everything else.");
        }
        TableText table = TableText.of(bytes);
        Findings findings = new Findings(new SourceFile(name, table.text()));
        table.report(RULE, findings);
        int lost = table.text().indexOf(TableText.NO_TEXT);
        if (lost >= 0) {
            findings.error(
                    RULE,
                    new Span(lost, lost + 1),
                    "The bytes here are not text.",
                    "Save the table again as CSV UTF-8, and retype this word.");
        }
        ForeignFormat.recognise(table.text().getBytes(StandardCharsets.ISO_8859_1))
                .ifPresent(foreign -> findings.error(
                        RULE,
                        Span.at(0),
                        "This is " + foreign + ", not a table.",
                        "Open it in the program it came from and save it as CSV (UTF-8)."));
        HiddenCharacters.report(findings);
        return new FileText(findings.file(), findings.list(), !findings.hasError());
    }

    private static FileText tooLarge(String name, String wayOut) {
        String what = "This file is larger than " + ReadingLimits.FILE_BYTES / 1024 + " KiB.";
        return refused(name, ReadingRule.SEVERAL_IN_ONE_FILE.id(), what, wayOut);
    }

    private static FileText refused(String name, String rule, String what, String wayOut) {
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
                    "The file begins with an invisible mark (a byte order mark).",
                    "It was ignored; saving as 'UTF-8' rather than 'UTF-8 with BOM' leaves it out.");
        }
        if (result.isError()) {
            findings.error(
                    RULE,
                    Span.at(file.text().length()),
                    "The text is not UTF-8 from here on.",
                    "Save the file again with the encoding UTF-8; nothing after this point was read.");
            return new FileText(file, findings.list(), false);
        }
        HiddenCharacters.report(findings);
        return new FileText(file, findings.list(), !findings.hasError());
    }

    private static boolean hasByteOrderMark(byte[] bytes) {
        return bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF;
    }
}
