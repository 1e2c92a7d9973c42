package org.drillwright.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Run by the build: packs the word list of each language with all its forms, beside the texts that it is made of. */
public final class PackWordLists {

    private PackWordLists() {}

    /**
     * {@code PackWordLists FOLDER}.
     *
     * @param folder that the classes and the texts lie in
     */
    public static void main(String[] folder) throws IOException {
        Path room = Path.of(folder[0], PackWordLists.class.getPackageName().split("\\."));
        for (String tag : LanguageTables.lines("tongues")) {
            Path list = room.resolve(tag).resolve(WordList.PACKED);
            Path beside = Files.write(
                    list.resolveSibling(WordList.PACKED + ".new"),
                    WordList.of(tag).packed());
            Files.move(beside, list, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
