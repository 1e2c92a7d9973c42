package org.drillwright.print.command.printing;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.model.SchoolFont;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.UnusableFont;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;

/** The family that what a school prints is set in: its own files, so far as {@code school.yaml} names them. */
public final class SchoolFaces {

    /** Enough for any script that is set here, in bytes; fonts of all the world's characters have up to 20 million. */
    public static final int MOST = 32_000_000;

    private SchoolFaces() {}

    /** Refuses, in one sentence, a font that cannot be used. */
    public static Family of(SchoolFolder folder) {
        Optional<SchoolFont> font = folder.school().font();
        if (font.isEmpty()) {
            return Family.dejaVu();
        }
        Family family = font.get().cuts().map(cuts -> own(folder.root(), cuts)).orElseGet(Family::dejaVu);
        for (String file : font.get().also()) {
            family = also(family, folder.root(), file);
        }
        return family;
    }

    private static Family own(Path root, SchoolFont.Cuts cuts) {
        try {
            return Family.of(bytes(root, cuts.regular()), bytes(root, cuts.bold()));
        } catch (UnusableFont why) {
            throw refused(Stream.of(cuts.regular(), cuts.bold()).distinct().toList(), why);
        }
    }

    private static Family also(Family family, Path root, String file) {
        try {
            return family.with(bytes(root, file));
        } catch (UnusableFont why) {
            throw refused(List.of(file), why);
        }
    }

    private static CannotRun refused(List<String> files, UnusableFont why) {
        return new CannotRun(Message.of(
                SchoolFaces.class, "school-faces.unusable", quoted(files), String.valueOf(why.getMessage())));
    }

    private static Message quoted(List<String> files) {
        return Message.all(files.stream().map(Message::quoted).toList());
    }

    private static byte[] bytes(Path root, String name) {
        try {
            Path file = root.resolve(name).toRealPath();
            if (!file.startsWith(root.toRealPath()) || !Files.isRegularFile(file)) {
                throw new CannotRun(Message.of(SchoolFaces.class, "school-faces.no.file", name));
            }
            try (InputStream in = Files.newInputStream(file)) {
                byte[] bytes = in.readNBytes(MOST + 1);
                if (bytes.length > MOST) {
                    throw new CannotRun(Message.of(SchoolFaces.class, "school-faces.too.large", name));
                }
                return bytes;
            }
        } catch (IOException problem) {
            throw new CannotRun(Message.of(SchoolFaces.class, "school-faces.unreadable", name), problem);
        } catch (InvalidPathException problem) {
            throw new CannotRun(Message.of(SchoolFaces.class, "school-faces.no.name", name));
        }
    }
}
