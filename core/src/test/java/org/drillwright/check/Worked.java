package org.drillwright.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A phrase that plays beside one that does not, read from the file of worked phrases.
 *
 * @param right the counts of the phrase that plays, the leader's turn before a bar, the follower's behind it
 * @param broken the rule that speaks first of the other phrase, and where: {@code wrong-way-past-blade at 1}
 * @param doubted whether that rule only warns, and nothing else is refused
 * @param wrong the counts of the other phrase
 */
public record Worked(
        String title,
        String source,
        String weapon,
        String start,
        List<String> right,
        String broken,
        boolean doubted,
        List<String> wrong) {

    private static final Path FILE = Path.of("src", "test", "resources", "worked", "phrases.txt");

    /** All of the file, in its order. */
    public static List<Worked> all() {
        try {
            return Stream.of(Files.readString(FILE).split("\n\n"))
                    .filter(block -> block.startsWith("title: "))
                    .map(Worked::read)
                    .toList();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static Worked read(String block) {
        List<String> lines = block.strip().lines().toList();
        int right = lines.indexOf("right");
        int wrong = right;
        while (!lines.get(wrong).matches("(wrong|doubtful) .*")) {
            wrong++;
        }
        return new Worked(
                value(lines.get(0)),
                value(lines.get(1)),
                value(lines.get(2)),
                value(lines.get(3)),
                lines.subList(right + 1, wrong),
                value(lines.get(wrong).replaceFirst(" ", ": ")),
                lines.get(wrong).startsWith("doubtful"),
                lines.subList(wrong + 1, lines.size()));
    }

    private static String value(String line) {
        return line.substring(line.indexOf(": ") + 2);
    }

    /** The lines of a drill that does these counts. */
    public String drill(List<String> counts) {
        List<String> lines = new ArrayList<>();
        lines.add("weapon: " + weapon);
        lines.add("level: training");
        lines.add("start: " + start);
        lines.add("opening: Salute. Masks on. " + start.replaceFirst(",.*", "."));
        lines.add("steps:");
        for (String count : counts) {
            String[] turns = count.split(" \\| ");
            lines.add("  - leader: " + turns[0]);
            lines.add("    follower: " + turns[1]);
            lines.add("    distance: lunge");
            lines.add("    safety: Softly on count " + lines.size() + ".");
        }
        return String.join("\n", lines) + "\n";
    }

    @Override
    public String toString() {
        return title;
    }
}
