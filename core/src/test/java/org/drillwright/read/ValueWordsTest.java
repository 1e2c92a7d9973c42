package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.Language;
import org.drillwright.model.Weapon;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Plain;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Values of files are read in every language that people are spoken to in. */
class ValueWordsTest {

    /** Names of weapons: the FIE's rules in French, English and Spanish; Italian and German from memory. Levels: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "weapon, foil, fleuret",
        "weapon, foil, FIORETTO",
        "weapon, foil, Florett",
        "weapon, epee, épée",
        "weapon, epee, spada",
        "weapon, epee, Degen",
        "weapon, sabre, sable",
        "weapon, sabre, Sabel",
        "weapon, none, ohne Waffe",
        "language, de, Deutsch",
        "language, it, italiano",
        "language, es, Spagnolo",
        "form, partner, zu zweit",
        "form, solo, individual",
        "level, beginner, Débutants",
        "level, intermediate, fortgeschrittene"
    })
    void a_value_is_read_by_its_name_in_a_language(String key, String own, String written) {
        List<String> known = List.of(
                "none",
                "sabre",
                "epee",
                "foil",
                "en",
                "fr",
                "it",
                "es",
                "de",
                "partner",
                "solo",
                "beginner",
                "intermediate");
        assertEquals(Optional.of(own), ValueWords.own(key, written, known));
    }

    /** What a language calls a weapon or a language is understood where it is typed. */
    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void what_the_program_says_is_read(Language language) {
        List<String> weapons = Arrays.stream(Weapon.values()).map(Weapon::word).toList();
        for (Weapon weapon : Weapon.values()) {
            String said = Terms.of(weapon).in(language.locale());
            if (!Plain.fold(said).equals(weapon.word())) {
                assertEquals(Optional.of(weapon.word()), ValueWords.own("weapon", said, weapons), said);
            }
        }
        List<String> tags = Language.all().stream().map(Language::word).toList();
        for (Language other : Language.all()) {
            String said = Terms.of(other).in(language.locale());
            assertEquals(Optional.of(other.word()), ValueWords.own("language", said, tags), said);
        }
    }

    /** A school's own levels are names, not words. */
    @ParameterizedTest
    @CsvSource({"débutant", "Anfänger"})
    void a_level_that_the_school_does_not_have_is_not_understood(String written) {
        assertEquals(Optional.empty(), ValueWords.own("level", written, List.of("green", "blue")));
    }
}
