package org.drillwright.print.pdf;

import java.io.IOException;
import java.util.LinkedHashMap;
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
    private final Map<FontFace, EmbeddedFace> embedded = new LinkedHashMap<>();

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

    /** A cut, in as many fonts as it takes. */
    FaceChain face(Face face) {
        return faces.known(face);
    }

    EmbeddedFace embedded(FontFace font) throws IOException {
        EmbeddedFace known = embedded.get(font);
        if (known == null) {
            COSName name = COSName.getPDFName("Font" + (embedded.size() + 1));
            known = new EmbeddedFace(document, font, name);
            resources.put(name, known.font());
            inForms.put(name, known.font());
            embedded.put(font, known);
        }
        return known;
    }

    /** Puts only those glyphs into the file that its pages have shown. */
    void finish() throws IOException {
        for (EmbeddedFace face : embedded.values()) {
            face.finish();
        }
    }
}
