package org.drillwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.drillwright.autofix.Autofix;
import org.drillwright.check.Subject;
import org.drillwright.check.Suggestions;
import org.drillwright.check.Surroundings;
import org.drillwright.check.jury.Judge;
import org.drillwright.check.jury.Rules;
import org.drillwright.explain.Explanation;
import org.drillwright.explain.ExplanationJson;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.model.Side;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Possible;
import org.drillwright.phrase.Replay;
import org.drillwright.phrase.State;
import org.drillwright.read.DrillReader;
import org.drillwright.read.DrillWriter;
import org.drillwright.read.ReadDrill;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Finding;
import org.drillwright.source.SourceFile;
import org.drillwright.source.SourcePlaces;

/** What holds of any drill that is played and judged. */
final class Judgement {

    /** More findings than this for each count, and as many for the rest, would bury the one that matters. */
    private static final int A_COUNT = 24;

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final DrillReader READER = new DrillReader(School.DEFAULT);
    private static final TurnReader CLAUSES = TurnReader.standard();

    private final Subject subject;
    private final List<Finding> findings;

    private Judgement(Subject subject) {
        this.subject = subject;
        this.findings = Judge.drill(subject);
    }

    static Judgement of(Drill drill, SourceFile file, SourcePlaces places) {
        return new Judgement(new Subject(drill, file, places, around(drill)));
    }

    private static Surroundings around(Drill drill) {
        return new Surroundings(School.DEFAULT, TurnReader.standard(), Map.of(drill.id(), drill));
    }

    static Judgement of(String text) {
        ReadDrill read = READER.read("a-drill", "a-drill.yaml", text.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow(() -> new AssertionError(text));
        return of(read.drill(), read.file(), read.places());
    }

    void holds() {
        findingsAreInOrder();
        theSameDrillIsJudgedTheSame();
        whatIsNotReadIsSaid();
        theExplanationIsWhole();
        suggestionsAreRead();
        possibleMovesAreDistinct();
    }

    private void findingsAreInOrder() {
        Told.inOrder(findings);
        int most = A_COUNT * (1 + subject.drill().steps().size());
        assertTrue(findings.size() <= most, () -> findings.size() + " findings: " + findings);
        findings.forEach(finding -> assertTrue(Rules.text(finding.rule()).isPresent(), finding::rule));
    }

    /** Judged again, and judged when written down in another layout, if it was read without a value lost. */
    private void theSameDrillIsJudgedTheSame() {
        assertEquals(findings, of(subject.drill(), subject.file(), subject.places()).findings);
        if (subject.places().lost().isEmpty()) {
            assertEquals(said(this), said(of(DrillWriter.write(subject.drill()))));
        }
    }

    /** What is found, wherever it stands. */
    private static List<String> said(Judgement judgement) {
        return judgement.findings.stream()
                .map(finding -> finding.severity() + " " + finding.rule() + ": "
                        + finding.what().english())
                .sorted()
                .toList();
    }

    /** Where the form is lost, words that may be a mere call are told of as not judged only. */
    private void whatIsNotReadIsSaid() {
        boolean unread = false;
        for (int step = 0; step < subject.drill().steps().size(); step++) {
            for (Side side : Side.values()) {
                unread |= !subject.turn(step, side).unread().isEmpty();
            }
        }
        boolean lost = !subject.places().lost().isEmpty();
        boolean said = findings.stream()
                .anyMatch(finding -> finding.rule().equals("words-unread")
                        || (lost && finding.rule().equals("not-fully-checked")));
        assertTrue(said || !unread, "unread words are passed over");
    }

    private void theExplanationIsWhole() {
        String text = Explanation.text(subject, Locale.ENGLISH);
        assertEquals(text, Explanation.text(subject, Locale.ENGLISH));
        assertFalse(text.contains("Optional["), text);
        JsonNode json = json(ExplanationJson.of(subject, Locale.ENGLISH));
        int counts = subject.drill().steps().size();
        assertEquals(counts, json.path("counts").size());
        assertEquals(counts, subject.coverage().counts());
        subject.coverage().gaps().forEach(gap -> assertTrue(gap.step() >= 0 && gap.step() < counts));
    }

    private static JsonNode json(String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException problem) {
            throw new AssertionError(text, problem);
        }
    }

    private void suggestionsAreRead() {
        for (Suggestions.Proposal proposal : Suggestions.of(subject)) {
            for (String turn : proposal.turns()) {
                Utterance read = CLAUSES.read(turn);
                assertTrue(read.isRead() && !read.clauses().isEmpty(), turn);
            }
        }
    }

    private void possibleMovesAreDistinct() {
        Replay replay = subject.replay();
        for (Count count : replay.counts()) {
            List<Possible.Open> open = Possible.in(count.end(), replay.setting());
            assertEquals(
                    open.size(),
                    open.stream().map(Possible.Open::move).distinct().count());
            open.forEach(one -> inRange(one.next()));
            inRange(count.end());
        }
    }

    private static void inRange(State state) {
        assertTrue(state.measure().least() <= state.measure().most(), state::toString);
    }

    /** Costs a judgement for each mend that is tried. */
    void mendingAddsNoFinding() {
        String mended = Autofix.of(subject);
        Map<String, Long> before = byRule(findings);
        Map<String, Long> after = byRule(of(mended).findings);
        after.forEach((rule, times) ->
                assertTrue(times <= before.getOrDefault(rule, 0L), () -> "mending adds " + rule + ": " + mended));
        assertEquals(mended, Autofix.of(of(mended).subject), "mended again");
    }

    private static Map<String, Long> byRule(List<Finding> findings) {
        return findings.stream()
                .map(Finding::rule)
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    }
}
