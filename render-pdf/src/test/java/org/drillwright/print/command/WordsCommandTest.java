package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsCommandTest {

    /** The lines of a terminal that nobody has made larger. */
    private static final int SCREEN = 24;

    @TempDir
    Path folder;

    /** What an author types, and the words of the trade it has to be told in; the pairs are those of any glossary. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "parry of octave     | English | English  Parry octave.    | octave (position)",
                "octave parry        | English | French   Parez octave.    | parry (blade)",
                "cut-over            | English | English  Cut over.        | cut-over (arm)",
                "coup droit          | French  | Italian  Tira dritto.     | thrust (arm)",
                "Parez quarte !      | French  | English  Parry quarte.    | quarte (position)",
                "Affondo             | Italian | English  Lunge.           | lunge (footwork)",
                "parry octve         | English | English  Parry octave.    | octave (position)",
                "Advance and lunge.  | English | French   Marchez          | lunge (footwork)"
            })
    void what_an_author_types_is_told_on_one_screen(String typed, String language, String said, String term) {
        Trial trial = Trial.run(folder, "words", typed);
        assertEquals(0, trial.code(), trial.err());
        assertTrue(trial.out().startsWith("'" + typed + "' is read, in " + language + ", as:\n"), trial.out());
        assertTrue(trial.out().contains("  " + said), trial.out());
        assertTrue(trial.out().contains("Words for " + term + ":\n"), trial.out());
        assertTrue(trial.out().lines().count() <= SCREEN, trial.out());
        assertTrue(trial.out().lines().allMatch(line -> line.length() <= 80), trial.out());
    }

    @Test
    void several_arguments_are_one_turn() {
        assertEquals(
                Trial.run(folder, "words", "parry of octave"), Trial.run(folder, "words", "parry", "of", "octave"));
    }

    @Test
    void alone_it_gives_a_short_way_in() {
        Trial trial = Trial.run(folder, "words");
        assertEquals(0, trial.code());
        assertTrue(trial.out().contains("drillwright words \"parry of octave\"\n"), trial.out());
        assertTrue(trial.out().contains("position: "), trial.out());
        assertTrue(trial.out().lines().count() <= SCREEN, trial.out());
    }

    @Test
    void a_word_that_is_not_known_is_one() {
        Trial trial = Trial.run(folder, "words", "xyzzy");
        assertEquals(1, trial.code());
        assertEquals(1, trial.out().lines().count(), trial.out());
        assertTrue(trial.out().startsWith("'xyzzy' is not a known fencing term"), trial.out());
    }

    @Test
    void what_is_understood_of_a_turn_is_told() {
        Trial trial = Trial.run(folder, "words", "Parry quarte and xyzzy.");
        assertTrue(trial.out().startsWith("'xyzzy' is not understood."), trial.out());
        assertTrue(trial.out().contains("English  Parry quarte."), trial.out());
    }

    @Test
    void a_schools_own_word_is_a_word() {
        SchoolFiles.sound(folder).with("school.yaml", "name: A school\nwords:\n  zap: straight thrust\n");
        assertEquals(
                Trial.run(folder, "words", "straight thrust").out().replace("'straight thrust'", "'zap'"),
                Trial.run(folder, "words", "zap").out());
    }

    @Test
    void everything_is_there_for_who_wants_it() {
        assertTrue(Trial.run(folder, "words", "--all", "parry").out().length()
                > Trial.run(folder, "words", "parry").out().length());
        assertTrue(Trial.run(folder, "words", "--all").out().contains("Words for counter-riposte"));
    }
}
