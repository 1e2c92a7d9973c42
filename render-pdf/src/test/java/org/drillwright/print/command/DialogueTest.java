package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.drillwright.print.Example;
import org.drillwright.print.command.console.Opener;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DialogueTest {

    @TempDir
    Path folder;

    /** A desk on which everything opens; it remembers what. */
    private static final class Desk implements Opener {

        private final List<String> opened = new ArrayList<>();

        @Override
        public boolean open(String what) {
            opened.add(what.replaceAll("127\\.0\\.0\\.1:\\d+", "here"));
            return true;
        }

        @Override
        public boolean edit(Path file) {
            opened.add("edit " + file);
            return true;
        }
    }

    private Trial talk(String... answers) {
        return Trial.talk(folder, String.join("\n", answers) + "\n");
    }

    private static int count(String part, String text) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    @Test
    void leads_from_an_empty_folder_to_printed_cards() {
        Desk desk = new Desk();
        Trial trial = Trial.talk(
                folder,
                desk,
                String.join(
                                "\n",
                                List.of(
                                        "", // begin a school
                                        "Meadow Salle",
                                        "A4",
                                        "English",
                                        "", // write a drill
                                        "First steps",
                                        "beginner",
                                        "class",
                                        "", // the file, and the page beside
                                        "", // the page is done with
                                        "", // check
                                        "", // print cards
                                        "All of them",
                                        "1",
                                        "nothing",
                                        "", // open the PDF
                                        "quit"))
                        + "\n");
        assertEquals(0, trial.code(), trial.err());
        assertEquals("", trial.err());
        assertTrue(trial.out().contains("1 drill: no errors"), trial.out());
        assertTrue(trial.out().contains("That does not make a drill safe"), trial.out());
        assertEquals(
                List.of(
                        "edit " + folder.resolve("first-steps.yaml"),
                        "http://here/#first-steps.yaml",
                        folder.resolve("cards.pdf").toString()),
                desk.opened);
        assertTrue(Files.exists(folder.resolve("cards.pdf")));
        assertTrue(trial.out().endsWith("Goodbye. Everything you wrote is in the folder.\n"), trial.out());
    }

    @Test
    void tells_what_to_open_where_nothing_opens_it() {
        SchoolFiles.sound(folder);
        Trial trial = talk("change", "rip", "only", "cards", "all", "1", "1", "yes", "quit");
        assertTrue(
                trial.out()
                        .contains("Open it yourself, in any plain text editor:\n  " + folder.resolve("riposte.yaml")),
                trial.out());
        assertTrue(
                trial.out().contains("print it at 100 % (actual size):\n  " + folder.resolve("cards.pdf")),
                trial.out());
    }

    /** Whatever is asked, it can be left; each line is a way to a question, the last answer is said there. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "quit",
                "1;quit",
                "1;My drill;quit",
                "1;My drill;2;QUIT",
                "change;quit",
                "check;quit",
                "cards;all;quit",
                "cards;one;quit",
                "handout;quit",
                "after;quit",
                "show;quit"
            })
    void quit_ends_it_at_every_question(String answers) {
        SchoolFiles.sound(folder);
        Trial trial = talk(answers.split(";"));
        assertEquals(0, trial.code(), trial.err());
        assertTrue(trial.out().endsWith("Goodbye. Everything you wrote is in the folder.\n"), trial.out());
    }

    @Test
    void the_end_of_the_input_ends_it_kindly() {
        SchoolFiles.sound(folder);
        for (String answers : List.of("", "1\n", "1\nMy drill\n", "cards\nall\n")) {
            Trial trial = Trial.talk(folder, answers);
            assertEquals(0, trial.code());
            assertTrue(trial.out().endsWith("\nGoodbye. Everything you wrote is in the folder.\n"), trial.out());
        }
    }

    @Test
    void back_leads_to_the_question_before_and_what_was_answered_is_proposed() {
        SchoolFiles.sound(folder);
        Trial trial = talk("1", "My drill", "beginner", "back", "back", "", "", "class", "not now", "quit");
        assertTrue(trial.out().contains("What is the drill called? [My drill] "), trial.out());
        assertTrue(trial.out().contains("Type a number and press Enter [1]: "), trial.out());
        assertTrue(Files.exists(folder.resolve("my-drill.yaml")), trial.out());
    }

    /** A file of that name is there: the next time nothing has to be typed again but what was wrong. */
    @Test
    void what_was_answered_is_not_lost_when_it_fails() {
        SchoolFiles.sound(folder);
        Trial trial = talk("1", "Riposte", "beginner", "class", "1", "Ripostes", "", "", "not now", "quit");
        assertTrue(trial.err().contains("There is already a drill 'riposte'"), trial.err());
        assertTrue(trial.out().contains("What is the drill called? [Riposte] "), trial.out());
        assertTrue(Files.exists(folder.resolve("ripostes.yaml")), trial.out());
    }

    @Test
    void help_tells_what_is_wanted() {
        SchoolFiles.sound(folder);
        Trial trial = talk("help", "cards", "all", "help", "back", "back", "back", "quit");
        assertTrue(trial.out().contains("A school is a folder of drills"), trial.out());
        assertTrue(trial.out().contains("A6 is the size of a postcard"), trial.out());
        assertEquals(2, count("'back' returns to the one before", trial.out()));
        assertTrue(trial.out().contains("This is the first question"), trial.out());
    }

    @Test
    void asks_before_printing_drafts() {
        SchoolFiles.sound(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        Trial refused = talk("cards", "all", "1", "1", "no", "quit");
        assertTrue(refused.out().contains("Print anyway"), refused.out());
        assertFalse(Files.exists(folder.resolve("cards.pdf")));
        talk("cards", "all", "1", "1", "yes", "no", "quit");
        assertTrue(Files.exists(folder.resolve("cards.pdf")));
    }

    @Test
    void offers_a_drill_that_has_to_be_mended() {
        SchoolFiles.sound(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        Trial trial = talk("check", "", "only", "quit");
        assertTrue(trial.out().contains("   1  Parry of quarte, straight riposte\n   2  Not now\n"), trial.out());
        assertTrue(trial.out().contains("any plain text editor:\n  " + folder.resolve("riposte.yaml")), trial.out());
    }

    @Test
    void begins_a_drill_whose_title_looks_like_an_option() {
        SchoolFiles.sound(folder);
        Trial trial = talk("1", "--draft of mine", "beginner", "2", "not now", "quit");
        assertTrue(Files.exists(folder.resolve("draft-of-mine.yaml")), trial.out() + trial.err());
    }

    @Test
    void shows_a_card_by_a_part_of_its_title() {
        SchoolFiles.sound(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        Trial trial = talk("show", "quarte", "show", "steps", "quit");
        assertTrue(trial.out().contains("1    Leader: Extend to the high inside line and lunge.\n"), trial.out());
        assertTrue(trial.out().contains("2    Caller: Retreat!\n     Class: Retreat.\n"), trial.out());
        assertEquals(1, count("DRAFT", trial.out()), trial.out());
    }

    @Test
    void where_there_is_but_one_nobody_is_asked() {
        new SchoolFiles(folder).with("steps.yaml", SchoolFiles.steps());
        assertTrue(talk("show", "quit").out().contains("2    Caller: Retreat!\n"));
    }

    @Test
    void prints_what_a_class_needs_and_writes_down_what_was_done() throws Exception {
        Example.copyTo(folder);
        Desk desk = new Desk();
        Trial trial = Trial.talk(folder, desk, "6\nlesson\nyes\n6\nwall\nyes\n7\nquit\n");
        assertTrue(desk.opened.contains(folder.resolve("tonight-lesson.pdf").toString()), trial.out());
        assertTrue(desk.opened.contains(folder.resolve("tonight-wall.pdf").toString()), trial.out());
        assertTrue(trial.err().contains("is still to come"), trial.err());
    }
}
