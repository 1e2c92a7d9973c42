package org.drillwright.translation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.drillwright.model.Language;
import org.drillwright.notation.Utterance;
import org.drillwright.reading.TurnReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** How and when, said in another language. Which phrases mean the same is common practice, no source. */
class AdverbialsTest {

    private static final Map<String, String> RETREAT =
            Map.of("en", "Retreat", "fr", "Rompez", "it", "Arretrate", "es", "Rompa", "de", "Zurückgehen");

    /** What is put behind an order must leave it as it is, or it would not be printed. */
    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void each_phrase_is_read_and_changes_no_action(Language language) {
        TurnReader reader = TurnReader.standard();
        String order = RETREAT.get(language.word());
        Utterance bare = reader.read(order + ".", language.word());
        assertTrue(bare.isRead());
        assertFalse(bare.actions().isEmpty());
        List<String> changed = new ArrayList<>();
        for (String way : Adverbials.standard().ways(language)) {
            String text = order + (way.startsWith(",") ? "" : " ") + way + ".";
            Utterance read = reader.read(text, language.word());
            if (!read.isRead() || !read.open().isEmpty() || !read.actions().equals(bare.actions())) {
                changed.add(text);
            }
        }
        assertEquals(List.of(), changed);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | fr | Retreat slowly.                      | lentement
                    en | de | Retreat, hand before foot.           | , die Hand vor dem Fuß
                    en | fr | Parry quarte as your partner lunges. | quand le partenaire se fend
                    en | it | Parry quarte when she lunges.        | quando il compagno affonda
                    en | es | Retreat as the leader advances.      | cuando el guía avanza
                    en | de | Retreat as soon as he advances.      | , sobald der Partner vorgeht
                    fr | en | Parez quarte quand il se fend.       | as your partner lunges
                    de | fr | Zurückgehen, sobald er vorgeht.      | dès que le partenaire marche
                    """)
    void the_longest_that_is_listed_is_found(String from, String into, String text, String said) {
        assertEquals(
                said,
                Adverbials.standard().in(text, new Language(from), new Language(into)).stream()
                        .findFirst()
                        .orElseThrow()
                        .said());
    }

    /** Why, if, before and after are other things than at the same time. */
    @ParameterizedTest
    @CsvSource({
        "Retreat because he lunges.",
        "Retreat if he lunges.",
        "Retreat before he lunges.",
        "Retreat as I lunge.",
        "Retreat unless he lunges.",
        "Retreat not slow."
    })
    void what_is_not_listed_is_not_said(String text) {
        assertEquals(List.of(), Adverbials.standard().in(text, Language.ENGLISH, new Language("fr")));
    }
}
