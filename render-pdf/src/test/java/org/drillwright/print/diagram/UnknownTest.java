package org.drillwright.print.diagram;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.drillwright.model.Language;
import org.drillwright.school.SchoolFolder;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is not known is drawn and said as not known. */
class UnknownTest {

    private static final String DRILL = """
            title: Words that nobody reads
            level: training
            form: partner
            weapon: foil
            gear: [mask, jacket, underarm protector, glove]
            start: On guard in sixte, blades apart, at lunge distance.
            opening: Salute. Masks on. On guard in sixte.
            steps:
              - leader: Flibber the gazump.
                follower: Parry quarte.
                distance: lunge
                safety: Softly.
              - leader: Feint a straight thrust to the high outside line.
                follower: Parry prime.
                distance: lunge
                safety: Softly.
            closing: Step back out of distance. Masks off. Salute.
            """;

    private static List<Picture> pictures;

    @BeforeAll
    static void read(@TempDir Path folder) throws Exception {
        Files.write(folder.resolve("unread.yaml"), DRILL.getBytes(StandardCharsets.UTF_8));
        pictures = Pictures.of(
                SchoolFolder.open(folder)
                        .entries()
                        .get(0)
                        .subject()
                        .orElseThrow()
                        .replay(),
                Language.ENGLISH);
    }

    private static Seen seen(int count) {
        return new Seen(pictures.get(count - 1).draw(0, 0, 50));
    }

    @Test
    void a_count_that_was_not_read_has_question_marks_and_no_stroke() {
        Seen seen = seen(1);
        assertFalse(seen.has("star") || seen.has("ticks") || seen.has("ring") || seen.has("foot action"));
        assertTrue(seen.count("unknown") >= 2, "the leader's feet and the measure");
    }

    /** Schools differ on prime (Encyclopaedia Britannica and Warford 1884 do). */
    @Test
    void a_position_on_which_schools_differ_closes_no_certain_line() {
        Seen seen = seen(2);
        assertFalse(seen.has("closed"));
        assertTrue(seen.has("unknown stroke"), "what becomes of the feint");
        assertTrue(seen.count("unknown") >= 2, "both lines that prime may close");
    }

    @Test
    void its_words_say_so() {
        String said = pictures.get(0).alternative();
        for (String part : List.of(
                "whether there is an attack is not known",
                "which line the hand closes is not known",
                "feet unknown",
                "at an unknown distance")) {
            assertTrue(said.contains(part), said);
        }
    }
}
