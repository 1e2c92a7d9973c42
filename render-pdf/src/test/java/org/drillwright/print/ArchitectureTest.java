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
    void classesOfEveryRoomWereSeen(String room, int atLeast) {
        long seen =
                CLASSES.stream().filter(resideInAPackage(PRINT + room + "..")).count();
        assertTrue(seen >= atLeast, room + ": " + seen);
    }

    @Test
    void classesOfCoreWereSeen() {
        assertTrue(CLASSES.stream().filter(CORE).count() > 50);
    }

    @Test
    void coreKnowsNothingOfPrinting() {
        noClasses()
                .that(CORE)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.drillwright.print..", "org.apache.pdfbox..", "picocli..")
                .check(CLASSES);
    }

    /** The walls between the rooms below the command line are those of {@link PrintRoomsTest}. */
    @Test
    void nobodyKnowsTheCommandLine() {
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
    void theCommandLineKnowsNoPdfBox() {
        noClasses()
                .that()
                .resideInAPackage("org.drillwright.print.command..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..")
                .check(CLASSES);
    }

    @Test
    void roomsHaveNoCircles() {
        slices().matching("org.drillwright.print.(*)..")
                .should()
                .beFreeOfCycles()
                .check(CLASSES);
        slices().matching("org.drillwright.print.command.(*)..")
                .should()
                .beFreeOfCycles()
                .check(CLASSES);
        slices().matching("org.drillwright.print.layout.(*)..")
                .should()
                .beFreeOfCycles()
                .check(CLASSES);
    }

    @Test
    void onlyTheCommandsKnowPicocli() {
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
    void onlyTheProtocolKnowsLsp4j() {
        noClasses()
                .that()
                .resideOutsideOfPackage(PRINT + "command.editor.protocol")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.eclipse.lsp4j..", "com.google.gson..")
                .check(CLASSES);
    }

    @Test
    void onlyMainEndsTheProcess() {
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
    void onlyOneClassOpensTheStandardStreams() {
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
