package org.drillwright.print;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.drillwright.print.command.Main;
import org.drillwright.print.command.console.StandardStreams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which room may know which: {@code drills → render-pdf → core}, and within render-pdf one way only. */
class ArchitectureTest {

    private static final String PRINT = "org.drillwright.print.";

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.drillwright");

    private static final DescribedPredicate<JavaClass> CORE =
            resideInAPackage("org.drillwright..").and(resideOutsideOfPackage("org.drillwright.print.."));

    @ParameterizedTest
    @CsvSource({"frame, 8", "svg, 3", "text, 8", "layout, 20", "impose, 3", "pdf, 8", "sheet, 12", "command, 25"})
    void classes_of_every_room_were_seen(String room, int atLeast) {
        long seen =
                CLASSES.stream().filter(resideInAPackage(PRINT + room + "..")).count();
        assertTrue(seen >= atLeast, room + ": " + seen);
    }

    @Test
    void classes_of_core_were_seen() {
        assertTrue(CLASSES.stream().filter(CORE).count() > 50);
    }

    @Test
    void core_knows_nothing_of_printing() {
        noClasses()
                .that(CORE)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.drillwright.print..", "org.apache.pdfbox..", "picocli..")
                .check(CLASSES);
    }

    /** The walls between the rooms below the command line are those of {@link PrintRoomsTest}. */
    @Test
    void nobody_knows_the_command_line() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.drillwright.print.command..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.drillwright.print.command..")
                .check(CLASSES);
    }

    /** Fonts and pages are a matter of {@code pdf}; the command line deals in frames. */
    @Test
    void the_command_line_knows_no_pdf_box() {
        noClasses()
                .that()
                .resideInAPackage("org.drillwright.print.command..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..")
                .check(CLASSES);
    }

    @Test
    void rooms_have_no_circles() {
        slices().matching("org.drillwright.print.(**)")
                .should()
                .beFreeOfCycles()
                .check(CLASSES);
    }

    @Test
    void only_the_commands_know_picocli() {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        PRINT + "command",
                        PRINT + "command.cards",
                        PRINT + "command.classes",
                        PRINT + "command.console",
                        PRINT + "command.drills",
                        PRINT + "command.editor",
                        PRINT + "command.folder",
                        PRINT + "command.install",
                        PRINT + "command.school",
                        PRINT + "command.watch")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("picocli..")
                .check(CLASSES);
    }

    /** Its classes are loaded when an editor asks, and by no other command. */
    @Test
    void only_the_protocol_knows_lsp4j() {
        noClasses()
                .that()
                .resideOutsideOfPackage(PRINT + "command.editor.protocol")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.eclipse.lsp4j..", "com.google.gson..")
                .check(CLASSES);
    }

    @Test
    void only_main_ends_the_process() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName(Main.class.getName())
                .should()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "halt", int.class)
                .check(CLASSES);
    }

    @Test
    void only_one_class_opens_the_standard_streams() {
        noClasses()
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .accessField(System.class, "in")
                .check(CLASSES);
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName(StandardStreams.class.getName())
                .should()
                .callMethod(System.class, "console")
                .orShould()
                .accessField(java.io.FileDescriptor.class, "out")
                .check(CLASSES);
    }
}
