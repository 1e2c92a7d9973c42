package org.drillwright.check.mutation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.check.mutation.Scene.At;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action;
import org.drillwright.notation.Target;

/**
 * The ways of spoiling a drill. What each does, when what it makes is harmless and what notices it were written down
 * before any of them was tried; {@code core/docs/mutations.md} prints these texts beside what came of them.
 */
final class Operators {

    static final List<Operator> ALL = List.of(
            new Operator(
                    "swap the side",
                    "A plain stroke that a named parry meets on the same count goes to the other side (inside, outside; at"
                            + " sabre another target).",
                    "The parry's line differs between schools (prime, quinte; at sabre prime and seconde), or it cedes to a"
                            + " bind, so that where it ends depends on the blade.",
                    "parry-closes, for the parry no longer ends there; open-line, where the partner's guard stands in the new"
                            + " line; line-change, where the stroke is a straight riposte that would have to pass the blade.",
                    scene -> swapLine(scene, scene.isSabre() ? Words.SABRE_TARGETS : Words.SIDES)),
            new Operator(
                    "swap the height",
                    "A plain thrust that a named parry meets on the same count goes to the other height (high, low).",
                    "As for the side.",
                    "parry-closes, open-line or line-change, as for the side.",
                    scene -> scene.isSabre() ? Stream.empty() : swapLine(scene, Words.HEIGHTS)),
            new Operator(
                    "disengage to the same side",
                    "A disengage, cut-over, counter-disengage, one-two or double with a named line ends on the other side.",
                    "At sabre, where targets are parted otherwise; behind a feint that a circular parry followed, where going"
                            + " round again comes to either side.",
                    "line-change, for it ends where its definition does not lead; open-line or parry-closes, where the guard"
                            + " or the parry already answers for the line.",
                    Operators::disengageToSameSide),
            new Operator(
                    "wrong parry",
                    "The position of a parry becomes one that closes another line.",
                    "A ceding parry, or a stroke at the arm that names no line.",
                    "parry-closes.",
                    Operators::wrongParry),
            new Operator(
                    "parry into its circular",
                    "A parry that names no kind is called circular.",
                    "Never.",
                    "parry-closes, for a circular parry starts in its own position and meets the other line.",
                    Operators::circular),
            new Operator(
                    "hold under attack",
                    "A parry, an evasion or a step back that answers an attack becomes 'Hold on guard'.",
                    "The attack is a riposte: one whose attack was just parried may hold and be touched.",
                    "answer-to-attack.",
                    Operators::holdUnderAttack),
            new Operator(
                    "miss a turn",
                    "One side's turn is left out, on every count of every drill.",
                    "Never.",
                    "both-turns.",
                    Operators::missTurn),
            new Operator(
                    "riposte without parry",
                    "The parry before a riposte becomes 'Take the touch'.",
                    "Never.",
                    "riposte-after-parry on the count of the riposte.",
                    Operators::riposteWithoutParry),
            new Operator(
                    "drop a recovery",
                    "The turn in which somebody comes up from the lunge becomes 'Hold the lunge'.",
                    "Never.",
                    "distance-cue on that count, recover-first on the next count in which that side moves, or back-to-start"
                            + " on the last count.",
                    Operators::dropRecovery),
            new Operator(
                    "advance on the lunge",
                    "The turn of somebody who stays on the lunge becomes 'Advance'.",
                    "Never.",
                    "recover-first.",
                    Operators::advanceOnLunge),
            new Operator(
                    "recover too soon",
                    "Somebody on the lunge, who is about to be touched by a riposte without a lunge, recovers instead.",
                    "Épée at the hand or forearm, which is a foot action nearer.",
                    "in-reach, for the riposte now needs a lunge.",
                    Operators::recoverTooSoon),
            new Operator(
                    "two lunges",
                    "The answer to an attack with a lunge becomes an attack with a lunge.",
                    "The level is free and a caution speaks of it; no drill here has such a caution.",
                    "not-both-at-once.",
                    Operators::twoLunges),
            new Operator(
                    "off target",
                    "The line or target of a stroke becomes the thigh.",
                    "Épée, whose target is the whole body.",
                    "off-target.",
                    Operators::offTarget),
            new Operator(
                    "bare face",
                    "'Masks on' is taken out of the opening.",
                    "No point or edge goes at anybody in the drill.",
                    "mask-first on the count of the first stroke.",
                    Operators::bareFace),
            new Operator(
                    "shift the measure",
                    "The start is a foot action further away (drills for two).",
                    "Never.",
                    "distance-cue on the first count, or in-reach on the count of the first attack.",
                    Operators::shiftMeasure),
            new Operator(
                    "wrong cue",
                    "The distance cue names a measure two foot actions away from any that it named.",
                    "The measure cannot be counted there: after a half step, a half lunge or a flèche it is unknown until"
                            + " stated again.",
                    "distance-cue.",
                    Operators::wrongCue),
            new Operator(
                    "no safety note",
                    "The safety note of a count with a stroke at a person is left out.",
                    "Never.",
                    "safety-note.",
                    Operators::noSafetyNote),
            new Operator(
                    "no gear",
                    "One needed piece leaves the list (mask, jacket, glove; the underarm protector where touches are meant).",
                    "No point or edge goes at anybody in the drill.",
                    "gear-note.",
                    Operators::noGear),
            new Operator(
                    "no salute",
                    "The salute is taken out of the opening or of the closing.",
                    "Never.",
                    "salute-both-ends.",
                    Operators::noSalute),
            new Operator(
                    "a choice",
                    "'or hold' is put behind a turn of a drill for two.",
                    "The level's turns are free.",
                    "no-choice.",
                    Operators::choice),
            new Operator(
                    "a second action",
                    "', then jump forward' is put behind a turn of a drill for two.",
                    "The level's turns are free; the turn only holds, waits or receives, so that it has no action of its own.",
                    "one-thing-a-count.",
                    Operators::secondAction));

    private Operators() {}

    private static Mutant turn(Scene scene, At at, String words, Expected... expected) {
        return Mutant.spoilt(at + ": " + words, scene.redraft().turn(at.step(), at.side(), words), expected);
    }

    private static Stream<Mutant> swapLine(Scene scene, Map<String, String> table) {
        return scene.partnerTurns()
                .filter(at -> scene.strike(at).isPresent() && !isIndirect(scene, at))
                .filter(at -> scene.parryPosition(at.partner()).isPresent())
                .flatMap(at -> Words.swapped(scene.words(at), table).stream()
                        .map(words -> turn(
                                        scene,
                                        at,
                                        words,
                                        Expected.at("parry-closes", at.step()),
                                        Expected.at("open-line", at.step()),
                                        Expected.at("line-change", at.step()))
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

    private static Stream<Mutant> disengageToSameSide(Scene scene) {
        return scene.partnerTurns()
                .filter(at -> isIndirect(scene, at))
                .flatMap(at -> Words.swapped(scene.words(at), Words.SIDES).stream()
                        .map(words -> turn(
                                        scene,
                                        at,
                                        words,
                                        Expected.at("line-change", at.step()),
                                        Expected.at("open-line", at.step()),
                                        Expected.at("parry-closes", at.step()))
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

    private static Stream<Mutant> wrongParry(Scene scene) {
        Map<String, String> table = scene.isSabre() ? Words.SABRE_POSITIONS : Words.POSITIONS;
        return scene.partnerTurns()
                .filter(at -> scene.parryPosition(at).isPresent())
                .flatMap(at -> inParry(scene, at, words -> Words.swapped(words, table)).stream()
                        .map(words -> turn(scene, at, words, Expected.at("parry-closes", at.step()))
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

    private static Stream<Mutant> circular(Scene scene) {
        return scene.partnerTurns()
                .filter(at -> scene.parry(at)
                        .filter(parry -> parry.kind() == Action.ParryKind.UNSTATED)
                        .filter(parry -> parry.position().isPresent())
                        .isPresent())
                .flatMap(at -> inParry(scene, at, Operators::circularWords).stream()
                        .map(words -> turn(scene, at, words, Expected.at("parry-closes", at.step()))));
    }

    private static Optional<String> circularWords(String words) {
        String changed = words.replaceFirst(
                "(?<!\\p{L})(quarte|carte|sixte|tierce|octave|septime|seconde|prime|quinte)", "circular $1");
        String made = changed.equals(words)
                ? words.replaceFirst("(?<!\\p{L})(quarta|sesta|terza|seconda|quinta)", "contro di $1")
                : isFrench(words) ? changed.replace("circular ", "contre de ") : changed;
        return made.equals(words) ? Optional.empty() : Optional.of(made);
    }

    private static boolean isFrench(String words) {
        return words.startsWith("Par") && (words.startsWith("Parade") || words.startsWith("Parez"));
    }

    private static Stream<Mutant> holdUnderAttack(Scene scene) {
        return scene.partnerTurns()
                .filter(at -> scene.attacks(at.partner()) && scene.strike(at).isEmpty())
                .filter(at -> scene.parry(at).isPresent()
                        || scene.does(at, Action.Evade.class)
                        || (scene.stepsBack(at) && !scene.does(at, Action.Answer.class)))
                .map(at -> turn(
                                scene,
                                at,
                                scene.isOnTheLunge(at) ? "Hold the lunge." : "Hold on guard.",
                                Expected.at("answer-to-attack", at.step()))
                        .harmlessIf(scene.ripostes(at.partner())));
    }

    private static Stream<Mutant> missTurn(Scene scene) {
        return scene.turns()
                .map(at -> Mutant.spoilt(
                        at + ": left out",
                        scene.redraft().turn(at.step(), at.side(), ""),
                        Expected.at("both-turns", at.step())));
    }

    private static Stream<Mutant> riposteWithoutParry(Scene scene) {
        return scene.partnerTurns()
                .filter(at -> scene.parry(at).isPresent() && scene.strike(at).isEmpty())
                .filter(at -> scene.ripostes(at.next()))
                .map(at -> turn(scene, at, "Take the touch.", Expected.at("riposte-after-parry", at.step() + 1)));
    }

    private static Stream<Mutant> dropRecovery(Scene scene) {
        return scene.turns()
                .filter(at -> scene.isOnTheLunge(at) && !scene.lunges(at))
                .filter(at -> scene.does(at, Action.Recover.class) || scene.does(at, Action.OnGuard.class))
                .map(at -> turn(scene, at, "Hold the lunge.", unrecovered(scene, at)));
    }

    private static Expected[] unrecovered(Scene scene, At at) {
        List<Expected> expected = new ArrayList<>();
        expected.add(Expected.at("distance-cue", at.step()));
        expected.add(Expected.at("back-to-start", scene.counts() - 1));
        IntStream.range(at.step() + 1, scene.counts())
                .filter(step -> {
                    At then = new At(step, at.side());
                    return scene.lunges(then)
                            || scene.does(then, Action.Step.class)
                            || scene.parry(then).isPresent();
                })
                .findFirst()
                .ifPresent(step -> expected.add(Expected.at("recover-first", step)));
        return expected.toArray(Expected[]::new);
    }

    private static Stream<Mutant> advanceOnLunge(Scene scene) {
        return scene.turns()
                .filter(scene::isOnTheLunge)
                .filter(at -> scene.does(at, Action.Answer.class) && !scene.does(at, Action.Recover.class))
                .filter(at -> !scene.does(at, Action.OnGuard.class))
                .map(at -> turn(scene, at, "Advance.", Expected.at("recover-first", at.step())));
    }

    private static Stream<Mutant> recoverTooSoon(Scene scene) {
        return scene.partnerTurns()
                .filter(scene::isOnTheLunge)
                .filter(at -> scene.does(at, Action.Answer.class) && !scene.does(at, Action.OnGuard.class))
                .filter(at -> !scene.does(at, Action.Recover.class))
                .filter(at -> scene.ripostes(at.partner()) && !scene.lunges(at.partner()))
                .filter(at -> !scene.does(at.partner(), Action.Step.class) && !scene.isOnTheLunge(at.partner()))
                .map(at -> turn(scene, at, "Recover backward on guard.", Expected.at("in-reach", at.step()))
                        .harmlessIf(scene.drill().weapon() == Weapon.EPEE
                                && scene.strike(at.partner())
                                        .flatMap(strike -> strike.aim().target())
                                        .filter(Target::isOfTheArm)
                                        .isPresent()));
    }

    private static Stream<Mutant> twoLunges(Scene scene) {
        String words = scene.isSabre()
                ? "Cut to the head with a lunge."
                : "Straight thrust to the low inside line with a lunge.";
        return scene.partnerTurns()
                .filter(at -> scene.attacks(at.partner()) && scene.lunges(at.partner()))
                .filter(at -> !scene.lunges(at) && !scene.isOnTheLunge(at))
                .map(at -> turn(scene, at, words, Expected.at("not-both-at-once", at.step())));
    }

    private static Stream<Mutant> offTarget(Scene scene) {
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
                            : Stream.of(turn(scene, at, words, Expected.at("off-target", at.step())));
                })
                .map(mutant -> mutant.harmlessIf(scene.drill().weapon() == Weapon.EPEE));
    }

    private static Stream<Mutant> bareFace(Scene scene) {
        if (!scene.isPartnerDrill()) {
            return Stream.empty();
        }
        Expected[] expected = scene.firstStrike().stream()
                .map(at -> Expected.at("mask-first", at.step()))
                .toArray(Expected[]::new);
        return Words.without(scene.drill().opening(), "mas[kqc]").stream()
                .map(opening -> Mutant.spoilt(
                                "opening: " + opening, scene.redraft().opening(opening), expected)
                        .harmlessIf(expected.length == 0));
    }

    private static Stream<Mutant> shiftMeasure(Scene scene) {
        if (!scene.isPartnerDrill()) {
            return Stream.empty();
        }
        List<Expected> expected = new ArrayList<>(List.of(Expected.at("distance-cue", 0)));
        scene.firstAttack().ifPresent(at -> expected.add(Expected.at("in-reach", at.step())));
        return Words.swapped(scene.drill().start(), Words.MEASURES).stream()
                .map(start -> Mutant.spoilt(
                        "start: " + start, scene.redraft().start(start), expected.toArray(Expected[]::new)));
    }

    private static Stream<Mutant> wrongCue(Scene scene) {
        return IntStream.range(0, scene.counts()).mapToObj(step -> {
            String cue = farFrom(scene.drill().steps().get(step).distance());
            return Mutant.spoilt(
                            "distance at " + (step + 1) + ": " + cue,
                            scene.redraft().distance(step, cue),
                            Expected.at("distance-cue", step))
                    .harmlessIf(isUncounted(scene, step));
        });
    }

    private static String farFrom(String cue) {
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

    private static Stream<Mutant> noSafetyNote(Scene scene) {
        return scene.partnerTurns()
                .filter(at -> scene.strike(at).isPresent())
                .map(At::step)
                .distinct()
                .map(step -> Mutant.spoilt(
                        "no safety note at " + (step + 1),
                        scene.redraft().safety(step, ""),
                        Expected.at("safety-note", step)));
    }

    private static Stream<Mutant> noGear(Scene scene) {
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
                                Expected.outside("gear-note"))
                        .harmlessIf(scene.firstStrike().isEmpty()));
    }

    private static Stream<Mutant> noSalute(Scene scene) {
        Stream<Mutant> opening = Words.without(scene.drill().opening(), "salu").stream()
                .map(words -> Mutant.spoilt(
                        "opening: " + words, scene.redraft().opening(words), Expected.outside("salute-both-ends")));
        Stream<Mutant> closing = Words.without(scene.drill().closing(), "salu").stream()
                .map(words -> Mutant.spoilt(
                        "closing: " + words, scene.redraft().closing(words), Expected.outside("salute-both-ends")));
        return Stream.concat(opening, closing);
    }

    private static Stream<Mutant> choice(Scene scene) {
        return scene.partnerTurns()
                .map(at -> turn(
                                scene,
                                at,
                                withoutStop(scene.words(at)) + orHold(scene),
                                Expected.at("no-choice", at.step()))
                        .harmlessIf(scene.isFree()));
    }

    private static String orHold(Scene scene) {
        String start = scene.drill().start();
        return start.startsWith("En garde")
                ? " ou attendez."
                : start.startsWith("In guardia") ? " o aspetta." : " or hold.";
    }

    private static Stream<Mutant> secondAction(Scene scene) {
        List<Class<? extends Action>> still = List.of(Action.Answer.class, Action.State.class, Action.Aside.class);
        return scene.partnerTurns()
                .map(at -> turn(
                                scene,
                                at,
                                withoutStop(scene.words(at)) + ", then jump forward.",
                                Expected.at("one-thing-a-count", at.step()))
                        .harmlessIf(scene.isFree() || scene.doesOnly(at, still)));
    }

    private static String withoutStop(String words) {
        return words.replaceFirst("[.!]$", "");
    }
}
