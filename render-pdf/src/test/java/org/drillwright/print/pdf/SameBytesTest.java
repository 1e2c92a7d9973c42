package org.drillwright.print.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** The same drills give the same file, in whatever surroundings; between builds of Java, the same objects. */
class SameBytesTest {

    private static final int CARDS = 5;

    @Test
    void hash_seeds_time_zones_and_languages_change_nothing() throws Exception {
        Path java = ForkedPrinting.thisJava();
        byte[] once = ForkedPrinting.print(java, CARDS);
        // Identity hashes by a counter, by a constant, and from the thread's own state: HotSpot's modes 3, 2 and 5.
        for (String mode : List.of("2", "3", "5")) {
            byte[] again =
                    ForkedPrinting.print(java, CARDS, "-XX:+UnlockExperimentalVMOptions", "-XX:hashCode=" + mode);
            assertArrayEquals(once, again, "hash mode " + mode);
        }
        assertArrayEquals(
                once,
                ForkedPrinting.print(
                        java,
                        CARDS,
                        "-Duser.timezone=Pacific/Kiritimati",
                        "-Duser.language=tr",
                        "-Duser.country=TR",
                        "-Dfile.encoding=ISO-8859-1"));
    }

    @Test
    void another_java_writes_the_same_objects() throws Exception {
        Optional<Path> other = otherJava();
        assumeTrue(other.isPresent(), "there is no second Java beside this one");
        byte[] here = ForkedPrinting.print(ForkedPrinting.thisJava(), CARDS);
        byte[] there = ForkedPrinting.print(other.get(), CARDS);
        List<String> objects = objects(here);
        assertFalse(objects.size() < 100, "too few objects to judge by");
        assertEquals(objects, objects(there));
    }

    /** A Java of another home, 17 or newer, in the folder in which this one is. */
    private static Optional<Path> otherJava() throws IOException, InterruptedException {
        Path here = ForkedPrinting.thisJava().toRealPath();
        try (Stream<Path> beside = Files.list(here.getParent())) {
            for (Path home : beside.sorted().toList()) {
                boolean other = Files.isExecutable(home.resolve("bin").resolve("java"))
                        && !home.toRealPath().equals(here);
                if (other && canRun(home)) {
                    return Optional.of(home);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean canRun(Path home) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        home.resolve("bin").resolve("java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.drillwright.print.pdf.ForkedPrinting",
                        "",
                        "none")
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return said.contains("NumberFormatException");
    }

    /** All objects, streams unpacked, in the order in which they are reached from the trailer. */
    private static List<String> objects(byte[] pdf) throws IOException {
        List<String> objects = new ArrayList<>();
        try (PDDocument read = Loader.loadPDF(pdf)) {
            Walk walk = new Walk(objects);
            walk.visit(read.getDocument().getTrailer().getItem(COSName.ROOT));
        }
        return objects;
    }

    private static final class Walk {
        private final List<String> into;
        private final List<COSBase> met = new ArrayList<>();
        private final IdentityHashMap<COSBase, Integer> numbers = new IdentityHashMap<>();

        private Walk(List<String> into) {
            this.into = into;
        }

        private void visit(COSBase root) throws IOException {
            shown(root);
            for (int at = 0; at < met.size(); at++) {
                into.add(inside(met.get(at)));
            }
        }

        /** A plain value, or the number of a composite one, which is looked into later. */
        private String shown(COSBase base) {
            COSBase value = base instanceof COSObject object ? object.getObject() : base;
            if (!(value instanceof COSDictionary) && !(value instanceof COSArray)) {
                return String.valueOf(value);
            }
            Integer known = numbers.get(value);
            if (known == null) {
                known = numbers.size();
                numbers.put(value, known);
                met.add(value);
            }
            return "#" + known;
        }

        private String inside(COSBase value) throws IOException {
            StringBuilder text = new StringBuilder();
            if (value instanceof COSArray array) {
                for (COSBase item : array) {
                    text.append(shown(item)).append(' ');
                }
                return text.toString();
            }
            COSDictionary dictionary = (COSDictionary) value;
            for (COSName key : dictionary.keySet().stream().sorted().toList()) {
                if (!key.equals(COSName.LENGTH)) {
                    text.append(key)
                            .append(' ')
                            .append(shown(dictionary.getItem(key)))
                            .append(' ');
                }
            }
            if (value instanceof COSStream stream) {
                byte[] bytes = stream.createInputStream().readAllBytes();
                text.append(new String(bytes, StandardCharsets.ISO_8859_1));
            }
            return text.toString();
        }
    }
}
