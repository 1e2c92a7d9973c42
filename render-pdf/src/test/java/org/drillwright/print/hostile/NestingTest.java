package org.drillwright.print.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** YAML that grows when it is unfolded, or stands deeper than anybody can look: in each file of a school. */
class NestingTest {

    private static final List<String> FILES =
            List.of("drill.yaml", "school.yaml", "roster.yaml", "classes/tonight.yaml");

    private static final String REFUSED = "more than 12 deep, or refer to one another too often";

    @TempDir
    Path folder;

    static Stream<Arguments> refused() {
        return Stream.of(
                        laughs(),
                        "a: " + "[".repeat(100_000),
                        "a: " + "[".repeat(100_000) + "]".repeat(100_000),
                        "a: " + "{a: ".repeat(60_000),
                        "a:\n" + "- ".repeat(120_000),
                        blocks(700),
                        "a:\n  - " + "{b: [".repeat(40_000),
                        "? ".repeat(100_000))
                .flatMap(text -> FILES.stream().map(file -> Arguments.of(file, text)));
    }

    /** Nine times nine times nine … laughs: 9^9 of them, were they ever unfolded. */
    private static String laughs() {
        String first = "a: &a [" + "ha, ".repeat(8) + "ha]\n";
        return first
                + IntStream.range(1, 10)
                        .mapToObj(at -> letter(at) + ": &" + letter(at) + " ["
                                + IntStream.range(0, 9)
                                        .mapToObj(again -> "*" + letter(at - 1))
                                        .collect(Collectors.joining(", "))
                                + "]\n")
                        .collect(Collectors.joining());
    }

    private static char letter(int at) {
        return (char) ('a' + at);
    }

    private static String blocks(int deep) {
        return IntStream.range(0, deep).mapToObj(at -> " ".repeat(at) + "a:\n").collect(Collectors.joining());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void is_refused_in_one_finding(String file, String text) {
        String said = School.in(folder).with(file, text).saidOf(file);
        assertTrue(said.contains(file), said);
        assertTrue(said.contains(REFUSED), said.substring(0, Math.min(2000, said.length())));
        assertEquals(1, said.lines().filter(line -> line.contains("error")).count(), said);
    }

    /** 20,000 references to one long text: 2 GB, were they ever written out. */
    @ParameterizedTest
    @MethodSource("files")
    void a_long_text_that_is_referred_to_often_is_not_multiplied(String file) {
        String text = "a: &a " + "x".repeat(100_000) + "\nb: [" + "*a,".repeat(20_000) + "]\n";
        String said = School.in(folder).with(file, text).saidOf(file);
        assertTrue(said.contains("The key 'a' is unknown here."), said);
        assertTrue(said.length() < 20_000, "so much: " + said.length());
    }

    static Stream<String> files() {
        return FILES.stream();
    }
}
