package org.drillwright.print.command.printing.chosen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.check.Subject;
import org.drillwright.model.DrillSet;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.layout.words.CardSubject.Place;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolFolder.Entry;
import org.drillwright.source.Nearest;
import org.drillwright.wording.Message;

/** Picks drills by set, by name, or all of a school, each with its place in its set. */
public final class DrillChooser {

    private final SchoolFolder school;
    private final Neighbours neighbours;
    private final List<ChosenDrill> unread;

    public DrillChooser(SchoolFolder school) {
        this.school = school;
        this.neighbours = new Neighbours(school, sets());
        this.unread = school.entries().stream()
                .filter(entry -> !entry.isWhole())
                .map(neighbours::alone)
                .toList();
    }

    /** The drills of sets, set after set. */
    public ChosenDrills sets(List<String> names) {
        List<DrillSet> sets = names.stream().map(this::set).toList();
        return picks(title(String.join(", ", names)), sets);
    }

    /** Every drill of the school: those of its sets in the order of these, then those in no set, by level. */
    public ChosenDrills whole() {
        ChosenDrills inSets = picks(title(""), sets());
        Map<Entry, ChosenDrill> picked = byEntry(inSets.drills());
        school.entries().stream()
                .sorted(Comparator.comparingInt(this::rank))
                .forEach(entry -> picked.computeIfAbsent(entry, neighbours::alone));
        return new ChosenDrills(inSets.title(), List.copyOf(picked.values()), inSets.absent());
    }

    /** Just these, with the place that they have in the first set that holds them. */
    public ChosenDrills these(List<Entry> entries) {
        Map<Entry, ChosenDrill> inSets = byEntry(picks("", sets()).drills());
        List<ChosenDrill> picks = entries.stream()
                .map(entry -> inSets.getOrDefault(entry, neighbours.alone(entry)))
                .toList();
        String title = picks.stream().map(DrillChooser::name).collect(Collectors.joining(", "));
        return new ChosenDrills(title(title), picks, List.of());
    }

    private ChosenDrills picks(String title, List<DrillSet> sets) {
        List<ChosenDrill> picks = new ArrayList<>();
        List<String> absent = new ArrayList<>();
        for (DrillSet set : sets) {
            picks.addAll(picks(set));
            set.drills().stream().filter(id -> school.entry(id).isEmpty()).forEach(absent::add);
        }
        return new ChosenDrills(title, List.copyOf(byEntry(picks).values()), absent);
    }

    private List<ChosenDrill> picks(DrillSet set) {
        List<String> ids = school.idsOf(set);
        List<ChosenDrill> picks = new ArrayList<>();
        for (int at = 0; at < ids.size(); at++) {
            Place place = new Place(set.name(), at + 1, ids.size());
            school.entry(ids.get(at)).ifPresent(entry -> picks.add(neighbours.at(place, entry)));
        }
        picks.addAll(maybeMembers(set));
        return picks;
    }

    /** Of a file that cannot be read the level is not known: it may well belong to a level's set. */
    private List<ChosenDrill> maybeMembers(DrillSet set) {
        return set.isListed() ? List.of() : unread;
    }

    private static Map<Entry, ChosenDrill> byEntry(List<ChosenDrill> picks) {
        Map<Entry, ChosenDrill> byEntry = new LinkedHashMap<>();
        picks.forEach(pick -> byEntry.putIfAbsent(pick.entry(), pick));
        return byEntry;
    }

    private List<DrillSet> sets() {
        return names().stream()
                .flatMap(name -> school.school().set(name).stream())
                .toList();
    }

    /** The names of the school's sets, or of its levels if it has made no sets. */
    public List<String> names() {
        List<String> sets = school.school().sets().stream().map(DrillSet::name).toList();
        return sets.isEmpty()
                ? school.school().levels().stream().map(level -> level.name()).toList()
                : sets;
    }

    /** The drills that no set holds although others of their level are in one of these. */
    public List<String> leftOut(List<String> names) {
        Set<String> levels = sets(names).drills().stream()
                .flatMap(pick -> pick.entry().subject().stream())
                .map(subject -> subject.drill().level())
                .collect(Collectors.toSet());
        Set<Entry> held = byEntry(picks("", sets()).drills()).keySet();
        return school.entries().stream()
                .filter(entry -> !held.contains(entry))
                .filter(entry -> entry.subject()
                        .filter(subject -> levels.contains(subject.drill().level()))
                        .isPresent())
                .map(entry -> DrillFiles.id(entry.file()))
                .toList();
    }

    private DrillSet set(String name) {
        DrillSet set = school.school().set(name).orElseThrow(() -> new CannotRun(unknown(name)));
        if (picks(set).isEmpty() && !set.isListed()) {
            throw new CannotRun(
                    set.name().equals(set.level().orElse(""))
                                    && set.tag().isEmpty()
                                    && set.weapon().isEmpty()
                            ? Message.of(DrillChooser.class, "picking.no.drill.in.this", name)
                            : Message.of(DrillChooser.class, "picking.the.set.has.no", name));
        }
        return set;
    }

    private Message unknown(String name) {
        Message known = Message.of(DrillChooser.class, "picking.the.school.has.no", name, Message.words(names()));
        return Nearest.to(name, names())
                .map(near -> Message.of(DrillChooser.class, "picking.the.school.has.no.near", name, near))
                .orElse(known);
    }

    private int rank(Entry entry) {
        return entry.subject()
                .map(subject -> school.school().rank(subject.drill().level()))
                .orElse(Integer.MAX_VALUE);
    }

    private static String name(ChosenDrill pick) {
        return pick.entry()
                .subject()
                .map(Subject::drill)
                .map(drill -> drill.title())
                .orElseGet(pick::id);
    }

    private String title(String of) {
        String name = school.school().name();
        if (name.isEmpty()) {
            return of.isEmpty()
                    ? Message.of(DrillChooser.class, "picking.drill.cards")
                            .in(school.school().language().locale())
                    : of;
        }
        return of.isEmpty() ? name : name + ": " + of;
    }
}
