package org.drillwright.print.parts.packed;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import org.drillwright.print.parts.Bill;
import org.drillwright.print.parts.Part;
import org.junit.jupiter.api.Test;

/** The bill of materials names what is packed, all of it, and nothing else. */
class PackedPartsTest {

    private static final Path PACKED = Path.of("target/drillwright.jar");

    @Test
    void the_bill_lies_in_the_archive() throws IOException {
        assertFalse(Bill.parts().isEmpty());
        try (JarFile packed = new JarFile(PACKED.toFile());
                InputStream bill = packed.getInputStream(packed.getEntry("META-INF/sbom/application.cdx.json"))) {
            assertArrayEquals(Files.readAllBytes(Bill.FILE), bill.readAllBytes());
        }
    }

    @Test
    void every_class_and_font_is_ours_or_a_parts_of_the_bill() throws IOException {
        Set<String> left = files(PACKED);
        left.removeIf(name -> name.startsWith("org/drillwright/"));
        for (Part part : Bill.parts()) {
            if (!part.isOurs()) {
                left.removeAll(files(part.archive()));
            }
        }
        assertEquals(Set.of(), left);
    }

    @Test
    void every_part_of_the_bill_is_packed() throws IOException {
        Set<String> packed = files(PACKED);
        for (Part part : Bill.parts()) {
            if (!part.isOurs()) {
                Set<String> own = files(part.archive());
                own.retainAll(packed);
                assertFalse(own.isEmpty(), part.toString());
            }
        }
    }

    /** Classes and fonts; notices and the like are merged. */
    private static Set<String> files(Path archive) throws IOException {
        try (JarFile jar = new JarFile(archive.toFile())) {
            return jar.stream()
                    .map(ZipEntry::getName)
                    .filter(name -> name.endsWith(".class") || name.endsWith(".ttf"))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
