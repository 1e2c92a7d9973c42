package org.drillwright.print.command.printing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.drillwright.model.CardSize;
import org.drillwright.print.Drills;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.impose.Laminate;
import org.drillwright.print.impose.Leaf;
import org.drillwright.print.impose.Shift;
import org.drillwright.print.layout.fit.Format;
import org.drillwright.print.layout.words.Back;
import org.drillwright.print.pdf.Family;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many cards become volumes. */
class DocumentsTest {

    @TempDir
    Path folder;

    private static final PrintOptions ONE_TO_A_PAGE = new PrintOptions(
            Format.of(CardSize.A6), PaperChoice.CARD, Back.NONE, Optional.empty(), Laminate.NONE, Shift.NONE, false);

    private Documents documents(int most) {
        return new Documents(
                ONE_TO_A_PAGE, Drills.SCHOOL, "", Family.dejaVu(), folder.resolve("cards.pdf"), "cards.pdf", most);
    }

    private static List<LaidCard> drill(String id, int cards) {
        Frame blank = new Frame(297.64, 419.53, 0, List.of(), List.of());
        return IntStream.rangeClosed(1, cards)
                .mapToObj(number -> new LaidCard("", id, number, cards, Leaf.of(blank)))
                .toList();
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private int pages(String file) throws IOException {
        try (PDDocument read = Loader.loadPDF(folder.resolve(file).toFile())) {
            return read.getNumberOfPages();
        }
    }

    @Test
    void volumes_hold_whole_drills_in_their_order() throws IOException {
        Documents documents = documents(3);
        documents.take(drill("a", 2));
        documents.take(drill("b", 2));
        documents.take(drill("c", 1));
        documents.place();
        assertEquals(List.of("cards-1-of-2.pdf", "cards-2-of-2.pdf"), files());
        assertEquals(2, pages("cards-1-of-2.pdf"));
        assertEquals(3, pages("cards-2-of-2.pdf"));
        assertEquals(
                "cards-1-of-2.pdf and 1 more volume: 5 cards of size a6, one to a page."
                        + " Print at 100 % (actual size).",
                documents.said().english());
    }

    @Test
    void a_drill_of_more_cards_than_a_volume_holds_stands_alone() throws IOException {
        Documents documents = documents(1);
        documents.take(drill("a", 1));
        documents.take(drill("b", 2));
        documents.take(drill("c", 1));
        documents.place();
        assertEquals(2, pages("cards-2-of-3.pdf"));
        assertEquals(3, files().size());
    }

    @Test
    void nothing_is_in_place_before_all_is_whole_and_nothing_stays_of_what_is_given_up() throws IOException {
        Documents documents = documents(1);
        documents.take(drill("a", 1));
        documents.take(drill("b", 1));
        assertFalse(files().stream().anyMatch(file -> file.endsWith(".pdf")));
        documents.discard();
        assertEquals(List.of(), files());
    }
}
