package org.drillwright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.time.Clock;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rooms of core and the doors between them. */
class ArchitectureTest {

    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.drillwright");

    /** A room, then the rooms it may stand on. */
    @ParameterizedTest(name = "{0} stands on {1}")
    @CsvSource({
        "wording, ''",
        "source, wording",
        "model, ''",
        "notation, model source wording",
        "terms, notation model source wording",
        "lexicon, source wording",
        "grammar, lexicon source wording",
        "meaning, grammar lexicon notation model source wording",
        "reading, meaning grammar lexicon notation model source terms wording",
        "table, source terms wording",
        "register, table source terms wording",
        "plan, mark register table model source terms wording",
        "read, plan mark register table notation model source terms wording",
        "phrase, notation model source terms wording",
        "mark, model source terms wording",
        "check, mark phrase reading notation model source terms wording",
        "translation, check mark phrase reading lexicon notation model source terms wording",
        "report, plan mark register table source model terms wording",
        "explain, check mark phrase reading notation model source terms wording",
        "formatter, read model source terms wording",
        "autofix, formatter plan register table check mark read reading phrase notation model source terms wording",
        "schema, formatter check mark read reading phrase notation model source terms wording",
        "school, translation plan register table read reading mark check report explain phrase notation model source terms wording",
        "editing, school translation formatter schema autofix plan register table read reading mark check report explain phrase notation model source terms wording"
    })
    void each_room_stands_only_on_those_below_it(String room, String below) {
        String[] allowed = Stream.concat(Stream.of(room), Arrays.stream(below.split(" ")))
                .filter(name -> !name.isEmpty())
                .map(ArchitectureTest::room)
                .toArray(String[]::new);
        classes()
                .that()
                .resideInAPackage(room(room))
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(allowed)
                        .or(JavaClass.Predicates.resideOutsideOfPackage("org.drillwright..")))
                .allowEmptyShould(Set.of("phrase", "explain").contains(room))
                .check(CORE);
    }

    private static String room(String name) {
        return "org.drillwright." + name + "..";
    }

    @Test
    void every_room_is_named_above() {
        Set<String> rooms = CORE.stream()
                .map(one -> one.getPackageName()
                        .replaceFirst("^org\\.drillwright\\.?", "")
                        .replaceFirst("\\..*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
        rooms.removeAll(Set.of(
                "wording",
                "terms",
                "source",
                "model",
                "notation",
                "lexicon",
                "grammar",
                "meaning",
                "reading",
                "table",
                "register",
                "plan",
                "read",
                "phrase",
                "check",
                "report",
                "translation",
                "explain",
                "schema",
                "formatter",
                "autofix",
                "mark",
                "school",
                "editing"));
        assertEquals(Set.of(), rooms, "rooms without a line in this test");
    }

    @Test
    void no_two_rooms_stand_on_each_other() {
        slices().matching("org.drillwright.(**)").should().beFreeOfCycles().check(CORE);
    }

    @Test
    void only_the_reader_knows_the_yaml_library() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.drillwright.read..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.yaml..")
                .check(CORE);
    }

    @Test
    void only_what_writes_json_knows_the_json_library() {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        "org.drillwright.report..", "org.drillwright.explain..", "org.drillwright.schema..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.fasterxml..")
                .check(CORE);
    }

    @Test
    void nothing_prints() {
        GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(CORE);
    }

    @Test
    void nothing_exits_or_reads_the_clock() {
        noClasses()
                .should()
                .callMethodWhere(com.tngtech.archunit.base.DescribedPredicate.describe(
                        "leaves the program or asks for the time",
                        call -> isExit(call.getTargetOwner(), call.getName())
                                || isClock(call.getTargetOwner(), call.getName())))
                .check(CORE);
        noClasses().should().dependOnClassesThat().areAssignableTo(Clock.class).check(CORE);
    }

    private static boolean isExit(JavaClass owner, String method) {
        return (owner.isAssignableTo(System.class) || owner.isAssignableTo(Runtime.class))
                && Set.of("exit", "halt").contains(method);
    }

    private static boolean isClock(JavaClass owner, String method) {
        boolean ofSystem = owner.isAssignableTo(System.class);
        boolean ofTime = owner.getPackageName().equals("java.time");
        return (ofSystem && Set.of("currentTimeMillis", "nanoTime").contains(method))
                || (ofTime && method.equals("now"));
    }

    @Test
    void the_rules_above_saw_classes() {
        assertTrue(CORE.size() > 60, () -> "only " + CORE.size() + " classes were seen");
    }
}
