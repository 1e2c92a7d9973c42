package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;

/** The two turns of a count say the same of the blades. */
public final class TurnsAgree extends RefusalRule {

    public TurnsAgree() {
        super(new RuleText(
                "turns-agree",
                Severity.ERROR,
                false,
                "Where both turns of a count say how the blades end, they say the same: touching for both, in one line, or"
                        + " apart for both.",
                "Blades touch for both or for neither (L'Abbat 1734, ch. XXII), and two who were told otherwise wait for each"
                        + " other.",
                """
                        steps:
                          - leader: Come on guard in sixte, blades engaged.
                            follower: Come on guard in sixte, blades apart.
                        #             ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                            distance: lunge
                          - leader: Return to guard in sixte, blades apart.
                            follower: Return to guard in sixte, blades apart.
                            distance: lunge
                        """,
                """
                        steps:
                          - leader: Come on guard in sixte, blades engaged.
                            follower: Come on guard in sixte, blades engaged.
                            distance: lunge
                          - leader: Return to guard in sixte, blades apart.
                            follower: Return to guard in sixte, blades apart.
                            distance: lunge
                        """));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        return fault.refusal() instanceof Refusal.WordsDisagree words
                ? Sentence.error(
                        "The other's turn has " + words.one() + " on " + fault.where() + ", and this has "
                                + words.other() + ".",
                        "Let both turns say the same of the blades.")
                : Sentence.none();
    }
}
