package org.drillwright.print.phone;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.plan.kept.Kept;
import org.drillwright.print.command.PlanFiles;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.Trial;
import org.drillwright.read.PlanReader;

/** An invented school whose evening is written as a page. */
record EveningSchool(Path root) {

    /** Names that a shell, a table or a page could take for something else. */
    static final List<String> HARD = List.of(
            "O'Neil",
            "Zoë \"Zed\" Kraus",
            "Smith, Jan",
            "$(touch x)",
            "-dash",
            "@home",
            "a;b & c",
            "<b>Bold</b>",
            "Жанна Ёлкина",
            "Αθηνά",
            "עדי לוי",
            "علي حسن");

    /** As many people as names, half of them new to the drill. */
    static EveningSchool of(Path root, List<String> names) {
        return of(root, names, "assistants: [Marlow]\n", "");
    }

    static EveningSchool of(Path root, List<String> names, String assistants, String more) {
        String people = IntStream.range(0, names.size())
                .mapToObj(at -> "\n  - {name: '" + names.get(at).replace("'", "''") + "', knows: [straight"
                        + (at % 2 == 0 ? ", riposte" : "") + "]}")
                .collect(Collectors.joining());
        PlanFiles.of(root, 0, 0)
                .with("roster.yaml", "people:" + people + "\n" + assistants)
                .with(
                        "classes/tonight.yaml",
                        "date: 2026-08-26\nminutes: 120\ndrills: [straight, riposte]\nsettings: {straight: {rounds: 1}}\n"
                                + more);
        return new EveningSchool(root);
    }

    EveningSchool with(String name, String text) {
        new SchoolFiles(root).with(name, text);
        return this;
    }

    Trial run(String... arguments) {
        return Trial.run(root, arguments);
    }

    /** The page, written by the program. */
    Path page(String... more) {
        List<String> arguments = new ArrayList<>(List.of("pairs", "tonight", "--html", "--out", "evening.html"));
        arguments.addAll(Arrays.asList(more));
        Trial trial = run(arguments.toArray(String[]::new));
        assertTrue(trial.code() < 2 && trial.out().contains("evening.html"), trial.err());
        return root.resolve("evening.html");
    }

    /** The only plan that was kept. */
    Kept kept() throws IOException {
        try (Stream<Path> files = Files.list(root.resolve("classes/plans"))) {
            Path file = files.findFirst().orElseThrow();
            return PlanReader.read(file.toString(), Files.readAllBytes(file))
                    .value()
                    .orElseThrow();
        }
    }

    /** What is on record, without the lines that begin and end what was told at once. */
    List<String> recorded() throws IOException {
        return Files.readString(root.resolve("record.csv"))
                .lines()
                .skip(1)
                .filter(line -> !line.contains(",batch ") && !line.contains(",done "))
                .map(line -> line.substring("2026-08-26,".length()))
                .toList();
    }
}
