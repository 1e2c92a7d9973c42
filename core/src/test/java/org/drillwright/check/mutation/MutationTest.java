package org.drillwright.check.mutation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.check.Corpus;
import org.drillwright.check.Sample;
import org.drillwright.read.DrillWriter;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Every operator at every place where it fits, in every correct drill: what is spoilt is noticed where it was spoilt. In the
 * profile {@code deep}; in every build {@link OperatorsTest} tries each at its first places.
 */
@Tag("deep")
class MutationTest {

    private static final int MUTANTS = 400;
    private static final double FOUND = 0.97;
    private static final Path PAGE = Path.of("docs", "mutations.md");

    private static final List<Trial> TRIALS = trials();

    private static List<Trial> trials() {
        List<Trial> trials = new ArrayList<>();
        for (Corpus corpus : List.of(Corpus.correct(), Corpus.exampleSchool(), Corpus.handbook())) {
            corpus.samples().stream()
                    .filter(sample -> sample.errors().isEmpty())
                    .forEach(sample -> trials.addAll(trials(corpus, sample)));
        }
        return trials;
    }

    private static List<Trial> trials(Corpus corpus, Sample sample) {
        Scene scene = new Scene(sample);
        return Operators.ALL.stream()
                .flatMap(operator -> operator.mutants()
                        .apply(scene)
                        .map(mutant -> Trial.of(
                                operator, mutant, corpus.judge(sample.id(), DrillWriter.write(mutant.drill())))))
                .toList();
    }

    @Test
    void there_are_ten_operators_and_four_hundred_mutants() {
        assertTrue(Operators.ALL.size() >= 10);
        long harmful = TRIALS.stream().filter(Trial::isHarmful).count();
        assertTrue(harmful >= MUTANTS, () -> harmful + " mutants");
    }

    @Test
    void every_operator_fits_somewhere() {
        List<String> idle = Operators.ALL.stream()
                .filter(operator ->
                        TRIALS.stream().noneMatch(trial -> trial.operator().equals(operator) && trial.isHarmful()))
                .map(Operator::name)
                .toList();
        assertEquals(List.of(), idle);
    }

    @Test
    void nearly_all_are_found_at_their_count() {
        long harmful = TRIALS.stream().filter(Trial::isHarmful).count();
        long found =
                TRIALS.stream().filter(Trial::isHarmful).filter(Trial::found).count();
        assertTrue(found >= FOUND * harmful, () -> found + " of " + harmful);
    }

    /** No operator hides behind the others. */
    @Test
    void each_operator_is_found_more_often_than_not() {
        for (Operator operator : Operators.ALL) {
            List<Trial> own = TRIALS.stream()
                    .filter(trial -> trial.operator().equals(operator) && trial.isHarmful())
                    .toList();
            long found = own.stream().filter(Trial::found).count();
            assertTrue(found >= 0.8 * own.size(), () -> operator.name() + ": " + found + " of " + own.size());
        }
    }

    @Test
    void the_page_says_what_was_found() throws IOException {
        String page = MutationPage.of(TRIALS);
        if (System.getProperty("update") != null) {
            Files.createDirectories(PAGE.getParent());
            Files.writeString(PAGE, page);
        }
        assertEquals(page, Files.readString(PAGE), "run the test with -Dupdate to write the page anew");
    }

    @Test
    void each_that_is_missed_has_a_reason() {
        List<String> unexplained = TRIALS.stream()
                .filter(trial -> trial.isHarmful() && !trial.found())
                .filter(trial -> MutationPage.reason(trial).isEmpty())
                .map(trial -> trial.operator().name() + ", " + trial.drill() + ": "
                        + trial.mutant().place())
                .toList();
        assertEquals(List.of(), unexplained);
    }
}
