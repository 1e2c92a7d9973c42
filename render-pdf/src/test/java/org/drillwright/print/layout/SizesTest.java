package org.drillwright.print.layout;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.drillwright.model.CardSize;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A size that was added is told of wherever people choose one: which distance it is read from, and how its type is set. */
class SizesTest {

    @ParameterizedTest
    @CsvSource({"../drills/guide/printing-cards.md", "docs/cards.md"})
    void every_size_is_on_the_pages_that_tell_of_sizes(String page) throws IOException {
        String text = Files.readString(Path.of(page));
        for (CardSize size : CardSize.values()) {
            boolean wall = size.isForTheWall() && text.contains("the wall");
            assertTrue(
                    wall || text.matches("(?s).*\\b" + size.word() + "\\b.*"),
                    () -> size.word() + " is missing in " + page);
        }
    }
}
