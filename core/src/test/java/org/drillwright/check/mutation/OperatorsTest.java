package org.drillwright.check.mutation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.drillwright.check.Corpus;
import org.drillwright.check.Sample;
import org.drillwright.read.DrillWriter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each way of spoiling a drill, at the first places where it fits: what {@link MutationTest} tries at all of them. */
class OperatorsTest {

    private static final int PLACES = 6;
    private static final Corpus CORRECT = Corpus.correct();

    static List<Operator> operators() {
        return Operators.ALL;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("operators")
    void what_is_spoilt_is_noticed_where_it_was_spoilt(Operator operator) {
        List<Trial> missed = CORRECT.ids().stream()
                .flatMap(id -> trials(operator, CORRECT.sample(id)))
                .filter(Trial::isHarmful)
                .limit(PLACES)
                .filter(trial -> !trial.found() && MutationPage.reason(trial).isEmpty())
                .toList();
        assertEquals(List.of(), missed);
    }

    private static Stream<Trial> trials(Operator operator, Sample sample) {
        return operator.mutants()
                .apply(new Scene(sample))
                .map(mutant ->
                        Trial.of(operator, mutant, CORRECT.judge(sample.id(), DrillWriter.write(mutant.drill()))));
    }
}
