package org.drillwright.meaning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Height;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;
import org.drillwright.notation.Target;
import org.drillwright.notation.Width;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The short form of actions, as docs/language.md of core tells it. A form of the program; no fact of the trade. */
class ActionTextTest {

    private static Action action(String text) {
        List<Meant> meant = ActionText.read(text);
        assertEquals(1, meant.size(), text);
        return ((Meant.Does) meant.get(0)).action();
    }

    /** Written in the order in which the program writes it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "step advance 1",
                "step cross-back 12",
                "lunge",
                "lunge half chest",
                "lunge fleche high inside",
                "recover",
                "recover forward sixte apart",
                "guard",
                "guard quarte engaged",
                "guard quarte engaged on-sixte",
                "place octave",
                "place octave lunged",
                "hold",
                "hold sixte apart",
                "wait",
                "receive",
                "yield",
                "follow",
                "withdraw",
                "stand",
                "evade",
                "evade ducked",
                "evade leg",
                "salute",
                "mask on",
                "mask off",
                "strike riposte direct high inside chest",
                "strike attack cut-over low flank cut feint",
                "strike attack false opposition",
                "strike extension",
                "parry",
                "parry sixte circular",
                "parry half-circular low outside lunged",
                "blade beat quarte",
                "blade change sixte high inside",
                "blade press-back",
                "invite high outside",
                "invite flank sixte",
                "state lunge-distance engaged",
                "state out",
                "state apart",
                "aside",
                "aside acknowledge"
            })
    void a_short_form_is_written_as_it_was_read(String text) {
        assertEquals(text, ActionText.of(action(text)));
    }

    @Test
    void each_word_goes_to_its_part() {
        assertEquals(
                new Action.Strike(
                        Action.Role.RIPOSTE,
                        Action.Path.DISENGAGE,
                        new Aim(Optional.of(Height.LOW), Optional.of(Width.OUTSIDE), Optional.of(Target.FLANK)),
                        true,
                        false,
                        true,
                        false),
                action("strike false flank outside low cut disengage riposte same-line"));
        assertEquals(
                new Action.Recover(
                        Action.Way.FORWARD,
                        new Stance(Optional.of(Position.QUARTE), Optional.of(true), Optional.of(Position.QUARTE))),
                action("recover engaged forward quarte"));
        assertEquals(new Action.Step(Action.Foot.RETREAT, 2), action("step 2 retreat"));
        assertEquals(new Action.Step(Action.Foot.RETREAT, 1), action("step retreat"));
        assertEquals(new Action.Lunge(Action.Depth.FULL, Aim.UNSTATED), action("lunge full"));
        assertEquals(new Action.Mask(true), action("mask"));
    }

    @Test
    void a_place_that_says_how_the_blades_stand_is_a_guard() {
        assertEquals(action("guard sixte engaged"), action("place sixte engaged"));
        assertEquals(action("guard"), action("place"));
    }

    @Test
    void an_engagement_that_is_named_alone_is_where_the_hand_is() {
        assertEquals(
                new Action.OnGuard(
                        new Stance(Optional.of(Position.SIXTE), Optional.of(true), Optional.of(Position.SIXTE))),
                action("guard engaged on-sixte"));
        assertEquals(
                new Action.OnGuard(new Stance(Optional.of(Position.SIXTE), Optional.of(false), Optional.empty())),
                action("guard apart on-sixte"));
    }

    @Test
    void a_guard_with_a_measure_is_two() {
        assertEquals(
                List.of(
                        new Meant.Does(action("guard sixte")),
                        new Meant.Does(new Action.State(Optional.of(Measure.LUNGE), Stance.UNSTATED))),
                ActionText.read("guard sixte lunge-distance"));
    }

    @ParameterizedTest
    @CsvSource({"inside, INSIDE_CHEEK", "outside, OUTSIDE_CHEEK"})
    void a_side_of_the_cheek_is_a_target_of_its_own(String side, Target cheek) {
        assertEquals(
                new Action.Lunge(Action.Depth.FULL, new Aim(Optional.empty(), Optional.empty(), Optional.of(cheek))),
                action("lunge cheek " + side));
        assertEquals(
                new Aim(Optional.empty(), Optional.of(Width.INSIDE), Optional.of(Target.FLANK)),
                ((Action.Lunge) action("lunge flank inside")).aim());
    }

    @Test
    void what_completes_another_action_is_none_by_itself() {
        Aim low = new Aim(Optional.of(Height.LOW), Optional.empty(), Optional.empty());
        assertEquals(List.of(new Meant.Lands(low, true)), ActionText.read("hit low"));
        assertEquals(List.of(new Meant.Lands(low, false)), ActionText.read("aim low"));
        assertEquals(List.of(new Meant.Again(Optional.of(Position.SIXTE), low)), ActionText.read("again sixte low"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"dance", "step", "step 2", "strike direct", "blade quarte", "parry quarte frobly", "salute twice"
            })
    void a_word_that_is_of_no_action_is_refused(String text) {
        assertThrows(IllegalArgumentException.class, () -> ActionText.read(text));
    }

    @Test
    void what_was_not_read_has_a_short_form_too() {
        assertEquals("unread", ActionText.of(new Action.Unread("frobly")));
    }
}
