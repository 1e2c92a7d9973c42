package org.drillwright.bench;

import java.util.Collection;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benches of checking and of reading, and says how much longer each takes than to compose the same files. */
final class Ratios {

    private Ratios() {}

    public static void main(String[] arguments) throws RunnerException {
        Collection<RunResult> check = run(CheckBench.class);
        Collection<RunResult> read = run(ReadBench.class);
        say("whole check", score(check, "check"), score(check, "compose"));
        say("read and played", score(read, "play"), score(read, "compose"));
        say("read and played once more", score(read, "playAgain"), score(read, "compose"));
    }

    private static Collection<RunResult> run(Class<?> bench) throws RunnerException {
        return new Runner(new OptionsBuilder()
                        .include(bench.getSimpleName())
                        .jvmArgsAppend("-Dcore=" + System.getProperty("core", ""))
                        .build())
                .run();
    }

    private static void say(String what, double ours, double compose) {
        System.out.printf(
                Locale.ROOT,
                "%d drills: %s %.0f ms, composing alone %.0f ms, ratio %.2f%n",
                ThousandDrills.DRILLS,
                what,
                ours,
                compose,
                ours / compose);
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
