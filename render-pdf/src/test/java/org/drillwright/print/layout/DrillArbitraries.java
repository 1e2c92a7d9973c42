package org.drillwright.print.layout;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.drillwright.model.Drill;
import org.drillwright.model.Step;
import org.drillwright.print.Drills;

/** Drills of every shape: no sense in their words, but all in their lengths. */
final class DrillArbitraries {

    private static final List<String> TRADE = List.of(
            "extend",
            "lunge",
            "parry",
            "quarte",
            "à",
            "la",
            "tête",
            "riposte",
            "counter-riposte",
            "e",
            "poi",
            "un",
            "x\u0303x",
            "ő\u0301",
            "100\u00A0%",
            "counter\u00ADdisengage",
            "Gegenangriff",
            "a");

    private DrillArbitraries() {}

    static Arbitrary<Drill> drills() {
        return Combinators.combine(words(1, 9), steps(), words(0, 12), words(0, 25))
                .as((title, steps, opening, closing) -> of(title, steps, opening, closing));
    }

    private static Arbitrary<List<Step>> steps() {
        Arbitrary<Step> step = Combinators.combine(words(0, 2), words(1, 14), words(1, 14), words(0, 4), words(0, 12))
                .as(Drills::step);
        return Arbitraries.oneOf(
                step.list().ofMinSize(1).ofMaxSize(9),
                step.list().ofSize(60),
                step.list().ofSize(1));
    }

    /** Now and then one of them is wider than any column. */
    private static Arbitrary<String> words(int least, int most) {
        Arbitrary<String> longWord =
                Arbitraries.strings().withCharRange('a', 'z').ofMinLength(15).ofMaxLength(45);
        return Arbitraries.frequencyOf(Tuple.of(60, Arbitraries.of(TRADE)), Tuple.of(1, longWord))
                .list()
                .ofMinSize(least)
                .ofMaxSize(most)
                .map(words -> String.join(" ", words));
    }

    private static Drill of(String title, List<Step> steps, String opening, String closing) {
        Drill like = Drills.riposte();
        return new Drill(
                "generated",
                title,
                like.level(),
                like.form(),
                like.weapon(),
                like.hands(),
                like.worksOn(),
                like.needs(),
                like.gear(),
                "",
                opening,
                opening,
                new ArrayList<>(steps),
                closing,
                like.repeat(),
                like.swap(),
                like.tempo(),
                "",
                List.of(closing, opening).stream()
                        .filter(words -> !words.isEmpty())
                        .toList(),
                like.variantOf(),
                like.tags(),
                like.revised(),
                like.accept());
    }
}
