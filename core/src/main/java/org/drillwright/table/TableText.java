package org.drillwright.table;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.drillwright.source.Findings;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/**
 * A table's bytes as text.
 *
 * @param text without the mark that says that it is Unicode; where bytes of UTF-8 are no text, {@link #NO_TEXT} stands
 * @param form how it was written
 */
public record TableText(String text, Form form) {

    /** Stands where bytes are no text. */
    public static final String NO_TEXT = "\uFFFD";

    /** How a table's text is written. */
    public enum Form {
        UTF_8("UTF-8"),
        UTF_16("UTF-16"),
        WINDOWS("Windows-1252"),
        /** No text at all: the file in which a spreadsheet keeps its own. */
        WORKBOOK("a workbook");

        private final String word;

        Form(String word) {
            this.word = word;
        }

        /** The name of it. */
        public String word() {
            return word;
        }
    }

    private static final byte[][] UTF_8_MARK = {{(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}};
    private static final byte[][] LITTLE = {{(byte) 0xFF, (byte) 0xFE}};
    private static final byte[][] BIG = {{(byte) 0xFE, (byte) 0xFF}};

    /** The first bytes of a zip archive, of an old workbook. */
    private static final byte[][] WORKBOOKS = {
        {'P', 'K', 3, 4}, {'P', 'K', 5, 6}, {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0}
    };

    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

    /** Reads bytes by their mark; else as UTF-8; else, if nothing speaks for UTF-8 at all, as Windows-1252. */
    public static TableText of(byte[] bytes) {
        if (begins(bytes, WORKBOOKS)) {
            return new TableText("", Form.WORKBOOK);
        }
        if (begins(bytes, LITTLE) || begins(bytes, BIG)) {
            Charset order = begins(bytes, LITTLE) ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
            return new TableText(new String(bytes, 2, bytes.length - 2, order), Form.UTF_16);
        }
        if (hasNothingInFirstLine(bytes)) {
            return new TableText("", Form.WORKBOOK);
        }
        int mark = begins(bytes, UTF_8_MARK) ? 3 : 0;
        return (mark > 0 || isUtf8(bytes) ? Optional.<String>empty() : strictly(WINDOWS_1252, bytes))
                .map(text -> new TableText(text, Form.WINDOWS))
                .orElseGet(() -> new TableText(
                        new String(bytes, mark, bytes.length - mark, StandardCharsets.UTF_8), Form.UTF_8));
    }

    private static boolean begins(byte[] bytes, byte[][] beginnings) {
        for (byte[] beginning : beginnings) {
            if (bytes.length >= beginning.length
                    && ByteBuffer.wrap(bytes, 0, beginning.length).equals(ByteBuffer.wrap(beginning))) {
                return true;
            }
        }
        return false;
    }

    /** A pulled plug may leave bytes of nothing behind, but never in front. */
    private static boolean hasNothingInFirstLine(byte[] bytes) {
        for (byte one : bytes) {
            if (one == 0 || one == '\n' || one == '\r') {
                return one == 0;
            }
        }
        return false;
    }

    /** Whether all is UTF-8, or some sign of several bytes is, or the text ends within one: then it was cut short. */
    private static boolean isUtf8(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, /* endOfInput= */ false);
        while (result.isError()) {
            in.position(in.position() + result.length());
            out.put(NO_TEXT);
            result = decoder.reset().decode(in, out, /* endOfInput= */ false);
        }
        String text = out.flip().toString();
        return in.hasRemaining()
                || !text.contains(NO_TEXT)
                || text.chars().anyMatch(unit -> unit > 0x7F && unit != NO_TEXT.charAt(0));
    }

    private static Optional<String> strictly(Charset charset, byte[] bytes) {
        try {
            return Optional.of(
                    charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
        } catch (CharacterCodingException other) {
            return Optional.empty();
        }
    }

    /** Whether lines of UTF-8 can be written behind it. */
    public boolean takesLines() {
        return form == Form.UTF_8;
    }

    /** Tells, once, of a form that isn't UTF-8. */
    public void report(String rule, Findings findings) {
        if (form == Form.WORKBOOK) {
            findings.error(
                    rule,
                    Span.at(0),
                    Message.of(TableText.class, "workbook"),
                    Message.of(TableText.class, "workbook.way"));
        } else if (form != Form.UTF_8) {
            findings.note(
                    rule,
                    Span.at(0),
                    Message.of(TableText.class, "not.utf8", form.word()),
                    Message.of(TableText.class, "not.utf8.way"));
        }
    }
}
