package org.drillwright.docs;

import java.util.Locale;
import java.util.Optional;
import org.drillwright.reading.Glossary;
import org.drillwright.reading.TermKind;
import org.drillwright.reading.TurnReader;

/** The page of all words that are understood, by kind. */
final class WordsPage {

    private final StringBuilder page = new StringBuilder();

    static String write() {
        return new WordsPage().make();
    }

    private String make() {
        line("# The words that are understood");
        line("");
        line(
                "This page is made from the vocabulary. Capitals, accents and hyphens make no difference; articles inside a form may");
        line(
                "be written or left out; verbs take their endings (parry, parries, parrying; parez, parer). A school adds its own");
        line("under `words` in school.yaml: `words: {stick it: extend}`.");
        Optional<TermKind> kind = Optional.empty();
        for (Glossary.Item item : TurnReader.standard().glossary().items()) {
            if (!kind.equals(Optional.of(item.term().kind()))) {
                kind = Optional.of(item.term().kind());
                String name = item.term().kind().word();
                line("");
                line("## " + name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1));
                line("");
                line("| term | English | French | Italian |");
                line("|---|---|---|---|");
            }
            line("| " + item.term().id() + " | " + cell(item, "en") + " | " + cell(item, "fr") + " | "
                    + cell(item, "it") + " |");
        }
        return page.toString();
    }

    private static String cell(Glossary.Item item, String tag) {
        return String.join(", ", item.in(tag));
    }

    private void line(String line) {
        page.append(line).append('\n');
    }
}
