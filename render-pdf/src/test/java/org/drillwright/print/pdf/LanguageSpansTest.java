package org.drillwright.print.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.drillwright.print.command.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** PDF/UA-1, 7.2: words in another language than the document's say so. */
class LanguageSpansTest {

    @TempDir
    private Path folder;

    /** The languages that parts of a document state, but the document's own. */
    private Set<String> languages(String drill) throws IOException {
        Path file = folder.resolve("cards.pdf");
        Trial trial = Trial.run(Path.of("..", "drills"), "cards", drill, "--out", file.toString());
        assertEquals(0, trial.code(), trial.out());
        Set<String> languages = new TreeSet<>();
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
                if (document.getDocument().getObjectFromPool(key).getObject() instanceof COSDictionary part
                        && Objects.equals(part.getNameAsString("S"), "Span")
                        && part.getString("Lang") != null) {
                    languages.add(part.getString("Lang"));
                }
            }
        }
        return languages;
    }

    /** Its caller says Rompez and Marchez, and its class does what is written in English. */
    @Test
    void a_callers_french_is_marked_among_english() throws IOException {
        assertEquals(Set.of("fr"), languages("footwork-by-the-french-words"));
    }

    @Test
    void in_a_drill_in_the_schools_language_nothing_is_marked() throws IOException {
        assertTrue(languages("parry-of-quarte").isEmpty());
    }
}
