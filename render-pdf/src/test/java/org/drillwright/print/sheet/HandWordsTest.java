package org.drillwright.print.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.drillwright.model.Language;
import org.drillwright.print.command.PlanFiles;
import org.drillwright.print.command.Sheets;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.sheet.wall.WallTexts;
import org.drillwright.print.text.GlyphCoverage;
import org.drillwright.print.wording.Written;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class HandWordsTest {

    private static final Pattern LETTERS = Pattern.compile("\\p{L}{2,}");

    @Test
    void every_word_is_in_the_file_and_no_other() {
        assertEquals(
                Arrays.stream(HandWord.values()).map(HandWord::key).collect(Collectors.toCollection(TreeSet::new)),
                Written.keys(HandWords.class, "words"));
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void every_word_can_be_printed(Language language) {
        GlyphCoverage coverage = new GlyphCoverage(Family.dejaVu());
        Written.texts(HandWords.class, "words", language)
                .forEach(text -> assertEquals(List.of(), coverage.missing(text)));
    }

    /** Decimal signs: Unicode CLDR, from memory. 2026-12-02 is a Wednesday (ISO 8601). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en | 18.5 | Lesson of Wednesday 2026-12-02",
                "fr | 18,5 | Leçon du mercredi 2 décembre 2026",
                "it | 18,5 | Lezione di mercoledì 2 dicembre 2026",
                "es | 18,5 | Clase del miércoles, 2 de diciembre de 2026",
                "de | 18,5 | Stunde am Mittwoch, 2. Dezember 2026"
            })
    void dates_and_figures_are_written_as_in_the_language(String tag, String metres, String lesson) {
        HandWords words = HandWords.in(new Language(tag));
        assertEquals(metres, words.metres(1850));
        assertEquals(lesson, words.of(HandWord.LESSON_OF, LocalDate.of(2026, 12, 2)));
    }

    private static Set<String> words(String text) {
        return LETTERS.matcher(text.toLowerCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toSet());
    }

    private static Set<String> bundle(Language language) {
        return Stream.concat(
                        Written.texts(HandWords.class, "words", language),
                        Written.texts(WallTexts.class, "words", language))
                .flatMap(text -> words(text).stream())
                .collect(Collectors.toSet());
    }

    /** A long date doesn't run into the room for the time of day: in Spanish it is the longest. */
    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void the_head_of_a_lesson_leaves_room_for_the_time_of_day(Language language, @TempDir Path root)
            throws IOException {
        PlanFiles.of(root, 3, 3).with("classes/tonight.yaml", "date: 2026-09-30\nminutes: 90\ndrills: [riposte]\n");
        Path settings = root.resolve("school.yaml");
        Files.writeString(settings, "language: " + language.word() + "\n" + Files.readString(settings));
        assertEquals(0, Sheets.print(root, "lesson", "tonight", "--out", "sheet.pdf"));
        List<TextPosition> top = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(root.resolve("sheet.pdf")))) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    if (letter.getY() < 60) {
                        top.add(letter);
                    }
                }
            }.getText(pdf);
        }
        double title = top.stream()
                .filter(letter -> letter.getFontSizeInPt() > 13)
                .mapToDouble(letter -> letter.getX() + letter.getWidth())
                .max()
                .orElseThrow();
        double begins = top.stream()
                .filter(letter -> letter.getFontSizeInPt() < 13)
                .mapToDouble(TextPosition::getX)
                .min()
                .orElseThrow();
        assertTrue(title < begins, title + " " + begins);
    }

    /** Too little time, a hall with fewer lanes than pairs, an uneven class, many who are new: all has to be told. */
    @ParameterizedTest
    @ValueSource(strings = {"fr", "it", "es", "de"})
    void no_english_word_is_on_a_sheet(String tag, @TempDir Path root) throws IOException {
        Language language = new Language(tag);
        PlanFiles.of(root, 9, 2).with("classes/tonight.yaml", """
                        date: 2026-08-26
                        minutes: 40
                        drills: [straight, riposte]
                        settings: {straight: {rounds: 2}}
                        hall: {length: 12, width: 5}
                        blocks: [{name: Zzz, place: after, minutes: 5}]
                        """);
        Path settings = root.resolve("school.yaml");
        Files.writeString(settings, "language: " + tag + "\n" + Files.readString(settings));
        StringBuilder written = new StringBuilder();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file :
                    files.filter(file -> file.toString().endsWith(".yaml")).toList()) {
                written.append(Files.readString(file));
            }
        }
        for (List<String> sheet : List.of(
                List.of("lesson", "tonight"),
                List.of("hall", "tonight"),
                List.of("progress"),
                List.of("session", "Old0", "Old1"),
                List.of("packet", "tonight"))) {
            List<String> arguments = new ArrayList<>(sheet);
            arguments.addAll(List.of("--out", "sheet.pdf"));
            Sheets.print(root, arguments.toArray(String[]::new));
            try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(root.resolve("sheet.pdf")))) {
                Set<String> found = words(new PDFTextStripper().getText(pdf));
                found.retainAll(bundle(Language.ENGLISH));
                found.removeAll(bundle(language));
                found.removeAll(words(written.toString()));
                assertEquals(Set.of(), found, sheet.toString());
                assertEquals(tag, pdf.getDocumentCatalog().getLanguage());
            }
            Files.delete(root.resolve("sheet.pdf"));
        }
    }
}
