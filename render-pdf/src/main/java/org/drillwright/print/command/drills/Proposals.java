package org.drillwright.print.command.drills;

import java.util.Locale;
import org.drillwright.check.Subject;
import org.drillwright.check.Suggestions;
import org.drillwright.print.command.folder.Selection;
import org.drillwright.school.SchoolFolder;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** What the phrase would allow where a count leaves a side without a turn, for people. */
final class Proposals {

    private Proposals() {}

    static String text(Selection selection, Locale language) {
        StringBuilder text = new StringBuilder();
        for (SchoolFolder.Entry entry : selection.entries()) {
            if (entry.subject().isPresent()) {
                add(entry.name(), entry.subject().get(), text, language);
            }
        }
        return text.toString();
    }

    private static void add(String name, Subject subject, StringBuilder text, Locale language) {
        for (Suggestions.Proposal proposal : Suggestions.of(subject)) {
            Message side = Terms.of(proposal.side());
            text.append(Message.of(Proposals.class, "proposals.could.say", name, subject.count(proposal.step()), side)
                            .in(language))
                    .append('\n');
            proposal.turns()
                    .forEach(turn -> text.append("    ")
                            .append(side.in(language))
                            .append(": ")
                            .append(turn)
                            .append('\n'));
            text.append('\n');
        }
    }
}
