package org.drillwright.print.command.live;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.model.School;
import org.drillwright.phrase.Replay;
import org.drillwright.print.command.printing.chosen.ChosenDrill;
import org.drillwright.print.command.printing.chosen.Preview;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.diagram.Pictures;
import org.drillwright.print.text.Typefaces;
import org.drillwright.report.RunSummary;
import org.drillwright.source.Finding;
import org.jspecify.annotations.Nullable;

/**
 * One drill file. While it cannot be read, say because it is half written, its card and its phrase are those of the
 * last time that it could.
 */
public final class LiveDrill {

    private final int revision;
    private final ChosenDrill pick;
    private final ChosenDrill shown;
    private final School school;
    private final Typefaces faces;
    private final Said said;
    private final Drawn drawn;

    /** What is drawn when the page asks for it first. */
    private static final class Drawn {
        private Optional<Preview> preview = Optional.empty();
        private List<Picture> pictures = List.of();
    }

    /** What two readings are compared by: the text, the findings, the drill's place in its set. */
    private record Said(String text, List<String> findings, Optional<?> place, boolean readable, boolean unsettled) {}

    private LiveDrill(
            int revision, ChosenDrill pick, ChosenDrill shown, School school, Typefaces faces, Said said, Drawn drawn) {
        this.revision = revision;
        this.pick = pick;
        this.shown = shown;
        this.school = school;
        this.faces = faces;
        this.said = said;
        this.drawn = drawn;
    }

    /**
     * The sheet of a file; if there is nothing new on it, of the revision from before.
     *
     * @param read as it was read, with what the settings may be to blame for
     */
    static LiveDrill of(
            ChosenDrill read, Blame blame, Optional<LiveDrill> before, int revision, School school, Typefaces faces) {
        ChosenDrill pick = read.of(blame.cleared(read.entry()));
        String text = text(read).or(() -> before.map(LiveDrill::text)).orElse("");
        Said said = said(pick, text, blame.isUnsettled(read.entry()));
        boolean same = before.filter(old -> old.said.equals(said))
                .filter(old -> old.school.equals(school) && old.faces == faces)
                .isPresent();
        ChosenDrill shown =
                pick.isReadable() ? pick : before.map(old -> old.shown).orElse(pick);
        // A sheet from before would keep the whole school from before.
        return same
                ? new LiveDrill(
                        before.get().revision, pick, shown, school, faces, before.get().said, before.get().drawn)
                : new LiveDrill(revision, pick, shown, school, faces, said, new Drawn());
    }

    private static Said said(ChosenDrill pick, String text, boolean unsettled) {
        return new Said(text, said(pick.entry().findings()), pick.place(), pick.isReadable(), unsettled);
    }

    /** What findings say and where, whatever file they were read from. */
    static List<String> said(List<Finding> findings) {
        return findings.stream()
                .map(one -> one.severity() + one.rule() + one.span() + one.what() + one.wayOut())
                .toList();
    }

    /** None of a file in which nothing was found and that was not judged. */
    private static Optional<String> text(ChosenDrill pick) {
        return pick.entry()
                .subject()
                .map(subject -> subject.file().text())
                .or(() -> pick.entry().findings().stream()
                        .map(finding -> finding.file().text())
                        .max(Comparator.comparing(String::length)));
    }

    /** The file's name within the school's folder, with forward slashes. */
    public String name() {
        return pick.entry().name();
    }

    /** The version of the school in which it last changed. */
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

    /** Whether it cannot be read for what the settings say, or because they cannot be read themselves. */
    public boolean isUnsettled() {
        return said.unsettled;
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

    public RunSummary tally() {
        return RunSummary.of(1, findings());
    }

    /** The cards as they would be printed; none without a drill. */
    public Optional<Preview> preview() {
        synchronized (drawn) {
            if (drawn.preview.isEmpty()) {
                drawn.preview = subject().map(drill -> Preview.of(shown, drill, school, faces));
            }
            return drawn.preview;
        }
    }

    /** The start, each count, and the end of the closing, drawn; none without a drill. */
    public List<Picture> pictures() {
        synchronized (drawn) {
            if (drawn.pictures.isEmpty()) {
                drawn.pictures = subject().map(this::draw).orElse(List.of());
            }
            return drawn.pictures;
        }
    }

    private List<Picture> draw(Subject drill) {
        Replay replay = drill.replay();
        List<Picture> pictures = new ArrayList<>();
        pictures.add(Pictures.standing(replay, replay.start(), school.language()));
        pictures.addAll(Pictures.of(replay, school.language()));
        pictures.add(Pictures.standing(replay, replay.closed(), school.language()));
        return List.copyOf(pictures);
    }

    /** Whether its file says the same as it did on another one. */
    boolean saysWhat(@Nullable LiveDrill other) {
        return other != null && said.text.equals(other.said.text);
    }

    /** Whether nothing on it has changed since it was another one. */
    boolean isAsOn(@Nullable LiveDrill other) {
        return other != null && drawn == other.drawn;
    }
}
