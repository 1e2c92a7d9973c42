package org.drillwright.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What programs write in front: the marks of the Unicode standard; the signatures of zip and of compound files. */
class TableTextTest {

    private static final String TEXT = "name;hand\nZoé;gauchère\n";

    private static byte[] bytes(int[] mark, String text, Charset charset) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (int one : mark) {
            all.write(one);
        }
        all.writeBytes(text.getBytes(charset));
        return all.toByteArray();
    }

    private static void read(TableText.Form form, String text, byte[] bytes) {
        TableText read = TableText.of(bytes);
        assertEquals(form, read.form());
        assertEquals(text, read.text());
    }

    @Test
    void the_usual_ways_of_writing() {
        int[] none = {};
        read(TableText.Form.UTF_8, TEXT, bytes(none, TEXT, StandardCharsets.UTF_8));
        read(TableText.Form.UTF_8, TEXT, bytes(new int[] {0xEF, 0xBB, 0xBF}, TEXT, StandardCharsets.UTF_8));
        read(TableText.Form.UTF_16, TEXT, bytes(new int[] {0xFF, 0xFE}, TEXT, StandardCharsets.UTF_16LE));
        read(TableText.Form.UTF_16, TEXT, bytes(new int[] {0xFE, 0xFF}, TEXT, StandardCharsets.UTF_16BE));
        read(TableText.Form.WINDOWS, TEXT, bytes(none, TEXT, Charset.forName("windows-1252")));
        read(TableText.Form.UTF_8, "", new byte[0]);
    }

    @Test
    void a_workbook_is_no_text() {
        read(TableText.Form.WORKBOOK, "", bytes(new int[] {'P', 'K', 3, 4}, "x", StandardCharsets.UTF_8));
        read(TableText.Form.WORKBOOK, "", bytes(new int[] {0xD0, 0xCF, 0x11, 0xE0}, "x", StandardCharsets.UTF_8));
        read(TableText.Form.WORKBOOK, "", "a\0b\n".getBytes(StandardCharsets.UTF_8));
    }

    /** One sign of several bytes speaks for UTF-8, and so does one that was cut short at the end. */
    @ParameterizedTest
    @CsvSource({"Zoé,X\u00FFX", "Zoe,Ren\u00C3", "Zoe,x\u00E9"})
    void a_spoilt_byte_doesnt_change_how_the_others_are_read(String whole, String spoilt) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes((whole + "\n").getBytes(StandardCharsets.UTF_8));
        all.writeBytes(spoilt.getBytes(StandardCharsets.ISO_8859_1));
        TableText read = TableText.of(all.toByteArray());
        assertEquals(TableText.Form.UTF_8, read.form());
        assertEquals(whole, read.text().lines().findFirst().orElse(""));
    }
}
