package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Bytes that are no plain text. The first bytes of the formats are those of their own specifications. */
class FileTextTest {

    static Stream<Arguments> foreign() {
        return Stream.of(
                arguments(
                        "zip, as a word processor writes it",
                        latin("PK\u0003\u0004\u0014\u0000"),
                        "a word processor's file (or another zip archive)"),
                arguments("rtf", latin("{\\rtf1\\ansi Salute.}"), "a rich text file"),
                arguments(
                        "doc",
                        latin("\u00d0\u00cf\u0011\u00e0\u00a1\u00b1\u001a\u00e1"),
                        "an old word processor's file"),
                arguments("pdf", latin("%PDF-1.7\n"), "a PDF file"),
                arguments("html", latin("<!DOCTYPE html><html>"), "a web page"),
                arguments("html without its type", latin("\n <HTML><body>"), "a web page"),
                arguments("xml", latin("<?xml version='1.0'?><w/>"), "an XML file"),
                arguments(
                        "UTF-16, mark first, little end first",
                        utf16("\ufeff", StandardCharsets.UTF_16LE),
                        "text in UTF-16"),
                arguments(
                        "UTF-16, mark first, big end first",
                        utf16("\ufeff", StandardCharsets.UTF_16BE),
                        "text in UTF-16"),
                arguments(
                        "UTF-16 without a mark, little end first",
                        utf16("", StandardCharsets.UTF_16LE),
                        "text in UTF-16"),
                arguments(
                        "UTF-16 without a mark, big end first",
                        utf16("", StandardCharsets.UTF_16BE),
                        "text in UTF-16"));
    }

    private static byte[] latin(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] utf16(String before, Charset charset) {
        return (before + Files.GOOD).getBytes(charset);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("foreign")
    void a_file_of_another_program_is_named(String name, byte[] bytes, String nature) {
        Reading<ReadDrill> reading = Files.read(bytes);
        assertTrue(reading.value().isEmpty());
        assertEquals(
                List.of("This is " + nature + ", not plain text."),
                reading.findings().stream()
                        .map(finding -> finding.what().english())
                        .toList());
    }

    @Test
    void text_in_another_encoding_is_found_where_it_begins() {
        byte[] bytes = latin(Files.with("Parry of quarte", "Parry at the \u00e9p\u00e9e"));
        assertEquals(
                List.of("error not-plain-text 1:21 ''"),
                Files.shown(Files.read(bytes).findings()));
    }

    @Test
    void text_that_breaks_off_inside_a_character_is_found() {
        byte[] whole = "title: \u00e9".getBytes(StandardCharsets.UTF_8);
        assertEquals(
                List.of("error not-plain-text 1:8 ''"),
                Files.shown(Files.read(java.util.Arrays.copyOf(whole, whole.length - 1))
                        .findings()));
    }

    @Test
    void a_byte_order_mark_is_passed_over_with_a_note() {
        Reading<ReadDrill> reading = Files.read("\ufeff" + Files.GOOD);
        assertEquals(List.of("note not-plain-text 1:1 ''"), Files.shown(reading.findings()));
        assertEquals(Files.drill(Files.GOOD), reading.value().orElseThrow().drill());
    }

    @ParameterizedTest(name = "U+{0}")
    @CsvSource({
        "0000, a control character",
        "0007, a control character",
        "001B, a control character",
        "007F, a control character",
        "0085, a control character",
        "2028, it ends a line",
        "2029, it ends a line",
        "061C, it reverses the direction of the text",
        "200E, it reverses the direction of the text",
        "200F, it reverses the direction of the text",
        "202A, it reverses the direction of the text",
        "202E, it reverses the direction of the text",
        "2066, it reverses the direction of the text",
        "2069, it reverses the direction of the text",
        "FEFF, not a character in any script",
        "FFFF, not a character in any script",
        "FDD0, not a character in any script",
        "1FFFE, not a character in any script"
    })
    void a_hidden_character_is_refused_at_its_place(String hex, String nature) {
        String hidden = Character.toString(Integer.parseInt(hex, 16));
        Finding finding = Files.onlyError(Files.with("Parry quarte.", "Par" + hidden + "ry quarte."));
        assertEquals("not-plain-text", finding.rule());
        assertEquals(
                "There is a hidden character here (U+" + hex + ", " + nature + ").",
                finding.what().english());
        assertEquals(8, finding.position().line());
        assertEquals(18, finding.position().column());
        assertEquals(hidden, finding.file().slice(finding.span()));
    }

    @ParameterizedTest
    @CsvSource({
        "\\x07, 8:20",
        "\\e, 8:20",
        "\\u202E, 8:20",
        "\\U0000202E, 8:20",
        "\\u200E, 8:20",
        "\\u200F, 8:20",
        "\\u061C, 8:20",
        "\\0, 8:20",
        "\\L, 8:20",
        "\\uD800, 8:20"
    })
    void a_hidden_character_behind_an_escape_is_refused_at_its_place(String escape, String place) {
        assertEquals(
                List.of("error not-plain-text " + place + " '" + escape + "'"),
                Files.shown(Files.read(Files.with("Parry quarte.", "\"Parr" + escape + "y\""))
                        .findings()));
    }

    @Test
    void marks_that_a_script_needs_are_left_alone() {
        for (String text : List.of(
                "\u0645\u06cc\u200c\u0631\u0648\u0645",
                "\u05d0\u200f!",
                "\u05d0 (foil\u200e)",
                "\u0645\u061c!",
                "\ud83d\udc69\u200d\ud83c\udf93",
                "a\u0300\u0323")) {
            Files.drill(Files.with("Parry quarte.", text));
        }
    }

    @Test
    void no_more_hidden_characters_are_told_than_anyone_reads() {
        assertEquals(20, Files.read("\u0007".repeat(500)).findings().size());
    }
}
