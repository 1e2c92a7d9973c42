package org.drillwright.school;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.drillwright.check.jury.Rules;
import org.drillwright.read.ReadingRule;
import org.drillwright.register.RecordRule;
import org.drillwright.report.RuleHelp;
import org.junit.jupiter.api.Test;

class RuleHelpsTest {

    @Test
    void every_rule_once_with_a_sentence_and_a_reason() {
        List<RuleHelp> all = RuleHelps.all();
        Set<String> ids = new HashSet<>();
        all.forEach(rule -> assertTrue(ids.add(rule.id()), rule.id()));
        assertTrue(ids.containsAll(Rules.ids()));
        for (ReadingRule rule : ReadingRule.values()) {
            assertTrue(ids.contains(rule.id()), rule.id());
        }
        all.forEach(rule ->
                assertTrue(rule.asks().english().endsWith("."), rule.asks().english()));
        all.forEach(rule ->
                assertTrue(rule.text(Locale.ENGLISH).startsWith(rule.asks().english()), rule.id()));
        for (RecordRule rule : RecordRule.values()) {
            assertTrue(ids.contains(rule.id()), rule.id());
        }
        assertEquals(
                ReadingRule.values().length
                        + RecordRule.values().length
                        + Rules.texts().size(),
                all.size());
    }
}
