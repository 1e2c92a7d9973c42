package org.drillwright.print;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.PrintStream;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The walls between the rooms of printing. */
class PrintRoomsTest {

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.drillwright");

    private static final JavaClasses CLASSES = PROGRAM.that(resideInAPackage("org.drillwright.print.."));

    private static void standsOn(String room, String... others) {
        String[] allowed = new String[others.length + 4];
        System.arraycopy(others, 0, allowed, 0, others.length);
        allowed[others.length] = "org.drillwright.print." + room + "..";
        allowed[others.length + 1] = "java..";
        allowed[others.length + 2] = "org.jspecify..";
        allowed[others.length + 3] = "com.google.errorprone.annotations..";
        noClasses()
                .that()
                .resideInAPackage("org.drillwright.print." + room + "..")
                .should()
                .dependOnClassesThat()
                .resideOutsideOfPackages(allowed)
                .check(CLASSES);
    }

    /** Who reads a name has to know which class is meant; of two that are called alike one has a better name. */
    @Test
    void no_two_classes_of_the_program_have_one_name() {
        Map<String, List<String>> called = PROGRAM.stream()
                .filter(one -> !one.isNestedClass() && !one.getSimpleName().endsWith("-info"))
                .collect(groupingBy(JavaClass::getSimpleName, TreeMap::new, mapping(JavaClass::getName, toList())));
        called.values().removeIf(names -> names.size() < 2);
        assertEquals(Map.of(), called);
    }

    @Test
    void a_frame_stands_on_nothing() {
        standsOn("frame");
    }

    @Test
    void text_stands_on_frames() {
        standsOn("text", "org.drillwright.print.frame");
    }

    @Test
    void poses_stand_on_core() {
        standsOn("pose", "org.drillwright.model", "org.drillwright.notation", "org.drillwright.phrase");
    }

    @Test
    void diagrams_stand_on_core_poses_and_frames() {
        standsOn(
                "diagram",
                "org.drillwright.wording",
                "org.drillwright.terms",
                "org.drillwright.model",
                "org.drillwright.notation",
                "org.drillwright.phrase",
                "org.drillwright.explain",
                "org.drillwright.print.pose..",
                "org.drillwright.print.frame");
    }

    /** Outlines know no fencer, a fencer knows no partner. */
    @Test
    void within_diagrams_curves_stand_below_figures_and_figures_below_the_stage() {
        standsOn("diagram.curve", "org.drillwright.print.frame");
        String[] below = {
            "org.drillwright.model",
            "org.drillwright.print.frame",
            "org.drillwright.print.pose..",
            "org.drillwright.print.diagram.curve"
        };
        standsOn("diagram.figure", below);
        standsOn(
                "diagram.stage",
                and(
                        below,
                        "org.drillwright.notation",
                        "org.drillwright.phrase",
                        "org.drillwright.print.diagram.figure"));
    }

    @Test
    void layout_stands_on_the_model_pages_and_diagrams() {
        standsOn(
                "layout",
                "org.drillwright.wording",
                "org.drillwright.model",
                "org.drillwright.mark",
                "org.drillwright.phrase",
                "org.drillwright.print.frame",
                "org.drillwright.print.text",
                "org.drillwright.print.page",
                "org.drillwright.print.diagram");
    }

    /** What is to be set, then how much room there is for it, then the parts, and the whole card last. */
    @Test
    void within_layout_words_stand_below_fit_and_fit_below_blocks() {
        String model = "org.drillwright.model";
        String[] below = {
            model, "org.drillwright.print.frame", "org.drillwright.print.text", "org.drillwright.print.diagram"
        };
        standsOn(
                "layout.words",
                and(below, "org.drillwright.wording", "org.drillwright.mark", "org.drillwright.phrase"));
        standsOn("layout.fit", and(below, "org.drillwright.print.layout.words"));
        standsOn(
                "layout.block",
                and(
                        below,
                        "org.drillwright.wording",
                        "org.drillwright.print.page",
                        "org.drillwright.print.layout.words",
                        "org.drillwright.print.layout.fit"));
    }

    private static String[] and(String[] some, String... more) {
        return Stream.of(some, more).flatMap(Stream::of).toArray(String[]::new);
    }

    @Test
    void sheets_stand_on_plans_frames_text_and_layout() {
        standsOn(
                "sheet",
                "org.drillwright.wording",
                "org.drillwright.model",
                "org.drillwright.plan..",
                "org.drillwright.report.plan",
                "org.drillwright.print.frame",
                "org.drillwright.print.text",
                "org.drillwright.print.page",
                "org.drillwright.print.layout..");
    }

    /** Of core they know how large sheets are and which way a language is read. */
    @Test
    void pages_stand_on_frames_and_text() {
        standsOn(
                "page",
                "org.drillwright.model",
                "org.drillwright.wording",
                "org.drillwright.print.frame",
                "org.drillwright.print.text");
    }

    @Test
    void packets_stand_on_pages_cards_and_sheets() {
        standsOn(
                "handout",
                "org.drillwright.model",
                "org.drillwright.mark",
                "org.drillwright.print.frame",
                "org.drillwright.print.text",
                "org.drillwright.print.diagram",
                "org.drillwright.print.layout..",
                "org.drillwright.print.impose",
                "org.drillwright.print.page");
    }

    @Test
    void booklets_stand_on_pages_and_cards() {
        standsOn(
                "booklet",
                "org.drillwright.wording",
                "org.drillwright.model",
                "org.drillwright.mark",
                "org.drillwright.explain",
                "org.drillwright.print.frame",
                "org.drillwright.print.text",
                "org.drillwright.print.diagram",
                "org.drillwright.print.layout..",
                "org.drillwright.print.page");
    }

    @Test
    void imposition_stands_on_frames_and_the_models_sheets() {
        standsOn("impose", "org.drillwright.model", "org.drillwright.print.frame");
    }

    @Test
    void screens_stand_on_frames_and_text() {
        standsOn("svg", "org.drillwright.print.frame", "org.drillwright.print.text");
    }

    @Test
    void phones_stand_on_plans_the_words_of_cards_their_pictures_and_screens() {
        standsOn(
                "phone",
                "org.drillwright.wording",
                "org.drillwright.model",
                "org.drillwright.mark",
                "org.drillwright.phrase",
                "org.drillwright.plan..",
                "org.drillwright.print.frame",
                "org.drillwright.print.text",
                "org.drillwright.print.diagram",
                "org.drillwright.print.layout.words",
                "org.drillwright.print.svg");
    }

    @Test
    void only_one_room_serves_pages() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.drillwright.print.command.watch.web")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.sun.net.httpserver..")
                .check(CLASSES);
    }

    @Test
    void only_the_writer_knows_pdf() {
        standsOn(
                "pdf",
                "org.drillwright.wording",
                "org.drillwright.print.frame",
                "org.drillwright.print.text",
                "org.apache..",
                "javax.imageio..",
                "org.w3c.dom..");
    }

    /** The front door knows all commands; none of them knows it, but what is made of them all when the program is built. */
    @Test
    void commands_do_not_look_back_at_the_front_door() {
        noClasses()
                .that()
                .resideInAPackage("org.drillwright.print.command.(*)..")
                .and()
                .resideOutsideOfPackage("org.drillwright.print.command.install")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.drillwright.print.command")
                .check(CLASSES);
    }

    /** A message that is printed as it is speaks English, whatever language was asked for. */
    @Test
    void nothing_is_printed_that_was_not_put_into_words() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.drillwright.print.command.console")
                .should()
                .callMethod(PrintStream.class, "println", Object.class)
                .orShould()
                .callMethod(PrintStream.class, "print", Object.class)
                .check(CLASSES);
    }

    @Test
    void there_are_rooms_to_judge() {
        assertTrue(CLASSES.size() > 60, () -> "only " + CLASSES.size() + " classes were seen");
    }
}
