package org.drillwright.check.mutation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.check.mutation.Scene.At;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action;
import org.drillwright.notation.Measure;
import org.drillwright.notation.MeasureCue;
import org.drillwright.notation.Target;
import org.drillwright.reading.TurnReader;

/** Feet and measures that do not fit together. */
final class FeetSpoils {

    private FeetSpoils() {}

    static Stream<Mutant> dropRecovery(Scene scene) {
        return scene.turns()
                .filter(at -> scene.isOnTheLunge(at) && !scene.lunges(at))
                .filter(at -> scene.does(at, Action.Recover.class) || scene.does(at, Action.OnGuard.class))
                .map(at -> Mutant.turn(scene, at, "Hold the lunge.", unrecovered(scene, at)));
    }

    private static Expected[] unrecovered(Scene scene, At at) {
        List<Expected> expected = new ArrayList<>();
        expected.add(Expected.at("no-true-distance", at.step()));
        expected.add(Expected.at("not-back-at-start", scene.counts() - 1));
        IntStream.range(at.step() + 1, scene.counts())
                .filter(step -> {
                    At then = new At(step, at.side());
                    return scene.lunges(then)
                            || scene.does(then, Action.Step.class)
                            || scene.parry(then).isPresent();
                })
                .findFirst()
                .ifPresent(step -> expected.add(Expected.at("lunge-not-recovered", step)));
        return expected.toArray(Expected[]::new);
    }

    static Stream<Mutant> advanceOnLunge(Scene scene) {
        return scene.turns()
                .filter(scene::isOnTheLunge)
                .filter(at -> scene.does(at, Action.Answer.class) && !scene.does(at, Action.Recover.class))
                .filter(at -> !scene.does(at, Action.OnGuard.class))
                .map(at -> Mutant.turn(scene, at, "Advance.", Expected.at("lunge-not-recovered", at.step())));
    }

    static Stream<Mutant> recoverTooSoon(Scene scene) {
        return scene.partnerTurns()
                .filter(scene::isOnTheLunge)
                .filter(at -> scene.does(at, Action.Answer.class) && !scene.does(at, Action.OnGuard.class))
                .filter(at -> !scene.does(at, Action.Recover.class))
                .filter(at -> scene.ripostes(at.partner()) && !scene.lunges(at.partner()))
                .filter(at -> !scene.does(at.partner(), Action.Step.class) && !scene.isOnTheLunge(at.partner()))
                .map(at -> Mutant.turn(
                                scene, at, "Recover backward on guard.", Expected.at("too-far-or-too-near", at.step()))
                        .harmlessIf(scene.drill().weapon() == Weapon.EPEE
                                && scene.strike(at.partner())
                                        .flatMap(strike -> strike.aim().target())
                                        .filter(Target::isOfTheArm)
                                        .isPresent()));
    }

    static Stream<Mutant> shiftMeasure(Scene scene) {
        if (!scene.isPartnerDrill()) {
            return Stream.empty();
        }
        List<Expected> expected = new ArrayList<>(List.of(Expected.at("no-true-distance", 0)));
        scene.firstAttack().ifPresent(at -> expected.add(Expected.at("too-far-or-too-near", at.step())));
        return Words.swapped(scene.drill().start(), Words.MEASURES).stream()
                .map(start -> Mutant.spoilt(
                                "start: " + start, scene.redraft().start(start), expected.toArray(Expected[]::new))
                        .harmlessIf(scene.begins(Measure.ADVANCE_LUNGE)));
    }

    static Stream<Mutant> wrongCue(Scene scene) {
        return IntStream.range(0, scene.counts()).mapToObj(step -> {
            String cue = farFrom(scene.drill().steps().get(step).distance());
            return Mutant.spoilt(
                            "distance at " + (step + 1) + ": " + cue,
                            scene.redraft().distance(step, cue),
                            Expected.at("no-true-distance", step))
                    .harmlessIf(isUncounted(scene, step));
        });
    }

    static Stream<Mutant> oneStepMore(Scene scene) {
        return scene.partnerTurns()
                .filter(at -> scene.onlyStep(at)
                        .filter(step -> step.foot() == Action.Foot.ADVANCE || step.foot() == Action.Foot.RETREAT)
                        .isPresent())
                .map(at -> Mutant.turn(
                                scene,
                                at,
                                scene.stepsBack(at) ? "Retreat two steps." : "Advance two steps.",
                                Expected.at("no-true-distance", at.step()),
                                Expected.at("no-true-distance", at.step() + 1),
                                Expected.at("too-far-or-too-near", at.step() + 1),
                                Expected.at("not-back-at-start", scene.counts() - 1))
                        .harmlessIf(isUncounted(scene, at.step())));
    }

    /** @param written in any language */
    private static String farFrom(String written) {
        String cue = TurnReader.standard()
                .cue(written, "en")
                .map(MeasureCue::toString)
                .orElse(written);
        return cue.contains("out") || cue.contains("advance-lunge")
                ? "close"
                : cue.contains("lunge") ? "out" : "advance-lunge";
    }

    /** Since the start, or since a measure was last stated, a foot action of unknown length was made. */
    private static boolean isUncounted(Scene scene, int until) {
        return scene.turns()
                .filter(at -> at.step() <= until)
                .map(at -> scene.words(at).toLowerCase(Locale.ROOT))
                .anyMatch(words -> words.contains("half step")
                        || words.contains("half lunge")
                        || words.contains("flèche")
                        || words.contains("fleche"));
    }
}
