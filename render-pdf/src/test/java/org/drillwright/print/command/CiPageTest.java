package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The recipes for services that check each change, and the hooks: they can be read, and what they run can be run. */
class CiPageTest {

    private static final Path HOOKS = Path.of("..", ".pre-commit-hooks.yaml");
    private static final Path PAGE = Path.of("docs", "ci.md");

    @TempDir
    Path folder;

    private static Object parsed(String yaml) {
        return new Yaml(new SafeConstructor(new LoaderOptions())).load(yaml);
    }

    private static List<String> recipes() throws IOException {
        return Pattern.compile("(?s)```yaml\n(.*?)```")
                .matcher(Files.readString(PAGE))
                .results()
                .map((MatchResult found) -> found.group(1))
                .toList();
    }

    /** The keys that the framework's documentation names as needed ("Creating new hooks"; from memory). */
    @Test
    void hooks_have_what_the_framework_needs() throws IOException {
        List<?> hooks = (List<?>) parsed(Files.readString(HOOKS));
        assertEquals(2, hooks.size());
        for (Object hook : hooks) {
            Map<?, ?> keys = (Map<?, ?>) hook;
            assertTrue(keys.keySet().containsAll(Set.of("id", "name", "entry", "language")), keys.toString());
            assertTrue(Pattern.compile((String) keys.get("files"))
                    .matcher("drills/roster.yaml")
                    .find());
        }
    }

    @Test
    void the_hooks_of_the_page_are_there() throws IOException {
        Map<?, ?> config = (Map<?, ?>) parsed(recipes().get(2));
        Map<?, ?> repo = (Map<?, ?>) ((List<?>) config.get("repos")).get(0);
        String hooks = Files.readString(HOOKS);
        for (Object hook : (List<?>) repo.get("hooks")) {
            assertTrue(hooks.contains("- id: " + ((Map<?, ?>) hook).get("id")), hook.toString());
        }
    }

    @Test
    void what_is_run_can_be_run() throws IOException {
        SchoolFiles.sound(folder.resolve("drills"));
        assertEquals(0, Trial.run(folder, "tidy", "--write").code());
        List<String> lines = new ArrayList<>();
        for (String recipe : recipes()) {
            assertTrue(parsed(recipe) instanceof Map);
            recipe.lines()
                    .filter(line -> line.contains("tools/drillwright/drillwright "))
                    .forEach(lines::add);
        }
        Files.readString(HOOKS).lines().filter(line -> line.contains("entry: ")).forEach(lines::add);
        assertEquals(5, lines.size());
        for (String line : lines) {
            String command =
                    line.replaceFirst(".*?drillwright (?=check|tidy)", "").replaceFirst(" > .*", "");
            Trial trial = Trial.run(folder, command.split(" "));
            assertEquals(0, trial.code(), command + "\n" + trial.out() + trial.err());
        }
    }
}
