package org.drillwright.plan.roster;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
        "Ash Fir; Ada Fern; Al Gum, AFi; AFe; AG",
        "Élise Ørn,                 ÉØ",
        "Bo; Bob,                   Bo; Bob",
        "A B; A-B; A - B,           AB; AB2; AB3",
        "-; Bo,                     -; B"
    })
    void initialsTellPeopleApart(String names, String initials) {
        List<String> people = List.of(names.split("; "));
        Naming naming = Naming.initials(people);
        assertEquals(initials, String.join("; ", people.stream().map(naming::of).toList()));
    }

    @Test
    void noTwoOfAThousandAreAlike() {
        List<String> people = IntStream.range(0, 1_000)
                .mapToObj(at -> "A" + at % 7 + " B" + at)
                .toList();
        Naming naming = Naming.initials(people);
        assertEquals(1_000, new HashSet<>(people.stream().map(naming::of).toList()).size());
    }

    @Test
    void whoIsNotNamedKeepsTheName() {
        assertEquals("the instructor", Naming.full().of("the instructor"));
    }
}
