package org.drillwright.print.command.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.GroupPrincipal;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.print.command.console.CannotRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WholeFileTest {

    private static final byte[] NEW = "%PDF-new".getBytes(java.nio.charset.StandardCharsets.US_ASCII);

    @TempDir
    Path folder;

    @Test
    void new_file_is_kept_beside_one_that_is_held_open() throws IOException {
        Path target = Files.writeString(folder.resolve("cards.pdf"), "%PDF-old");
        WholeFile file = new WholeFile(target, (part, to) -> {
            if (to.equals(target)) {
                throw new FileSystemException(to.toString(), null, "in use");
            }
            part.replace(to);
        });
        CannotRun refused = assertThrows(CannotRun.class, () -> file.write(NEW));
        assertTrue(String.valueOf(refused.getMessage()).contains("cards-new.pdf"), refused.getMessage());
        assertEquals("%PDF-old", Files.readString(target));
        assertArrayEquals(NEW, Files.readAllBytes(folder.resolve("cards-new.pdf")));
    }

    @Test
    void link_stays_a_link() throws IOException {
        Path real = Files.writeString(folder.resolve("real.pdf"), "%PDF-old");
        Path link = Files.createSymbolicLink(folder.resolve("link.pdf"), real);
        new WholeFile(link).write(NEW);
        assertTrue(Files.isSymbolicLink(link));
        assertArrayEquals(NEW, Files.readAllBytes(real));
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-------", "rw-r-----", "rw-rw-rw-", "r--r--r--"})
    @DisabledOnOs(OS.WINDOWS)
    void rights_stay_as_they_were(String rights) throws IOException {
        for (Writing writing : WRITINGS) {
            Path file = Files.writeString(folder.resolve("cards.pdf"), "%PDF-old");
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(rights));
            writing.write(file);
            assertEquals(rights, PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
            Files.delete(file);
        }
    }

    private interface Writing {
        void write(Path file) throws IOException;
    }

    private static final List<Writing> WRITINGS = List.of(
            file -> new WholeFile(file).write(NEW),
            file -> new WholeFile(file).replace(Files.readAllBytes(file), "%PDF-new"),
            file -> new WholeFile(file).rewrite("%PDF-old", "%PDF-new"),
            file -> {
                Parts parts = new Parts(file, Kind.PDF);
                parts.add(NEW);
                parts.place((name, number, of) -> name);
            });

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void the_group_stays_too() throws IOException {
        Path file = Files.writeString(folder.resolve("cards.pdf"), "%PDF-old");
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        GroupPrincipal other;
        try {
            other = file.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByGroupName("games");
            view.setGroup(other);
        } catch (IOException mayNot) {
            assumeTrue(false, "only who belongs to a group can give it a file");
            return;
        }
        new WholeFile(file).write(NEW);
        assertEquals(
                other, Files.readAttributes(file, PosixFileAttributes.class).group());
    }

    /** Nobody else sees what is written before it has the narrow rights of what it replaces. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_part_is_no_wider_than_its_file() throws IOException {
        Path file = Files.writeString(folder.resolve("cards.pdf"), "%PDF-old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        PartFile part = new WholeFile(file).beside(NEW);
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(part.path())));
    }

    @Test
    void no_two_parts_are_named_alike_and_none_can_be_foreseen() {
        Path file = folder.resolve("cards.pdf");
        Set<Path> names = new HashSet<>();
        for (int time = 0; time < 50; time++) {
            Path part = new WholeFile(file).beside(NEW).path();
            assertTrue(
                    String.valueOf(part.getFileName()).matches("cards\\.pdf\\.\\d+-[0-9a-f]{16}\\.part"),
                    part.toString());
            names.add(part);
        }
        assertEquals(50, names.size());
    }

    @Test
    void a_new_file_takes_nobodys_place() throws IOException {
        Path file = Files.writeString(folder.resolve("a.yaml"), "old");
        assertThrows(CannotRun.class, () -> new WholeFile(file).create("new"));
        assertEquals("old", Files.readString(file));
        new WholeFile(folder.resolve("b.yaml")).create("new");
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    List.of("a.yaml", "b.yaml"),
                    files.map(one -> String.valueOf(one.getFileName())).sorted().toList());
        }
    }
}
