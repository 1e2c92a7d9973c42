package org.drillwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** What is measured on a thousand drills, which lie on the disk meanwhile. */
@State(Scope.Benchmark)
public class OnThousandDrills {

    private Path folder = Path.of("");
    private ThousandDrills drills = ThousandDrills.none();

    @Setup
    public void write() throws IOException {
        folder = Files.createTempDirectory("thousand-drills");
        drills = ThousandDrills.below(folder, Path.of(System.getProperty("core", "")).toAbsolutePath());
    }

    @TearDown
    public void clear() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(one);
            }
        }
    }

    List<Path> schools() {
        return drills.schools();
    }

    List<Path> files() {
        return drills.files();
    }
}
