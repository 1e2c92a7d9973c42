package org.drillwright.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.check.jury.Judge;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.read.DrillReader;
import org.drillwright.read.ReadDrill;
import org.drillwright.read.ReadSchool;
import org.drillwright.read.Reading;
import org.drillwright.read.SchoolReader;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Finding;

/**
 * A folder of drills with the school around it, in which other texts can be judged as if they stood there. Nothing that was
 * judged is kept: each asking plays and judges anew.
 */
public final class Corpus {

    private static final Path RESOURCES = Path.of("src", "test", "resources");

    private final School school;
    private final Map<String, String> texts = new LinkedHashMap<>();
    private final Surroundings surroundings;

    private Corpus(Path root) {
        this.school = school(root.resolve("school.yaml"));
        drillFiles(root).forEach(file -> texts.put(file.getFileName().toString().replace(".yaml", ""), text(file)));
        Map<String, Drill> drills = new LinkedHashMap<>();
        texts.forEach((id, text) -> read(id, text).value().ifPresent(read -> drills.put(id, read.drill())));
        this.surroundings = new Surroundings(school, TurnReader.standard().with(school.words()), drills);
    }

    /** Drills that were written as correct before anybody looked at the vocabulary. */
    public static Corpus correct() {
        return new Corpus(RESOURCES.resolve("correct"));
    }

    /** Worked phrases from handbooks, each with its source and with what becomes of it. */
    public static Corpus handbook() {
        return new Corpus(RESOURCES.resolve("handbook"));
    }

    /** Drills by somebody who had seen no list of words, each with what its author says of it. */
    public static Corpus unseen() {
        return new Corpus(RESOURCES.resolve("unseen"));
    }

    /** The example school that comes with the program. */
    public static Corpus exampleSchool() {
        return new Corpus(Path.of("..", "drills"));
    }

    public School school() {
        return school;
    }

    /** The ids of all drills of the folder, in their order. */
    public Set<String> ids() {
        return Collections.unmodifiableSet(texts.keySet());
    }

    /** All drills of the folder, in the order of their ids, judged now. */
    public List<Sample> samples() {
        return texts.keySet().stream().map(this::sample).toList();
    }

    /** The drill of an id, judged now. */
    public Sample sample(String id) {
        String text = texts.get(id);
        if (text == null) {
            throw new IllegalArgumentException("there is no drill " + id);
        }
        return judge(id, text);
    }

    /** A text, judged as if it stood in this folder under that id. */
    public final Sample judge(String id, String text) {
        Reading<ReadDrill> reading = read(id, text);
        Optional<ReadDrill> read = reading.value();
        if (read.isEmpty()) {
            throw new AssertionError(id + " cannot be read: " + reading.findings());
        }
        Subject subject =
                new Subject(read.get().drill(), read.get().file(), read.get().places(), surroundings);
        List<Finding> findings = new ArrayList<>(reading.findings());
        findings.addAll(Judge.drill(subject));
        return new Sample(id, text, subject, findings);
    }

    private Reading<ReadDrill> read(String id, String text) {
        return new DrillReader(school).read(id, id + ".yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    private static School school(Path file) {
        if (!Files.exists(file)) {
            return School.DEFAULT;
        }
        Reading<ReadSchool> reading =
                SchoolReader.read("school.yaml", text(file).getBytes(StandardCharsets.UTF_8));
        return reading.value()
                .orElseThrow(() -> new AssertionError(reading.findings()))
                .school();
    }

    /** The drills of a folder: neither settings nor people nor classes nor terms. */
    public static List<Path> drillFiles(Path root) {
        try (Stream<Path> below = Files.walk(root)) {
            return below.filter(file -> file.toString().endsWith(".yaml"))
                    .filter(file -> !file.endsWith("school.yaml") && !file.endsWith("roster.yaml"))
                    .filter(file -> !file.getParent().endsWith("classes"))
                    .filter(file -> !file.getParent().endsWith("terms"))
                    .filter(file -> !file.toString().contains("target"))
                    .sorted()
                    .toList();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
