package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DialogueTest {

    @TempDir
    Path folder;

    @Test
    void checksTheFolderAndStops() {
        SchoolFiles.sound(folder);
        Trial trial = Trial.talk(folder, "1\n5\n");
        assertEquals(0, trial.code());
        assertTrue(trial.out().contains("3 drills: no errors"), trial.out());
        assertTrue(trial.out().contains("That does not make a drill safe"), trial.out());
        assertTrue(trial.out().endsWith("Goodbye.\n"), trial.out());
        assertEquals("", trial.err());
    }

    @Test
    void printsASetIntoTheFolder() {
        SchoolFiles.sound(folder);
        Trial.talk(folder, "print\n2\nstop\n");
        assertTrue(Files.exists(folder.resolve("thrusts.pdf")));
    }

    @Test
    void asksBeforePrintingDrafts() {
        SchoolFiles.sound(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        Trial refused = Trial.talk(folder, "2\n1\nno\n5\n");
        assertTrue(refused.out().contains("Print all the same"), refused.out());
        assertFalse(Files.exists(folder.resolve("cards.pdf")));
        Trial.talk(folder, "2\nall\nyes\n5\n");
        assertTrue(Files.exists(folder.resolve("cards.pdf")));
    }

    @Test
    void beginsADrillWhoseTitleLooksLikeAnOption() {
        Trial trial = Trial.talk(folder, "3\n--draft of mine\nbeginner\n2\n5\n");
        assertTrue(Files.exists(folder.resolve("draft-of-mine.yaml")), trial.out() + trial.err());
    }

    @Test
    void showsACardByAPartOfItsName() {
        SchoolFiles.sound(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        Trial trial = Trial.talk(folder, "4\nrip\n4\nsteps\n");
        assertTrue(trial.out().contains("1    Leader: Extend to the high inside line and lunge.\n"), trial.out());
        assertTrue(trial.out().contains("2    Caller: Retreat!\n     Class: Retreat.\n"), trial.out());
        assertEquals(1, trial.out().split("DRAFT", -1).length - 1, trial.out());
    }

    @Test
    void asksAgainUntilItUnderstands() {
        SchoolFiles.sound(folder);
        Trial trial = Trial.talk(folder, "9\nwhat\n5\n");
        assertEquals(2, trial.out().split("That is none of them", -1).length - 1);
    }

    @Test
    void endsWhenAnswersEnd() {
        Trial trial = Trial.talk(folder, "4\n");
        assertEquals(0, trial.code());
        assertTrue(trial.out().contains("There is no drill in "), trial.out());
    }
}
