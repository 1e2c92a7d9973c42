package org.drillwright.print.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** An invented school with people and a class, for trying the commands that plan. */
public record PlanFiles(Path root) {

    /** People called New0, New1 and so on, who are new to the riposte, and Old0 and so on, who know it. */
    public static PlanFiles of(Path root, int fresh, int knowing) {
        SchoolFiles.sound(root)
                .with(
                        "roster.yaml",
                        "people:" + people("New", "straight", fresh)
                                + people("Old", "straight, riposte", knowing)
                                + (fresh + knowing == 0 ? " []" : "") + "\nassistants: []\n")
                .with("classes/tonight.yaml", "date: 2026-08-26\nminutes: 90\ndrills: [riposte]\n");
        return new PlanFiles(root);
    }

    private static String people(String name, String knows, int count) {
        return IntStream.range(0, count)
                .mapToObj(at -> "\n  - {name: " + name + at + ", knows: [" + knows + "]}")
                .collect(Collectors.joining());
    }

    public PlanFiles with(String name, String text) {
        new SchoolFiles(root).with(name, text);
        return this;
    }

    Trial run(String... arguments) {
        return Trial.run(root, arguments);
    }

    String read(String name) throws IOException {
        return Files.readString(root.resolve(name));
    }
}
