package org.drillwright.print.command.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.svg.Drawn;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a save changes. */
class SavesTest {

    @TempDir
    Path folder;

    private SchoolFiles files;
    private Visit visit;

    @BeforeEach
    void open() throws Exception {
        files = SchoolFiles.sound(folder);
        visit = new Visit(folder).listening();
    }

    @AfterEach
    void close() {
        visit.close();
    }

    @Test
    void a_mistake_is_told_and_found() throws Exception {
        files.with("riposte.yaml", SchoolFiles.riposte().replace("Parry quarte", "Parry octave"));
        assertTrue(visit.news().contains("\"changed\":[\"riposte.yaml\"],\"gone\":[]"));
        String drill = visit.drill("riposte.yaml");
        assertTrue(drill.contains("\"rule\":\"parry-misses\""), drill);
        assertTrue(Drawn.read(visit.card("riposte.yaml")).runs().stream()
                .anyMatch(run -> run.text().equals("DRAFT")));
        files.with("riposte.yaml", SchoolFiles.riposte());
        assertTrue(visit.news().contains("riposte.yaml"));
        assertTrue(visit.drill("riposte.yaml").contains("\"errors\":0"));
    }

    @Test
    void a_save_that_changes_nothing_is_not_told() throws Exception {
        files.with("riposte.yaml", SchoolFiles.riposte()).with("notes.txt", "no drill");
        assertTrue(visit.isSilent(2500));
    }

    @Test
    void a_half_written_file_keeps_its_last_card() throws Exception {
        String whole = visit.card("riposte.yaml");
        String half = SchoolFiles.riposte().substring(0, SchoolFiles.riposte().indexOf("follower: Parry") + 5);
        files.with("riposte.yaml", half);
        assertTrue(visit.news().contains("\"riposte.yaml\""));
        String drill = visit.drill("riposte.yaml");
        assertTrue(drill.contains("\"readable\":false,\"stale\":true"), drill);
        assertFalse(drill.contains("\"errors\":0"), drill);
        assertTrue(drill.contains("\"kind\":\"closing\""), drill);
        assertEquals(whole, visit.card("riposte.yaml"));
    }

    @Test
    void an_emptied_file_is_said() throws Exception {
        files.with("riposte.yaml", "");
        assertTrue(visit.news().contains("\"riposte.yaml\""));
        assertTrue(visit.drill("riposte.yaml").contains("\"stale\":true"));
    }

    @Test
    void a_deleted_file_is_gone_and_a_new_one_is_there() throws Exception {
        Files.delete(folder.resolve("feet/steps.yaml"));
        assertTrue(visit.news().contains("\"gone\":[\"feet/steps.yaml\"]"));
        assertEquals(404, visit.get("/drill?name=feet/steps.yaml").statusCode());
        files.with("new/deep/steps again.yaml", SchoolFiles.steps());
        assertTrue(visit.news().contains("\"changed\":[\"new/deep/steps again.yaml\"]"));
        assertEquals(200, visit.get("/drill?name=new%2Fdeep%2Fsteps+again.yaml").statusCode());
    }

    @Test
    void broken_settings_are_said_and_mended() throws Exception {
        files.with("school.yaml", "sheet: b5\n");
        visit.news();
        String school = visit.get("/school").body();
        assertTrue(school.contains("\"judged\":false"), school);
        assertTrue(school.contains("\"text\":\"sheet: b5\""), school);
        files.with("school.yaml", SchoolFiles.SETTINGS);
        visit.news();
        assertTrue(visit.get("/school").body().contains("\"judged\":true"));
    }

    @Test
    void a_font_that_cannot_be_used_is_said() throws Exception {
        files.with("school.yaml", SchoolFiles.SETTINGS + "font: {regular: no.ttf, bold: no.ttf}\n");
        visit.news();
        String school = visit.get("/school").body();
        assertTrue(school.contains("no.ttf"), school);
        assertEquals(200, visit.get("/card?name=riposte.yaml&at=0").statusCode());
    }

    @Test
    void a_folder_that_goes_is_said() throws Exception {
        Path inner = folder.resolve("inner");
        SchoolFiles.sound(inner);
        try (Visit other = new Visit(inner).listening()) {
            Files.move(inner, folder.resolve("moved"));
            other.news();
            assertTrue(other.get("/school").body().contains("can no longer be read"));
        }
    }

    @Test
    void what_is_unknown_is_said_so() throws Exception {
        files.with("riposte.yaml", SchoolFiles.riposte().replace("Parry quarte.", "Frobnicate the blade."));
        visit.news();
        String drill = visit.drill("riposte.yaml");
        assertTrue(drill.contains("\"notJudged\":"), drill);
        assertTrue(
                Pattern.compile("\"unknown\":\"[^\"]*what the follower does")
                        .matcher(drill)
                        .find(),
                drill);
        assertTrue(visit.get("/picture?name=riposte.yaml&at=1").body().contains("data-mark=\"unknown\""));
    }

    @Test
    void two_hundred_drills_follow_a_save() throws Exception {
        for (int number = 0; number < 200; number++) {
            files.with(
                    "many/drill-" + number + ".yaml", SchoolFiles.riposte().replace("Parry of", number + ". Parry of"));
        }
        while (!visit.get("/school").body().contains("\"tally\":\"203 drills")) {
            visit.news();
        }
        while (!visit.isSilent(2500)) {
            // Until all that was written has been told.
        }
        files.with("many/drill-77.yaml", SchoolFiles.riposte().replace("Parry quarte", "Parry octave"));
        assertTrue(visit.news().contains("\"many/drill-77.yaml\""));
        assertTrue(visit.drill("many/drill-77.yaml").contains("parry-misses"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "</title></svg><script>alert(1)</script>",
                "<svg onload=alert(1)>",
                "{{constructor.constructor(1)()}}",
                "javascript:alert(1)//",
                "&lt;b&gt; &amp;#60;"
            })
    void payloadsStayText(String payload) throws Exception {
        String quoted = "'" + payload.replace("'", "''") + "'";
        files.with(
                payload.replaceAll("[^a-z]", "") + ".yaml",
                SchoolFiles.riposte()
                        .replace("Parry of quarte, straight riposte", quoted)
                        .replace("Parry quarte.", quoted)
                        .replace("distance: extension", "distance: " + quoted));
        visit.news();
        String name = payload.replaceAll("[^a-z]", "") + ".yaml";
        Drawn card = Drawn.read(visit.card(name));
        assertTrue(card.elements("script").isEmpty() && card.elements("img").isEmpty());
        assertTrue(card.elements("*").stream()
                .allMatch(element -> element.getAttribute("onload").isEmpty()));
        String letters = card.runs().stream().map(Drawn.Run::text).reduce("", String::concat);
        assertTrue(letters.replaceAll("\\s", "").contains(payload.replaceAll("\\s", "")), letters);
        var answer = visit.get("/drill?name=" + name);
        assertEquals(
                "application/json; charset=utf-8",
                answer.headers().firstValue("Content-Type").orElseThrow());
    }
}
