package org.drillwright.mend;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.check.Judge;
import org.drillwright.check.Subject;
import org.drillwright.check.safety.GearMissing;
import org.drillwright.check.safety.NoTrueDistance;
import org.drillwright.model.Step;
import org.drillwright.read.DrillReader;
import org.drillwright.read.ReadDrill;
import org.drillwright.read.Reading;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Finding;
import org.drillwright.source.FormerRules;

/**
 * Mends what has just one right answer: the numbers of the counts, a distance cue that the phrase leaves no doubt about, pieces
 * of gear that are not listed, the old name of a rule. Everything else in the file stays as it is, letter by letter.
 */
public final class Mending {

    private static final FieldPath GEAR = FieldPath.of("gear");

    private final Subject subject;
    private final Page page;

    private Mending(Subject subject) {
        this.subject = subject;
        this.page = new Page(subject.file(), subject.places());
    }

    /** The drill's text with all that can be mended mended; the text itself if that is nothing. */
    public static String of(Subject subject) {
        return new Mending(subject).text();
    }

    private String text() {
        Map<String, Long> before = found(subject.file().text()).orElse(Map.of());
        List<Edit> edits = edits().stream()
                .filter(edit -> isBetter(Edit.apply(subject.file().text(), List.of(edit)), before))
                .toList();
        String text = Edit.apply(subject.file().text(), edits);
        return edits.isEmpty() || isBetter(text, before) ? text : subject.file().text();
    }

    private List<Edit> edits() {
        List<Edit> edits = new ArrayList<>();
        for (int step = 0; step < subject.drill().steps().size(); step++) {
            number(step).ifPresent(edits::add);
            distance(step).ifPresent(edits::add);
        }
        gear().ifPresent(edits::add);
        subject.drill().accept().keySet().forEach(rule -> renamed(rule).ifPresent(edits::add));
        return edits;
    }

    private Optional<Edit> number(int step) {
        OptionalInt number = subject.drill().steps().get(step).number();
        boolean wrong = number.isPresent() && number.getAsInt() != step + 1;
        FieldPath path = Subject.stepPath(step).key("number");
        return wrong ? Optional.of(new Edit(subject.span(path), Integer.toString(step + 1))) : Optional.empty();
    }

    private Optional<Edit> distance(int step) {
        Step count = subject.drill().steps().get(step);
        Optional<String> cue = NoTrueDistance.toWrite(subject, step);
        FieldPath path = Subject.stepPath(step);
        return count.distance().isEmpty()
                ? cue.flatMap(words ->
                        page.keyAfter(path, List.of("number", "call", "leader", "follower"), "distance: " + words))
                : cue.map(words -> new Edit(subject.span(path.key("distance")), words));
    }

    /** A rule that is accepted by its old name gets the new one. */
    private Optional<Edit> renamed(String rule) {
        String now = FormerRules.now(rule);
        Edit edit = new Edit(subject.keySpan(FieldPath.of("accept").key(rule)), now);
        return now.equals(rule) ? Optional.empty() : Optional.of(edit);
    }

    private Optional<Edit> gear() {
        List<String> pieces = GearMissing.toAdd(subject);
        if (pieces.isEmpty()) {
            return Optional.empty();
        }
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

    /** Whether a text reads without more findings than there were, rule by rule, and with fewer in all. */
    private boolean isBetter(String text, Map<String, Long> before) {
        return found(text)
                .filter(after -> after.entrySet().stream()
                        .allMatch(rule -> rule.getValue() <= before.getOrDefault(rule.getKey(), 0L)))
                .filter(after -> sum(after) < sum(before))
                .isPresent();
    }

    private static long sum(Map<String, Long> findings) {
        return findings.values().stream().mapToLong(number -> number).sum();
    }

    /** How often each rule finds something in a text; empty if it cannot be read. */
    private Optional<Map<String, Long>> found(String text) {
        Reading<ReadDrill> reading = new DrillReader(subject.school())
                .read(subject.drill().id(), subject.file().name(), text.getBytes(StandardCharsets.UTF_8));
        return reading.value()
                .map(read -> subject.rewritten(read.drill(), read.file(), read.places()))
                .map(drill -> Stream.concat(reading.findings().stream(), Judge.drill(drill).stream())
                        .collect(Collectors.groupingBy(Finding::rule, Collectors.counting())));
    }
}
