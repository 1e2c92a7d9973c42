package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every artifact that is packed into the runnable archive has its licence in it. */
class LicencesTest {

    @Test
    void every_artifact_is_in_the_index() throws IOException {
        String index = read("README.txt");
        for (Path jar : RuntimeClassPath.others()) {
            String artifact = jar.getFileName().toString().replaceFirst("-[0-9.]+\\.jar$", "");
            assertTrue(index.contains("\n" + artifact + " "), artifact);
        }
    }

    @Test
    void every_file_of_the_index_is_there() throws IOException {
        var files = Pattern.compile("\\S+\\.txt(?=\\n)").matcher(read("README.txt"));
        int seen = 0;
        while (files.find()) {
            assertTrue(read(files.group()).length() > 1000, files.group());
            seen++;
        }
        assertTrue(seen >= 9, "files: " + seen);
    }

    private static String read(String name) throws IOException {
        try (InputStream in = LicencesTest.class.getResourceAsStream("/META-INF/licences/" + name)) {
            assertTrue(in != null, name);
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
