package org.drillwright.school;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.kept.KeptPlans;
import org.drillwright.read.PlanReader;
import org.drillwright.read.Reading;
import org.drillwright.read.ReadingLimits;
import org.drillwright.read.ReadingRule;
import org.drillwright.source.Finding;
import org.drillwright.source.Fingerprint;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** Plans that were printed, a file each, named by day and mark and never written again. */
final class PlanFiles {

    /** Figures of a file in a plan's origin. */
    private static final int FIGURES = 8;

    private PlanFiles() {}

    static Path file(Path root, LocalDate date, PlanMark mark) {
        return root.resolve(ClassFiles.CLASSES).resolve(ClassFiles.PLANS).resolve(date + "-" + mark.shown() + ".yaml");
    }

    static boolean isTaken(Path root, PlanMark mark) throws IOException {
        return ClassFiles.plans(root).stream()
                .anyMatch(file -> DrillFiles.name(file).endsWith("-" + mark.shown() + ".yaml"));
    }

    private static Reading<Kept> read(Path root, Path file) throws IOException {
        return PlanReader.read(DrillFiles.shownFrom(root, file), DrillFiles.bytes(file, ReadingLimits.FILE_BYTES));
    }

    /** What is wrong with all that are kept. */
    static List<Finding> findings(Path root) throws IOException {
        List<Finding> findings = new ArrayList<>();
        for (Path file : ClassFiles.plans(root)) {
            Reading<Kept> reading = read(root, file);
            findings.addAll(reading.findings());
            reading.value()
                    .ifPresent(kept -> sort(kept, DrillFiles.shownFrom(root, file), new ArrayList<>(), findings));
        }
        return findings;
    }

    static ReadPlans read(Path root, String named, LocalDate date) throws IOException {
        List<Kept> plans = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (Path file : ClassFiles.plans(root)) {
            if (DrillFiles.name(file).startsWith(date.toString())) {
                Reading<Kept> reading = read(root, file);
                findings.addAll(reading.findings());
                reading.value()
                        .filter(kept -> kept.plan().named().equals(named)
                                && kept.plan().date().equals(date))
                        .ifPresent(kept -> sort(kept, DrillFiles.shownFrom(root, file), plans, findings));
            }
        }
        return new ReadPlans(new KeptPlans(plans), findings);
    }

    private static void sort(Kept kept, String shown, List<Kept> plans, List<Finding> findings) {
        if (kept.plan().fits(kept.mark())) {
            plans.add(kept);
        } else {
            findings.add(changed(shown, "plan.printed.changed", kept.mark()));
        }
    }

    /**
     * A plan whose mark doesn't fit any more.
     *
     * @param key of its words: what it was; the way out stands under {@code key.way}
     */
    static Finding changed(String shown, String key, PlanMark mark) {
        return new Finding(
                ReadingRule.PLAN_SPOILT.id(),
                Severity.ERROR,
                new SourceFile(shown, ""),
                Span.at(0),
                Message.of(PlanFiles.class, key, mark.shown()),
                Message.of(PlanFiles.class, key + ".way"));
    }

    static Map<String, String> figures(Path root, Path klass) throws IOException {
        Map<String, String> figures = new LinkedHashMap<>();
        List<Path> rosters = ClassFiles.rosters(root);
        put("roster", rosters.stream().findFirst(), figures);
        put("class", Optional.of(klass), figures);
        return figures;
    }

    private static void put(String what, Optional<Path> file, Map<String, String> figures) throws IOException {
        if (file.isPresent()) {
            figures.put(what, Fingerprint.figures(DrillFiles.bytes(file.get(), ReadingLimits.FILE_BYTES), FIGURES));
        }
    }
}
