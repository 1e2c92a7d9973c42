package org.drillwright.print.command.drills;

import java.util.Locale;
import org.drillwright.check.RuleText;
import org.drillwright.check.jury.Rules;
import org.drillwright.print.command.console.TextColumn;
import org.drillwright.read.ReadingRule;
import org.drillwright.register.RecordRule;
import org.drillwright.report.Paint;
import org.drillwright.report.RuleHelp;
import org.drillwright.source.FormerRules;
import org.drillwright.source.Severity;
import org.drillwright.wording.Bundle;

/** Every rule with its reason and its examples, as text. */
final class RulesPage {

    private RulesPage() {}

    static String text(Paint paint, Locale language) {
        StringBuilder page = new StringBuilder();
        page.append(said("rules-page.file", language)).append("\n\n");
        for (ReadingRule rule : ReadingRule.values()) {
            add(page, paint.place(rule.id()), rule.asks().then(rule.why()).in(language));
        }
        page.append(said("rules-page.record", language)).append("\n\n");
        for (RecordRule rule : RecordRule.values()) {
            add(page, paint.place(rule.id()), rule.asks().then(rule.why()).in(language));
        }
        page.append(said("rules-page.drill", language)).append("\n\n");
        Rules.texts().forEach(rule -> page.append(text(rule, paint, language)).append('\n'));
        return page.toString();
    }

    private static void add(StringBuilder page, String id, String words) {
        page.append(id).append('\n');
        indented(page, words);
        page.append('\n');
    }

    private static String text(RuleText rule, Paint paint, Locale language) {
        Bundle words = Bundle.in(RuleHelp.class, language);
        StringBuilder part = new StringBuilder();
        Severity severity = rule.severity();
        part.append(paint.place(rule.id()))
                .append(" (")
                .append(paint.severity(severity, words.text("severity." + severity.word())))
                .append(rule.safety() ? said("rules-page.safety", language) : "")
                .append(FormerRules.was(rule.id())
                        .map(old -> said("rules-page.was", language, old))
                        .orElse(""))
                .append(")\n");
        indented(part, rule.asks().in(language));
        indented(part, words.text("rule.why", rule.why().in(language)));
        part.append("  ").append(words.text("rule.breaks")).append('\n');
        rule.breaks().lines().forEach(line -> part.append("    ").append(line).append('\n'));
        part.append("  ").append(words.text("rule.keeps")).append('\n');
        rule.keeps().lines().forEach(line -> part.append("    ").append(line).append('\n'));
        return part.toString();
    }

    private static String said(String key, Locale language, Object... values) {
        return Bundle.in(RulesPage.class, language).text(key, values);
    }

    private static void indented(StringBuilder page, String paragraph) {
        TextColumn.wrap(paragraph, TextColumn.WIDTH - 2)
                .forEach(line -> page.append("  ").append(line).append('\n'));
    }
}
