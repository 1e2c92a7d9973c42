package org.drillwright.print.command.watch.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.model.School;
import org.drillwright.print.command.printing.Pick;
import org.drillwright.print.command.printing.Preview;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.diagram.Pictures;
import org.drillwright.print.text.Typefaces;
import org.drillwright.report.Tally;
import org.drillwright.source.Finding;

/**
 * One drill file. While it cannot be read, say because it is half written, its card and its phrase are those of the
 * last time that it could.
 */
public final class Sheet {

    private final int revision;
    private final Pick pick;
    private final Pick shown;
    private final School school;
    private final Typefaces faces;
    private final Said said;
    private Optional<Preview> preview = Optional.empty();
    private List<Picture> pictures = List.of();

    /** What two readings are compared by: the text, the findings, the drill's place in its set. */
    private record Said(String text, List<String> findings, Optional<?> place, boolean readable) {}

    private Sheet(int revision, Pick pick, Pick shown, School school, Typefaces faces) {
        this.revision = revision;
        this.pick = pick;
        this.shown = shown;
        this.school = school;
        this.faces = faces;
        this.said = said(pick);
    }

    /** The sheet of a file, or the one from before if there is nothing new on it. */
    static Sheet of(Pick pick, Optional<Sheet> before, int revision, School school, Typefaces faces) {
        boolean same = before.filter(old -> old.said.equals(said(pick)))
                .filter(old -> old.school.equals(school) && old.faces == faces)
                .isPresent();
        if (same) {
            return before.get();
        }
        Pick shown = pick.isReadable() ? pick : before.map(old -> old.shown).orElse(pick);
        return new Sheet(revision, pick, shown, school, faces);
    }

    private static Said said(Pick pick) {
        List<String> findings = pick.entry().findings().stream()
                .map(one -> one.severity() + one.rule() + one.span() + one.what() + one.wayOut())
                .toList();
        return new Said(text(pick), findings, pick.place(), pick.isReadable());
    }

    private static String text(Pick pick) {
        return pick.entry()
                .subject()
                .map(subject -> subject.file().text())
                .or(() -> pick.entry().findings().stream()
                        .map(finding -> finding.file().text())
                        .max(Comparator.comparing(String::length)))
                .orElse("");
    }

    /** The file's name within the school's folder, with forward slashes. */
    public String name() {
        return pick.entry().name();
    }

    /** The version of the desk in which it last changed. */
    public int revision() {
        return revision;
    }

    /** The file's text; empty if it could not be opened. */
    public String text() {
        return said.text();
    }

    /** The drill whose card and phrase are shown; none if the file could never be read. */
    public Optional<Subject> subject() {
        return shown.entry().subject();
    }

    /** Whether what is shown is from an earlier save. */
    public boolean isStale() {
        return !pick.isReadable() && shown.isReadable();
    }

    public boolean isReadable() {
        return pick.isReadable();
    }

    /** What reading and the rules found, without what only printing finds. */
    public List<Finding> judged() {
        return pick.entry().findings();
    }

    /** What was found, and the characters that cannot be printed. */
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>(judged());
        if (!isStale()) {
            preview().ifPresent(cards -> all.addAll(cards.lacking()));
        }
        return all;
    }

    public Tally tally() {
        return Tally.of(1, findings());
    }

    /** The cards as they would be printed; none without a drill. */
    public synchronized Optional<Preview> preview() {
        if (preview.isEmpty()) {
            preview = subject().map(drill -> Preview.of(shown, drill, school, faces));
        }
        return preview;
    }

    /** The start, each count, and the end of the closing, drawn; none without a drill. */
    public synchronized List<Picture> pictures() {
        if (pictures.isEmpty() && subject().isPresent()) {
            var replay = subject().get().replay();
            List<Picture> drawn = new ArrayList<>();
            drawn.add(Pictures.standing(replay, replay.start(), school.language()));
            drawn.addAll(Pictures.of(replay, school.language()));
            drawn.add(Pictures.standing(replay, Phrase.closed(replay), school.language()));
            pictures = List.copyOf(drawn);
        }
        return pictures;
    }
}
