package org.drillwright.print.diagram;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Hands;
import org.drillwright.model.Language;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Line;
import org.drillwright.notation.Measure;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Fact;
import org.drillwright.phrase.Feet;
import org.drillwright.phrase.Fencer;
import org.drillwright.phrase.Range;
import org.drillwright.phrase.State;
import org.drillwright.print.pose.Aimed;
import org.drillwright.print.pose.Closing;
import org.drillwright.print.pose.Scene;
import org.drillwright.print.pose.Threat;

/** What the signs in pictures mean, each beside the sign as it is drawn there. */
public final class Legend {

    private static final Closing QUARTE = new Closing(true, Set.of(Line.HIGH_INSIDE), Set.of(), Optional.empty());

    private final Words words;

    private Legend(Language language) {
        this.words = Words.in(language);
    }

    public static List<Sample> in(Language language) {
        return new Legend(language).samples();
    }

    private List<Sample> samples() {
        return List.of(
                plan("people", standing(Range.of(Measure.EXTENSION), Feet.LUNGED)),
                plan("measure", standing(Range.of(Measure.ADVANCE_LUNGE), Feet.ON_GUARD)),
                lines("lines", new Aimed(true, Optional.empty(), Closing.NONE, false), false),
                lines("sabre", new Aimed(true, Optional.empty(), Closing.NONE, false), true),
                lines("stroke", new Aimed(true, threat(Line.LOW_OUTSIDE, true), Closing.NONE, false), false),
                lines("feint", new Aimed(true, threat(Line.LOW_OUTSIDE, false), Closing.NONE, false), false),
                lines("closed", new Aimed(true, threat(Line.HIGH_INSIDE, true), QUARTE, false), false),
                lines("round", new Aimed(true, threat(Line.HIGH_OUTSIDE, true), QUARTE, true), false),
                lines("unknown", new Aimed(false, Optional.empty(), unknown(), false), false));
    }

    private Sample plan(String key, State state) {
        Scene scene = Scene.standing(Weapon.FOIL, Hands.SAME, true, state);
        return new Sample(
                words.text("legend." + key), Pad.WIDTH, PlanSketch.HEIGHT, pad -> PlanSketch.draw(scene, pad));
    }

    private Sample lines(String key, Aimed aimed, boolean sabre) {
        return new Sample(
                words.text("legend." + key), Target.SIZE, Target.SIZE, pad -> TargetSketch.draw(aimed, sabre, pad));
    }

    private static Optional<Threat> threat(Line line, boolean meant) {
        Attack attack = new Attack(
                Fact.of(line), line.height(), Optional.empty(), Role.ATTACK, meant, !meant, false, false, false, 0);
        return Optional.of(new Threat(attack, Range.of(Measure.LUNGE), new AttackEnd.UnderWay()));
    }

    private static Closing unknown() {
        return new Closing(false, Set.of(), Set.of(), Optional.empty());
    }

    private static State standing(Range measure, Feet leader) {
        State still = State.atAttention();
        return new State(
                fencer(leader),
                fencer(Feet.ON_GUARD),
                measure,
                still.engagement(),
                still.onLeader(),
                still.onFollower(),
                still.parried(),
                Optional.empty());
    }

    private static Fencer fencer(Feet feet) {
        Fencer still = Fencer.atAttention();
        return new Fencer(
                Fact.of(feet),
                false,
                still.hand(),
                still.covers(),
                Fact.of(feet == Feet.LUNGED),
                still.point(),
                false,
                Fact.of(true));
    }
}
