package org.drillwright.bench;

import java.util.Collection;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the bench of checking and says the one figure that is asked of it. */
final class Ratios {

    private Ratios() {}

    public static void main(String[] arguments) throws RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(CheckBench.class.getSimpleName())
                        .jvmArgsAppend("-Dcore=" + System.getProperty("core", ""))
                        .build())
                .run();
        double check = score(results, "check");
        double compose = score(results, "compose");
        System.out.printf(
                Locale.ROOT,
                "%d drills: whole check %.0f ms, composing alone %.0f ms, ratio %.2f%n",
                ThousandDrills.DRILLS,
                check,
                compose,
                check / compose);
    }

    private static double score(Collection<RunResult> results, String label) {
        return results.stream()
                .map(RunResult::getPrimaryResult)
                .filter(result -> result.getLabel().equals(label))
                .findFirst()
                .orElseThrow()
                .getScore();
    }
}
