package org.drillwright.docs;

import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
                line(row("term", tag -> Locale.forLanguageTag(tag).getDisplayLanguage(Locale.ENGLISH)));
                line(row("---", tag -> "---").replace(" ", ""));
            }
            line(row(item.term().id(), tag -> String.join(", ", item.in(tag))));
        }
        return page.toString();
    }

    /** A term and what stands for it in each language. */
    private static String row(String term, UnaryOperator<String> cell) {
        return Stream.concat(
                        Stream.of(term), TurnReader.standard().tags().stream().map(cell))
                .collect(Collectors.joining(" | ", "| ", " |"));
    }

    private void line(String line) {
        page.append(line).append('\n');
    }
}
