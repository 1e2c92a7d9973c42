package org.drillwright.print.command.drills;

import org.drillwright.check.Subject;
import org.drillwright.check.Suggestions;
import org.drillwright.print.command.folder.Selection;
import org.drillwright.school.SchoolFolder;

/** What the phrase would allow where a count leaves a side without a turn, for people. */
final class Proposals {

    private Proposals() {}

    static String text(Selection selection) {
        StringBuilder text = new StringBuilder();
        for (SchoolFolder.Entry entry : selection.entries()) {
            if (entry.subject().isPresent()) {
                add(entry.name(), entry.subject().get(), text);
            }
        }
        return text.toString();
    }

    private static void add(String name, Subject subject, StringBuilder text) {
        for (Suggestions.Proposal proposal : Suggestions.of(subject)) {
            text.append(name)
                    .append(", count ")
                    .append(subject.count(proposal.step()))
                    .append(": the ")
                    .append(proposal.side().word())
                    .append(" could say, the plainest first:\n");
            proposal.turns()
                    .forEach(turn -> text.append("    ")
                            .append(proposal.side().word())
                            .append(": ")
                            .append(turn)
                            .append('\n'));
            text.append('\n');
        }
    }
}
