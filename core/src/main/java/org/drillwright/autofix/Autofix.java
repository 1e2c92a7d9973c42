package org.drillwright.autofix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillwright.check.Subject;
import org.drillwright.check.safety.GearMissing;
import org.drillwright.check.safety.NoTrueDistance;
import org.drillwright.model.Step;
import org.drillwright.source.FieldPath;
import org.drillwright.source.FormerRules;
import org.drillwright.wording.Message;

/**
 * Mends what has just one right answer: the numbers of the counts, a distance cue that the phrase leaves no doubt about, pieces
 * of gear that are not listed, the old name of a rule. Everything else in the file stays as it is, letter by letter.
 */
public final class Autofix {

    private static final FieldPath GEAR = FieldPath.of("gear");

    private final Subject subject;
    private final Draft draft;
    private final KeyInsertion page;

    private Autofix(Subject subject) {
        this.subject = subject;
        this.draft = new Draft(subject);
        this.page = new KeyInsertion(subject.file(), subject.places());
    }

    /** The drill's text with all that can be mended mended; the text itself if that is nothing. */
    public static String of(Subject subject) {
        return new Autofix(subject).text();
    }

    /** What can be mended, each by itself. */
    static List<Fix> each(Subject subject) {
        return new Autofix(subject).fixes();
    }

    private String text() {
        String before = subject.file().text();
        List<Edit> edits = fixes().stream().map(Fix::edit).toList();
        String text = Edit.apply(before, edits);
        return edits.isEmpty() || draft.mends(text).isPresent() ? text : before;
    }

    private List<Fix> fixes() {
        List<Fix> fixes = new ArrayList<>();
        for (int step = 0; step < subject.drill().steps().size(); step++) {
            number(step).ifPresent(fixes::add);
            distance(step).ifPresent(fixes::add);
        }
        gear().ifPresent(fixes::add);
        subject.drill().accept().keySet().forEach(rule -> renamed(rule).ifPresent(fixes::add));
        return fixes;
    }

    private Optional<Fix> number(int step) {
        OptionalInt number = subject.drill().steps().get(step).number();
        boolean wrong = number.isPresent() && number.getAsInt() != step + 1;
        FieldPath path = Subject.stepPath(step).key("number");
        String right = Integer.toString(step + 1);
        return wrong
                ? draft.fix(
                        Message.of(Autofix.class, "change.number", right), new Edit(subject.span(path), right), true)
                : Optional.empty();
    }

    private Optional<Fix> distance(int step) {
        boolean missing = subject.drill().steps().get(step).distance().isEmpty();

        return NoTrueDistance.toWrite(subject, step)
                .flatMap(cue -> distance(step, cue).flatMap(edit -> draft.fix(distance(missing, cue), edit, true)));
    }

    private static Message distance(boolean missing, String cue) {
        return missing
                ? Message.of(Autofix.class, "add", "distance", cue)
                : Message.of(Autofix.class, "change.distance", cue);
    }

    private Optional<Edit> distance(int step, String cue) {
        Step count = subject.drill().steps().get(step);
        FieldPath path = Subject.stepPath(step);
        return count.distance().isEmpty()
                ? page.keyAfter(path, List.of("number", "call", "leader", "follower"), "distance: " + cue)
                : Optional.of(new Edit(subject.span(path.key("distance")), cue));
    }

    /** A rule that is accepted by its old name gets the new one. */
    private Optional<Fix> renamed(String rule) {
        String now = FormerRules.now(rule);
        Edit edit = new Edit(subject.keySpan(FieldPath.of("accept").key(rule)), now);
        return now.equals(rule)
                ? Optional.empty()
                : draft.fix(Message.of(Autofix.class, "change.new-name", now), edit, true);
    }

    private Optional<Fix> gear() {
        List<String> pieces = GearMissing.toAdd(subject);
        return pieces.isEmpty()
                ? Optional.empty()
                : gear(pieces)
                        .flatMap(edit ->
                                draft.fix(Message.of(Autofix.class, "add.gear", Message.words(pieces)), edit, true));
    }

    private Optional<Edit> gear(List<String> pieces) {
        int size = subject.drill().gear().size();
        if (size > 0) {
            return Optional.of(page.itemsBehind(GEAR, size, pieces));
        }
        String list = "[" + String.join(", ", pieces) + "]";
        return subject.places().field(GEAR).isPresent()
                ? Optional.of(new Edit(subject.span(GEAR), list))
                : page.keyAfter(
                        FieldPath.ROOT,
                        List.of("title", "level", "form", "weapon", "hands", "works-on", "needs"),
                        "gear: " + list);
    }
}
