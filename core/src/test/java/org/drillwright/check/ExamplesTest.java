package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.check.jury.Rules;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The examples that a rule gives of itself: the one that breaks it is marked, the one that keeps it is silent. */
class ExamplesTest {

    static Stream<String> ids() {
        return Rules.ALL.stream().map(rule -> rule.text().id());
    }

    private static RuleText text(String id) {
        return Rules.text(id).orElseThrow();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ids")
    void finds_exactly_what_its_example_marks(String id) {
        String example = text(id).breaks();
        List<Span> marks = Marks.in(example);
        assertFalse(marks.isEmpty(), "the example marks nothing");
        List<Finding> found = Judged.drill(example).all().stream()
                .filter(finding -> finding.rule().equals(id))
                .toList();
        assertEquals(
                drawn(example, marks),
                drawn(example, found.stream().map(Finding::span).toList()));
        assertTrue(found.stream().anyMatch(finding -> finding.severity() == text(id).severity()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ids")
    void finds_no_error_in_the_example_that_keeps_it(String id) {
        List<Finding> found = Judged.drill(text(id).keeps()).all().stream()
                .filter(finding ->
                        finding.severity() == Severity.ERROR || finding.rule().equals(id))
                .toList();
        assertEquals(
                List.of(),
                found.stream()
                        .map(finding -> finding.rule() + ": " + finding.what().english())
                        .toList());
    }

    @Test
    void each_rule_has_its_two_examples_and_no_other_file_lies_there() throws IOException {
        Set<String> wanted = new TreeSet<>();
        for (RuleText text : Rules.texts()) {
            String room = text.rule().getPackageName().replace('.', '/') + "/";
            wanted.add(room + text.id() + ".breaks.yaml");
            wanted.add(room + text.id() + ".keeps.yaml");
        }
        Set<String> missing = new TreeSet<>(wanted);
        Set<String> left = examples();
        missing.removeAll(left);
        left.removeAll(wanted);
        assertEquals(
                Set.of(),
                missing,
                "write these below src/main/resources: the lines of a drill that break the rule, with a comment line of"
                        + " carets under the words that it marks, or those of one that keeps it");
        assertEquals(Set.of(), left, "no rule has these examples: name each after its rule's id, or delete it");
    }

    private static Set<String> examples() throws IOException {
        Path resources = Path.of("src/main/resources");
        try (Stream<Path> files = Files.walk(resources.resolve("org/drillwright/check"))) {
            return files.map(file -> resources.relativize(file).toString().replace(File.separatorChar, '/'))
                    .filter(file -> file.endsWith(".yaml"))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /** One name finds everything: the finding, the class, its test, its place on the page. */
    @Test
    void classes_are_called_as_their_rules() {
        Map<String, Object> rules = new LinkedHashMap<>();
        Rules.ALL.forEach(rule -> rules.put(rule.text().id(), rule));
        Rules.OF_THE_FOLDER.forEach(rule -> rules.put(rule.text().id(), rule));
        rules.forEach((id, rule) -> assertEquals(
                id.replace("-", ""), rule.getClass().getSimpleName().toLowerCase(Locale.ROOT)));
    }

    @Test
    void the_whole_example_breaks_nothing() {
        assertEquals(
                List.of(),
                Judged.drill("").all().stream()
                        .map(finding -> finding.rule() + ": " + finding.what().english())
                        .toList());
    }

    @Test
    void no_two_rules_share_an_id_and_each_says_why() {
        List<RuleText> texts = Rules.texts();
        assertEquals(
                texts.size(), new HashSet<>(texts.stream().map(RuleText::id).toList()).size());
        for (RuleText text : texts) {
            assertTrue(text.id().matches("[a-z]+(-[a-z]+)*"), text.id());
            assertTrue(
                    text.asks().english().endsWith(".") && text.why().english().endsWith("."), text.id());
        }
    }

    /** Each place as line, columns and words, so that a difference can be seen. */
    private static List<String> drawn(String example, List<Span> spans) {
        SourceFile file = new SourceFile("", Example.complete(example));
        return spans.stream()
                .map(span -> file.position(span.start()) + " to " + file.position(span.end()) + ": " + file.slice(span))
                .toList();
    }
}
