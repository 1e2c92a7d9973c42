package org.drillwright.plan.roster;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected initials are worked by hand. */
class NamingTest {

    @ParameterizedTest
    @CsvSource({
        "Ash Fir; Bo Elm,           AF; BE",
        "Ann-Marie Oak,             AMO",
        "Ash; Ada; Bo,              As; Ad; B",
        "Mara Oldfield; Milo Oldfield, MaO; MiO",
        "Mara Oldfield; Milo Oldfield; Moira Orr, MaO; MiO; MoO",
        "Mara Oldfield; Mara Olden; Mara Old, MO3; MO2; MO1",
        "Mara Oldfield; Mara Ormond, MOl; MOr",
        "Marie Old; Marie Olden,    MO1; MO2",
        "Ann Beth Cole; Ann Bo Cole, ABeC; ABC",
        "Ludwig van Dyck; Jean-Luc de la Tour, LvD; JLdlT",
        "D’Arcy Finn; O'Hara,        DF; O",
        "M. Oldfield; M.O.; J. R. Elm, MOl; MO; JRE",
        "M; MO; N,                  M; MO; N",
        "ÉO; Zsófia O,             ÉO; ZO",
        "Élise Orn; Émile Orn, ÉlO; ÉmO",
        "Иван Орлов; Ирина Орлова,  ИвО; ИрО",
        "مريم علي; Bo,               م.ع.; B",
        "王小明; 王大文,            王小; 王大",
        "Al; Alan; Ash,             A; Ala; As",
        "Ash Fir; Ada Fern; Al Gum, AFi; AFe; AG",
        "Élise Ørn,                 ÉØ",
        "Bo; Bob,                   B1; B2",
        "A B; A-B; A - B,           AB2; AB3; AB1",
        "-; Bo,                     -; B"
    })
    void initials_tell_people_apart(String names, String initials) {
        List<String> people = List.of(names.split("; "));
        Naming naming = Naming.initials(people);
        assertEquals(initials, String.join("; ", people.stream().map(naming::of).toList()));
        List<String> turned = new ArrayList<>(people);
        Collections.reverse(turned);
        assertEquals(naming, Naming.initials(turned));
    }

    @Test
    void no_two_of_a_thousand_are_alike() {
        List<String> people = IntStream.range(0, 1_000)
                .mapToObj(at -> "A" + at % 7 + " B" + at)
                .toList();
        Naming naming = Naming.initials(people);
        assertEquals(1_000, new HashSet<>(people.stream().map(naming::of).toList()).size());
    }

    @Test
    void who_is_not_named_keeps_the_name() {
        assertEquals("the instructor", Naming.full().of("the instructor"));
    }
}
