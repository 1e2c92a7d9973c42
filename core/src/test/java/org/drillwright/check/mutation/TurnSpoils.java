package org.drillwright.check.mutation;

import java.util.List;
import java.util.stream.Stream;
import org.drillwright.check.mutation.Scene.At;
import org.drillwright.notation.Action;

/** Turns left out, answered wrongly, or asked too much of. */
final class TurnSpoils {

    private TurnSpoils() {}

    static Stream<Mutant> holdUnderAttack(Scene scene) {
        return scene.partnerTurns()
                .filter(at -> scene.attacks(at.partner()) && scene.strike(at).isEmpty())
                .filter(at -> scene.parry(at).isPresent()
                        || scene.does(at, Action.Evade.class)
                        || (scene.stepsBack(at) && !scene.does(at, Action.Answer.class)))
                .map(at -> Mutant.turn(
                        scene,
                        at,
                        scene.isOnTheLunge(at) ? "Hold the lunge." : "Hold on guard.",
                        Expected.at("attack-unanswered", at.step())));
    }

    static Stream<Mutant> missTurn(Scene scene) {
        return scene.turns()
                .map(at -> Mutant.spoilt(
                        at + ": left out",
                        scene.redraft().turn(at.step(), at.side(), ""),
                        Expected.at("turn-missing", at.step())));
    }

    static Stream<Mutant> riposteWithoutParry(Scene scene) {
        return scene.partnerTurns()
                .filter(at -> scene.parry(at).isPresent() && scene.strike(at).isEmpty())
                .filter(at -> scene.ripostes(at.next()))
                .map(at ->
                        Mutant.turn(scene, at, "Take the touch.", Expected.at("riposte-without-parry", at.step() + 1)));
    }

    static Stream<Mutant> twoLunges(Scene scene) {
        String words = scene.isSabre()
                ? "Cut to the head with a lunge."
                : "Straight thrust to the low inside line with a lunge.";
        return scene.partnerTurns()
                .filter(at -> scene.attacks(at.partner()) && scene.lunges(at.partner()))
                .filter(at -> !scene.lunges(at) && !scene.isOnTheLunge(at))
                .map(at -> Mutant.turn(scene, at, words, Expected.at("both-lunge-at-once", at.step())));
    }

    static Stream<Mutant> choice(Scene scene) {
        return scene.partnerTurns()
                .map(at -> Mutant.turn(
                                scene,
                                at,
                                withoutStop(scene.words(at)) + orHold(scene, at),
                                Expected.at("choice-left-open", at.step()))
                        .harmlessIf(scene.isFree()));
    }

    private static String orHold(Scene scene, At at) {
        return switch (scene.language(at)) {
            case "fr" -> " ou attendez.";
            case "it" -> " o aspetta.";
            case "es" -> " o espere.";
            case "de" -> " oder warte.";
            default -> " or hold.";
        };
    }

    static Stream<Mutant> secondAction(Scene scene) {
        List<Class<? extends Action>> still = List.of(Action.Answer.class, Action.State.class, Action.Aside.class);
        return scene.partnerTurns()
                .map(at -> Mutant.turn(
                                scene,
                                at,
                                withoutStop(scene.words(at)) + thenJump(scene, at),
                                Expected.at("too-much-in-a-count", at.step()))
                        .harmlessIf(scene.isFree() || scene.doesOnly(at, still) || scene.prepares(at)));
    }

    private static String thenJump(Scene scene, At at) {
        return switch (scene.language(at)) {
            case "fr" -> isTold(scene.words(at)) ? ", puis saute en avant." : ", puis sautez en avant.";
            case "it" -> ", poi salta avanti.";
            case "es" -> ", y luego salte adelante.";
            case "de" -> ", dann springe vor.";
            default -> ", then jump forward.";
        };
    }

    /** Whether a French turn tells what somebody does. */
    private static boolean isTold(String words) {
        return words.matches("(?i)(.*\\P{L})?il .*");
    }

    private static String withoutStop(String words) {
        return words.replaceFirst("[.!]$", "");
    }
}
