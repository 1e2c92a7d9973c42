package org.drillwright.school;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.report.RuleHelp;
import org.drillwright.source.FormerRules;
import org.junit.jupiter.api.Test;

/** What rules were called before, against the list of what they were called at first. */
class FormerRulesTest {

    private static final Set<String> NOW =
            RuleHelps.all().stream().map(RuleHelp::id).collect(Collectors.toSet());

    @Test
    void every_name_of_old_leads_to_a_rule() throws IOException {
        List<String> first = Files.readAllLines(Path.of("src", "test", "resources", "rules", "ids-at-first.txt"));
        assertEquals(63, first.size());
        first.forEach(id -> assertTrue(NOW.contains(FormerRules.now(id)), id));
    }

    @Test
    void an_old_name_is_that_of_one_rule_and_no_name_of_now() {
        Set<String> old = new HashSet<>();
        Set<String> renamed = new HashSet<>();
        FormerRules.table().lines().map(line -> line.split(" ")).forEach(names -> {
            assertEquals(2, names.length);
            assertTrue(old.add(names[0]), names[0]);
            assertTrue(renamed.add(names[1]), names[1]);
            assertFalse(NOW.contains(names[0]), names[0]);
            assertTrue(NOW.contains(names[1]), names[1]);
            assertEquals(names[1], FormerRules.now(names[0]));
            assertEquals(names[0], FormerRules.was(names[1]).orElseThrow());
        });
    }
}
