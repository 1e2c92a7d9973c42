package org.drillwright.docs;

import org.drillwright.check.RuleText;
import org.drillwright.check.jury.Rules;
import org.drillwright.read.ReadingRule;
import org.drillwright.register.RecordRule;
import org.drillwright.source.FormerRules;

/** The page of all rules, for instructors. */
final class RulesPage {

    private final StringBuilder page = new StringBuilder();

    static String write() {
        return new RulesPage().make();
    }

    private String make() {
        line("# What is asked of a drill");
        line("");
        line("This page is made from the program; the examples are the ones that its tests run.");
        line("The carets in a comment line stand under the words that a finding marks.");
        line("");
        line("An *error* is to be mended before a card is printed. A *warning* is to be mended, or accepted"
                + " in the drill with a");
        line("reason (`accept: {rule: reason}`). A *note* is worth knowing. Rules of *safety* cannot be"
                + " accepted away.");
        line("No finding means only that nothing of this page was found: the program never says that a drill is safe.");
        line("");
        for (RuleText text : Rules.texts()) {
            rule(text);
        }
        line("# What is asked of a file");
        line("");
        for (ReadingRule rule : ReadingRule.values()) {
            line("- **" + rule.id() + "**: " + rule.asks().then(rule.why()));
        }
        line("");
        line("# What is checked in the record");
        line("");
        for (RecordRule rule : RecordRule.values()) {
            line("- **" + rule.id() + "**: " + rule.asks().then(rule.why()));
        }
        line("");
        line("# What rules were called before");
        line("");
        line("An old name is understood until the next release: under `accept` with a note that says the new"
                + " one. Reports for");
        line("programs tell both.");
        line("");
        line("| before | now |");
        line("|---|---|");
        FormerRules.table()
                .lines()
                .map(names -> names.split(" "))
                .forEach(names -> line("| `" + names[0] + "` | `" + names[1] + "` |"));
        return page.toString();
    }

    private void rule(RuleText text) {
        line("## " + text.id());
        line("");
        line("*" + text.severity().word() + (text.safety() ? ", safety" : "") + "* — " + text.asks() + " "
                + text.why());
        line("");
        line("Breaks it:");
        block(text.breaks());
        line("Keeps it:");
        block(text.keeps());
    }

    private void block(String yaml) {
        line("");
        line("```yaml");
        page.append(yaml);
        line("```");
        line("");
    }

    private void line(String line) {
        page.append(line).append('\n');
    }
}
