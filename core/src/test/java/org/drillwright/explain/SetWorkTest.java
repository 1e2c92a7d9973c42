package org.drillwright.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.check.Subject;
import org.drillwright.explain.SetWork.Item;
import org.drillwright.explain.SetWork.Theme;
import org.drillwright.school.SchoolFolder;
import org.junit.jupiter.api.Test;

/** The expected values were read off the example school's drill files by hand. */
class SetWorkTest {

    private static SetWork work(String set) throws IOException {
        SchoolFolder folder = SchoolFolder.open(Path.of("..", "drills"));
        List<Subject> drills = folder.entriesOf(folder.school().set(set).orElseThrow()).stream()
                .flatMap(entry -> entry.subject().stream())
                .toList();
        return SetWork.of(drills, folder.school());
    }

    private static List<String> drills(SetWork work, Theme theme, String key) {
        return work.of(theme).stream()
                .filter(item -> item.key().equals(key))
                .findFirst()
                .orElseThrow()
                .drills();
    }

    private static List<String> never(SetWork work, Theme theme) {
        return work.never(theme).stream().map(Item::key).toList();
    }

    @Test
    void the_intermediate_set_works_this() throws IOException {
        SetWork work = work("intermediate");
        assertEquals(List.of("parry-of-septime"), drills(work, Theme.LINES, "low-inside"));
        assertEquals(List.of("epee-parry-of-octave"), drills(work, Theme.LINES, "low-outside"));
        assertEquals(List.of("sabre-cut-to-head", "sabre-feint-to-head"), drills(work, Theme.PARRIES, "quinte"));
        assertEquals(List.of("sabre-feint-to-head"), drills(work, Theme.PARRIES, "tierce"));
        assertEquals(List.of("opposite-hands-circular-quarte"), drills(work, Theme.HANDS, "opposite"));
        assertEquals(List.of("keeping-distance-with-a-partner"), drills(work, Theme.FUNDAMENTALS, "footwork"));
        assertTrue(drills(work, Theme.MEASURES, "advance-lunge").contains("keeping-distance-with-a-partner"));
    }

    @Test
    void the_intermediate_set_never_touches_this() throws IOException {
        SetWork work = work("intermediate");
        assertEquals(List.of("stance"), never(work, Theme.FUNDAMENTALS));
        assertEquals(List.of("inside", "arm"), never(work, Theme.LINES));
        assertEquals(List.of("prime", "seconde"), never(work, Theme.PARRIES));
        assertEquals(List.of(), never(work, Theme.HANDS));
    }

    /** Each field has its place on the page that describes them. */
    @Test
    void every_field_is_described() throws IOException {
        String page = Files.readString(Path.of("..", "core", "docs", "coverage.md"));
        Matcher field = Pattern.compile("\"(\\w+)\" :")
                .matcher(SetWorkJson.of(work("training"), "training", List.of(), Locale.ENGLISH));
        while (field.find()) {
            String name = field.group(1);
            assertTrue(page.contains("`" + name + "`") || page.contains("." + name + "`"), name);
        }
        assertTrue(page.contains("version " + SetWorkJson.VERSION), "the page names the version");
    }

    /** Beginners cross no blades: no line, no parry, nobody's hands against another's. */
    @Test
    void beginners_touch_no_blade() throws IOException {
        SetWork work = work("beginner");
        for (Theme theme : List.of(Theme.LINES, Theme.PARRIES, Theme.HANDS)) {
            assertEquals(work.of(theme), work.never(theme), theme.word());
        }
        String text = SetWorkText.of(work, 14, Locale.ENGLISH);
        assertTrue(text.contains("  hands: same hands, opposite hands\n"), text);
    }
}
