package org.drillwright.autofix;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Optional;
import org.drillwright.source.Finding;
import org.drillwright.source.Nearest;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The titles of what mends are grammatical in each language: written by hand, checked by eye. */
class MendWordsTest {

    private static final SourceFile FILE = new SourceFile("a.yaml", "quatre");
    private static final Span WORD = new Span(0, 6);

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en | Change to 'quarte'
            fr | Remplacer par « quarte »
            it | Cambiare in «quarte»
            es | Cambiar a «quarte»
            de | In „quarte“ ändern
            """)
    void a_word_that_was_meant(String language, String title) {
        Optional<Fix> fix = Fixes.meant(finding(Nearest.unknown("quatre"), Nearest.meant("quarte")));
        assertEquals(
                Optional.of(title),
                fix.map(one -> one.title().in(Locale.forLanguageTag(language)).replace('\u00a0', ' ')));
        assertEquals(Optional.of("quarte"), fix.map(one -> one.edit().text()));
    }

    @Test
    void words_that_only_look_like_the_question_mend_nothing() {
        Message looks = Message.plain("Did you mean 'quarte'?");
        assertEquals(Optional.empty(), Fixes.meant(finding(Nearest.unknown("quatre"), looks)));
        assertEquals(Optional.empty(), Fixes.meant(finding(Message.plain("Parry quatre"), Nearest.meant("quarte"))));
    }

    private static Finding finding(Message what, Message wayOut) {
        return new Finding("words-unread", Severity.NOTE, FILE, WORD, what, wayOut);
    }
}
