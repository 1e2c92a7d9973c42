package org.drillwright.print.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.drillwright.model.SheetSize;
import org.drillwright.print.impose.Volumes;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LargeSetTest {

    @Test
    @Tag("deep")
    void a_heap_of256_megabytes_suffices_for_a_volume() throws Exception {
        byte[] pdf = ForkedPrinting.print(ForkedPrinting.thisJava(), Volumes.CARDS, "-Xmx256m");
        try (PDDocument read = Loader.loadPDF(pdf)) {
            assertEquals(1000, read.getNumberOfPages());
        }
    }

    /** Another reader's judgement of the file's build: no damage, no warnings. */
    @Test
    void qpdf_finds_no_fault(@TempDir Path folder) throws Exception {
        boolean wanted = "true".equals(System.getenv("CI"));
        assumeTrue(wanted || ForkedPrinting.isInstalled("qpdf"), "qpdf is not installed");
        Path file = Files.write(folder.resolve("sheets.pdf"), PdfWriterTest.pdf(PdfWriterTest.sheets(SheetSize.A4)));
        assertEquals(0, check(file));
        byte[] damaged = Files.readAllBytes(file);
        byte[] half = Arrays.copyOf(damaged, damaged.length / 2);
        assertNotEquals(0, check(Files.write(folder.resolve("half.pdf"), half)), "qpdf does see damage");
    }

    private static int check(Path file) throws Exception {
        Process process = new ProcessBuilder("qpdf", "--check", file.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int exit = process.waitFor();
        return said.contains("WARNING") ? 3 : exit;
    }
}
