package org.drillwright.print.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** What a document states of itself so that it may claim PDF/UA-1 and PDF/A-2a. */
final class Conformance {

    private Conformance() {}

    static void declare(PDDocument document, DocumentInfo info) throws IOException {
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setVersion("1.7");
        document.getDocument().setVersion(1.7f);
        catalog.setLanguage(info.language().toLanguageTag());
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        catalog.setMarkInfo(marked);
        catalog.setViewerPreferences(preferences());
        document.getDocumentInformation().setTitle(info.title());
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(Xmp.packet(info).getBytes(StandardCharsets.UTF_8));
        catalog.setMetadata(metadata);
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(SrgbProfile.bytes()));
        intent.setInfo("sRGB IEC61966-2.1");
        intent.setOutputCondition("sRGB IEC61966-2.1");
        intent.setOutputConditionIdentifier("sRGB IEC61966-2.1");
        catalog.addOutputIntent(intent);
    }

    /** Cards are cut to measure: a viewer is asked not to fit pages to the printer's paper. */
    private static PDViewerPreferences preferences() {
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        return preferences;
    }
}
