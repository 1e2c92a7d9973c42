package org.drillwright.bench;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.check.Surroundings;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.read.DrillReader;
import org.drillwright.read.ReadDrill;
import org.drillwright.reading.TurnReader;
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

/** A thousand drills read and played, without any rule, beside what the YAML library alone takes to compose the same files. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 5)
@Measurement(iterations = 4, time = 5)
public class ReadBench extends OnThousandDrills {

    /** A reader with a word of the school's own is another reader, which remembers nothing that was read before. */
    private static final Map<String, String> OWN = Map.of("hup", "lunge");

    /** The YAML, its places, the words of each turn, and the phrase. */
    @Benchmark
    public void play(Blackhole sink) throws IOException {
        for (Path school : schools()) {
            play(school, TurnReader.standard().with(OWN), sink);
        }
    }

    /** The same by a reader that has read all these words before, as {@code watch} and an editor do from the second time on. */
    @Benchmark
    public void playAgain(Blackhole sink) throws IOException {
        for (Path school : schools()) {
            play(school, TurnReader.standard(), sink);
        }
    }

    private void play(Path school, TurnReader reader, Blackhole sink) throws IOException {
        Map<String, ReadDrill> read = new LinkedHashMap<>();
        for (Path file : files()) {
            if (file.startsWith(school)) {
                String name = String.valueOf(file.getFileName());
                new DrillReader(School.DEFAULT)
                        .read(name, name, Files.readAllBytes(file))
                        .value()
                        .ifPresent(drill -> read.put(name, drill));
            }
        }
        Map<String, Drill> all = new LinkedHashMap<>();
        read.forEach((name, drill) -> all.put(name, drill.drill()));
        Surroundings around = new Surroundings(School.DEFAULT, reader, all);
        read.values()
                .forEach(one -> sink.consume(new Subject(one.drill(), one.file(), one.places(), around).replay()));
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
