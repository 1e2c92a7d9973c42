package org.drillwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which line a position closes: Encyclopaedia Britannica, "How to Fence"; Warford 1884, pages 10 to 16. */
class ParryTableTest {

    private static final ParryTable FOIL = ParryTable.of(Weapon.FOIL, Map.of());

    @ParameterizedTest
    @CsvSource({
        "high-inside, QUARTE",
        "high-outside, TIERCE SIXTE",
        "low-inside, SEPTIME",
        "low-outside, SECONDE OCTAVE"
    })
    void the_positions_on_which_the_sources_agree(String line, String positions) {
        List<Position> closing = FOIL.closing(ParryTable.line(line).orElseThrow());
        assertEquals(
                List.of(positions.split(" ")), closing.stream().map(Enum::name).toList());
    }

    @Test
    void a_school_replaces_a_row_and_its_word_is_firm() {
        ParryTable ours = ParryTable.of(Weapon.FOIL, Map.of("Quinte", "high outside"));
        assertEquals(new ParryTable.Row(Set.of(Line.HIGH_OUTSIDE), true), ours.row(Position.QUINTE));
        assertEquals(new ParryTable.Row(Set.of(Line.HIGH_INSIDE), false), FOIL.row(Position.QUINTE));
        assertEquals(FOIL.row(Position.QUARTE), ours.row(Position.QUARTE));
    }

    @Test
    void a_row_that_names_no_position_or_no_line_is_passed_over() {
        ParryTable ours = ParryTable.of(Weapon.FOIL, Map.of("ninth", "high outside", "quinte", "behind the back"));
        assertEquals(FOIL.row(Position.QUINTE), ours.row(Position.QUINTE));
    }

    @Test
    void positions_and_lines_are_known_by_their_words() {
        assertEquals(Optional.of(Position.SIXTE), ParryTable.position(" Sixte "));
        assertEquals(Optional.empty(), ParryTable.position("ninth"));
        assertEquals(Optional.of(Line.LOW_OUTSIDE), ParryTable.line("low outside"));
        assertEquals(Optional.empty(), ParryTable.line("middle"));
    }
}
