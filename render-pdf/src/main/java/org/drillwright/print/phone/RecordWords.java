package org.drillwright.print.phone;

import java.util.Locale;
import org.drillwright.plan.kept.KeptPlan;

/**
 * How what was ticked on the page of an evening is said to {@code drillwright record}: the parts of a line for the shells of
 * POSIX. In them {0} is the number of a round, or of rounds, {1} a person's word, {2} that of who stood in.
 */
enum RecordWords {
    /** So many rounds at the beginning, those that were skipped among them. */
    FIRST("--rounds {0}"),
    SKIPPED("--skipped {0}"),
    GONE("--from-round {0} --without={1}"),
    BACK("--from-round {0} --with={1}"),
    INSTEAD("--from-round {0} --without={1} --instead={2}"),
    TOO("--from-round {0} --with={1}");

    private final String form;

    RecordWords(String form) {
        this.form = form;
    }

    String form() {
        return form;
    }

    /** The name of the attribute of the page's body from which its script takes the form. */
    String attribute() {
        return "data-say-" + name().toLowerCase(Locale.ROOT);
    }

    /** How each line begins. */
    static String beginning(KeptPlan plan, String mark) {
        return "drillwright record " + ShellWord.of(plan.named()) + " --plan " + ShellWord.of(mark);
    }
}
