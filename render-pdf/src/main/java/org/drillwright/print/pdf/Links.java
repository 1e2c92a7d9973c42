package org.drillwright.print.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.drillwright.print.frame.Rectangle;

/** The places in a document that words lead to, and the areas that one clicks to get there. */
final class Links {

    private final Map<String, PDPageXYZDestination> places = new HashMap<>();
    private final List<Link> links = new ArrayList<>();

    private record Link(PDAnnotationLink area, String to) {}

    /** @param y in points from the bottom of the page, as all here */
    void place(String name, PDPage page, double x, double y) {
        PDPageXYZDestination there = new PDPageXYZDestination();
        there.setPage(page);
        there.setLeft((int) Math.floor(x));
        there.setTop((int) Math.ceil(y));
        places.put(name, there);
    }

    /**
     * @param said what is said of the link to who cannot see it
     * @param lines what it covers, line by line
     */
    PDAnnotationLink area(String to, String said, PDPage page, List<Rectangle> lines) throws IOException {
        PDAnnotationLink area = new PDAnnotationLink();
        area.setRectangle(around(lines));
        area.setQuadPoints(corners(lines));
        area.setContents(said);
        area.setPrinted(true);
        area.setBorder(new COSArray(List.of(COSInteger.ZERO, COSInteger.ZERO, COSInteger.ZERO)));
        page.getAnnotations().add(area);
        links.add(new Link(area, to));
        return area;
    }

    private static PDRectangle around(List<Rectangle> lines) {
        double left = lines.stream().mapToDouble(Rectangle::x).min().orElseThrow();
        double low = lines.stream().mapToDouble(Rectangle::y).min().orElseThrow();
        double right = lines.stream().mapToDouble(Rectangle::right).max().orElseThrow();
        double high = lines.stream().mapToDouble(Rectangle::bottom).max().orElseThrow();
        return new PDRectangle((float) left, (float) low, (float) (right - left), (float) (high - low));
    }

    /** Upper left, upper right, lower left, lower right: as viewers read them. */
    private static float[] corners(List<Rectangle> lines) {
        float[] corners = new float[8 * lines.size()];
        int at = 0;
        for (Rectangle line : lines) {
            double[] quad = {
                line.x(), line.bottom(), line.right(), line.bottom(), line.x(), line.y(), line.right(), line.y()
            };
            for (double corner : quad) {
                corners[at++] = (float) corner;
            }
        }
        return corners;
    }

    /** Lets each link lead to its place, now that all pages are there. */
    void finish() {
        for (Link link : links) {
            PDPageXYZDestination there = places.get(link.to());
            if (there == null) {
                throw new IllegalStateException("a link leads to '" + link.to() + "', which is nowhere");
            }
            link.area().setDestination(there);
        }
    }
}
