package org.drillwright.print.pdf;

import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.drillwright.print.frame.Face;

/** The faces that one document embeds, each when it is first used, and the resources by which its pages name them. */
final class Fonts {

    private final PDDocument document;
    private final Family faces;
    private final PDResources resources = new PDResources();
    private final PDResources inForms = new PDResources();
    private final Map<Face, EmbeddedFace> embedded = new EnumMap<>(Face.class);

    Fonts(PDDocument document, Family faces) {
        this.document = document;
        this.faces = faces;
    }

    /** Shared by all pages. */
    PDResources resources() {
        return resources;
    }

    /** The same without the forms that pages show. */
    PDResources inForms() {
        return inForms;
    }

    EmbeddedFace face(Face face) throws IOException {
        EmbeddedFace known = embedded.get(face);
        if (known == null) {
            COSName name = COSName.getPDFName(face.name());
            known = new EmbeddedFace(document, faces.known(face), name);
            resources.put(name, known.font());
            inForms.put(name, known.font());
            embedded.put(face, known);
        }
        return known;
    }

    /** Puts only those glyphs into the file that its pages have shown. */
    void finish() throws IOException {
        for (EmbeddedFace face : embedded.values()) {
            face.font().subset();
        }
    }
}
