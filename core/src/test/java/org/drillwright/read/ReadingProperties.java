package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.drillwright.source.Field;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Finding;
import org.drillwright.source.LineColumn;
import org.drillwright.source.Severity;
import org.drillwright.source.Span;
import org.drillwright.source.Written;

/** Whatever a file holds, reading gives a drill or says what is wrong, and every place lies inside the file. */
class ReadingProperties {

    private static final String GOOD = Files.GOOD + """
            opening: "Salute. \\"Masks\\" on."
            purpose: >
              Learn the parry
              of quarte.
            note: |
              First slowly,
              then less so.
            start: 'Don''t rush.'
            accept: {not-back-at-start: it goes on}
            cautions:
              - Masks stay on.
            """;

    @Property
    void any_bytes(@ForAll @Size(max = 300) byte[] bytes) {
        assertToldOrRead(Files.read(bytes));
    }

    @Property(tries = 1000)
    void any_pieces_of_yaml(@ForAll("pieces") String text) {
        assertToldOrRead(Files.read(text));
    }

    @Property(tries = 2000)
    void any_mutation_of_a_good_file(@ForAll("mutations") String text) {
        assertToldOrRead(Files.read(text));
    }

    @Property
    void settings_of_any_pieces(@ForAll("pieces") String text) {
        Reading<ReadSchool> reading = SchoolReader.read("school.yaml", text.getBytes(StandardCharsets.UTF_8));
        assertEquals(
                reading.value().isEmpty(),
                reading.findings().stream().anyMatch(finding -> finding.severity() == Severity.ERROR));
        reading.findings().forEach(ReadingProperties::assertInside);
    }

    @Property(tries = 1000)
    void normal_form_piece_by_piece_is_that_of_the_whole(@ForAll("texts") String text) {
        Written form = Normal.form(Written.asItStands(text, 7));
        assertEquals(Normalizer.normalize(text, Normalizer.Form.NFC), form.text());
        for (int at = 0; at < form.text().length(); at++) {
            Span span = form.span(at, at + 1);
            assertTrue(span.start() >= 7 && span.end() <= 7 + text.length() && span.length() > 0);
        }
    }

    @Property
    void the_place_of_a_plain_word_holds_that_word(@ForAll("turns") String turn) {
        String text = Files.with("Parry quarte.", turn);
        ReadDrill drill = Files.read(text).value().orElseThrow(() -> new AssertionError(text));
        Written words = drill.places().words(FieldPath.of("steps/0/follower")).orElseThrow();
        for (int at = 0; at < words.text().length(); at++) {
            assertEquals(words.text().substring(at, at + 1), drill.file().slice(words.span(at, at + 1)));
        }
    }

    @Provide
    Arbitrary<String> turns() {
        return Arbitraries.of("parry", "quarte", "sixte", "\u00e9p\u00e9e", "don't", "\ud83e\udd3a", "\u5263", "a#b")
                .list()
                .ofMinSize(1)
                .ofMaxSize(8)
                .map(words -> "x " + String.join(" ", words));
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.oneOf(Texts.raw(10), Arbitraries.strings().ofMaxLength(12));
    }

    @Provide
    Arbitrary<String> pieces() {
        Arbitrary<String> piece = Arbitraries.of(
                "title: ",
                "level: beginner\n",
                "form: solo\n",
                "weapon: none\n",
                "steps:\n",
                "  - leader: ",
                "    follower: ",
                "\n",
                "\n  ",
                "\n    ",
                "- ",
                "&a ",
                "*a",
                "!x ",
                "\"",
                "'",
                "[",
                "]",
                "{",
                "}",
                "|\n",
                ">-\n",
                "# ",
                " # ",
                ": ",
                ":",
                "?",
                "? ",
                ",",
                "---\n",
                "...\n",
                "%YAML 1.1\n",
                "\t",
                "\u00a0",
                "\r\n",
                "\r",
                "word",
                "\\",
                "\\x41",
                "\\uD83E",
                "<<: ",
                "~",
                "\ufeff",
                "\u0085",
                "\ud83e\udd3a",
                "e\u0301",
                "levels:\n",
                "sets:\n",
                "gear: ");
        return piece.list().ofMaxSize(25).map(list -> String.join("", list));
    }

    @Provide
    Arbitrary<String> mutations() {
        Arbitrary<String> sign = Arbitraries.of(
                "\n",
                "\t",
                " ",
                "  ",
                ":",
                "-",
                "#",
                "\"",
                "'",
                "[",
                "]",
                "{",
                "}",
                "&",
                "*",
                "!",
                "|",
                ">",
                "%",
                "@",
                "`",
                ",",
                "\\",
                "\u00a0",
                "\r",
                "\u201c",
                "\u202e",
                "\u2028",
                "\ud83e\udd3a",
                "\u0301",
                "---\n",
                "a");
        Arbitrary<Integer> kind = Arbitraries.integers().between(0, 4);
        Arbitrary<Integer> place = Arbitraries.integers().between(0, GOOD.length() - 1);
        return Combinators.combine(kind, place, sign)
                .as(ReadingProperties::mutate)
                .list()
                .ofMinSize(1)
                .ofMaxSize(3)
                .map(changes ->
                        changes.stream().reduce(GOOD, (text, change) -> change.apply(text), (one, other) -> other));
    }

    private interface Change {
        String apply(String text);
    }

    private static Change mutate(int kind, int place, String sign) {
        return text -> {
            if (text.isEmpty()) {
                return sign;
            }
            int at = place % text.length();
            int lineStart = text.lastIndexOf('\n', at - 1) + 1;
            int lineEnd = text.indexOf('\n', at) < 0 ? text.length() : text.indexOf('\n', at) + 1;
            lineStart = Math.min(lineStart, lineEnd);
            String line = text.substring(lineStart, lineEnd);
            return switch (kind) {
                case 0 -> text.substring(0, at) + text.substring(at + 1);
                case 1 -> text.substring(0, at) + sign + text.substring(at);
                case 2 -> text.substring(0, at) + text.charAt(at) + text.substring(at);
                case 3 -> text.substring(0, lineStart) + text.substring(lineEnd);
                default -> text.substring(0, lineStart) + line + text.substring(lineStart);
            };
        };
    }

    private static void assertToldOrRead(Reading<ReadDrill> reading) {
        boolean error = reading.findings().stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
        assertEquals(reading.whole().isEmpty(), error, () -> "read or told: " + Files.shown(reading.findings()));
        reading.findings().forEach(ReadingProperties::assertInside);
        reading.value()
                .ifPresent(drill -> drill.places().fields().values().forEach(field -> assertInside(field, drill)));
    }

    private static void assertInside(Finding finding) {
        assertTrue(finding.span().end() <= finding.file().text().length());
        LineColumn position = finding.position();
        Span line = finding.file().line(position.line());
        assertTrue(finding.span().start() >= line.start());
        assertTrue(
                !finding.what().english().isBlank() && !finding.what().english().contains("null"),
                finding.what().english());
    }

    private static void assertInside(Field field, ReadDrill drill) {
        int length = drill.file().text().length();
        assertTrue(field.key().end() <= length && field.value().end() <= length);
        Written words = field.words();
        for (int at = 0; at < words.text().length(); at++) {
            Span span = words.span(at, at + 1);
            assertTrue(field.value().start() <= span.start()
                    && span.end() <= field.value().end());
        }
    }
}
