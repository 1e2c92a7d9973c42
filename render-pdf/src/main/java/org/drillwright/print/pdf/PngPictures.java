package org.drillwright.print.pdf;

import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.drillwright.print.frame.Frame;

/** Frames as grey pictures of PNG, each drawn from its page, for screens and for who cannot print a PDF. */
public final class PngPictures {

    /** From a resolution at which no word can be read to one beyond any printer's, in dots an inch. */
    public static final int LEAST = 20;

    public static final int MOST = 1200;

    private static final double INCHES_A_METRE = 1 / 0.0254;

    private final Family faces;
    private final int resolution;

    /** @param resolution in dots an inch, stated in the file too, so that it prints at its true size */
    public PngPictures(Family faces, int resolution) {
        if (resolution < LEAST || resolution > MOST) {
            throw new IllegalArgumentException("a resolution is from " + LEAST + " to " + MOST + " dots an inch");
        }
        this.faces = faces;
        this.resolution = resolution;
    }

    /** Takes picture after picture, in the order of the frames. */
    @FunctionalInterface
    public interface Sink {
        void take(int frame, byte[] png) throws IOException;
    }

    /** Draws every frame; only one picture is held at a time. */
    public void draw(List<Frame> frames, Sink sink) throws IOException {
        ByteArrayOutputStream pages = new ByteArrayOutputStream();
        new PdfWriter(faces).write(frames, new DocumentInfo("", Locale.ROOT), pages);
        try (PDDocument document = Loader.loadPDF(pages.toByteArray())) {
            PDFRenderer renderer = new PDFRenderer(document);
            renderer.setRenderingHints(hints());
            for (int at = 0; at < frames.size(); at++) {
                ByteArrayOutputStream png = new ByteArrayOutputStream();
                write(renderer.renderImageWithDPI(at, resolution, ImageType.GRAY), png);
                sink.take(at, png.toByteArray());
            }
        }
    }

    /** Thin lines lie where they lie: pulled to whole dots, the limbs of a small figure wobble. */
    private static RenderingHints hints() {
        RenderingHints hints = new RenderingHints(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        hints.put(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
        hints.put(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        hints.put(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        return hints;
    }

    private void write(BufferedImage image, OutputStream out) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        try (ImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
            writer.setOutput(stream);
            IIOMetadata metadata =
                    writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), null);
            metadata.mergeTree("javax_imageio_png_1.0", resolution());
            writer.write(new IIOImage(image, null, metadata));
        } finally {
            writer.dispose();
        }
    }

    private IIOMetadataNode resolution() {
        String dotsAMetre = String.valueOf(Math.round(resolution * INCHES_A_METRE));
        IIOMetadataNode physical = new IIOMetadataNode("pHYs");
        physical.setAttribute("pixelsPerUnitXAxis", dotsAMetre);
        physical.setAttribute("pixelsPerUnitYAxis", dotsAMetre);
        physical.setAttribute("unitSpecifier", "meter");
        IIOMetadataNode root = new IIOMetadataNode("javax_imageio_png_1.0");
        root.appendChild(physical);
        return root;
    }
}
