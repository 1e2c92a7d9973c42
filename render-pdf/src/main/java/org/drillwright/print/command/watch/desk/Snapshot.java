package org.drillwright.print.command.watch.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.School;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.printing.SchoolFaces;
import org.drillwright.print.command.printing.picks.Pick;
import org.drillwright.print.command.printing.picks.Picking;
import org.drillwright.print.pdf.Family;
import org.drillwright.report.Tally;
import org.drillwright.school.SchoolFolder;
import org.drillwright.source.Finding;

/** A school's folder as it was read at one time. */
public final class Snapshot {

    private final int version;
    private final SchoolFolder folder;
    private final Family faces;
    private final Map<String, Sheet> sheets;
    private final Optional<String> trouble;

    private Snapshot(
            int version, SchoolFolder folder, Family faces, Map<String, Sheet> sheets, Optional<String> trouble) {
        this.version = version;
        this.folder = folder;
        this.faces = faces;
        this.sheets = sheets;
        this.trouble = trouble;
    }

    static Snapshot of(SchoolFolder folder, Optional<Snapshot> before) {
        int version = before.map(old -> old.version + 1).orElse(1);
        Optional<String> trouble = Optional.empty();
        Family faces = Family.dejaVu();
        try {
            faces = before.filter(old -> old.trouble.isEmpty() && old.school().equals(folder.school()))
                    .map(old -> old.faces)
                    .orElseGet(() -> SchoolFaces.of(folder));
        } catch (CannotRun unusable) {
            trouble = Optional.ofNullable(unusable.getMessage());
        }
        Map<String, Sheet> sheets = new LinkedHashMap<>();
        Map<String, Pick> picks = picks(folder);
        for (SchoolFolder.Entry entry : folder.entries()) {
            Pick pick = picks.getOrDefault(entry.name(), Pick.alone(entry));
            Optional<Sheet> old = before.flatMap(all -> all.sheet(entry.name()));
            sheets.put(entry.name(), Sheet.of(pick, old, version, folder.school(), faces));
        }
        return new Snapshot(version, folder, faces, sheets, trouble);
    }

    private static Map<String, Pick> picks(SchoolFolder folder) {
        Map<String, Pick> picks = new LinkedHashMap<>();
        new Picking(folder)
                .whole()
                .drills()
                .forEach(pick -> picks.put(pick.entry().name(), pick));
        return picks;
    }

    /** The same, with a sentence about why it could not be read again. */
    Snapshot troubled(String sentence) {
        return new Snapshot(version + 1, folder, faces, sheets, Optional.of(sentence));
    }

    SchoolFolder folder() {
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
    public Optional<String> trouble() {
        return trouble;
    }

    /** In the order of their names. */
    public List<Sheet> sheets() {
        return List.copyOf(sheets.values());
    }

    public Optional<Sheet> sheet(String name) {
        return Optional.ofNullable(sheets.get(name));
    }

    /** What was found in the settings, and about the folder as a whole. */
    public List<Finding> folderFindings() {
        return folder.folderFindings();
    }

    /** Whether the settings have errors, so that no drill could be judged. */
    public boolean isUnjudged() {
        return folder.isUnjudged();
    }

    public Tally tally() {
        return Tally.of(sheets.size(), folder.findings());
    }

    /** What is different in a later one. */
    Change to(Snapshot later) {
        List<String> changed = later.sheets.values().stream()
                .filter(sheet -> !sheet.isAsOn(sheets.get(sheet.name())))
                .map(Sheet::name)
                .toList();
        List<String> gone = sheets.keySet().stream()
                .filter(name -> !later.sheets.containsKey(name))
                .toList();
        return new Change(later.version, changed, gone);
    }

    /** Whether nothing that is shown is different in a later one. */
    boolean says(Snapshot later) {
        Change change = to(later);
        return change.changed().isEmpty()
                && change.gone().isEmpty()
                && trouble.equals(later.trouble)
                && school().equals(later.school())
                && findings().equals(later.findings());
    }

    private List<String> findings() {
        return folderFindings().stream()
                .map(one -> one.severity() + one.rule() + one.span() + one.what() + one.wayOut())
                .toList();
    }
}
