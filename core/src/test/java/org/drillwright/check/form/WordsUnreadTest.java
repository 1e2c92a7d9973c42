package org.drillwright.check.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.regex.Pattern;
import org.drillwright.check.Judged;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was read of a turn with a slip of the pen is said in the language of the drill, which it does not state. Common practice, no source. */
class WordsUnreadTest {

    /** Each slip leaves words that other languages have, too. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            foil-octave-direct-riposte      | Parry octave with  | Parry octaev with | The rest is read as: Parry.
            fr-quarte-riposte-directe       | Parez quarte.      | Parade quatr.     | The rest is read as: Parez.
            it-quarta-risposta-diretta      | Parata di quarta.  | Para qarta.       | The rest is read as: Para.
            es-cuarta-respuesta-directa     | Para en cuarta.    | Para cuatra.      | The rest is read as: Pare.
            de-quartparade-direkte-riposte  | Pariere Quart.     | Parade Quatr.     | The rest is read as: Pariere.
            """)
    void the_rest_is_said_in_the_language_of_the_drill(String drill, String turn, String slip, String said)
            throws IOException {
        String right = text(drill);
        String wrong = right.replace(turn, slip);
        assertEquals(1, right.split(Pattern.quote(turn), -1).length - 1, turn);
        String told = Judged.drill(wrong).all().stream()
                .filter(finding -> finding.rule().equals("words-unread"))
                .map(finding -> finding.what().english())
                .findFirst()
                .orElse("");
        assertEquals(said, told.replaceFirst(".*(?=The rest)", ""));
    }

    private static String text(String drill) throws IOException {
        try (InputStream in = WordsUnreadTest.class.getResourceAsStream("/correct/" + drill + ".yaml")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
