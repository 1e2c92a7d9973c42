package org.drillwright.check.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.junit.jupiter.api.Test;

/** Warnings can be accepted with a reason; errors and what is about safety cannot. */
class AcceptKnownTest {

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
                List.of("error 1:10 'no-choise'"),
                Judged.drill("accept: {no-choise: it is a game}").findings("accept-known"));
    }

    @Test
    void a_rule_of_safety_is_not_accepted_away() {
        Judged judged = Judged.drill(SAME_NOTES + "accept: {safety-note: we know}\n");
        assertEquals(List.of("error 10:10 'safety-note'"), judged.findings("accept-known"));
        assertEquals("warning", judged.findings("safety-note").get(0).split(" ")[0]);
    }

    @Test
    void an_error_stays_an_error() {
        Judged judged = Judged.drill("""
                accept: {no-choice: it is a game}
                steps:
                  - {leader: Advance or retreat., follower: Hold., distance: lunge}
                """);
        assertEquals("error", judged.findings("no-choice").get(0).split(" ")[0]);
    }

    /** Two counts that leave one on the lunge: a warning by back-to-start, which the author may accept. */
    @Test
    void an_accepted_warning_is_a_note_with_the_reason() {
        String lines = SAME_NOTES.replace("Arrive softly and slowly now.\n  -", "Let the blade bend upward.\n  -");
        assertEquals(
                "warning", Judged.drill(lines).findings("back-to-start").get(0).split(" ")[0]);
        Finding accepted = Judged.drill(lines + "accept: {back-to-start: the next drill goes on}\n").all().stream()
                .filter(finding -> finding.rule().equals("back-to-start"))
                .findFirst()
                .orElseThrow();
        assertEquals(Severity.NOTE, accepted.severity());
        assertEquals("Accepted by the author: the next drill goes on", accepted.wayOut());
    }
}
