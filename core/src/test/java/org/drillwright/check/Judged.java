package org.drillwright.check;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.drillwright.source.SourcePlaces;

/**
 * Texts of drills, read and put to the rules as a folder of them would be.
 *
 * <pre>{@code
 * Judged.drill("gear: [mask]").findings("gear-missing")    // ["error 1:7 '[mask]'"]
 * }</pre>
 */
public final class Judged {

    private final Optional<ReadSchool> settings;
    private final School school;
    private final Map<String, Subject> subjects = new LinkedHashMap<>();

    private Judged(String schoolText, Map<String, String> texts) {
        this.settings = schoolText.isEmpty() ? Optional.empty() : Optional.of(settings(schoolText));
        this.school = settings.map(ReadSchool::school).orElse(School.DEFAULT);
        Map<String, ReadDrill> read = new LinkedHashMap<>();
        texts.forEach((id, text) -> read.put(id, drill(id, text, school)));
        Map<String, Drill> drills = new LinkedHashMap<>();
        read.forEach((id, drill) -> drills.put(id, drill.drill()));
        Surroundings surroundings =
                new Surroundings(school, TurnReader.standard().with(school.words()), drills);
        read.forEach((id, drill) ->
                subjects.put(id, new Subject(drill.drill(), drill.file(), drill.places(), surroundings)));
    }

    /** One drill, of which the lines that matter are given; {@link Example} completes them. */
    public static Judged drill(String lines) {
        return in("", lines);
    }

    /** One drill of a school whose settings are given. */
    public static Judged in(String school, String lines) {
        return folder(school, Map.of("example", lines));
    }

    /** Several drills by their ids, each completed. */
    public static Judged folder(String school, Map<String, String> drills) {
        Map<String, String> whole = new LinkedHashMap<>();
        new java.util.TreeMap<>(drills).forEach((id, lines) -> whole.put(id, Example.complete(ended(lines))));
        return new Judged(school, whole);
    }

    private static String ended(String lines) {
        return lines.isEmpty() || lines.endsWith("\n") ? lines : lines + "\n";
    }

    private static ReadSchool settings(String text) {
        Reading<ReadSchool> reading = SchoolReader.read("school.yaml", text.getBytes(StandardCharsets.UTF_8));
        return reading.value().orElseThrow(() -> new AssertionError(reading.findings() + "\n" + text));
    }

    private static ReadDrill drill(String id, String text, School school) {
        Reading<ReadDrill> reading =
                new DrillReader(school).read(id, id + ".yaml", text.getBytes(StandardCharsets.UTF_8));
        return reading.value().orElseThrow(() -> new AssertionError(reading.findings() + "\n" + text));
    }

    /** The one drill, played. */
    public Subject subject() {
        return subjects.values().iterator().next();
    }

    /** All that the rules find in the one drill. */
    public List<Finding> all() {
        return Judge.drill(subject());
    }

    /** What one rule finds in the one drill: {@code severity line:column 'the words'}. */
    public List<String> findings(String rule) {
        return shown(all(), rule);
    }

    /** What one rule finds in the drill of an id. */
    public List<String> findings(String id, String rule) {
        return shown(Judge.drill(subjects.get(id)), rule);
    }

    /** What one rule of the folder finds: {@code file severity line:column 'the words'}. */
    public List<String> ofFolder(String rule) {
        return inFolder(rule)
                .map(finding -> finding.file().name() + " " + shown(finding))
                .toList();
    }

    /** What one rule says of the folder as a whole. */
    public List<String> saidOfFolder(String rule) {
        return inFolder(rule).map(finding -> finding.what().english()).toList();
    }

    private Stream<Finding> inFolder(String rule) {
        Folder folder = new Folder(
                school,
                settings.map(ReadSchool::file),
                settings.map(ReadSchool::places).orElseGet(() -> new SourcePlaces(Map.of())),
                List.copyOf(subjects.values()));
        return Judge.folder(folder).stream().filter(finding -> finding.rule().equals(rule));
    }

    private static List<String> shown(List<Finding> findings, String rule) {
        return findings.stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(Judged::shown)
                .toList();
    }

    private static String shown(Finding finding) {
        return finding.severity().word() + " " + finding.position().line() + ":"
                + finding.position().column() + " '" + finding.file().slice(finding.span()) + "'";
    }
}
