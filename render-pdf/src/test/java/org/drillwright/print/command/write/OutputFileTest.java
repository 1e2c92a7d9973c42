package org.drillwright.print.command.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.drillwright.print.command.console.CannotRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFileTest {

    private static final byte[] NEW = "%PDF-new".getBytes(java.nio.charset.StandardCharsets.US_ASCII);

    @TempDir
    Path folder;

    @Test
    void newFileIsKeptBesideOneThatIsHeldOpen() throws IOException {
        Path target = Files.writeString(folder.resolve("cards.pdf"), "%PDF-old");
        OutputFile file = new OutputFile(target, (from, to) -> {
            if (to.equals(target)) {
                throw new FileSystemException(to.toString(), null, "in use");
            }
            Files.move(from, to);
        });
        CannotRun refused = assertThrows(CannotRun.class, () -> file.write(NEW));
        assertTrue(String.valueOf(refused.getMessage()).contains("cards-new.pdf"), refused.getMessage());
        assertEquals("%PDF-old", Files.readString(target));
        assertArrayEquals(NEW, Files.readAllBytes(folder.resolve("cards-new.pdf")));
    }

    @Test
    void linkStaysALink() throws IOException {
        Path real = Files.writeString(folder.resolve("real.pdf"), "%PDF-old");
        Path link = Files.createSymbolicLink(folder.resolve("link.pdf"), real);
        new OutputFile(link).write(NEW);
        assertTrue(Files.isSymbolicLink(link));
        assertArrayEquals(NEW, Files.readAllBytes(real));
    }
}
