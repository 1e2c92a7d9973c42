package org.drillwright.school;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.drillwright.mark.PlanMark;
import org.drillwright.model.DrillSet;
import org.drillwright.model.Level;
import org.drillwright.plan.published.Publication;
import org.drillwright.plan.published.Publications;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.term.Term;
import org.drillwright.read.PublishedReader;
import org.drillwright.read.Reading;
import org.drillwright.read.ReadingLimits;
import org.drillwright.read.TermReader;
import org.drillwright.source.Finding;

/** The terms of a school, as they lie in the folder of terms, and their plans that were published. */
public final class TermFolder {

    private final SchoolFolder school;
    private final ClassFolder classes;
    private final List<Path> terms;

    private TermFolder(SchoolFolder school, ClassFolder classes, List<Path> terms) {
        this.school = school;
        this.classes = classes;
        this.terms = List.copyOf(terms);
    }

    /** @throws IOException if the folder is there and cannot be listed */
    public static TermFolder open(SchoolFolder school, ClassFolder classes) throws IOException {
        return new TermFolder(school, classes, ClassFiles.terms(school.root()));
    }

    /** The names of the terms. */
    public List<String> names() {
        return terms.stream().map(DrillFiles::id).toList();
    }

    /** The file of a term in the folder of terms. */
    public Optional<Path> named(String name) {
        return terms.stream()
                .filter(file -> DrillFiles.id(file).equals(name)
                        || DrillFiles.name(file).equals(name))
                .findFirst();
    }

    /** Reads one term; the roster must have been read. */
    public Reading<Term> read(Path file) throws IOException {
        return new TermReader(school.school().classLength(), people(), taught())
                .read(
                        DrillFiles.shownFrom(school.root(), file),
                        school.unsaved().bytes(file, ReadingLimits.FILE_BYTES));
    }

    /** The names of those who train. */
    public List<String> people() {
        return classes.roster().orElse(Roster.EMPTY).people().stream()
                .map(Person::name)
                .toList();
    }

    /** What a group may be taught, each with the drills that it stands for: drills, sets, and levels, each of which counts as a set. */
    public Map<String, List<String>> taught() {
        Map<String, List<String>> taught = new TreeMap<>();
        for (Level level : school.school().levels()) {
            DrillSet set = new DrillSet(level.name(), Optional.of(level.name()), List.of());
            taught.put(level.name(), school.idsOf(set));
        }
        school.school().sets().forEach(set -> taught.put(set.name(), school.idsOf(set)));
        classes.drills().keySet().forEach(id -> taught.put(id, List.of(id)));
        return taught;
    }

    /** What a group may be taught, each with its title; sets have none. */
    public Map<String, String> titles() {
        Map<String, String> drills = school.titles();
        Map<String, String> titles = new LinkedHashMap<>();
        taught().keySet().forEach(name -> titles.put(name, drills.getOrDefault(name, "")));
        return titles;
    }

    /** Findings of all terms in the folder, file by file, none while the roster has an error; and of the published plans. */
    public List<Finding> findings() throws IOException {
        List<Finding> all = new ArrayList<>();
        if (classes.roster().isPresent()) {
            for (Path file : terms) {
                all.addAll(read(file).findings());
            }
        }
        for (Path file : ClassFiles.published(school.root())) {
            Reading<Publication> reading = readPublished(file);
            all.addAll(reading.findings());
            reading.value()
                    .ifPresent(plan -> sort(plan, DrillFiles.shownFrom(school.root(), file), new ArrayList<>(), all));
        }
        return all;
    }

    private Reading<Publication> readPublished(Path file) throws IOException {
        return PublishedReader.read(
                DrillFiles.shownFrom(school.root(), file), DrillFiles.bytes(file, ReadingLimits.FILE_BYTES));
    }

    /**
     * The plans of a term that were published; one that isn't whole, or no longer what its mark stands for, is a finding.
     *
     * @param findings is added to
     */
    public Publications published(String named, List<Finding> findings) throws IOException {
        List<Publication> plans = new ArrayList<>();
        for (Path file : ClassFiles.published(school.root())) {
            if (DrillFiles.name(file).startsWith(named + "-")) {
                String shown = DrillFiles.shownFrom(school.root(), file);
                Reading<Publication> reading = readPublished(file);
                findings.addAll(reading.findings());
                reading.value()
                        .filter(plan -> plan.term().named().equals(named))
                        .ifPresent(plan -> sort(plan, shown, plans, findings));
            }
        }
        return new Publications(plans);
    }

    private static void sort(Publication plan, String shown, List<Publication> plans, List<Finding> findings) {
        if (plan.term().fits(plan.mark())) {
            plans.add(plan);
        } else {
            findings.add(PlanFiles.changed(shown, "plan.published.changed", plan.mark()));
        }
    }

    /** Where a published plan is kept, be it there or not. */
    public Path planFile(String named, PlanMark mark) {
        return school.root()
                .resolve(ClassFiles.TERMS)
                .resolve(ClassFiles.PLANS)
                .resolve(named + "-" + mark.shown() + ".yaml");
    }

    /** Whether a plan of any term has a mark. */
    public boolean isTaken(PlanMark mark) throws IOException {
        return ClassFiles.published(school.root()).stream()
                .anyMatch(file -> DrillFiles.name(file).endsWith("-" + mark.shown() + ".yaml"));
    }
}
