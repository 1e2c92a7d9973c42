package org.drillwright.check.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What only the whole folder shows. */
class FolderRulesTest {

    private static final String ADVANCE = """
            title: One
            steps:
              - {leader: Advance., follower: Retreat., distance: lunge}
            """;
    private static final String OTHER_WORDS = """
            title: Two
            steps:
              - {leader: "Advance,", follower: RETREAT, distance: out}
            """;

    @Test
    void twins_are_found_whatever_their_points_and_capitals() {
        assertEquals(
                List.of("b.yaml error 2:1 'steps'"),
                Judged.folder("", Map.of("a", ADVANCE, "b", OTHER_WORDS)).ofFolder("twin-drills"));
    }

    @Test
    void another_weapon_hand_or_start_makes_another_drill() {
        for (String line : List.of("weapon: epee", "hands: opposite", "start: On guard in tierce.")) {
            assertEquals(
                    List.of(),
                    Judged.folder("", Map.of("a", ADVANCE, "b", OTHER_WORDS + line + "\n"))
                            .ofFolder("twin-drills"));
        }
    }

    @Test
    void drills_without_counts_are_no_twins() {
        assertEquals(
                List.of(),
                Judged.folder("", Map.of("a", "steps: []", "b", "steps: []")).ofFolder("twin-drills"));
    }

    @Test
    void of_three_alike_the_second_and_the_third_are_found() {
        assertEquals(
                List.of("b.yaml error 2:1 'steps'", "c.yaml error 2:1 'steps'"),
                Judged.folder("", Map.of("a", ADVANCE, "b", ADVANCE, "c", OTHER_WORDS))
                        .ofFolder("twin-drills"));
    }

    @Test
    void two_drills_of_one_level_have_two_titles() {
        assertEquals(
                List.of("b.yaml error 1:8 'PARRY'"),
                Judged.folder("", Map.of("a", "title: Parry", "b", "title: PARRY"))
                        .ofFolder("same-title-in-set"));
        assertEquals(
                List.of(),
                Judged.folder("", Map.of("a", "title: Parry", "b", "title: Parry\nlevel: training"))
                        .ofFolder("same-title-in-set"));
    }

    @Test
    void two_drills_of_a_named_set_have_two_titles_whatever_their_levels() {
        Map<String, String> drills = Map.of("a", "title: Parry", "b", "title: Parry\nlevel: training");
        assertEquals(
                List.of("b.yaml error 1:8 'Parry'"),
                Judged.folder("sets: {ring: {drills: [a, b]}}", drills).ofFolder("same-title-in-set"));
    }

    @Test
    void a_set_by_tag_has_a_tag_that_a_drill_has() {
        Map<String, String> drills = Map.of("a", "tags: [spring]");
        assertEquals(
                List.of("school.yaml error 1:20 'sprng'"),
                Judged.folder("sets: {ring: {tag: sprng}}", drills).ofFolder("broken-set"));
        assertEquals(
                List.of(), Judged.folder("sets: {ring: {tag: spring}}", drills).ofFolder("broken-set"));
    }

    @Test
    void a_set_lists_drills_that_are_there_each_once() {
        assertEquals(
                List.of("school.yaml error 1:27 'x'", "school.yaml error 1:30 'a'"),
                Judged.folder("sets: {ring: {drills: [a, x, a]}}", Map.of("a", ""))
                        .ofFolder("broken-set"));
        assertEquals(
                List.of(),
                Judged.folder("sets: {ring: {drills: [a, b]}}", Map.of("a", "", "b", ""))
                        .ofFolder("broken-set"));
    }

    @Test
    void a_set_holds_a_drill() {
        Map<String, String> drills = Map.of("a", "tags: [spring]\nweapon: foil");
        assertEquals(
                List.of("The set 'ring' has no drills."),
                Judged.folder("sets: {ring: {tag: spring, weapon: sabre}}", drills)
                        .saidOfFolder("broken-set"));
        assertEquals(
                List.of(),
                Judged.folder("sets: {ring: {tag: spring, weapon: foil}}", drills)
                        .saidOfFolder("broken-set"));
    }

    @Test
    void a_drill_that_no_list_holds_is_told_of_where_others_of_its_level_are_listed() {
        Map<String, String> drills = Map.of("a", "level: training", "b", "title: B\nlevel: training", "c", "title: C");
        assertEquals(
                List.of("b.yaml note 2:8 'training'"),
                Judged.folder("sets: {ring: {drills: [a]}}", drills).ofFolder("in-no-set"));
        assertEquals(
                List.of(),
                Judged.folder("sets: {ring: {drills: [a]}, all: {level: training}}", drills)
                        .ofFolder("in-no-set"));
        assertEquals(List.of(), Judged.folder("", drills).ofFolder("in-no-set"));
    }

    /** Found by trying titles one after another in another language: their marks are both 9KHY-JJ4T. */
    @Test
    void two_drills_whose_marks_happen_to_be_one_are_found() {
        String steps = "\nsteps: []";
        Map<String, String> drills = Map.of("a", "title: Drill 18906" + steps, "b", "title: Drill 164564" + steps);
        assertEquals(
                List.of("b.yaml error 1:8 'Drill 164564'"),
                Judged.folder("", drills).ofFolder("same-print-mark"));
    }

    @Test
    void a_copy_is_told_of_once() {
        assertEquals(
                List.of(), Judged.folder("", Map.of("a", ADVANCE, "b", ADVANCE)).ofFolder("same-print-mark"));
        assertEquals(
                List.of("b.yaml error 1:8 'An example'"),
                Judged.folder("", Map.of("a", "steps: []", "b", "title: An example\nsteps: []"))
                        .ofFolder("same-print-mark"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "stick it    | extend | ''",
                "pop         | étends | ''",
                "bunny dash  | jump forward | ''",
                "brain lid   | mask   | ''",
                "stick it    | exxtend | 'exxtend' contains unknown words, so 'stick it' means nothing.",
                "stick it    | parez lunge | 'parez lunge' contains unknown words, so 'stick it' means nothing.",
                "thrust      | Thrust | 'thrust' is read as 'Thrust' without this entry.",
                "break ground| retreat | 'break ground' is read as 'retreat' without this entry.",
                "softly      | lunge  | 'softly' says how a thing is done, whatever the thing; it cannot mean 'lunge'.",
                "'!'         | lunge  | There are no words in '!: lunge'.",
            })
    void own_words_stand_for_known_ones_and_change_something(String say, String means, String what) {
        String school = "words:\n  '" + say + "': '" + means + "'\n";
        List<String> found = Judged.folder(school, Map.of("a", ADVANCE)).saidOfFolder("own-word-without-effect");
        assertEquals(what.isEmpty() ? List.of() : List.of(what), found);
    }
}
