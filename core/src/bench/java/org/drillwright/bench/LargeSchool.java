package org.drillwright.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A school of as many drills as are wanted, made from those of the example school: {@code LargeSchool DRILLS EXAMPLE
 * FOLDER}. Each copy of a drill has a title and turns of its own and needs the drills of the same copy, so that rules
 * find nothing which they would not find in the example; each copy of a level is a set, those of the first copies listed, the others by tag. Always the same.
 */
public final class LargeSchool {

    /** Words that say how something is done and change nothing of what is done. */
    private static final List<String> MANNERS = List.of(
            "smoothly",
            "steadily",
            "calmly",
            "gently",
            "quietly",
            "carefully",
            "neatly",
            "relaxed",
            "easily",
            "clearly",
            "correctly",
            "properly",
            "cleanly",
            "exactly",
            "lightly",
            "naturally",
            "tightly",
            "crisply",
            "smartly",
            "softly");

    /** Copies whose sets are listed; settings that list thousands of drills are larger than is read. */
    private static final int LISTED = 10;

    private static final Pattern TURN = Pattern.compile("(?m)^( {4}follower: [^\"'>|{\\[:#;]*[^.\\s])\\.$");
    private static final Pattern NEEDS = Pattern.compile("(?m)^needs: \\[(.+)]$");
    private static final Pattern TITLE = Pattern.compile("(?m)^title: (.*?)(\"?)$");

    private final List<Path> sources;
    private final Path folder;
    private final int drills;
    private final Map<String, List<String>> listed = new LinkedHashMap<>();
    private final Map<String, String> tagged = new LinkedHashMap<>();

    private LargeSchool(List<Path> sources, int drills, Path folder) {
        this.sources = sources;
        this.drills = drills;
        this.folder = folder;
    }

    public static void main(String[] arguments) throws IOException {
        make(Integer.parseInt(arguments[0]), Path.of(arguments[1]), Path.of(arguments[2]));
    }

    /** @param example the folder of the example school */
    public static void make(int drills, Path example, Path folder) throws IOException {
        List<Path> sources = new ArrayList<>();
        for (String level : List.of("beginner", "intermediate", "training")) {
            try (Stream<Path> files = Files.list(example.resolve(level))) {
                files.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(sources::add);
            }
        }
        LargeSchool school = new LargeSchool(sources, drills, folder);
        for (int drill = 0; drill < drills; drill++) {
            school.copy(drill);
        }
        school.settings(Files.readString(example.resolve("school.yaml")));
    }

    private void copy(int number) throws IOException {
        Path source = sources.get(number % sources.size());
        int copy = number / sources.size();
        String level = name(Objects.requireNonNull(source.getParent()));
        String id = id(name(source).replace(".yaml", ""), copy);
        Path to = folder.resolve(level).resolve(id + ".yaml");
        Files.createDirectories(Objects.requireNonNull(to.getParent()));
        Files.writeString(to, varied(Files.readString(source), copy), StandardCharsets.UTF_8);
        if (copy < LISTED) {
            listed.computeIfAbsent(level + " " + copy, set -> new ArrayList<>()).add(id);
        } else {
            tagged.put(level + " " + copy, "{level: " + level + ", tag: copy-" + copy + "}");
        }
    }

    private static String name(Path path) {
        return Objects.requireNonNull(path.getFileName()).toString();
    }

    private static String id(String drill, int copy) {
        return copy == 0 ? drill : drill + "-" + copy;
    }

    /** The drill with a manner behind its turns: one for each figure of the copy's number. A copy that is not whole needs the first. */
    private String varied(String text, int copy) {
        boolean whole = (copy + 1) * sources.size() <= drills;
        String untagged = text.replaceFirst("(?m)^tags: .*\n", "");
        String titled = copy == 0 ? untagged : TITLE.matcher(untagged).replaceFirst("title: $1, no. " + copy + "$2");
        String needing = NEEDS.matcher(titled).replaceFirst(needs -> "needs: ["
                + Stream.of(needs.group(1).split(", "))
                        .map(need -> id(need, whole ? copy : 0))
                        .collect(Collectors.joining(", "))
                + "]");
        StringBuilder varied = new StringBuilder();
        Matcher turn = TURN.matcher(needing);
        int left = copy;
        while (left > 0 && turn.find()) {
            turn.appendReplacement(varied, "$1, " + MANNERS.get(left % MANNERS.size()) + ".");
            left /= MANNERS.size();
        }
        if (left > 0) {
            throw new IllegalStateException("too few turns to vary for copy " + copy + ":\n" + text);
        }
        return turn.appendTail(varied).append("tags: [copy-" + copy + "]\n").toString();
    }

    private void settings(String example) throws IOException {
        StringBuilder text = new StringBuilder(example.substring(0, example.indexOf("\nsets:\n")));
        text.append("\nsets:\n");
        listed.forEach((set, ids) -> text.append(
                "  " + set + ": {drills: [" + String.join(", ", ids) + "]}\n"));
        tagged.forEach((set, rule) -> text.append("  " + set + ": " + rule + "\n"));
        text.append(example.substring(example.indexOf("\nclass-minutes:")));
        Files.writeString(folder.resolve("school.yaml"), text, StandardCharsets.UTF_8);
    }
}
