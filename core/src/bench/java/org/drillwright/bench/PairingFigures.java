package org.drillwright.bench;

import java.util.Collection;
import java.util.Locale;
import org.drillwright.plan.pair.Pairing;
import org.drillwright.plan.pair.PairingPlan;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the bench of pairing and says, beside each time, how good the plan is known to be. */
final class PairingFigures {

    private PairingFigures() {}

    public static void main(String[] arguments) throws RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(PairingBench.class.getSimpleName())
                        .build())
                .run();
        for (RunResult result : results) {
            String asked = result.getParams().getParam("asked");
            PairingPlan plan = Pairing.of(PairingBench.request(asked)).plan();
            System.out.printf(
                    Locale.ROOT,
                    "%s: %.0f ms, %s, cost %s, bound %s. %s%n",
                    asked,
                    result.getPrimaryResult().getScore(),
                    plan.method().words(),
                    plan.verdict().orElseThrow().cost(),
                    plan.verdict().orElseThrow().bound(),
                    plan.verdict().orElseThrow().sentence());
        }
    }
}
