package org.drillwright.print.bench.peers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The example school, or a larger one made of it: each drill as often as needed, begun in other words of the school, so
 * that no rule has anything to say against it.
 */
record CopiedSchool(Path folder, int drills) {

    private static final Pattern BEGINNING = Pattern.compile("(?im)^(start:.*?)(on guard|at attention)");
    private static final Pattern NEEDS = Pattern.compile("(?m)^needs:.*\n");
    private static final Pattern TITLE = Pattern.compile("(?m)^title: \"?(.*?)\"?$");

    /** The example school's drills, and after them others like them until there are so many. */
    static CopiedSchool of(Path example, Path folder, int drills) throws IOException {
        List<Path> originals = drillsOf(example);
        for (int made = 0; made < drills; made++) {
            Path original = originals.get(made % originals.size());
            Path copy = folder.resolve(example.relativize(original));
            Files.createDirectories(Objects.requireNonNull(copy.getParent()));
            int number = made / originals.size();
            if (number == 0) {
                Files.copy(original, copy);
            } else {
                String file = copy.toString().replaceFirst("\\.yaml$", "-" + number + ".yaml");
                Files.writeString(Path.of(file), varied(Files.readString(original), number));
            }
        }
        String settings = Files.readString(example.resolve("school.yaml"));
        int more = (drills - 1) / originals.size();
        Files.writeString(folder.resolve("school.yaml"), more == 0 ? settings : settings + words(more));
        return new CopiedSchool(folder, drills);
    }

    /** One partner drill alone. */
    static CopiedSchool one(Path example, Path folder) throws IOException {
        Files.createDirectories(folder);
        String drill = Files.readString(example.resolve("intermediate/parry-of-quarte.yaml"));
        Files.writeString(
                folder.resolve("parry-of-quarte.yaml"), NEEDS.matcher(drill).replaceFirst(""));
        return new CopiedSchool(folder, 1);
    }

    static int drillsIn(Path school) throws IOException {
        return drillsOf(school).size();
    }

    private static List<Path> drillsOf(Path school) throws IOException {
        try (Stream<Path> files = Files.walk(school, 2)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .filter(file -> List.of("beginner", "intermediate", "training")
                            .contains(String.valueOf(
                                    Objects.requireNonNull(file.getParent()).getFileName())))
                    .sorted()
                    .toList();
        }
    }

    private static String varied(String drill, int number) {
        Matcher begun = BEGINNING.matcher(drill);
        String other = begun.replaceFirst(found -> found.group(1) + variant(found.group(2), number));
        return TITLE.matcher(other)
                .replaceFirst(found -> Matcher.quoteReplacement("title: \"" + found.group(1) + ", " + number + "\""));
    }

    private static String variant(String words, int number) {
        String letters = "" + (char) ('a' + number / 26) + (char) ('a' + number % 26);
        return (words.equalsIgnoreCase("on guard") ? "ready-" : "upright-") + letters;
    }

    private static String words(int more) {
        StringBuilder words = new StringBuilder("words:\n");
        for (int number = 1; number <= more; number++) {
            for (String of : List.of("on guard", "at attention")) {
                words.append("  ")
                        .append(variant(of, number))
                        .append(": ")
                        .append(of)
                        .append('\n');
            }
        }
        return words.toString();
    }
}
