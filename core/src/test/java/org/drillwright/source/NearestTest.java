package org.drillwright.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Distances counted by hand: letters to put in, take out, change, or swap with a neighbour. */
class NearestTest {

    @ParameterizedTest
    @CsvSource({
        "'', '', 0",
        "foil, foil, 0",
        "foil, '', 4",
        "'', epee, 4",
        "foyl, foil, 1",
        "fol, foil, 1",
        "foiil, foil, 1",
        "fiol, foil, 1",
        "leder, leader, 1",
        "laeder, leader, 1",
        "kitten, sitting, 3",
        "sabre, saber, 1",
        "ca, abc, 3",
        "lunge, extension, 8"
    })
    void counts_the_changes(String one, String other, int distance) {
        assertEquals(distance, Nearest.distance(one, other));
        assertEquals(distance, Nearest.distance(other, one));
    }

    @Test
    void a_third_of_the_letters_may_differ() {
        assertEquals(Optional.of("leader"), Nearest.to("leedar", List.of("leader", "follower")));
        assertEquals(Optional.empty(), Nearest.to("reader!!!", List.of("leader")));
        assertEquals(Optional.empty(), Nearest.to("", List.of("leader")));
        assertEquals(Optional.empty(), Nearest.to("leader", List.of()));
    }

    @Test
    void of_equally_near_words_the_first_in_the_alphabet_is_meant() {
        assertEquals(Optional.of("bat"), Nearest.to("xat", List.of("cat", "bat", "rat")));
    }

    @ParameterizedTest
    @CsvSource({
        "quatre, quarte",
        "lugne, lunge",
        "repsond, ''",
        "advnce, advance",
        "disengaeg, disengage",
        "out, ''",
        "mit, ''",
        "hgih, high",
        "high, ''",
        "bact, ''",
        "sixtee, sixte",
        "haed, head",
        "hand, ''"
    })
    void a_slip_of_the_hand_is_small_beside_the_word(String word, String meant) {
        List<String> known = List.of(
                "quarte", "lunge", "riposte", "advance", "disengage", "cut", "hit", "high", "beat", "sixte", "head");
        assertEquals(meant, Nearest.slip(word, known).orElse(""));
    }

    @Test
    void the_nearer_word_wins() {
        assertEquals(Optional.of("septime"), Nearest.to("septme", List.of("seconde", "sixte", "septime", "september")));
    }
}
