package org.drillwright.print.sheet.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.plan.roster.Naming;
import org.junit.jupiter.api.Test;

class ShortNamesTest {

    @Test
    void a_first_name_that_two_have_gets_initials() {
        List<String> names = List.of("Lark Pemberton", "Lark Oakley", "Ned Thistlewood", "Cato");
        Naming first = ShortNames.first(names);
        assertEquals(
                List.of("Lark P.", "Lark O.", "Ned", "Cato"),
                names.stream().map(first::of).toList());
    }
}
