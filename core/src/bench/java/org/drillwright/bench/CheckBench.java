package org.drillwright.bench;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.drillwright.school.SchoolFolder;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The whole check of a thousand drills beside what the YAML library alone takes to compose the same files. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 4, time = 3)
public class CheckBench extends OnThousandDrills {

    /** Read, played and judged by every rule. */
    @Benchmark
    public void check(Blackhole sink) throws IOException {
        for (Path school : schools()) {
            sink.consume(SchoolFolder.open(school).findings());
        }
    }

    /** Only composed to nodes, by the library as it comes. */
    @Benchmark
    public void compose(Blackhole sink) throws IOException {
        for (Path file : files()) {
            try (Reader text = Files.newBufferedReader(file)) {
                sink.consume(new Yaml(new SafeConstructor(new LoaderOptions())).compose(text));
            }
        }
    }
}
