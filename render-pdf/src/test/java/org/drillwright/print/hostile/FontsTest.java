package org.drillwright.print.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.Trial;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A school may name a font of its own; not every file is one. */
class FontsTest {

    private static final String FONT = "/net/sf/jasperreports/fonts/dejavu/DejaVuSansCondensed.ttf";

    @TempDir
    Path folder;

    private School school;

    @BeforeEach
    void school() {
        school = School.in(folder).with("school.yaml", SchoolFiles.SETTINGS + "font: own.ttf\n");
    }

    private static byte[] font() throws IOException {
        try (InputStream in = FontsTest.class.getResourceAsStream(FONT)) {
            return in == null ? new byte[0] : in.readAllBytes();
        }
    }

    /** The program prints, or says in one sentence that the font is none. */
    private void assertSentence(byte[] bytes) {
        Trial trial = school.with("own.ttf", bytes).run("cards", "straight", "--out", "c.pdf");
        assertTrue(trial.code() != 2 || trial.err().lines().count() == 1, trial.err());
    }

    @Test
    void a_font_that_is_cut_off_is_none() throws IOException {
        byte[] font = font();
        for (int part = 0; part < 12; part++) {
            assertSentence(Arrays.copyOf(font, font.length / 12 * part + part * part));
        }
    }

    /** Offsets, lengths and counts at the beginning of the tables are what a parser trusts too easily. */
    @Test
    void a_font_with_wrong_figures_is_used_or_refused() throws IOException {
        byte[] font = font();
        Random random = new Random(17);
        for (int time = 0; time < 25; time++) {
            byte[] wrong = font.clone();
            for (int at = 0; at < 6; at++) {
                wrong[random.nextInt(time % 2 == 0 ? 400 : wrong.length)] = (byte) random.nextInt(256);
            }
            assertSentence(wrong);
        }
    }

    @Test
    void a_font_of_more_than_32_megabytes_is_refused() throws IOException {
        Trial trial = school.with("own.ttf", new byte[32_000_001]).run("cards", "straight", "--out", "c.pdf");
        assertEquals(new Trial(2, "", "The font 'own.ttf' of school.yaml is larger than 32 MB.\n"), trial);
        assertTrue(Files.notExists(folder.resolve("c.pdf")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/etc/passwd", "../../../../etc/passwd", "/dev/zero", ".", "feet", "nothing.ttf"})
    void a_font_lies_in_the_schools_folder(String name) {
        school.with("school.yaml", SchoolFiles.SETTINGS + "font: \"" + name + "\"\n");
        Trial trial = school.run("cards", "straight", "--out", "c.pdf");
        assertTrue(trial.code() > 0);
        assertTrue((trial.out() + trial.err()).contains("font"), trial.toString());
    }
}
