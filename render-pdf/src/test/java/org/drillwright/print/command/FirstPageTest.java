package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.drillwright.model.Language;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The guide's first page, in every language: its drill is sound, and no page tells of less than another. */
class FirstPageTest {

    private static final Path GUIDE = Path.of("../drills/guide");

    @TempDir
    Path folder;

    static List<Language> languages() {
        return Language.all();
    }

    @ParameterizedTest
    @MethodSource("languages")
    void its_drill_is_read_whole_and_nothing_is_found_in_it(Language language) throws IOException {
        String drill = page(language)
                .lines()
                .filter(line -> line.startsWith("    "))
                .map(line -> line.substring("    ".length()))
                .collect(Collectors.joining("\n", "", "\n"));
        Files.writeString(folder.resolve("drill.yaml"), drill);
        Files.writeString(folder.resolve("school.yaml"), "language: " + language.word() + "\n");
        Trial checked = Trial.run(folder, "check", "--strict", "--speak", "en");
        assertEquals("1 drill: no errors, no warnings, no notes.\n3 counts: all judged.\n", checked.out());
    }

    @ParameterizedTest
    @MethodSource("languages")
    void it_names_the_commands_and_pages_that_the_english_one_names(Language language) throws IOException {
        for (Pattern named : List.of(Pattern.compile("drillwright [a-z]+"), Pattern.compile("\\([a-z-]+\\.md\\)"))) {
            assertEquals(all(named, page(Language.ENGLISH)), all(named, page(language)));
        }
    }

    private static Set<String> all(Pattern pattern, String page) {
        Set<String> all = new TreeSet<>();
        pattern.matcher(page).results().forEach(found -> all.add(found.group()));
        all.remove("(first-page.md)");
        return all;
    }

    private static String page(Language language) throws IOException {
        String tag = language.equals(Language.ENGLISH) ? "" : "." + language.word();
        return Files.readString(GUIDE.resolve("first-page" + tag + ".md"));
    }
}
