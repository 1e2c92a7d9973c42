package org.drillwright.check.jury;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.check.FolderRule;
import org.drillwright.check.Rule;
import org.junit.jupiter.api.Test;

/** The list of rules is kept by hand; a rule that was written and not entered would never be asked. */
class RulesInForceTest {

    @Test
    void every_rule_that_was_written_is_in_force() {
        Set<String> written = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("org.drillwright.check").stream()
                        .filter(one -> one.isAssignableTo(Rule.class) || one.isAssignableTo(FolderRule.class))
                        .filter(one -> !one.isInterface() && !one.getModifiers().contains(JavaModifier.ABSTRACT))
                        .map(JavaClass::getName)
                        .collect(Collectors.toCollection(TreeSet::new));
        Set<String> inForce = Stream.concat(Rules.ALL.stream(), Rules.OF_THE_FOLDER.stream())
                .map(rule -> rule.getClass().getName())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(
                inForce, written, "enter the rule in Rules.ALL, or in Rules.OF_THE_FOLDER if it asks of the folder");
    }
}
