package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Trials take place on 1 September 2026; what is expected was planned by hand. */
class TermCommandTest {

    private static final String TERM = """
            title: Autumn term
            begins: "19:00"
            dates:
              - {key: a, date: 2026-09-02}
              - {key: b, date: 2026-09-09}
              - {key: c, date: 2026-09-16}
              - {key: d, date: 2026-09-23}
            groups:
              - {name: all, drills: [straight, riposte]}
            new-a-class: 1
            """;

    @TempDir
    Path folder;

    private PlanFiles school() {
        return PlanFiles.of(folder, 4, 0)
                .with("roster.yaml", "people: [{name: Ash}, {name: Bo}, {name: Cy}, {name: Dee}]\nassistants: []\n")
                .with("terms/autumn.yaml", TERM);
    }

    /** Drills down, classes across: two rows and four columns, the same as on paper. */
    @Test
    void a_picture_for_screens() throws IOException {
        Trial trial = school().run("term", "autumn", "--out", "term.svg");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(trial.out().startsWith("term.svg: Autumn term, 1 page."), trial.out());
        String svg = Files.readString(folder.resolve("term.svg"));
        assertTrue(svg.contains("aria-label=\"Autumn term\""), svg);
        for (String said : List.of("Straight thrust", "2026-09-02", "2026-09-23")) {
            assertTrue(svg.contains(said), said + " of " + svg.replaceAll("(?s)<g aria-hidden.*?</g>", ""));
        }
        assertEquals(0, school().run("term", "autumn", "--out", "term.svg").code(), "its own may be written over");
        Files.writeString(folder.resolve("mine.svg"), "<?xml version=\"1.0\"?><svg/>");
        Trial refused = school().run("term", "autumn", "--out", "mine.svg");
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains("is not a picture of this program"), refused.err());
    }

    private List<Path> plans() throws IOException {
        Path plans = folder.resolve("terms/plans");
        if (!Files.isDirectory(plans)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(plans)) {
            return files.toList();
        }
    }

    @Test
    void a_line_for_each_class() {
        Trial trial = school().run("term", "autumn");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(trial.out().startsWith("Autumn term, as of 2026-09-01. Not published yet.\n\nall, 4 people:\n"));
        assertTrue(trial.out().contains("  1  2026-09-02  new straight; 12 of 45 min; 4 expected\n"), trial.out());
        assertTrue(
                trial.out().contains("  2  2026-09-09  new riposte; again straight; 18 of 45 min; 4 expected\n"),
                trial.out());
        assertTrue(trial.out().contains("Proved best."), trial.out());
        Trial why = school().run("term", "autumn", "--why");
        assertTrue(why.out().contains("straight again: review 1, due by 2026-09-09."), why.out());
    }

    @Test
    void what_is_over_is_told_as_it_was() {
        Trial trial = school().with("record.csv", """
                        date,person,drill,event,with
                        2026-09-02,Ash,,attended,
                        2026-09-02,Bo,,attended,
                        2026-09-02,Cy,,attended,
                        2026-09-02,Ash,straight,worked with,Bo
                        """).run("term", "autumn", "--date", "2026-09-03");
        assertTrue(trial.out().contains("2026-09-02  new straight; over; 3 came\n"), trial.out());
        assertTrue(trial.out().contains("lacking: Cy, Dee"), trial.out());
        assertTrue(
                trial.out().replaceAll("\\s+", " ").contains("straight: Cy, Dee; new to it on 2026-09-09"),
                trial.out());
    }

    @Test
    void what_finds_no_class_is_told_with_its_reason() {
        Trial few = school().with("terms/autumn.yaml", TERM.replace("new-a-class: 1", "new-a-class: 1\nminutes: 20"))
                .run("term", "autumn");
        assertTrue(few.out().contains("  - straight: there is no room for it.\n"), few.out());
        assertTrue(few.out().contains("  - riposte: there is no room for it.\n"), few.out());
    }

    @Test
    void an_exam_that_cant_be_reached_is_one() {
        Trial trial = school().with("terms/autumn.yaml", TERM + "exam: {date: 2026-09-10, drills: [riposte]}\n")
                .run("term", "autumn");
        assertEquals(1, trial.code());
        assertTrue(trial.out().contains("For the exam, 1 working will be missing: riposte (1)."), trial.out());
    }

    @Test
    void what_was_published_holds() throws IOException {
        PlanFiles files = school();
        assertEquals(0, files.run("term", "autumn", "--publish").code());
        assertEquals(1, plans().size());
        Trial again = files.run("term", "autumn", "--publish");
        assertEquals(1, plans().size(), "the same plan is kept once");
        assertTrue(again.out().contains("Published as "), again.out());
        files.with(
                "terms/autumn.yaml",
                TERM.replace("09-16}", "09-16, no-new: yes}").replace("09-09}", "09-09, no-new: yes}"));
        Trial changed = files.run("term", "autumn");
        assertTrue(changed.out().contains("is in force, and says something else."), changed.out());
        assertTrue(changed.out().contains("2026-09-09: no longer new riposte"), changed.out());
        assertEquals(0, files.run("term", "autumn", "--publish").code());
        assertEquals(2, plans().size());
        JsonNode json = new ObjectMapper()
                .readTree(files.run("term", "autumn", "--format", "json").out());
        assertEquals(2, json.get("revision").asInt());
        assertTrue(plans().stream()
                .anyMatch(plan ->
                        plan.toString().endsWith("autumn-" + json.get("mark").asText() + ".yaml")));
    }

    @Test
    void a_published_plan_that_somebody_changed_is_not_followed() throws IOException {
        PlanFiles files = school();
        files.run("term", "autumn", "--publish");
        Path plan = plans().get(0);
        Files.writeString(plan, Files.readString(plan).replace("new: [straight]", "new: [riposte]"));
        Trial trial = files.run("term", "autumn");
        assertEquals(1, trial.code());
        assertTrue(trial.err().contains("somebody has changed it"), trial.err());
        Files.writeString(plan, "published-term: 1\n");
        assertEquals(1, files.run("term", "autumn").code(), "half a file");
    }

    @Test
    void two_plans_that_dont_know_of_each_other_are_refused() throws IOException {
        PlanFiles files = school();
        files.run("term", "autumn", "--publish");
        Path first = plans().get(0);
        String text = Files.readString(first);
        Files.delete(first);
        files.with("terms/autumn.yaml", TERM.replace("09-09}", "09-09, no-new: yes}"))
                .run("term", "autumn", "--publish");
        Files.writeString(first, text);
        Trial trial = files.run("term", "autumn");
        assertEquals(2, trial.code());
        assertTrue(trial.err().contains("were published independently"), trial.err());
    }

    @Test
    void json_tells_why_and_when() throws IOException {
        JsonNode json = new ObjectMapper()
                .readTree(school().run("term", "autumn", "--format", "json").out());
        assertEquals("autumn", json.get("term").asText());
        assertEquals("", json.get("mark").asText());
        JsonNode second = json.get("groups").get(0).get("classes").get(1);
        assertEquals("b", second.get("key").asText());
        assertEquals(18, second.get("used").asInt());
        JsonNode again = second.get("again").get(0);
        assertEquals("straight", again.get("drill").asText());
        assertEquals(1, again.get("rung").asInt());
        assertEquals("2026-09-30", again.get("due").asText(), "the second review, three weeks later at the latest");
    }

    @Test
    void the_calendar_is_that_of_what_was_published() throws IOException {
        PlanFiles files = school();
        Trial none = files.run("term", "autumn", "--calendar", "t.ics");
        assertEquals(2, none.code());
        assertTrue(none.err().contains("No plan of autumn was published yet"), none.err());
        assertEquals(
                0,
                files.run("term", "autumn", "--publish", "--calendar", "t.ics").code());
        String first = files.read("t.ics");
        assertEquals(
                0,
                Trial.at("2026-09-01T20:00:00Z", folder, "term", "autumn", "--calendar", "t.ics")
                        .code());
        assertEquals(first, files.read("t.ics"), "an hour later the same bytes");
        assertTrue(first.contains("\r\nDTSTART:20260902T190000\r\n"), first);
        assertTrue(first.contains("\r\nDTSTAMP:20260901T120000Z\r\n"), first);
        assertFalse(first.contains("Ash"), first);
        files.with("other.ics", "BEGIN:VCALENDAR\r\nVERSION:2.0\r\n");
        assertEquals(2, files.run("term", "autumn", "--calendar", "other.ics").code(), "somebody else's is left alone");
        assertEquals(2, files.run("term", "autumn", "--calendar", "t.txt").code());
    }

    @Test
    void the_sheet_is_one_page() throws IOException {
        PlanFiles files = school();
        Trial trial = files.run("term", "autumn", "--out", "t.pdf", "--publish");
        assertEquals(0, trial.code(), trial.err());
        try (PDDocument document = Loader.loadPDF(folder.resolve("t.pdf").toFile())) {
            assertEquals(1, document.getNumberOfPages());
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("Autumn term: all"), text);
            assertTrue(text.contains("Parry of quarte, straight riposte"), text);
            assertTrue(text.contains("18/45"), text);
            assertTrue(text.contains("Plan "), text);
        }
    }

    @Test
    void what_is_wrong_is_said() {
        PlanFiles files = school();
        assertEquals(
                "There is no term 'autum' in the folder terms of the school; did you mean 'autumn'?\n",
                files.run("term", "autum").err());
        Trial faulty = files.with("terms/autumn.yaml", TERM.replace("riposte", "riposste"))
                .run("term", "autumn");
        assertEquals(1, faulty.code());
        assertTrue(faulty.err().contains("terms/autumn.yaml, line 9"), faulty.err());
        assertTrue(faulty.err().contains("Did you mean 'riposte'?"), faulty.err());
        assertEquals(1, files.run("check").code(), "check reads terms, too");
    }

    @Test
    void who_came_is_told_in_the_rosters_order() {
        StringBuilder record = new StringBuilder("date,person,drill,event,with\n");
        for (int day : List.of(5, 12, 19, 26)) {
            record.append(String.format(java.util.Locale.ROOT, "2026-08-%02d,Bo,,attended,\n", day));
            record.append(String.format(java.util.Locale.ROOT, "2026-08-%02d,Cy,,attended,\n", day));
        }
        record.append("2026-08-05,Ash,,attended,\n2026-08-12,Ash,,attended,\n2026-08-19,Bo,riposte,worked with,Cy\n");
        PlanFiles files = school().with("record.csv", record.toString());
        assertEquals("""
                Ash: came to 2 of the last 4 classes; 2 weeks since their last; missed
                     riposte.
                Bo: came to 4 of the last 4 classes.
                Cy: came to 4 of the last 4 classes.
                Dee: no class on record.

                People by class:
                  2026-08-05  3
                  2026-08-12  3
                  2026-08-19  2
                  2026-08-26  2
                """, files.run("attendance").out());
        assertEquals(
                "Bo: came to 4 of the last 4 classes.\n",
                files.run("attendance", "Bo").out(),
                "how many came isn't told of one");
        assertEquals("""
                person,2026-08-05,2026-08-12,2026-08-19,2026-08-26
                Ash,1,1,,
                Bo,1,1,1,1
                Cy,1,1,1,1
                Dee,,,,
                people,3,3,2,2
                """, files.run("attendance", "--format", "csv").out());
    }
}
