package org.drillwright.docs;

import java.util.Locale;
import org.drillwright.notation.Glossary;
import org.drillwright.notation.TermKind;
import org.drillwright.notation.Tongue;
import org.drillwright.notation.Vocabulary;

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
        TermKind kind = TermKind.CHOICE;
        for (Glossary.Entry entry : Glossary.entries(Vocabulary.standard())) {
            if (entry.term().kind() != kind) {
                kind = entry.term().kind();
                line("");
                line("## " + kind.name().charAt(0) + kind.name().substring(1).toLowerCase(Locale.ROOT));
                line("");
                line("| term | English | French | Italian |");
                line("|---|---|---|---|");
            }
            line("| " + entry.term().id() + " | " + cell(entry, Tongue.ENGLISH) + " | " + cell(entry, Tongue.FRENCH)
                    + " | " + cell(entry, Tongue.ITALIAN) + " |");
        }
        return page.toString();
    }

    private static String cell(Glossary.Entry entry, Tongue tongue) {
        return String.join(", ", entry.in(tongue));
    }

    private void line(String line) {
        page.append(line).append('\n');
    }
}
