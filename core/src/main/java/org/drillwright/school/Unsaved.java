package org.drillwright.school;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Texts that stand in an editor: each counts instead of what its file holds, be there a file or not. */
public final class Unsaved {

    /** All is as it was saved. */
    public static final Unsaved NONE = new Unsaved(Map.of());

    private final Map<Path, String> texts;

    /** @param texts by the files that they would be saved into */
    public Unsaved(Map<Path, String> texts) {
        Map<Path, String> whole = new HashMap<>();
        texts.forEach((file, text) -> whole.put(whole(file), text));
        this.texts = Map.copyOf(whole);
    }

    private static Path whole(Path file) {
        return file.toAbsolutePath().normalize();
    }

    /** Those below a folder, written as the folder is. */
    List<Path> files(Path root) {
        Path base = whole(root);
        return texts.keySet().stream()
                .filter(file -> file.startsWith(base))
                .map(file -> root.resolve(base.relativize(file)))
                .toList();
    }

    Optional<String> text(Path file) {
        return texts.isEmpty() ? Optional.empty() : Optional.ofNullable(texts.get(whole(file)));
    }

    /** Whether there is something to read: a text, or a file that may be a link to one. */
    boolean has(Path file) {
        return text(file).isPresent() || Files.isRegularFile(file);
    }

    /** As much as a reader wants to see: one byte more than it accepts. */
    byte[] bytes(Path file, int most) throws IOException {
        Optional<String> text = text(file);
        return text.isPresent() ? text.get().getBytes(StandardCharsets.UTF_8) : DrillFiles.bytes(file, most);
    }
}
