package org.drillwright.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.drillwright.model.Side;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Where;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a drill as it was played is grammatical in each language: written by hand, checked by eye. */
class ExplainWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | passe malgré la parade d’octave | main inconnue depuis le temps 2
            it | arriva nonostante la parata di ottava | mano sconosciuta dal tempo 2
            es | llega a pesar de la parada de octava | mano desconocida desde el tiempo 2
            de | trifft an der Parade Oktav vorbei | Hand nicht bekannt seit Zahl 2
            """)
    void an_end_and_a_doubt(String language, String end, String doubt) {
        Locale locale = Locale.forLanguageTag(language);
        assertEquals(
                end, EndWords.of(new AttackEnd.PastTheParry(Position.OCTAVE)).in(locale));
        assertEquals(
                doubt,
                Message.of(StateWords.class, "unknown.hand", Where.count(2)).in(locale));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | les fers se touchent dans la ligne haute du dedans, tenus par le suiveur | bras allongé dans la ligne haute du dedans
            it | i ferri si toccano nella linea alta interna; li tiene il compagno | braccio disteso nella linea alta interna
            es | los hierros se tocan en la línea alta interior, sujetos por el seguidor | brazo extendido a la línea alta interior
            de | Klingen berühren sich in der oberen inneren Linie; der Folgende hält sie | Arm gestreckt in die obere innere Linie
            """)
    void blades_and_an_arm(String language, String blades, String arm) {
        Locale locale = Locale.forLanguageTag(language);
        Message line = Terms.of(Line.HIGH_INSIDE);
        Message touch = Message.of(StateWords.class, "blades.touch", line);
        assertEquals(
                blades,
                Message.of(StateWords.class, "blades.held", touch, Terms.of(Side.FOLLOWER))
                        .in(locale));
        assertEquals(arm, Message.of(StateWords.class, "arm.extended.to", line).in(locale));
    }
}
