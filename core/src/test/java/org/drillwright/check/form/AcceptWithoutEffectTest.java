package org.drillwright.check.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.drillwright.check.Judged;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.junit.jupiter.api.Test;

/** Warnings can be accepted with a reason; errors and what is about safety cannot. */
class AcceptWithoutEffectTest {

    private static final String SAME_NOTES = """
            steps:
              - leader: Extend to the high inside line and lunge.
                follower: Parry quarte.
                distance: lunge
                safety: Arrive softly and slowly now.
              - leader: Hold the lunge and take the touch.
                follower: Riposte straight to the high inside line.
                distance: extension
                safety: Arrive softly and slowly now.
            """;

    @Test
    void a_rule_that_is_not_there_is_found() {
        assertEquals(
                List.of("error 1:10 'choice-left-opn'"),
                Judged.drill("accept: {choice-left-opn: it is a game}").findings("accept-without-effect"));
    }

    @Test
    void a_rule_of_safety_is_not_accepted_away() {
        Judged judged = Judged.drill(SAME_NOTES + "accept: {safety-note-missing: we know}\n");
        assertEquals(List.of("error 10:10 'safety-note-missing'"), judged.findings("accept-without-effect"));
        assertEquals("warning", judged.findings("safety-note-missing").get(0).split(" ")[0]);
    }

    @Test
    void a_rule_of_safety_is_not_accepted_away_by_its_old_name() {
        Judged judged = Judged.drill(SAME_NOTES + "accept: {safety-note: we know}\n");
        assertEquals(List.of("error 10:10 'safety-note'"), judged.findings("accept-without-effect"));
        assertEquals("warning", judged.findings("safety-note-missing").get(0).split(" ")[0]);
    }

    @Test
    void an_old_name_is_understood_and_the_new_one_said() {
        String lines = SAME_NOTES.replace("Arrive softly and slowly now.\n  -", "Let the blade bend upward.\n  -");
        Judged judged = Judged.drill(lines + "accept: {back-to-start: the next drill goes on}\n");
        assertEquals("note", judged.findings("not-back-at-start").get(0).split(" ")[0]);
        assertEquals(List.of("note 10:10 'back-to-start'"), judged.findings("accept-without-effect"));
        assertTrue(judged.all().stream()
                .anyMatch(finding -> finding.what()
                        .english()
                        .equals("The rule 'back-to-start' is called 'not-back-at-start' now.")));
    }

    @Test
    void an_error_stays_an_error() {
        Judged judged = Judged.drill("""
                accept: {choice-left-open: it is a game}
                steps:
                  - {leader: Advance or retreat., follower: Hold., distance: lunge}
                """);
        assertEquals("error", judged.findings("choice-left-open").get(0).split(" ")[0]);
    }

    /** Two counts that leave one on the lunge: a warning by not-back-at-start, which the author may accept. */
    @Test
    void an_accepted_warning_is_a_note_with_the_reason() {
        String lines = SAME_NOTES.replace("Arrive softly and slowly now.\n  -", "Let the blade bend upward.\n  -");
        assertEquals(
                "warning",
                Judged.drill(lines).findings("not-back-at-start").get(0).split(" ")[0]);
        Finding accepted = Judged.drill(lines + "accept: {not-back-at-start: the next drill goes on}\n").all().stream()
                .filter(finding -> finding.rule().equals("not-back-at-start"))
                .findFirst()
                .orElseThrow();
        assertEquals(Severity.NOTE, accepted.severity());
        assertEquals(
                "Accepted by the author: the next drill goes on",
                accepted.wayOut().english());
    }
}
