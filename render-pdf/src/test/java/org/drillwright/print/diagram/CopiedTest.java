package org.drillwright.print.diagram;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.drillwright.model.Language;
import org.drillwright.print.Example;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PngPictures;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures as a coarse printer leaves them: 110 dots an inch, black or white and nothing between. */
class CopiedTest {

    private static final int DOTS = 110;

    private static final double WIDTH = Millimetres.toPoints(28);

    /** Of the box of the picture, by the design of the pictures. */
    private static final double LEAST = 0.03;

    private static final double HIGH = Millimetres.toPoints(26);

    /** Feet on one line, so that only what is played differs. */
    private static BufferedImage copy(String drill, int count) throws IOException {
        Picture picture =
                Pictures.of(Example.drill(drill).replay(), Language.ENGLISH).get(count - 1);
        Node figure = picture.draw(0, HIGH - picture.height(WIDTH), WIDTH);
        List<byte[]> drawn = new ArrayList<>();
        new PngPictures(Family.dejaVu(), DOTS)
                .draw(List.of(new Frame(WIDTH, HIGH, 0, List.of(), List.of(figure))), (at, png) -> drawn.add(png));
        return ImageIO.read(new ByteArrayInputStream(drawn.get(0)));
    }

    private static boolean black(BufferedImage image, int x, int y) {
        return image.getRaster().getSample(x, y, 0) < 128;
    }

    @ParameterizedTest
    @CsvSource({
        "straight-thrust-with-lunge, 1, parry-of-quarte, 1",
        "disengage, 1, disengage, 3",
        "parry-of-quarte, 2, parry-of-quarte, 3",
        "one-two, 1, one-two, 2"
    })
    void what_ends_otherwise_looks_otherwise(String one, int first, String other, int second) throws IOException {
        BufferedImage left = copy(one, first);
        BufferedImage right = copy(other, second);
        int differs = 0;
        int all = left.getWidth() * left.getHeight();
        for (int y = 0; y < left.getHeight(); y++) {
            for (int x = 0; x < left.getWidth(); x++) {
                differs += black(left, x, y) == black(right, x, y) ? 0 : 1;
            }
        }
        double share = differs / (double) all;
        assertTrue(share >= LEAST, () -> one + " and " + other + " differ by " + share);
    }
}
