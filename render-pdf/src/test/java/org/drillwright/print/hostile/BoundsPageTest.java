package org.drillwright.print.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.drillwright.print.command.editor.protocol.HeaderFraming;
import org.drillwright.print.command.editor.workspace.Document;
import org.drillwright.print.command.printing.SchoolFaces;
import org.drillwright.print.command.watch.web.ServerSentEvents;
import org.drillwright.read.ReadingLimits;
import org.drillwright.read.TermReader;
import org.drillwright.register.RecordReader;
import org.drillwright.school.DrillFiles;
import org.drillwright.source.Findings;
import org.drillwright.source.Nearest;
import org.junit.jupiter.api.Test;

/** The page of bounds says what the program does. */
class BoundsPageTest {

    private static final Pattern ROW = Pattern.compile("\\| ([^|]+) \\| (\\d+) \\| [^|]+ \\|");

    @Test
    void every_figure_of_the_table_is_that_of_the_program() throws IOException {
        Map<String, Integer> bounds = new LinkedHashMap<>();
        bounds.put("drill files below one folder", ReadingLimits.DRILLS);
        bounds.put("levels of nested folders that are searched", DrillFiles.DEPTH);
        bounds.put(
                "bytes of a drill, school.yaml, a roster, a class, a term, a kept plan or a file of translations",
                ReadingLimits.FILE_BYTES);
        bounds.put("lists and keys inside one another", ReadingLimits.DEPTH);
        bounds.put("counts of a drill", ReadingLimits.STEPS);
        bounds.put("classes of a term", TermReader.MOST_CLASSES);
        bounds.put("drills of a term's group", TermReader.MOST_DRILLS);
        bounds.put("items of any other list", ReadingLimits.ITEMS);
        bounds.put("characters of a title or a short word", ReadingLimits.SHORT_TEXT);
        bounds.put("characters of a turn, a cue or a caution", ReadingLimits.LINE_TEXT);
        bounds.put("characters of a longer text", ReadingLimits.LONG_TEXT);
        bounds.put("findings reported for one file by one reader or rule", Findings.MOST);
        bounds.put("hidden characters reported for one file", ReadingLimits.HIDDEN);
        bounds.put("characters of a word for which the nearest known one is sought", Nearest.LONGEST);
        bounds.put("bytes of record.csv and of prints.csv", RecordReader.MOST_BYTES);
        bounds.put("characters of a line of record.csv", RecordReader.MOST_LINE);
        bounds.put("bytes of a school's font", SchoolFaces.MOST);
        bounds.put("characters of a text that is open in an editor", Document.MOST);
        bounds.put("bytes of a message from an editor", HeaderFraming.MOST_BYTES);
        bounds.put("bytes of its head", HeaderFraming.MOST_HEAD);
        bounds.put("levels of nested lists and objects in it", HeaderFraming.DEEPEST);
        bounds.put("pages open at once in `watch`", ServerSentEvents.READERS);
        assertEquals(bounds, table());
    }

    private static Map<String, Integer> table() throws IOException {
        Map<String, Integer> rows = new LinkedHashMap<>();
        String page = Files.readString(Path.of("..", "core", "docs", "bounds.md"));
        ROW.matcher(page).results().forEach(row -> rows.put(row.group(1), Integer.valueOf(row.group(2))));
        return rows;
    }
}
