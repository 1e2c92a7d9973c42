package org.drillwright.check.mutation;

import java.util.stream.Stream;
import org.drillwright.check.mutation.Scene.At;

/** What keeps people whole, left out. */
final class CareSpoils {

    private CareSpoils() {}

    static Stream<Mutant> bareFace(Scene scene) {
        if (!scene.isPartnerDrill()) {
            return Stream.empty();
        }
        Expected[] expected = scene.firstStrike().stream()
                .map(at -> Expected.at("mask-off-in-reach", at.step()))
                .toArray(Expected[]::new);
        return Words.without(scene.drill().opening(), "mas[kqc]").stream()
                .map(opening -> Mutant.spoilt(
                                "opening: " + opening, scene.redraft().opening(opening), expected)
                        .harmlessIf(expected.length == 0));
    }

    static Stream<Mutant> noSafetyNote(Scene scene) {
        return scene.partnerTurns()
                .filter(at -> scene.strike(at).isPresent())
                .map(At::step)
                .distinct()
                .map(step -> Mutant.spoilt(
                        "no safety note at " + (step + 1),
                        scene.redraft().safety(step, ""),
                        Expected.at("safety-note-missing", step)));
    }

    static Stream<Mutant> noGear(Scene scene) {
        if (!scene.isPartnerDrill()) {
            return Stream.empty();
        }
        boolean touches = scene.firstAttack().isPresent();
        return scene.drill().gear().stream()
                .filter(item -> item.matches("(sabre )?(mask|glove)|jacket") || (touches && item.contains("underarm")))
                .map(item -> Mutant.spoilt(
                                "gear without " + item,
                                scene.redraft()
                                        .gear(scene.drill().gear().stream()
                                                .filter(other -> !other.equals(item))
                                                .toList()),
                                Expected.outside("gear-missing"))
                        .harmlessIf(scene.firstStrike().isEmpty()));
    }

    static Stream<Mutant> noSalute(Scene scene) {
        Stream<Mutant> opening = Words.without(scene.drill().opening(), "salu").stream()
                .map(words -> Mutant.spoilt(
                        "opening: " + words, scene.redraft().opening(words), Expected.outside("salute-missing")));
        Stream<Mutant> closing = Words.without(scene.drill().closing(), "salu").stream()
                .map(words -> Mutant.spoilt(
                        "closing: " + words, scene.redraft().closing(words), Expected.outside("salute-missing")));
        return Stream.concat(opening, closing);
    }
}
