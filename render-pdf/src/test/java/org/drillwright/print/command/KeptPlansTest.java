package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was printed holds: it is found again by its mark, and only rounds still to come are planned anew. */
class KeptPlansTest {

    @TempDir
    Path folder;

    private static String mark(Trial kept) {
        return kept.out().replaceFirst("(?s).*?([1-9A-Z]{4}-[1-9A-Z]).*", "$1");
    }

    private List<String> kept() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("classes/plans"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private String rounds(PlanFiles files, String mark, int count) throws IOException {
        String text = files.read("classes/plans/2026-08-26-" + mark + ".yaml");
        String[] parts = text.substring(text.indexOf("rounds:")).split("(?=  - drill)");
        return String.join("", List.of(parts).subList(1, count + 1));
    }

    @Test
    void the_mark_stands_at_the_foot_of_each_page_that_hangs() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 6, 6)
                .with(
                        "classes/tonight.yaml",
                        "date: 2026-08-26\nminutes: 90\ndrills: [riposte]\nhall: {length: 18," + " width: 10}\n");
        String mark = mark(files.run("pairs", "tonight", "--keep"));
        assertEquals(List.of("2026-08-26-" + mark + ".yaml"), kept());
        for (String sheet : List.of("pairs", "lesson", "hall")) {
            files.run(sheet, "tonight", "--out", sheet + ".pdf");
            try (var document = Loader.loadPDF(folder.resolve(sheet + ".pdf").toFile())) {
                for (int page = 1; page <= document.getNumberOfPages(); page++) {
                    PDFTextStripper text = new PDFTextStripper();
                    text.setStartPage(page);
                    text.setEndPage(page);
                    assertTrue(text.getText(document).contains("Plan " + mark), sheet + " " + page);
                }
            }
        }
        assertTrue(files.run("pairs", "tonight", "--format", "json").out().contains("\"mark\" : \"" + mark + "\""));
    }

    /** A plan whose sheet can't be printed hangs nowhere. */
    @Test
    void what_cannot_be_printed_is_not_kept() {
        PlanFiles files = PlanFiles.of(folder, 0, 0)
                .with("roster.yaml", "people:\n  - {name: \u0910\u0936, knows: [riposte]}\n  - {name: Bo}\n");
        Trial trial = files.run("pairs", "tonight", "--out", "wall.pdf");
        assertEquals(2, trial.code());
        assertTrue(
                trial.err()
                        .contains(
                                "can't be printed: the typeface has no U+0910. Name a font that has it in school.yaml"),
                trial.err());
        assertTrue(Files.notExists(folder.resolve("classes/plans")));
        assertEquals(
                0,
                files.run("pairs", "tonight", "--html", "--out", "evening.html").code());
    }

    /** With a font for it the same name is printed, beside one in Latin letters. */
    @Test
    void a_name_in_another_script_is_printed_in_a_font_that_has_it() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 0, 0)
                .with(
                        "roster.yaml",
                        "people:\n  - {name: \u0936\u094D\u0930\u0947\u092F\u093E, knows: [riposte]}\n  - {name: Bo}\n")
                .with("school.yaml", SchoolFiles.SETTINGS + "font: {also: [names.ttf]}\n");
        try (InputStream font =
                KeptPlansTest.class.getResourceAsStream("/org/drillwright/print/fonts/devanagari.ttf")) {
            Files.copy(Objects.requireNonNull(font), folder.resolve("names.ttf"));
        }
        for (List<String> sheet : List.of(
                List.of("pairs", "tonight"),
                List.of("pairs", "tonight", "--slips"),
                List.of("pairs", "tonight", "--by", "round"),
                List.of("packet", "tonight"),
                List.of("progress"))) {
            List<String> arguments = new ArrayList<>(sheet);
            arguments.addAll(List.of("--out", "sheet.pdf"));
            Trial trial = files.run(arguments.toArray(String[]::new));
            assertEquals(0, trial.code(), trial.err());
            try (var document = Loader.loadPDF(folder.resolve("sheet.pdf").toFile())) {
                String text = new PDFTextStripper().getText(document);
                assertTrue(text.contains("Bo") && text.contains("\u092F"), sheet + text);
            }
        }
    }

    @Test
    void the_same_command_twice_changes_nothing() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 6, 6);
        String mark = mark(files.run("pairs", "tonight", "--keep"));
        String same = "Nothing changed: " + mark + " is still the one on the wall.\n";
        assertEquals(same, files.run("pairs", "tonight", "--keep").out());
        String[] late = "pairs tonight --keep --from-round 3 --without Old0 --without New5".split(" ");
        String second = mark(files.run(late));
        assertEquals(
                "Nothing changed: " + second + " is still the one on the wall.\n",
                files.run(late).out());
        String[] later = (String.join(" ", late) + " --from-round 5 --with Old0 --with New5").split(" ");
        String third = mark(files.run(later));
        assertEquals(
                "Nothing changed: " + third + " is still the one on the wall.\n",
                files.run(later).out());
        assertEquals(
                "Nothing changed: " + third + " is still the one on the wall.\n",
                files.run("pairs", "tonight", "--keep").out());
        assertEquals(3, kept().size());
    }

    @Test
    void late_arrivals_change_only_rounds_to_come() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 6, 6);
        String first = mark(files.run("pairs", "tonight", "--keep"));
        // Whatever becomes of the files: what was worked stays.
        files.with("roster.yaml", files.read("roster.yaml").replace("assistants", "  - {name: Late}\nassistants"));
        Trial trial = files.run("pairs", "tonight", "--keep", "--from-round", "3", "--with", "Late");
        String second = mark(trial);
        assertTrue(trial.out().contains("it takes the place of " + first + ": take that one down."), trial.out());
        assertEquals(rounds(files, first, 2), rounds(files, second, 2));
        String all = rounds(files, second, 6).replaceAll("(?s)walk:.*", "");
        assertTrue(all.substring(rounds(files, second, 2).length()).contains("Late"), all);
        assertEquals(6 - 2, all.split("Late", -1).length - 1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--from-round 2 --with Old0 | Rounds 1 to 2 are worked: SECOND was printed after. --from-round"
                        + " needs a round from 3 on, or --plan FIRST the plan before it.",
                "--from-round 8 --with Old0 | There is no round 8: the class has 6.",
                "--plan K7QM-K | 'K7QM-K' is not the mark of a plan"
            })
    void what_was_worked_is_never_planned(String arguments, String said) {
        PlanFiles files = PlanFiles.of(folder, 6, 6);
        String first = mark(files.run("pairs", "tonight", "--keep"));
        String second = mark(files.run("pairs", "tonight", "--keep", "--from-round", "3", "--without", "Old0"));
        Trial trial = files.run(("pairs tonight " + arguments).split(" "));
        assertEquals(2, trial.code());
        String wanted = said.replace("FIRST", first).replace("SECOND", second);
        assertTrue(trial.err().startsWith(wanted), trial.err());
        assertEquals(1, trial.err().lines().count());
    }

    @Test
    void going_back_to_an_earlier_plan_is_a_later_one() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 6, 6);
        String first = mark(files.run("pairs", "tonight", "--keep"));
        String second = mark(files.run("pairs", "tonight", "--keep", "--from-round", "3", "--without", "Old0"));
        Trial back = files.run("pairs", "tonight", "--keep", "--plan", first);
        assertTrue(back.out().contains("it takes the place of " + second), back.out());
        assertEquals(rounds(files, first, 6), rounds(files, mark(back), 6));
    }

    @Test
    void two_plans_that_dont_know_of_each_other_are_both_named() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 2, 2);
        String first = mark(files.run("pairs", "tonight", "--keep"));
        String name = "classes/plans/2026-08-26-" + first + ".yaml";
        String text = files.read(name);
        Files.delete(folder.resolve(name));
        String second = mark(
                files.run("pairs", "tonight", "--keep", "--from-round", "2", "--without", "New0", "--without", "Old0"));
        files.with(name, text);
        Trial trial = files.run("record", "tonight");
        assertEquals(2, trial.code());
        assertTrue(trial.err().startsWith("Two plans of tonight were printed independently: "), trial.err());
        assertTrue(trial.err().contains(first) && trial.err().contains(second), trial.err());
        assertTrue(
                trial.err().contains("they differ from round 2 onwards. Say which is in force: --plan"), trial.err());
        assertEquals(0, files.run("record", "tonight", "--plan", first).code());
    }

    @Test
    void what_has_changed_since_is_said() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 2, 2);
        String mark = mark(files.run("pairs", "tonight", "--keep"));
        files.with(
                "roster.yaml",
                files.read("roster.yaml")
                        .replace("{name: New0, knows: [straight]}", "{name: New0, knows: [straight], apart: [Old0]}"));
        String said = files.run("record", "tonight").out();
        assertTrue(said.contains("Changed since " + mark + " was printed: the roster."), said);
        assertTrue(said.contains("Attention: New0 and Old0 are kept apart now, but " + mark), said);
    }
}
