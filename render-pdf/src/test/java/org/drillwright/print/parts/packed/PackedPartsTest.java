package org.drillwright.print.parts.packed;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
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

    /** A font is not its library's: its licence is named beside its hash, and the licence's text lies in the archive. */
    @Test
    void every_font_is_in_the_bill_of_fonts_with_its_hash_and_licence() throws IOException, NoSuchAlgorithmException {
        Map<String, String> told = new TreeMap<>();
        Map<String, String> found = new TreeMap<>();
        try (JarFile packed = new JarFile(PACKED.toFile())) {
            for (JsonNode font : Bill.fonts().get("components")) {
                told.put(
                        font.get("name").asText(),
                        font.get("hashes").get(0).get("content").asText());
                assertFalse(font.get("licenses").isEmpty(), font.toString());
                String licence = font.get("properties").get(0).get("value").asText();
                assertNotNull(packed.getEntry(licence), licence);
            }
            for (String name : files(PACKED)) {
                if (name.endsWith(".ttf")) {
                    byte[] font = packed.getInputStream(packed.getEntry(name)).readAllBytes();
                    MessageDigest digest = MessageDigest.getInstance("SHA-256");
                    found.put(name, HexFormat.of().formatHex(digest.digest(font)));
                }
            }
            assertNotNull(packed.getEntry("META-INF/sbom/fonts.cdx.json"));
        }
        assertEquals(found, told);
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
