package org.drillwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A test's name is a sentence, its words parted by underscores, so that a report of tests reads as a specification. */
class TestNamesTest {

    private static final Pattern TEST = Pattern.compile(
            "@(?:Test|ParameterizedTest|Property|Example|TestFactory)\\b[^;{}]*?(?:\\{[^}]*}[^;{}]*?)*?\\bvoid\\s+(\\w+)\\s*\\(");

    @ParameterizedTest
    @ValueSource(strings = {"src/test/java", "../render-pdf/src/test/java"})
    void words_of_names_are_parted_by_underscores(String sources) throws IOException {
        List<String> names = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of(sources))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                Matcher test = TEST.matcher(Files.readString(file));
                while (test.find()) {
                    names.add(test.group(1));
                }
            }
        }
        assertFalse(names.isEmpty(), sources);
        names.removeIf(name -> name.matches("[a-z0-9]+(_[a-z0-9]+)*"));
        assertEquals(List.of(), names, "write their words in small letters, with underscores between them");
    }
}
