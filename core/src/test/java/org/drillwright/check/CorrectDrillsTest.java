package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.drillwright.check.mutation.Redraft;
import org.drillwright.model.Drill;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.notation.Action;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.Question;
import org.drillwright.read.DrillWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Drills that are right: no false alarm, little unread, little unknown; and unread words are never passed over. */
class CorrectDrillsTest {

    private static final double READ = 0.98;
    private static final double KNOWN = 0.95;

    private static final Corpus CORRECT = Corpus.correct();
    private static final Corpus SCHOOL = Corpus.exampleSchool();

    static Stream<String> ids() {
        return Stream.concat(CORRECT.ids().stream(), SCHOOL.ids().stream());
    }

    private static Corpus corpus(String id) {
        return CORRECT.ids().contains(id) ? CORRECT : SCHOOL;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ids")
    void raises_no_alarm(String id) {
        Sample sample = corpus(id).sample(id);
        assertEquals(List.of(), sample.said(sample.errors()));
        assertEquals(List.of(), sample.said(sample.warnings()));
    }

    @Test
    void there_are_sixty_beside_the_example_school() {
        assertTrue(CORRECT.ids().size() >= 60);
        assertTrue(SCHOOL.ids().size() >= 30);
    }

    @Test
    void no_two_have_the_same_words_and_actions() {
        Map<String, List<String>> same = new LinkedHashMap<>();
        for (Sample sample : ids().map(id -> corpus(id).sample(id)).toList()) {
            same.computeIfAbsent(phrase(sample), key -> new ArrayList<>()).add(sample.id());
        }
        assertEquals(
                List.of(), same.values().stream().filter(ids -> ids.size() > 1).toList());
    }

    /** The words of all turns, small and without signs; what is read from equal words is equal. */
    private static String phrase(Sample sample) {
        StringBuilder words = new StringBuilder(sample.subject().drill().start());
        for (Step step : sample.subject().drill().steps()) {
            words.append('|').append(step.leader().map(Turn::read).orElse(""));
            words.append('|').append(step.follower().map(Turn::read).orElse(""));
        }
        return words.toString().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}|]+", " ");
    }

    @Test
    void nearly_every_clause_of_the_school_and_the_handbook_is_read() {
        long clauses = 0;
        long unread = 0;
        for (Sample sample : schoolAndHandbook()) {
            for (Utterance turn : turns(sample)) {
                long not = turn.clauses().stream()
                        .filter(clause -> clause.action() instanceof Action.Unread)
                        .count();
                clauses += turn.clauses().size();
                unread += Math.max(not, turn.unread().size());
            }
        }
        double share = 1 - (double) unread / clauses;
        String told = (clauses - unread) + " of " + clauses + " clauses are read";
        System.out.println(told);
        assertTrue(clauses > 500 && share >= READ, told);
    }

    @Test
    void nearly_all_that_rules_ask_is_known() {
        long asked = 0;
        long known = 0;
        List<Sample> samples = new ArrayList<>(schoolAndHandbook());
        samples.addAll(CORRECT.samples());
        for (Sample sample : samples) {
            for (Count count : sample.subject().replay().counts()) {
                for (Played played : count.moves()) {
                    asked += played.asked().size();
                    known += played.asked().stream().filter(Question::known).count();
                }
            }
        }
        String told = known + " of " + asked + " things that rules asked were known";
        System.out.println(told);
        assertTrue(asked > 500 && known >= KNOWN * asked, told);
    }

    private static List<Sample> schoolAndHandbook() {
        return Stream.concat(SCHOOL.samples().stream(), Corpus.handbook().samples().stream())
                .toList();
    }

    private static List<Utterance> turns(Sample sample) {
        List<Utterance> turns = new ArrayList<>();
        Script script = sample.subject().script();
        turns.add(script.opening());
        turns.add(script.start());
        script.steps().forEach(step -> turns.addAll(step.values()));
        turns.add(script.closing());
        return turns;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ids")
    void says_that_it_is_not_fully_checked_when_no_turn_can_be_read(String id) {
        Corpus corpus = corpus(id);
        Sample unread = corpus.judge(
                id, DrillWriter.write(unread(corpus.sample(id).subject().drill())));
        assertTrue(
                unread.warnings().stream().anyMatch(finding -> finding.rule().equals("not-fully-checked")),
                () -> unread.said(unread.findings()).toString());
    }

    private static Drill unread(Drill drill) {
        Redraft redraft = Redraft.of(drill).acceptingNothing();
        for (int step = 0; step < drill.steps().size(); step++) {
            redraft.turn(step, Side.LEADER, "Xyzzy plugh.").turn(step, Side.FOLLOWER, "Frobozz xyzzy.");
        }
        return redraft.drill();
    }
}
