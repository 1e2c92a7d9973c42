package org.drillwright.print.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Pages as two programs draw them, beside pictures that were looked at. Run with {@code -Dupdate} to draw these anew,
 * then look at each.
 */
class PagePicturesTest {

    /** Side of the squares whose mean greys are compared, in dots: about a line of small type. */
    private static final int SQUARE = 12;

    /** Of 255. The same program draws the same page the same but for rounding. */
    private static final double SAME_PROGRAM = 3;

    /** Of 255. Two programs smooth edges differently; a missing word differs by more. */
    private static final double OTHER_PROGRAM = 45;

    @ParameterizedTest
    @EnumSource
    void pdfbox_draws_the_page_that_was_looked_at(Shown shown) throws IOException {
        byte[] drawn = png(shown.frame(), shown.dots());
        if (System.getProperty("update") != null) {
            Files.createDirectories(shown.file().getParent());
            Files.write(shown.file(), drawn);
        }
        assertTrue(
                difference(reference(shown), image(drawn)) <= SAME_PROGRAM,
                shown.file().toString());
    }

    @ParameterizedTest
    @EnumSource(names = {"A6_BACK", "A7", "WALL_A4", "FRENCH", "COUNTS"})
    void poppler_draws_it_too(Shown shown, @TempDir Path folder) throws Exception {
        boolean wanted = "true".equals(System.getenv("CI"));
        assumeTrue(wanted || ForkedPrinting.isInstalled("pdftoppm"), "poppler's pdftoppm is not installed");
        Path pdf = Files.write(folder.resolve("page.pdf"), PdfWriterTest.pdf(List.of(shown.frame())));
        Process process = new ProcessBuilder(
                        "pdftoppm",
                        "-r",
                        String.valueOf(shown.dots()),
                        "-gray",
                        "-png",
                        "-singlefile",
                        pdf.toString(),
                        folder.resolve("page").toString())
                .inheritIO()
                .start();
        assertEquals(0, process.waitFor());
        double difference = difference(reference(shown), image(Files.readAllBytes(folder.resolve("page.png"))));
        assertTrue(difference <= OTHER_PROGRAM, () -> shown.file() + " differs by " + difference);
    }

    /** The tolerance is not so wide that a word could be lost in it. */
    @Test
    void a_lost_word_would_be_seen() throws IOException {
        Frame whole = Shown.A6.frame();
        Frame torn = new Frame(
                whole.width(),
                whole.height(),
                whole.clear(),
                whole.backdrop(),
                without(whole.content(), "Parry quarte."));
        assertTrue(difference(reference(Shown.A6), image(png(torn, Shown.A6.dots()))) > OTHER_PROGRAM);
    }

    private static List<Node> without(List<Node> nodes, String line) {
        List<Node> kept = new ArrayList<>();
        for (Node node : nodes) {
            if (node instanceof Node.Group group) {
                kept.add(new Node.Group(group.role(), without(group.parts(), line)));
            } else if (node instanceof Node.Words words) {
                List<Mark.Text> lines = words.lines().stream()
                        .filter(text -> !text.text().equals(line))
                        .toList();
                kept.add(new Node.Words(words.role(), lines));
            } else {
                kept.add(node);
            }
        }
        return kept;
    }

    private static byte[] png(Frame frame, int dots) throws IOException {
        List<byte[]> drawn = new ArrayList<>();
        new PngPictures(Family.dejaVu(), dots).draw(List.of(frame), (at, png) -> drawn.add(png));
        return drawn.get(0);
    }

    private static BufferedImage reference(Shown shown) throws IOException {
        return image(Files.readAllBytes(shown.file()));
    }

    private static BufferedImage image(byte[] png) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(png));
    }

    /** The largest difference of the mean greys of two squares in one place. Sizes may differ by a dot of rounding. */
    private static double difference(BufferedImage one, BufferedImage other) {
        assertEquals(one.getWidth(), other.getWidth(), 1.0);
        assertEquals(one.getHeight(), other.getHeight(), 1.0);
        Sums first = Sums.of(one);
        Sums second = Sums.of(other);
        double most = 0;
        for (int y = 0; y + SQUARE < one.getHeight(); y += SQUARE / 2) {
            for (int x = 0; x + SQUARE < one.getWidth(); x += SQUARE / 2) {
                most = Math.max(most, Math.abs(first.mean(x, y) - second.mean(x, y)));
            }
        }
        return most;
    }

    /** Greys of a picture added up. */
    private static final class Sums {

        private final int width;
        private final int height;

        /** Those of all dots above and to the left of a dot. */
        private final long[] above;

        private Sums(int width, int height, long[] above) {
            this.width = width;
            this.height = height;
            this.above = above;
        }

        static Sums of(BufferedImage image) {
            int width = image.getWidth();
            int height = image.getHeight();
            int[] greys = image.getRaster().getSamples(0, 0, width, height, 0, (int[]) null);
            long[] above = new long[(width + 1) * (height + 1)];
            for (int y = 0; y < height; y++) {
                long row = 0;
                for (int x = 0; x < width; x++) {
                    row += greys[y * width + x];
                    above[(y + 1) * (width + 1) + x + 1] = above[y * (width + 1) + x + 1] + row;
                }
            }
            return new Sums(width, height, above);
        }

        /** Of a square whose top left dot is here, as far as there is a picture. */
        double mean(int left, int top) {
            int right = Math.min(left + SQUARE, width);
            int bottom = Math.min(top + SQUARE, height);
            long sum = at(right, bottom) - at(left, bottom) - at(right, top) + at(left, top);
            return sum / (double) (SQUARE * SQUARE);
        }

        private long at(int x, int y) {
            return above[Math.min(y, height) * (width + 1) + Math.min(x, width)];
        }
    }
}
