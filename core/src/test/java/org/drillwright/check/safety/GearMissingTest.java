package org.drillwright.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a phrase makes necessary: a point at a person asks for mask, jacket and glove, a touch for the underarm protector
 * too, the sabre for its own mask and glove. (Technical Rules t.20.2, t.64.5; sabre gear: common practice, no source.)
 */
class GearMissingTest {

    private static final String RULE = "gear-missing";
    private static final String TOUCH = "";
    private static final String POINT = """
            steps:
              - {leader: Extend to the high inside line., follower: Hold., distance: lunge, safety: The point stays away from him.}
            """;
    private static final String STEPS = """
            steps:
              - {leader: Advance., follower: Retreat., distance: lunge}
            """;

    private static String wayOut(String lines) {
        return Judged.drill(lines).all().stream()
                .filter(finding -> finding.rule().equals(RULE))
                .map(finding -> finding.what().english())
                .findFirst()
                .orElse("");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "[mask, jacket, underarm protector, glove]          | ''",
                "[Masks, Fencing jacket, plastron, Gloves]          | ''",
                "[masque, veste, sous-plastron, gant]               | ''",
                "[maschera, giubba, corazzetta, guanto]             | ''",
                "[2 Masken, Fechtjacke, Unterziehweste, Handschuh für jeden] | ''",
                "[Jacke ohne Maske, Unterziehweste, Handschuhe]      | mask, jacket",
                "[jacket, underarm protector, glove]                | mask",
                "[no mask needed, jacket, underarm protector, glove] | mask",
                "[without a mask, jacket, underarm protector, glove] | mask",
                "[jacket without a mask, underarm protector, glove] | mask, jacket",
                "[mask, jacket, glove]                              | underarm protector",
                "[mask, underarm protector, glove]                  | jacket",
                "[mask, jacket, underarm protector]                 | glove",
                "[unmasked, jackets hang there, underarm protector, gloveless] | mask, jacket, glove",
                "[cones]                                            | mask, jacket, underarm protector, glove",
                "[mask (optional), jacket, underarm protector, glove] | mask",
                "[broken mask, jacket, underarm protector, glove]   | mask",
                "[mask if you like, jacket, underarm protector, glove] | mask",
                "[2 masks, white fencing jacket (size M), underarm protectors for both, a leather glove each] | ''",
                "[mask and glove, jacket, plastron]                 | ''",
                "[mask, jacket, under plastron, glove]              | ''",
                "[mask, jacket, the half jacket that goes underneath, glove] | ''",
                "[mask, half jacket, glove]                         | jacket",
                "[masque de fleuret 350N, veste, sous-plastron, gant pour chacun] | ''",
            })
    void a_touch_asks_for_all_of_it(String gear, String lacking) {
        assertEquals(
                lacking.isEmpty() ? "" : "Missing from the gear: " + lacking + ".",
                wayOut("gear: " + gear + "\n" + TOUCH));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "[mask, jacket, glove] | ''",
                "[mask, glove]         | jacket",
                "[plastron]            | mask, jacket, glove",
            })
    void a_point_at_a_person_asks_for_mask_jacket_and_glove(String gear, String lacking) {
        assertEquals(
                lacking.isEmpty() ? "" : "Missing from the gear: " + lacking + ".",
                wayOut("gear: " + gear + "\n" + POINT));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "[sabre mask, jacket, underarm protector, sabre glove] | ''",
                "[mask, jacket, underarm protector, glove]             | ''",
                "[mask, jacket, underarm protector]                    | glove",
            })
    void a_mask_and_a_glove_are_those_of_the_weapon(String gear, String lacking) {
        String cut = """
                weapon: sabre
                steps:
                  - {leader: Cut to the head with a lunge., follower: Parry quinte., distance: lunge, safety: Cut with the flat and softly.}
                  - {leader: Hold the lunge and take the touch., follower: Riposte to the flank., distance: extension, safety: Let the edge arrive softly.}
                """;
        assertEquals(
                lacking.isEmpty() ? "" : "Missing from the gear: " + lacking + ".",
                wayOut("gear: " + gear + "\n" + cut));
    }

    /** Words that are not known may say the opposite: such a piece is neither counted nor missed. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {"gas mask        | gas", "mask or goggles | or goggles", "imaginary mask  | imaginary"})
    void what_is_not_understood_is_said_and_not_counted(String item, String words) {
        assertEquals(
                "Not judged: '" + item + "' was not counted as the mask, because '" + words.replace(" ", "', '")
                        + "' was not understood.",
                wayOut("gear: [" + item + ", jacket, underarm protector, glove]\n" + TOUCH));
    }

    @Test
    void steps_alone_ask_for_a_list_and_for_nothing_on_it() {
        assertEquals("", wayOut("gear: [plimsolls]\n" + STEPS));
        assertEquals("", wayOut("gear: []\n" + STEPS));
    }

    @Test
    void a_schools_own_word_for_a_piece_counts() {
        String school = "words:\n  brain bucket: mask\n";
        assertEquals(
                List.of(),
                Judged.in(school, "gear: [Brain bucket, jacket, underarm protector, glove]\n" + TOUCH)
                        .findings(RULE));
    }

    @Test
    void a_solo_drill_points_at_nobody() {
        assertEquals("", wayOut("""
                form: solo
                gear: [weapon]
                steps:
                  - {leader: Lunge!, follower: Extend at the mark and lunge., distance: out}
                """));
    }

    /** The most exact key of the school's default wins: level and weapon, then weapon, then level. */
    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({"intermediate, foil, underarm protector", "training, foil, jacket", "intermediate, epee, glove"})
    void the_schools_default_holds_where_a_drill_lists_nothing(String level, String weapon, String lacking) {
        String school = """
                gear:
                  intermediate: [mask, jacket, glove]
                  foil: [mask, underarm protector, glove]
                  epee: [mask, jacket, underarm protector]
                  intermediate foil: [mask, jacket, glove]
                """;
        assertEquals(
                List.of("Missing from the gear: " + lacking + "."),
                Judged.in(school, "gear: []\nlevel: " + level + "\nweapon: " + weapon).all().stream()
                        .filter(finding -> finding.rule().equals(RULE))
                        .map(finding -> finding.what().english())
                        .toList());
    }

    @Test
    void a_drills_own_list_goes_before_the_schools() {
        assertEquals(
                List.of(),
                Judged.in("gear: {foil: [mask]}", "gear: [mask, jacket, underarm protector, glove]")
                        .findings(RULE));
    }

    @Test
    void without_any_list_it_is_found() {
        assertEquals(
                1, Judged.in("gear: {sabre: [mask]}", "gear: []").findings(RULE).size());
    }
}
