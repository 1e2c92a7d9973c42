package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.text.PDFTextStripper;
import org.drillwright.print.Example;
import org.drillwright.print.MadeUp;
import org.drillwright.print.faults.Started;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A sixth language is a folder of files on the class path, with a line in the list of languages, and no Java: a program that
 * never heard of it talks and prints in it.
 */
class SixthLanguageTest {

    private static final List<String> COMMANDS = List.of(
            "check --speak qal",
            "check --speak qar",
            "explain parry-of-quarte --speak qal",
            "cards parry-of-quarte cut-over --back pictures --out cards.pdf",
            "handout training --out handout.pdf",
            "booklet --out booklet.pdf",
            "pairs tonight --out wall.pdf",
            "pairs tonight --slips --out slips.pdf",
            "pairs tonight --by round --out rounds.pdf",
            "lesson tonight --out lesson.pdf",
            "lesson tonight --speak qar",
            "hall tonight --out hall.pdf",
            "progress --out progress.pdf",
            "session Ash Dee --out session.pdf",
            "packet tonight --out packet.pdf",
            "term winter --date 2026-12-03 --out term.pdf",
            "handout training --html --out page.html",
            "pairs tonight --html --out evening.html");

    @TempDir
    Path temporary;

    /** Runs all of them in one process and prints what they say. */
    static final class All {

        private All() {}

        public static void main(String[] folder) {
            StringBuilder all = new StringBuilder();
            for (String command : COMMANDS) {
                Trial trial = Trial.run(Path.of(folder[0]), command.split(" "));
                all.append(trial.code() > 1 ? "FAILED " + command + "\n" : "")
                        .append(trial.out())
                        .append(trial.err());
            }
            new java.io.PrintStream(System.out, true, StandardCharsets.UTF_8).print(all);
        }
    }

    /** The program has two of them more then; what is printed is in the one that is read from the right. */
    @Test
    void a_folder_of_data_and_no_java() throws Exception {
        MadeUp language = MadeUp.FROM_THE_RIGHT;
        String tag = language.language().word();
        Path words = temporary.resolve("words");
        language.writeInto(words);
        MadeUp.LONG.writeInto(words);
        Path list = words.resolve("org/drillwright/model/languages");
        Files.createDirectories(list.getParent());
        Files.writeString(list, "en\n" + MadeUp.LONG.language().word() + "\n" + tag + "\n");
        Path school = Example.copyTo(temporary.resolve("school"));
        Path settings = school.resolve("school.yaml");
        Files.writeString(
                settings, Files.readString(settings).replaceAll("(?m)^language:.*", "") + "\nlanguage: " + tag + "\n");

        String said = said(words, school);
        assertFalse(said.contains("FAILED") || said.contains("Exception"), said);
        for (MadeUp spoken : MadeUp.values()) {
            assertTrue(said.contains(spoken.said("Accepted by the author")), said);
        }
        for (Path made : made(school, ".pdf")) {
            try (PDDocument pdf = Loader.loadPDF(made.toFile())) {
                PDDocumentCatalog catalog = pdf.getDocumentCatalog();
                assertEquals(tag, catalog.getLanguage(), made::toString);
                assertEquals("R2L", catalog.getViewerPreferences().getReadingDirection(), made::toString);
                assertTrue(isHebrew(new PDFTextStripper().getText(pdf)), made::toString);
            }
        }
        for (Path made : made(school, ".html")) {
            assertTrue(Files.readString(made).contains("<html lang=\"" + tag + "\" dir=\"rtl\">"), made::toString);
        }
        assertEquals(12 + 2, made(school, ".pdf").size() + made(school, ".html").size());
    }

    private static boolean isHebrew(String text) {
        return text.codePoints()
                .anyMatch(letter -> Character.UnicodeScript.of(letter) == Character.UnicodeScript.HEBREW);
    }

    private static List<Path> made(Path school, String ending) throws IOException {
        try (Stream<Path> files = Files.list(school)) {
            return files.filter(file -> file.toString().endsWith(ending)).toList();
        }
    }

    private String said(Path words, Path school) throws IOException, InterruptedException {
        String classPath = words + File.pathSeparator + System.getProperty("java.class.path");
        List<String> command = new ArrayList<>(Started.java(List.of(), classPath, All.class));
        command.addAll(List.of(school.toString()));
        Path out = temporary.resolve("out");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(temporary.resolve("err").toFile())
                .start();
        assertTrue(process.waitFor(300, TimeUnit.SECONDS), "it hangs");
        return Files.readString(out);
    }
}
