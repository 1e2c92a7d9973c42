package org.drillwright.formatter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.formatter.Formatter.Outcome;
import org.drillwright.formatter.Formatter.Tidied;
import org.drillwright.model.School;
import org.drillwright.read.DrillReader;
import org.drillwright.read.ReadDrill;
import org.drillwright.read.Reading;
import org.drillwright.read.SourceTree;

/** Lays out texts, without the safety net of {@link Formatter}, and holds them to what it promises. */
final class Tidying {

    static final DrillReader READER = new DrillReader(School.DEFAULT);

    private Tidying() {}

    static Reading<ReadDrill> read(String text) {
        return READER.read("a-drill", "a-drill.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    /** Whether tidying says that it takes this file on. */
    static boolean isTaken(String text) {
        Reading<ReadDrill> reading = read(text);
        return reading.value().isPresent() && reading.findings().isEmpty();
    }

    static String bare(String text) {
        ReadDrill drill = read(text).value().orElseThrow(() -> new AssertionError(text));
        SourceTree.Entries tree = SourceTree.of(drill.file()).orElseThrow();
        return new Layout(READER.shape(), new Attaching(drill.file().text(), tree).attach()).of(tree);
    }

    static String of(String text) {
        Outcome outcome = new Formatter(READER).of("a-drill", "a-drill.yaml", text.getBytes(StandardCharsets.UTF_8));
        return outcome instanceof Tidied tidied ? tidied.text() : outcome.toString();
    }

    /** Same drill, same remarks, and no change when done again. */
    static void assertKept(String text, List<String> remarks) {
        String tidied = bare(text);
        Reading<ReadDrill> again = read(tidied);
        assertEquals(List.of(), again.findings(), () -> text + "\n=>\n" + tidied);
        assertEquals(
                read(text).value().orElseThrow().drill(),
                again.value().orElseThrow().drill(),
                () -> text + "\n=>\n" + tidied);
        for (String remark : remarks) {
            assertEquals(count(text, remark), count(tidied, remark), () -> remark + ":\n" + text + "\n=>\n" + tidied);
        }
        assertEquals(tidied, bare(tidied), text);
        assertWithTheirCounts(tidied, () -> text + "\n=>\n" + tidied);
    }

    /** Remarks that say whose they are ({@code @2}) stand above the dash of that count, in line with it, or in the count. */
    private static void assertWithTheirCounts(String tidied, Supplier<String> shown) {
        int count = 0;
        for (String line : tidied.lines().toList()) {
            count = line.startsWith("steps:") ? 0 : line.startsWith("  - ") ? count + 1 : count;
            Matcher whose = Pattern.compile("# r.* @(\\d)").matcher(line);
            if (whose.find()) {
                int here = line.startsWith("  #") ? count + 1 : count;
                assertEquals(Integer.parseInt(whose.group(1)), here, () -> line + ":\n" + shown.get());
            }
        }
    }

    private static long count(String text, String remark) {
        return Arrays.stream(text.split("[\\r\\n]+"))
                .filter(line -> line.stripTrailing().endsWith(remark))
                .count();
    }
}
