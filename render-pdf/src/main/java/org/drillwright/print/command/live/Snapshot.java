package org.drillwright.print.command.live;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.School;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.printing.SchoolFaces;
import org.drillwright.print.command.printing.chosen.ChosenDrill;
import org.drillwright.print.command.printing.chosen.DrillChooser;
import org.drillwright.print.pdf.Family;
import org.drillwright.report.RunSummary;
import org.drillwright.school.SchoolFolder;
import org.drillwright.source.Finding;
import org.drillwright.wording.Message;

/** A school's folder as it was read at one time. */
public final class Snapshot {

    private final int version;
    private final SchoolFolder folder;
    private final Family faces;
    private final Map<String, LiveDrill> sheets;
    private final Map<String, String> renamed;
    private final List<Finding> settings;
    private final Optional<Message> trouble;

    private Snapshot(
            int version,
            SchoolFolder folder,
            Family faces,
            Map<String, LiveDrill> sheets,
            Map<String, String> renamed,
            List<Finding> settings,
            Optional<Message> trouble) {
        this.version = version;
        this.folder = folder;
        this.faces = faces;
        this.sheets = sheets;
        this.renamed = renamed;
        this.settings = settings;
        this.trouble = trouble;
    }

    static Snapshot of(SchoolFolder folder, Optional<Snapshot> before) {
        int version = before.map(old -> old.version + 1).orElse(1);
        Optional<Message> trouble = Optional.empty();
        Family faces = Family.dejaVu();
        try {
            faces = before.filter(old -> old.trouble.isEmpty() && old.school().equals(folder.school()))
                    .map(old -> old.faces)
                    .orElseGet(() -> SchoolFaces.of(folder));
        } catch (CannotRun unusable) {
            trouble = Optional.of(unusable.message());
        }
        Map<String, LiveDrill> sheets = new LinkedHashMap<>();
        Map<String, LiveDrill> old = before.map(all -> all.sheets).orElse(Map.of());
        Map<String, ChosenDrill> picks = picks(folder);
        Blame blame = Blame.of(folder, old);
        for (SchoolFolder.Entry entry : folder.entries()) {
            ChosenDrill pick = picks.getOrDefault(entry.name(), ChosenDrill.alone(entry));
            Optional<LiveDrill> last = Optional.ofNullable(old.get(entry.name()));
            sheets.put(entry.name(), LiveDrill.of(pick, blame, last, version, folder.school(), faces));
        }
        Map<String, String> renamed = before.map(all -> all.renamed(sheets)).orElse(Map.of());
        List<Finding> settings = new ArrayList<>(folder.folderFindings());
        settings.addAll(blame.findings());
        return new Snapshot(version, folder, faces, sheets, renamed, settings, trouble);
    }

    /** The renames so far and those now, each to the name that is there. */
    private Map<String, String> renamed(Map<String, LiveDrill> later) {
        Map<String, String> now = Renames.between(sheets, later);
        Map<String, String> all = new LinkedHashMap<>(now);
        renamed.forEach((from, to) -> all.put(from, now.getOrDefault(to, to)));
        all.entrySet().removeIf(one -> later.containsKey(one.getKey()) || !later.containsKey(one.getValue()));
        return all;
    }

    private static Map<String, ChosenDrill> picks(SchoolFolder folder) {
        Map<String, ChosenDrill> picks = new LinkedHashMap<>();
        new DrillChooser(folder)
                .whole()
                .drills()
                .forEach(pick -> picks.put(pick.entry().name(), pick));
        return picks;
    }

    /** The same, counted as another version. */
    Snapshot of(int other) {
        return new Snapshot(other, folder, faces, sheets, renamed, settings, trouble);
    }

    /** The same, with a sentence about why it could not be read again. */
    Snapshot troubled(Message sentence) {
        return new Snapshot(version + 1, folder, faces, sheets, renamed, settings, Optional.of(sentence));
    }

    /** The folder as the rules saw it; what {@link #sheets} say of a drill may be milder where the settings are to blame. */
    public SchoolFolder folder() {
        return folder;
    }

    public int version() {
        return version;
    }

    public School school() {
        return folder.school();
    }

    /** The folder, for showing to people. */
    public String place() {
        return folder.root().toAbsolutePath().normalize().toString();
    }

    public Family faces() {
        return faces;
    }

    /** Why something of the folder could not be used, in a sentence. */
    public Optional<Message> trouble() {
        return trouble;
    }

    /** In the order of their names. */
    public List<LiveDrill> sheets() {
        return List.copyOf(sheets.values());
    }

    public Optional<LiveDrill> sheet(String name) {
        return Optional.ofNullable(sheets.get(name));
    }

    /** The name that a file has now, by each that it had since the page is served. */
    public Map<String, String> renamed() {
        return renamed;
    }

    /** What was found in the settings, and about the folder as a whole. */
    public List<Finding> folderFindings() {
        return settings;
    }

    /** Whether the settings have errors, so that no drill could be judged. */
    public boolean isUnjudged() {
        return folder.isUnjudged();
    }

    public RunSummary tally() {
        List<Finding> all = new ArrayList<>(settings);
        sheets.values().forEach(sheet -> all.addAll(sheet.judged()));
        return RunSummary.of(sheets.size(), all);
    }

    /** What is different in a later one. */
    SchoolUpdate to(Snapshot later) {
        List<String> changed = later.sheets.values().stream()
                .filter(sheet -> !sheet.isAsOn(sheets.get(sheet.name())))
                .map(LiveDrill::name)
                .toList();
        List<String> saved = later.sheets.values().stream()
                .filter(sheet -> !sheet.saysWhat(sheets.get(sheet.name())))
                .map(LiveDrill::name)
                .toList();
        Map<String, String> other = Renames.between(sheets, later.sheets);
        List<String> gone = sheets.keySet().stream()
                .filter(name -> !later.sheets.containsKey(name) && !other.containsKey(name))
                .toList();
        return new SchoolUpdate(later.version, saved, changed, gone, other);
    }

    /** Whether nothing that is shown is different in a later one. */
    boolean says(Snapshot later) {
        SchoolUpdate change = to(later);
        return change.changed().isEmpty()
                && change.gone().isEmpty()
                && change.renamed().isEmpty()
                && trouble.equals(later.trouble)
                && school().equals(later.school())
                && LiveDrill.said(settings).equals(LiveDrill.said(later.settings));
    }
}
