package org.drillwright.print.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.drillwright.model.CardSize;
import org.drillwright.print.Drills;
import org.drillwright.print.frame.Frame;
import org.junit.jupiter.api.Test;

class PngPicturesTest {

    private static List<byte[]> pictures(List<Frame> cards, int resolution) throws IOException {
        List<byte[]> pictures = new ArrayList<>();
        new PngPictures(Family.dejaVu(), resolution).draw(cards, (at, png) -> pictures.add(png));
        return pictures;
    }

    /** An A6 card is 105 x 148 mm: at 254 dots an inch, ten a millimetre, 1050 x 1480 dots. */
    @Test
    void a_picture_is_as_large_as_its_resolution_says() throws IOException {
        List<byte[]> pictures = pictures(PdfWriterTest.cards(CardSize.A6, Drills.riposte(), Drills.solo()), 254);
        assertEquals(2, pictures.size());
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(pictures.get(0)));
        assertEquals(1050, read.getWidth(), 1);
        assertEquals(1480, read.getHeight(), 1);
    }

    /** The chunk pHYs of the PNG specification: dots a metre across and down, then 1 for metres. 100 / 0.0254 = 3937. */
    @Test
    void the_resolution_is_stated_in_the_file() throws IOException {
        byte[] png =
                pictures(PdfWriterTest.cards(CardSize.A6, Drills.solo()), 100).get(0);
        int at = new String(png, StandardCharsets.ISO_8859_1).indexOf("pHYs");
        assertTrue(at > 0);
        ByteBuffer chunk = ByteBuffer.wrap(png, at + 4, 9);
        assertEquals(3937, chunk.getInt());
        assertEquals(3937, chunk.getInt());
        assertEquals(1, chunk.get());
    }

    @Test
    void the_same_card_gives_the_same_picture() throws IOException {
        List<Frame> cards = PdfWriterTest.cards(CardSize.A7, Drills.riposte());
        assertArrayEquals(pictures(cards, 72).get(0), pictures(cards, 72).get(0));
    }

    @Test
    void a_picture_shows_the_card() throws IOException {
        byte[] png =
                pictures(PdfWriterTest.cards(CardSize.A6, Drills.riposte()), 72).get(0);
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(png));
        int dark = 0;
        for (int x = 0; x < read.getWidth(); x++) {
            for (int y = 0; y < read.getHeight(); y++) {
                dark += (read.getRGB(x, y) & 0xFF) < 128 ? 1 : 0;
            }
        }
        double share = (double) dark / (read.getWidth() * read.getHeight());
        assertTrue(share > 0.02 && share < 0.5, () -> share + " of the card is dark");
        assertEquals(0xFF, read.getRGB(2, 2) & 0xFF, "the edge is blank");
    }

    @Test
    void a_resolution_that_shows_nothing_or_fills_the_memory_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> new PngPictures(Family.dejaVu(), 19));
        assertThrows(IllegalArgumentException.class, () -> new PngPictures(Family.dejaVu(), 1201));
    }

    @Test
    void pictures_are_named_by_drill_and_card() {
        assertEquals("riposte.png", new CardName("riposte", 1, 1, false).file());
        assertEquals("riposte-back.png", new CardName("riposte", 1, 1, true).file());
        assertEquals("riposte-2-of-2.png", new CardName("riposte", 2, 2, false).file());
        assertEquals("riposte-2-of-2-back.png", new CardName("riposte", 2, 2, true).file());
    }
}
