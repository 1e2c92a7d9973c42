package org.drillwright.meaning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.grammar.Argument;
import org.drillwright.grammar.Sense;
import org.drillwright.lexicon.Features;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Frames as docs/language.md of core tells them, in small tables of their own. A form of the program; no fact of the trade. */
class FramesTest {

    private static final Frames FRAMES = table();

    private static Frames table() {
        return Frames.read(List.of(
                "# a remark",
                "loose num sg",
                "named rise => recover ; guard sixte",
                "named nothing =>",
                "PARRY : obj:POS? adv:ADV[!w]? with:ACTN! => parry $pos? $kind?",
                "PARRY : obj:POS? => parry $pos? $kind?",
                "PARRY[inl] : obj:POS? => parry $pos? lunged @-.5",
                "PARRY[cl] : => parry quarte @1",
                "PARRY[cl] : => parry sixte @.2",
                "STEP : obj:STEPN! obj:QTY? => step $foot $n/1",
                "BEAT|PRESS[hard] : ~:BLADE! => blade $concept",
                "CARRY : by:GER => &parry",
                "LET : obj:GER => &",
                "WATCH : ~:ABOUT|PERSON[who=other]! => aside",
                "GUARD : in:POS => guard on-$pos? engaged",
                "MOVE : obj:AIM => strike $role/attack $path/- $h?"));
    }

    private static Features features(String words) {
        return Features.parse(words.isEmpty() ? List.of() : Arrays.asList(words.split(" ")));
    }

    private static Argument<Meant> argument(String relation, String sort, String words, Meant... meant) {
        return new Argument<>(relation, sort, features(words), List.of(meant));
    }

    @SafeVarargs
    private static List<String> meant(String head, Argument<Meant>... arguments) {
        List<Argument<Meant>> all = new ArrayList<>();
        for (Argument<Meant> one : arguments) {
            all.add(one);
        }
        return table().of(features(head), all).stream()
                .flatMap(one -> one.meant().stream())
                .map(one -> one instanceof Meant.Does does ? ActionText.of(does.action()) : one.toString())
                .toList();
    }

    @Test
    void blanks_are_filled_from_head_and_arguments() {
        assertEquals(
                List.of("parry quarte circular"), meant("c=PARRY kind=circular", argument("obj", "POS", "pos=quarte")));
        assertEquals(List.of("parry"), meant("c=PARRY"));
        assertEquals(List.of("step retreat 1"), meant("c=STEP foot=retreat", argument("obj", "STEPN", "x=y")));
        assertEquals(
                List.of("step retreat 3"),
                meant("c=STEP foot=retreat", argument("obj", "STEPN", ""), argument("obj", "QTY", "n=3")));
        assertEquals(List.of("blade beat"), meant("c=BEAT", argument("against", "BLADE", "")));
        assertEquals(List.of("guard quarte engaged"), meant("c=GUARD", argument("in", "POS", "pos=quarte")));
        assertEquals(List.of("guard engaged"), meant("c=GUARD", argument("in", "POS", "")));
    }

    @Test
    void a_blank_takes_the_first_that_is_there() {
        assertEquals(List.of("strike attack"), meant("c=MOVE", argument("obj", "AIM", "")));
        assertEquals(
                List.of("strike riposte disengage low"),
                meant("c=MOVE role=riposte path=disengage", argument("obj", "AIM", "h=low")));
        assertEquals(List.of("strike attack"), meant("c=MOVE role=none", argument("obj", "AIM", "")));
    }

    @Test
    void a_feature_that_must_be_there_and_is_not_leaves_no_meaning() {
        assertEquals(List.of(), meant("c=STEP", argument("obj", "STEPN", "")));
    }

    @Test
    void whatever_is_consumed_must_be_used() {
        assertEquals(List.of(), meant("c=PARRY", argument("obj", "POS", "pos=quarte h=high")));
        assertEquals(List.of(), meant("c=PARRY h=high", argument("obj", "POS", "pos=quarte")));
        assertEquals(List.of("parry quarte"), meant("c=PARRY sg", argument("obj", "POS", "pos=quarte num=pl")));
        assertEquals(
                List.of(),
                meant("c=STEP foot=gain", argument("obj", "STEPN", ""), argument("obj", "QTY", "n=2 h=low")));
    }

    @Test
    void what_is_only_looked_at_need_not_be_said() {
        assertEquals(
                List.of("parry quarte"),
                meant("c=PARRY", argument("obj", "POS", "pos=quarte"), argument("with", "ACTN", "h=high")));
    }

    @Test
    void an_argument_that_is_needed_must_be_there_and_none_may_be_left_over() {
        assertEquals(List.of(), meant("c=STEP foot=gain"));
        assertEquals(List.of(), meant("c=STEP foot=gain", argument("obj", "QTY", "n=2")));
        assertEquals(List.of(), meant("c=BEAT", argument("obj", "POS", "")));
        assertEquals(List.of(), meant("c=STEP foot=gain", argument("obj", "STEPN", ""), argument("obj", "STEPN", "")));
        assertEquals(List.of(), meant("c=BEAT", argument("with", "BLADE", "")));
    }

    @Test
    void two_values_for_one_feature_have_no_meaning() {
        assertEquals(List.of(), meant("c=PARRY pos=sixte", argument("obj", "POS", "pos=quarte")));
    }

    @Test
    void conditions_of_heads_and_arguments_hold() {
        assertEquals(List.of(), meant("c=PRESS", argument("obj", "BLADE", "")));
        assertEquals(List.of("blade press"), meant("c=PRESS hard", argument("obj", "BLADE", "")));
        assertTrue(table().mayTake(features("c=WATCH"), List.of(argument("for", "PERSON", "who=other"))));
        assertFalse(table().mayTake(features("c=WATCH"), List.of(argument("for", "PERSON", "who=self"))));
        assertFalse(table().mayTake(features("c=PRESS"), List.of(argument("obj", "BLADE", ""))));
        assertFalse(table().mayTake(features("c=DANCE"), List.of()));
        assertFalse(table().mayTake(
                        features("c=BEAT"), List.of(argument("obj", "BLADE", ""), argument("obj", "BLADE", ""))));
    }

    @Test
    void the_cheapest_of_several_frames_is_taken() {
        assertEquals(List.of("parry quarte lunged"), meant("c=PARRY inl", argument("obj", "POS", "pos=quarte")));
        assertEquals(-.5, table().of(features("c=PARRY inl"), List.of()).get(0).weight());
        assertEquals(List.of("parry sixte"), meant("c=PARRY cl"));
        assertEquals(1, table().of(features("c=PARRY"), List.of()).size());
    }

    @Test
    void an_argument_that_is_an_action_is_carried() {
        Meant place = ActionText.read("place octave lunged").get(0);
        Meant lunge = ActionText.read("lunge").get(0);
        assertEquals(List.of("place octave lunged"), meant("c=LET", argument("obj", "GER", "any=thing", place)));
        assertEquals(
                List.of("parry octave lunged", "lunge"), meant("c=CARRY", argument("by", "GER", "", place, lunge)));
    }

    @Test
    void an_aside_plays_nothing() {
        List<Sense.Sensed<Meant>> found =
                table().of(features("c=WATCH"), List.of(argument("obj", "ABOUT", "any=thing")));
        assertEquals(1, found.size());
        assertEquals(List.of(), found.get(0).meant());
    }

    @Test
    void constructions_mean_what_is_named() {
        assertEquals(
                Stream.of("recover", "guard sixte")
                        .flatMap(text -> ActionText.read(text).stream())
                        .toList(),
                table().named("rise"));
        assertEquals(List.of(), table().named("nothing"));
        assertThrows(IllegalArgumentException.class, () -> table().named("fall"));
        assertEquals(Set.of("rise", "nothing"), table().names());
    }

    @Test
    void what_is_told_as_done_is_told_so_once() {
        List<Meant> lunge = ActionText.read("lunge");
        List<Meant> had = table().had(lunge);
        assertEquals(List.of(new Meant.Had(lunge.get(0))), had);
        assertEquals(had, table().had(had));
    }

    @Test
    void the_table_tells_what_it_holds() {
        assertEquals(12, FRAMES.lines().size());
        assertEquals("PARRY : obj:POS? => parry $pos? $kind?", FRAMES.lines().get(1));
        assertEquals(
                Set.of("PARRY", "STEP", "BEAT", "PRESS", "CARRY", "LET", "WATCH", "GUARD", "MOVE"), FRAMES.concepts());
    }

    @ParameterizedTest
    @ValueSource(strings = {"PARRY => parry", "PARRY : obj:POS", "=> parry PARRY : ", "PARRY : obj => parry"})
    void a_line_that_is_no_frame_is_refused(String line) {
        assertThrows(IllegalArgumentException.class, () -> Frames.read(List.of(line)));
    }
}
