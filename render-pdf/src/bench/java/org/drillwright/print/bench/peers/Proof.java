package org.drillwright.print.bench.peers;

import java.io.IOException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/** What a file holds, so that it is known that all contenders did the same. */
final class Proof {

    /** What makes a table. */
    private static final List<String> TABLE = List.of("Table", "TR", "TH", "TD", "H1");

    private Proof() {}

    /** Each word and how often it is shown, in whatever order; a hyphen parts words, as the end of a line may. */
    static Map<String, Long> words(Tool pdftotext, Path pdf) throws IOException, InterruptedException {
        String text = pdftotext.said(List.of("-raw", "-enc", "UTF-8", pdf.toString(), "-"));
        return Arrays.stream(Normalizer.normalize(text, Normalizer.Form.NFKC)
                        .replace("\u00AD", "")
                        .split("[\\s\\h\\f\\-\u2010\u2011]+"))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
    }

    static int pages(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return document.getNumberOfPages();
        }
    }

    /** How many elements of each kind the tree of tags has that make a table; none where there is no tree. */
    static Map<String, Integer> tags(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            Map<String, Integer> tags = new TreeMap<>();
            PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
            if (root != null) {
                count(root, tags);
            }
            return tags;
        }
    }

    private static void count(PDStructureNode node, Map<String, Integer> tags) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                String type = element.getStandardStructureType();
                if (TABLE.contains(type)) {
                    tags.merge(type, 1, Integer::sum);
                }
                count(element, tags);
            }
        }
    }
}
