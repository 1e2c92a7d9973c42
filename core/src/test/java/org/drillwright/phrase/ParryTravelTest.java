package org.drillwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Hands;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Position;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The way of a hand between two positions: Warford 1884, pages 10 to 17; the diagonals from memory. */
class ParryTravelTest {

    private static Optional<ParryKind> kind(Weapon weapon, Position from, Position to) {
        Setting setting = new Setting(weapon, Hands.SAME, true, ParryTable.of(weapon, Map.of()), Map.of(), false);
        return ParryTravel.kind(setting, from, to);
    }

    @ParameterizedTest
    @CsvSource({
        "SIXTE, QUARTE, SIMPLE",
        "QUARTE, SIXTE, SIMPLE",
        "OCTAVE, SEPTIME, SIMPLE",
        "SIXTE, OCTAVE, HALF_CIRCULAR",
        "QUARTE, SEPTIME, HALF_CIRCULAR",
        "SIXTE, SEPTIME, DIAGONAL",
        "QUARTE, OCTAVE, DIAGONAL",
        "SIXTE, SIXTE, UNSTATED",
        "SIXTE, TIERCE, UNSTATED"
    })
    void from_one_position_to_another(Position from, Position to, ParryKind kind) {
        assertEquals(Optional.of(kind), kind(Weapon.FOIL, from, to));
    }

    @Test
    void has_no_name_where_schools_differ_over_the_line_or_with_the_sabre() {
        assertEquals(Optional.empty(), kind(Weapon.FOIL, Position.SIXTE, Position.PRIME));
        assertEquals(Optional.empty(), kind(Weapon.FOIL, Position.PRIME, Position.SIXTE));
        assertEquals(Optional.empty(), kind(Weapon.SABRE, Position.TIERCE, Position.QUARTE));
    }
}
