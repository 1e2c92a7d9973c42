package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where groups go so that as few people as can be have to walk; whoever is alone needs no place. */
class FloorPlacesTest {

    private static List<Group> groups(String text) {
        List<Group> groups = new ArrayList<>();
        for (String names : text.split(" ")) {
            List<String> people = Arrays.asList(names.split("-"));
            groups.add(new Group(people.size() == 1 ? Group.Kind.SOLO : Group.Kind.PAIR, 0, people, Optional.empty()));
        }
        return groups;
    }

    private static String text(List<Group> groups) {
        return groups.stream()
                .map(group -> String.join("-", group.people()) + ":" + group.place())
                .collect(Collectors.joining(" "));
    }

    @Test
    void in_the_first_round_places_are_counted_in_the_groups_order() {
        assertEquals("A-B:1 C:0 D-E:2 F-G:3", text(FloorPlaces.first(groups("A-B C D-E F-G"))));
    }

    /** Before: A and B at place 1, C and D at 2, E and F at 3. New is whoever is called X, Y or Z. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // Nobody walks.
        "E-F C-D A-B, E-F:3 C-D:2 A-B:1",
        // One of each pair has come anew; the other stays.
        "E-X C-Y A-Z, E-X:3 C-Y:2 A-Z:1",
        // Three stay, at place 1, as many as can.
        "D-X A-B-E F-Y, D-X:2 A-B-E:1 F-Y:3",
        // B could stay at 1; but at 2, where D stays, it lets A stay at 1 and E at 3.
        "B-D A-X C-E, B-D:2 A-X:1 C-E:3",
        // Two groups need two places only: C and D stay at 2, E goes to 1.
        "C-D E, C-D:1 E:0",
        "E-X C-D F, E-X:1 C-D:2 F:0",
        "F C-D E-X, F:0 C-D:2 E-X:1"
    })
    void later_as_many_stay_as_can(String groups, String placed) {
        Round before = new Round(1, "thrust", FloorPlaces.first(groups("A-B C-D E-F")));
        assertEquals(placed, text(FloorPlaces.after(before, groups(groups))));
    }

    /** In the round before G was alone, at no place; coming to a place is a walk wherever it is. */
    @Test
    void who_was_alone_walks_to_any_place() {
        Round before = new Round(1, "thrust", FloorPlaces.first(groups("A-B G C-D")));
        assertEquals("C-G:2 A:0 B-D:1", text(FloorPlaces.after(before, groups("C-G A B-D"))));
    }
}
