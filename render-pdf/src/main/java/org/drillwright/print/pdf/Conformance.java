package org.drillwright.print.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.drillwright.wording.Direction;

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
        catalog.setViewerPreferences(preferences(Direction.of(info.language())));
        document.getDocumentInformation().setTitle(info.title());
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(Xmp.packet(info).getBytes(StandardCharsets.UTF_8));
        catalog.setMetadata(metadata);
        catalog.addOutputIntent(intent(document));
    }

    /** Made part by part: the library would start up the colour machinery of AWT only to count the profile's colours. */
    private static PDOutputIntent intent(PDDocument document) throws IOException {
        PDStream profile = new PDStream(document, new ByteArrayInputStream(SrgbProfile.bytes()), COSName.FLATE_DECODE);
        profile.getCOSObject().setInt(COSName.N, SrgbProfile.COLOURS);
        COSDictionary parts = new COSDictionary();
        parts.setItem(COSName.TYPE, COSName.OUTPUT_INTENT);
        parts.setItem(COSName.S, COSName.GTS_PDFA1);
        parts.setItem(COSName.DEST_OUTPUT_PROFILE, profile);
        PDOutputIntent intent = new PDOutputIntent(parts);
        intent.setInfo(SrgbProfile.NAME);
        intent.setOutputCondition(SrgbProfile.NAME);
        intent.setOutputConditionIdentifier(SrgbProfile.NAME);
        return intent;
    }

    /**
     * Cards are cut to measure: a viewer is asked not to fit pages to the printer's paper. Facing pages lie as the book opens
     * (ISO 32000-1, 12.2: Direction).
     */
    private static PDViewerPreferences preferences(Direction direction) {
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        if (direction.isRightToLeft()) {
            preferences.setReadingDirection(PDViewerPreferences.READING_DIRECTION.R2L);
        }
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        return preferences;
    }
}
