package org.drillwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.formatter.Formatter;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.read.DrillReader;
import org.drillwright.read.DrillWriter;
import org.drillwright.read.ReadDrill;
import org.drillwright.read.Reading;
import org.drillwright.read.SourceTree;
import org.drillwright.schema.Verdicts;
import org.drillwright.source.SourceFile;

/** What holds of a drill that was read: all of its file is in it, and laid out anew it stays what it was. */
final class WholeDrill {

    private static final DrillReader READER = new DrillReader(School.DEFAULT);
    private static final Formatter TIDY = new Formatter(READER);

    private WholeDrill() {}

    /** No text of the file is lost on the way into the drill, and none is changed but for its ends and its normal form. */
    static void isIn(ReadDrill read) {
        String written = DrillWriter.write(read.drill());
        assertEquals(Optional.of(read.drill()), drill(written), written);
        List<String> there = texts(new SourceFile("", written));
        for (String text : texts(read.file())) {
            assertTrue(there.contains(text), () -> "'" + text + "' is lost from " + written);
        }
    }

    /** Tidying keeps the drill, and done again changes nothing. */
    static void isTidied(ReadDrill read, byte[] bytes) {
        if (TIDY.of("a-drill", "a-drill.yaml", bytes) instanceof Formatter.Tidied tidied) {
            assertEquals(Optional.of(read.drill()), drill(tidied.text()), tidied.text());
            Formatter.Outcome again =
                    TIDY.of("a-drill", "a-drill.yaml", tidied.text().getBytes(StandardCharsets.UTF_8));
            assertTrue(again instanceof Formatter.Tidied, () -> again + " of " + tidied.text());
            assertEquals(tidied.text(), ((Formatter.Tidied) again).text());
        }
    }

    /** What the reader takes, the schema takes. */
    static void isOfTheSchema(ReadDrill read) {
        JsonNode seen = Verdicts.seen(DrillWriter.write(read.drill()));
        assertEquals(List.of(), List.copyOf(Verdicts.schemaOfDrill(seen)));
    }

    private static Optional<Drill> drill(String text) {
        Reading<ReadDrill> reading = READER.read("a-drill", "a-drill.yaml", text.getBytes(StandardCharsets.UTF_8));
        return reading.value().map(ReadDrill::drill);
    }

    /** The longer texts of a file: what is shorter may be a number or a word of the program's own, written otherwise. */
    private static List<String> texts(SourceFile file) {
        List<String> texts = new ArrayList<>();
        SourceTree.of(file).ifPresent(tree -> collect(tree, texts));
        return texts;
    }

    private static void collect(SourceTree tree, List<String> into) {
        if (tree instanceof SourceTree.Leaf leaf) {
            into.add(Normalizer.normalize(leaf.text(), Normalizer.Form.NFC).strip());
        } else if (tree instanceof SourceTree.Items items) {
            items.items().forEach(item -> collect(item, into));
        } else if (tree instanceof SourceTree.Entries entries) {
            entries.entries().forEach(entry -> {
                boolean own = List.of("number", "repeat", "swap", "tempo", "revised")
                        .contains(entry.key().text());
                if (!own) {
                    collect(entry.value(), into);
                }
            });
        }
    }
}
