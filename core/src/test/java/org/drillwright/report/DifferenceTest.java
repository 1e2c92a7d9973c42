package org.drillwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The unified format of POSIX.1-2017, utility diff, option -u; ranges and context worked by hand. */
class DifferenceTest {

    @Example
    void nothing_differs() {
        assertEquals("", Difference.unified("a", "x\n", "x\n"));
    }

    @Example
    void one_line_changed_with_three_lines_around() {
        assertEquals(
                "--- a\n+++ a\n@@ -2,7 +2,7 @@\n 2\n 3\n 4\n-5\n+five\n 6\n 7\n 8\n",
                Difference.unified("a", "1\n2\n3\n4\n5\n6\n7\n8\n9\n", "1\n2\n3\n4\nfive\n6\n7\n8\n9\n"));
    }

    @Example
    void changes_far_apart_have_a_stretch_each() {
        String middle = "a\nb\nc\nd\ne\nf\ng\n";
        assertEquals(
                "--- a\n+++ a\n@@ -1,4 +1,3 @@\n-x\n a\n b\n c\n@@ -6,3 +5,4 @@\n e\n f\n g\n+y\n",
                Difference.unified("a", "x\n" + middle, middle + "y\n"));
    }

    @Example
    void an_empty_text_begins_at_nothing_and_a_missing_line_end_is_told() {
        assertEquals(
                "--- a\n+++ a\n@@ -0,0 +1 @@\n+x\n\\ No newline at end of file\n", Difference.unified("a", "", "x"));
    }

    /** Whoever applies the difference to the one text gets the other. */
    @Property(tries = 500)
    void it_can_be_applied(@ForAll("texts") String before, @ForAll("texts") String after) {
        assertEquals(after, applied(before, Difference.unified("a", before, after)));
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.of("a\n", "b\n", "c\n", "\n", "  d\n")
                .list()
                .ofMaxSize(30)
                .map(lines -> String.join("", lines));
    }

    private static String applied(String before, String difference) {
        List<String> old = before.lines().toList();
        List<String> made = new ArrayList<>();
        int at = 0;
        for (String line : difference.lines().skip(2).toList()) {
            if (line.startsWith("@@")) {
                String[] range = line.substring(4, line.indexOf(" +")).split(",");
                boolean none = range.length > 1 && range[1].equals("0");
                int first = Integer.parseInt(range[0]) - (none ? 0 : 1);
                made.addAll(old.subList(at, first));
                at = first;
            } else if (line.startsWith("+")) {
                made.add(line.substring(1));
            } else {
                assertEquals(old.get(at), line.substring(1));
                if (line.startsWith(" ")) {
                    made.add(line.substring(1));
                }
                at++;
            }
        }
        made.addAll(old.subList(at, old.size()));
        return made.isEmpty() ? "" : String.join("\n", made) + "\n";
    }
}
