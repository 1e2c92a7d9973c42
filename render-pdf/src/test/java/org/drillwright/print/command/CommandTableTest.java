package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The README's table of commands is complete, and names nothing that is not there. */
class CommandTableTest {

    private static final Pattern ROW = Pattern.compile("\\| `([a-z-]+)[^|]*\\|(.*)\\|");
    private static final Pattern OPTION = Pattern.compile("--[a-z][a-z-]*");

    /** Said in the table's own sentence, for all commands. */
    private static final Set<String> EVERYWHERE = Set.of("--help", "--school", "--speak");

    @TempDir
    Path folder;

    private static Map<String, Set<String>> table() throws IOException {
        Map<String, Set<String>> table = new LinkedHashMap<>();
        for (String line : Files.readAllLines(Path.of("..", "README.md"))) {
            ROW.matcher(line)
                    .results()
                    .forEach(row -> table.merge(row.group(1), options(row.group(2)), (one, two) -> {
                        Set<String> both = new TreeSet<>(one);
                        both.addAll(two);
                        return both;
                    }));
        }
        return table;
    }

    private static Set<String> options(String text) {
        Set<String> options = new TreeSet<>();
        OPTION.matcher(text).results().map(MatchResult::group).forEach(options::add);
        options.removeAll(EVERYWHERE);
        return options;
    }

    private String help(String... command) {
        Trial trial = Trial.run(folder, command);
        assertEquals(0, trial.code(), trial.err());
        return trial.out();
    }

    @Test
    void the_table_names_the_commands_of_the_help() throws IOException {
        List<String> commands = new ArrayList<>();
        Pattern.compile("(?m)^  ([a-z-]+)  ")
                .matcher(help("--help"))
                .results()
                .forEach(row -> commands.add(row.group(1)));
        assertTrue(commands.contains("cards"), commands.toString());
        assertEquals(new TreeSet<>(commands), new TreeSet<>(table().keySet()));
    }

    @Test
    void each_commands_options_are_those_of_its_help() throws IOException {
        for (Map.Entry<String, Set<String>> row : table().entrySet()) {
            Set<String> there = new TreeSet<>();
            Pattern.compile("(?m)^ +(?:-[a-z], )?(--[a-z][a-z-]*)")
                    .matcher(help(row.getKey(), "--help"))
                    .results()
                    .forEach(option -> there.add(option.group(1)));
            there.removeAll(EVERYWHERE);
            assertEquals(there, row.getValue(), row.getKey());
        }
    }
}
