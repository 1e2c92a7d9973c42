package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Twelve weeks by the commands, as an instructor would play them: each week a class is printed and recorded; people stay away,
 * come late, go early, walk in for the first time, leave, come back and get another name. All of it drawn by chance, from a
 * seed, so that the same weeks can be played again.
 */
class TwelveWeeksTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 9, 2);
    private static final int WEEKS = 12;

    @TempDir
    Path folder;

    /** A school whose weeks are played, and what its classes must have led to, reckoned here from what was printed. */
    private static final class Played {

        private final PlanFiles files;
        private final Random chance = new Random(12);
        private final List<String> people = new ArrayList<>();
        private final List<String> gone = new ArrayList<>();
        private int named;

        Played(Path root) throws IOException {
            Files.createDirectories(root);
            files = PlanFiles.of(root, 4, 5);
            for (int at = 0; at < 5; at++) {
                people.add("Old" + at);
                if (at < 4) {
                    people.add("New" + at);
                }
            }
        }

        private Trial run(LocalDate day, String... arguments) {
            Trial trial = Trial.at(day + "T20:00:00Z", files.root(), arguments);
            assertTrue(trial.code() < 2, () -> day + ": " + String.join(" ", arguments) + ": " + trial.err());
            return trial;
        }

        private String drawn(List<String> some) {
            return some.get(chance.nextInt(some.size()));
        }

        /** Before class somebody leaves, comes back, is new to the school or gets another name. */
        private void changed(LocalDate day) throws IOException {
            switch (chance.nextInt(5)) {
                case 0 -> {
                    String one = drawn(people);
                    run(day, "roster", "--left", one, "--date", day.toString());
                    people.remove(one);
                    gone.add(one);
                }
                case 1 -> {
                    if (!gone.isEmpty()) {
                        String one = gone.remove(0);
                        run(day, "roster", "--back", one, "--date", day.toString());
                        people.add(one);
                    }
                }
                case 2 -> {
                    String one = drawn(people);
                    String name = "Other" + named++;
                    run(day, "roster", "--rename", one, name, "--date", day.toString());
                    people.set(people.indexOf(one), name);
                }
                default -> walksIn("Fresh" + named++);
            }
        }

        private void walksIn(String name) throws IOException {
            String roster = files.read("roster.yaml");
            files.with("roster.yaml", roster.replace("\nassistants:", "\n  - {name: " + name + "}\nassistants:"));
            people.add(name);
        }

        private void week(LocalDate day) throws IOException {
            changed(day);
            List<String> away = new ArrayList<>();
            for (String one : people) {
                if (chance.nextInt(4) == 0 && away.size() + 4 < people.size()) {
                    away.add(one);
                }
            }
            files.with(
                    "classes/tonight.yaml",
                    "date: " + day + "\nminutes: 90\nmovement: " + (chance.nextBoolean() ? "walk" : "free")
                            + "\ninstructor: " + (chance.nextInt(3) > 0 ? "yes" : "no")
                            + "\ndrills: [straight, riposte]\nsettings:\n  riposte: {rounds: 4}\naway: " + away + "\n");
            run(day, "pairs", "tonight", "--keep");
            Set<String> first = new TreeSet<>(people);
            first.removeAll(away);
            Set<String> second = new TreeSet<>(first);
            if (chance.nextInt(3) == 0) {
                String early = drawn(List.copyOf(first));
                run(day, "pairs", "tonight", "--keep", "--from-round", "2", "--without", early);
                second.remove(early);
            }
            Set<String> later = new TreeSet<>(second);
            if (chance.nextInt(3) == 0 && !away.isEmpty()) {
                run(day, "pairs", "tonight", "--keep", "--from-round", "3", "--with", away.get(0));
                later.add(away.get(0));
            }
            String plan = headOf(day);
            isWhole(plan, List.of(first, second, later));
            run(day, "record", "tonight");
            assertEquals(printed(plan), recorded(day), () -> "of " + day);
            assertEquals(
                    "The record already says all of this.\n",
                    run(day, "record", "tonight").out());
        }

        /** The kept plan of a day that no other took over from. */
        private String headOf(LocalDate day) throws IOException {
            List<String> plans = new ArrayList<>();
            try (Stream<Path> all = Files.list(files.root().resolve("classes/plans"))) {
                for (Path plan : all.filter(one -> one.getFileName().toString().startsWith(day.toString()))
                        .sorted()
                        .toList()) {
                    plans.add(Files.readString(plan));
                }
            }
            return plans.stream()
                    .filter(plan -> plans.stream().noneMatch(other -> other.contains("after: " + mark(plan))))
                    .findFirst()
                    .orElseThrow();
        }

        private static String mark(String plan) {
            return plan.replaceFirst("(?s).*?\nmark: ([^\n]*)\n.*", "$1");
        }

        /** In each round everybody who is there then stands once, and nobody else; the last ones are there from then on. */
        private static void isWhole(String plan, List<Set<String>> there) {
            String[] rounds = plan.split("\n  - drill: ");
            assertTrue(rounds.length > there.size(), plan);
            for (int round = 1; round < rounds.length; round++) {
                List<String> seen = new ArrayList<>();
                Matcher groups = Pattern.compile("people: \\[([^\\]]*)\\]").matcher(rounds[round]);
                while (groups.find()) {
                    seen.addAll(names(groups.group(1)));
                }
                assertEquals(new TreeSet<>(seen).size(), seen.size(), "twice in " + rounds[round]);
                assertEquals(there.get(Math.min(round, there.size()) - 1), new TreeSet<>(seen), rounds[round]);
            }
        }

        private static List<String> names(String list) {
            return Stream.of(list.split(","))
                    .map(String::trim)
                    .filter(name -> !name.isEmpty())
                    .toList();
        }

        /** Who works with whom, how often, as the plan has it; in a three each with both, a helper with whom he partners. */
        private static Map<String, Integer> printed(String plan) {
            Map<String, Integer> met = new TreeMap<>();
            Matcher groups = Pattern.compile("people: \\[([^\\]]*)\\](?:, helper: (\\w+))?")
                    .matcher(plan);
            while (groups.find()) {
                List<String> all = new ArrayList<>(names(groups.group(1)));
                if (groups.group(2) != null) {
                    all.add(groups.group(2));
                }
                for (int one = 0; one < all.size(); one++) {
                    for (int other = one + 1; other < all.size(); other++) {
                        met.merge(pair(all.get(one), all.get(other)), 1, Integer::sum);
                    }
                }
            }
            return met;
        }

        private static String pair(String one, String other) {
            return Stream.of(one, other).sorted().collect(Collectors.joining("-"));
        }

        private Map<String, Integer> recorded(LocalDate day) throws IOException {
            Map<String, Integer> met = new TreeMap<>();
            for (String line : files.read("record.csv").split("\n")) {
                String[] cells = line.split(",", -1);
                if (cells[0].equals(day.toString()) && cells[3].endsWith("worked with")) {
                    met.merge(pair(cells[1], cells[4]), cells[3].startsWith("taken back") ? -1 : 1, Integer::sum);
                }
            }
            met.values().removeIf(times -> times == 0);
            return met;
        }

        /** All files by their names. */
        private Map<String, String> all() throws IOException {
            Map<String, String> all = new TreeMap<>();
            try (Stream<Path> walked = Files.walk(files.root())) {
                for (Path file : walked.filter(Files::isRegularFile).toList()) {
                    all.put(
                            files.root().relativize(file).toString(),
                            new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
                }
            }
            return all;
        }
    }

    @Test
    void what_was_printed_is_recorded_nobody_is_lost_and_the_same_weeks_give_the_same_files() throws IOException {
        Played one = new Played(folder.resolve("one"));
        Played other = new Played(folder.resolve("other"));
        Map<String, String> before = Map.of();
        for (int week = 0; week < WEEKS; week++) {
            LocalDate day = FIRST.plusWeeks(week);
            one.week(day);
            other.week(day);
            Map<String, String> after = one.all();
            assertEquals(after, other.all(), "in week " + week);
            assertStays(before, after);
            before = after;
        }
        assertTrue(one.named > 3, "people walked in or were renamed");
        String plans = before.toString();
        for (String kind : List.of("pair", "three", "helped")) {
            assertTrue(plans.contains("kind: " + kind), kind);
        }
        assertTrue(before.keySet().stream()
                        .filter(name -> name.startsWith("classes/plans/"))
                        .count()
                > WEEKS);
        assertEquals(0, Trial.run(folder.resolve("one"), "check").code());
    }

    /** What was printed stays byte for byte, and the record is only added to. */
    private static void assertStays(Map<String, String> before, Map<String, String> after) {
        before.forEach((name, text) -> {
            if (name.startsWith("classes/plans/")) {
                assertEquals(text, after.get(name), name);
            } else if (name.equals("record.csv")) {
                assertTrue(after.getOrDefault(name, "").startsWith(text), name);
            }
        });
    }
}
