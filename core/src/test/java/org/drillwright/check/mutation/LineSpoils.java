package org.drillwright.check.mutation;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.drillwright.check.mutation.Scene.At;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action;
import org.drillwright.notation.Target;

/** Strokes and parries sent to where they do not belong. */
final class LineSpoils {

    private LineSpoils() {}

    static Stream<Mutant> swapLine(Scene scene, Map<String, String> table) {
        return scene.partnerTurns()
                .filter(at -> scene.strike(at).isPresent() && !isIndirect(scene, at))
                .filter(at -> scene.parryPosition(at.partner()).isPresent())
                .flatMap(at -> Words.swapped(scene.words(at), table).stream()
                        .map(words -> Mutant.turn(
                                        scene,
                                        at,
                                        words,
                                        Expected.at("parry-misses", at.step()),
                                        Expected.at("attack-into-closed-line", at.step()),
                                        Expected.at("wrong-way-past-blade", at.step()))
                                .harmlessIf(scene.cedes(at.partner())
                                        || scene.parryPosition(at.partner())
                                                .filter(scene::schoolsDiffer)
                                                .isPresent())));
    }

    private static boolean isIndirect(Scene scene, At at) {
        return scene.strike(at)
                .map(Action.Strike::path)
                .filter(path -> path == Action.Path.DISENGAGE
                        || path == Action.Path.CUT_OVER
                        || path == Action.Path.COUNTER_DISENGAGE
                        || path == Action.Path.ONE_TWO
                        || path == Action.Path.DOUBLE)
                .isPresent();
    }

    static Stream<Mutant> disengageToSameSide(Scene scene) {
        return scene.partnerTurns()
                .filter(at -> isIndirect(scene, at))
                .flatMap(at -> Words.swapped(scene.words(at), Words.SIDES).stream()
                        .map(words -> Mutant.turn(
                                        scene,
                                        at,
                                        words,
                                        Expected.at("wrong-way-past-blade", at.step()),
                                        Expected.at("attack-into-closed-line", at.step()),
                                        Expected.at("parry-misses", at.step()))
                                .harmlessIf(scene.isSabre() || followsCircle(scene, at))));
    }

    private static boolean followsCircle(Scene scene, At at) {
        At before = new At(at.step() - 1, at.side().other());
        return at.step() > 0
                && scene.parry(before)
                        .filter(parry -> parry.kind() == Action.ParryKind.CIRCULAR)
                        .isPresent()
                && scene.strike(before.partner()).filter(Action.Strike::feint).isPresent();
    }

    static Stream<Mutant> wrongParry(Scene scene) {
        Map<String, String> table = scene.isSabre() ? Words.SABRE_POSITIONS : Words.POSITIONS;
        return scene.partnerTurns()
                .filter(at -> scene.parryPosition(at).isPresent())
                .flatMap(at -> inParry(scene, at, words -> Words.swapped(words, table)).stream()
                        .map(words -> Mutant.turn(scene, at, words, Expected.at("parry-misses", at.step()))
                                .harmlessIf(scene.cedes(at) || isAtArm(scene, at.partner()))));
    }

    /** The turn with the words of its parry changed, and no others. */
    private static Optional<String> inParry(Scene scene, At at, Function<String, Optional<String>> change) {
        String turn = scene.words(at);
        return scene.parryWords(at)
                .flatMap(span -> change.apply(turn.substring(span.start(), span.end()))
                        .map(words -> turn.substring(0, span.start()) + words + turn.substring(span.end())));
    }

    private static boolean isAtArm(Scene scene, At at) {
        return scene.strike(at)
                .map(Action.Strike::aim)
                .filter(aim -> aim.target().filter(Target::isOfTheArm).isPresent())
                .filter(aim -> aim.height().isEmpty())
                .isPresent();
    }

    static Stream<Mutant> circular(Scene scene) {
        return scene.partnerTurns()
                .filter(at -> scene.parry(at)
                        .filter(parry -> parry.kind() == Action.ParryKind.UNSTATED)
                        .filter(parry -> parry.position().isPresent())
                        .isPresent())
                .flatMap(at -> inParry(scene, at, words -> circularWords(words, scene.language(at))).stream()
                        .map(words -> Mutant.turn(scene, at, words, Expected.at("parry-misses", at.step()))));
    }

    private static Optional<String> circularWords(String words, String language) {
        String name = switch (language) {
            case "fr" -> "contre de $1";
            case "it" -> "contro di $1";
            case "es" -> "contra de $1";
            case "de" -> "Kreis$1";
            default -> "circular $1";
        };
        String made = words.replaceFirst(
                "(?<!\\p{L})(quarte|carte|sixte|tierce|octave|septime|seconde|prime|quinte|quarta|sesta|terza|seconda|quinta|cuarta|sexta|tercera|segunda|Quart|Sixt|Terz|Oktav|Septim|Sekond|Prim|Quint)",
                name);
        return made.equals(words) ? Optional.empty() : Optional.of(made);
    }

    static Stream<Mutant> offTarget(Scene scene) {
        String target = scene.isSabre()
                ? "(inside cheek|outside cheek|head|chest|flank|inside|outside|arm)"
                : "(high|low) (inside|outside)( line)?";
        return scene.partnerTurns()
                .filter(at -> scene.strike(at).isPresent())
                .filter(at -> !scene.words(at).toLowerCase(Locale.ROOT).contains("parry"))
                .flatMap(at -> {
                    String words = scene.words(at).replaceFirst(target, "thigh");
                    return words.equals(scene.words(at))
                            ? Stream.empty()
                            : Stream.of(Mutant.turn(scene, at, words, Expected.at("off-target", at.step())));
                })
                .map(mutant -> mutant.harmlessIf(scene.drill().weapon() == Weapon.EPEE));
    }
}
