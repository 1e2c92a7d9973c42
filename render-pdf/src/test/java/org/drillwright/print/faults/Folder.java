package org.drillwright.print.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** All files below a folder with all they hold, for telling whether anything changed. */
record Folder(Map<String, String> files) {

    static Folder of(Path root) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (var all = Files.walk(root)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String bytes = Files.readString(file, java.nio.charset.StandardCharsets.ISO_8859_1);
                files.put(root.relativize(file).toString(), bytes);
            }
        }
        return new Folder(files);
    }
}
