package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.check.jury.Judge;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each worked phrase plays, and the one beside it is refused by the rule and at the count that it names. */
class WorkedPhrasesTest {

    /** Of these phrases only what is fenced is told, not how a drill is written down. */
    private static final Set<String> NOT_OF_THE_PHRASE = Set.of(
            "no-true-distance", "not-back-at-start", "too-much-in-a-count", "safety-note-missing", "gear-missing");

    static Stream<Worked> phrases() {
        return Worked.all().stream();
    }

    private static List<String> found(String drill, boolean errorsOnly) {
        Subject subject = Judged.drill(drill).subject();
        return Judge.drill(subject).stream()
                .filter(finding -> !NOT_OF_THE_PHRASE.contains(finding.rule()))
                .filter(finding -> !errorsOnly || finding.severity() == Severity.ERROR)
                .map(finding -> finding.rule() + " at " + count(subject, finding))
                .toList();
    }

    private static int count(Subject subject, Finding finding) {
        return IntStream.range(0, subject.drill().steps().size())
                .filter(step -> subject.span(Subject.stepPath(step)).start()
                        <= finding.span().start())
                .map(step -> step + 1)
                .max()
                .orElse(0);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("phrases")
    void what_plays_is_let_alone(Worked phrase) {
        assertEquals(List.of(), found(phrase.drill(phrase.right()), false));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("phrases")
    void what_does_not_is_refused_where_it_fails(Worked phrase) {
        List<String> errors = found(phrase.drill(phrase.wrong()), true);
        if (phrase.doubted()) {
            assertEquals(List.of(), errors);
        }
        List<String> refused = phrase.doubted() ? found(phrase.drill(phrase.wrong()), false) : errors;
        assertTrue(refused.size() >= 1, "nothing is refused");
        assertEquals(phrase.broken(), refused.get(0));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("phrases")
    void its_source_is_named(Worked phrase) {
        assertTrue(phrase.source().length() > 20 || phrase.source().contains("no source"));
    }
}
