package org.drillwright.print.svg;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** An SVG as a strict XML reader sees it. */
public record Drawn(Document document) {

    /** A run of text and where it stands. */
    public record Run(String text, double x, double y, double size) {}

    public static Drawn read(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setNamespaceAware(true);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return new Drawn(builder.parse(new InputSource(new StringReader(svg))));
        } catch (Exception malformed) {
            throw new AssertionError("not well-formed: " + malformed.getMessage(), malformed);
        }
    }

    public List<Element> elements(String name) {
        NodeList found = document.getElementsByTagNameNS("*", name);
        List<Element> elements = new ArrayList<>();
        for (int at = 0; at < found.getLength(); at++) {
            elements.add((Element) found.item(at));
        }
        return elements;
    }

    public List<Run> runs() {
        return elements("text").stream()
                .map(text ->
                        new Run(text.getTextContent(), number(text, "x"), number(text, "y"), number(text, "font-size")))
                .toList();
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
