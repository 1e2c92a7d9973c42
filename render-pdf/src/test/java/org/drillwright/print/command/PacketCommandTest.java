package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What somebody who doesn't know the class is told of it: by hand. */
class PacketCommandTest {

    private static final String ROSTER = """
            people:
              - {name: Ash, hand: left, knows: [straight, riposte], apart: [Bo]}
              - {name: Bo, hand: right, knows: [straight]}
              - {name: Cy, knows: [straight, riposte]}
              - {name: Dee, knows: [straight], solo: yes}
            assistants: [Eli]
            """;

    /** Three classes; Bo comes for the first time, Cy was in the first of them, five weeks before. */
    private static final String RECORD = """
            date,person,drill,event,with
            2026-07-22,Cy,,attended,
            2026-08-12,Ash,,attended,
            2026-08-19,Ash,,attended,
            2026-08-19,Dee,,attended,
            """;

    @TempDir
    Path folder;

    private String text(String name) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(name).toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setEndPage(1);
            assertTrue(document.getNumberOfPages() >= 3, "people, lesson, wall");
            return stripper.getText(document).replaceAll("[ \\u00A0]+", " ");
        }
    }

    @Test
    void who_is_new_with_which_hand_and_what_to_look_out_for() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 1, 1).with("roster.yaml", ROSTER).with("record.csv", RECORD);
        Trial trial = files.run("packet", "tonight");
        assertEquals(0, trial.code(), trial.err());
        String text = text("packet.pdf");
        assertTrue(text.contains("Helping: Eli."), text);
        assertTrue(text.contains("1 Parry of quarte, straight riposte, new to 2 of 4."), text);
        assertTrue(text.contains("Ash left never with Bo\n"), text);
        assertTrue(text.contains("Bo right 1 never with Ash; no class on record yet\n"), text);
        assertTrue(text.contains("Cy was away for 5 weeks\n"), text);
        assertTrue(text.contains("Dee 1 solo work only\n"), text);
        assertTrue(trial.out().contains("The cards: cards --class tonight"), trial.out());
        assertTrue(Files.isDirectory(folder.resolve("classes/plans")), "what hangs is kept");
    }

    /** 60 min of class; opening 2, riposte 3:29 at the most, closing 5. */
    @Test
    void parts_of_the_schools_own_are_told() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 1, 1).with("school.yaml", """
                blocks:
                  - {name: Rings, minutes: 9, place: warm-up, how: Ankles first.}
                  - {name: Glove tag, minutes: 200, place: spare}
                """);
        assertEquals(0, files.run("packet", "tonight").code());
        String text = text("packet.pdf");
        assertTrue(text.contains("At 2:00 Rings, 9:00: Ankles first.\n"), text);
        assertTrue(!text.contains("Glove tag"), text);
    }

    @Test
    void initials_hide_names() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 1, 1).with("roster.yaml", ROSTER).with("record.csv", RECORD);
        assertEquals(
                0,
                files.run("packet", "tonight", "--initials", "--out", "p.pdf").code());
        String text = text("p.pdf");
        assertTrue(!text.contains("Ash") && text.contains("never with B"), text);
    }
}
