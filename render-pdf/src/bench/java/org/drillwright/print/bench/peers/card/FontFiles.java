package org.drillwright.print.bench.peers.card;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** The two faces that our cards are set in, as files. */
public record FontFiles(Path regular, Path bold) {

    private static final String PACKED = "/net/sf/jasperreports/fonts/dejavu/";

    /** Where they lie in a folder. */
    public static FontFiles in(Path folder) {
        return new FontFiles(folder.resolve("DejaVuSansCondensed.ttf"), folder.resolve("DejaVuSansCondensed-Bold.ttf"));
    }

    /** Takes them out of our own archive. */
    public static FontFiles unpackedInto(Path folder) throws IOException {
        FontFiles fonts = in(folder);
        for (Path file : new Path[] {fonts.regular, fonts.bold}) {
            try (InputStream packed = FontFiles.class.getResourceAsStream(PACKED + file.getFileName())) {
                if (packed == null) {
                    throw new IOException(file + " is not packed");
                }
                Files.copy(packed, file, StandardCopyOption.REPLACE_EXISTING);
            }
        }
        return fonts;
    }
}
