package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.source.Finding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What an instructor reads of a fault, word for word: what is the matter, and behind {@code >} the way out. Each scene is a
 * start, the two turns of each count, and all that one rule says of it. Lines that begin with a key change the drill.
 */
class SaidTest {

    /** A drill in few lines, a rule, and what the rule says of it. */
    record Scene(String drill, String rule, List<String> said) {

        @Override
        public String toString() {
            return rule + " " + said;
        }
    }

    private static final String SCENES = """
            L Extend to the high inside line and lunge.
            F Bend the arm.
            attack-unanswered
            error The attack in the high inside line is not met by the follower.
            > Parry it, evade it, or write 'take the touch'. From sixte, quarte (a simple parry) or circular sixte would close it.

            L Thrust to the low outside line with a lunge.
            F Bend the arm.
            attack-unanswered
            error The attack in the low outside line is not met by the follower.
            > Parry it, evade it, or write 'take the touch'. From sixte, octave (a half-circular parry) would close it.

            start: Leader on guard in sixte, follower on guard in prime, blades apart, at lunge distance.
            opening: Salute. Masks on.
            L Thrust to the high outside line with a lunge.
            F Bend the arm.
            attack-unanswered
            error The attack in the high outside line is not met by the follower.
            > Parry it, evade it, or write 'take the touch'. From prime, sixte would close it.

            start: On guard in quarte, blades engaged, at lunge distance.
            opening: Salute. Masks on. On guard in quarte.
            L Flanconade to the flank with a lunge.
            F Parry quarte.
            parry-misses
            error Quarte closes the high inside line, but the attack arrives in the low outside line.
            > The follower's blade is held: a ceding parry answers it.

            L Advance, thrust to the high inside line and lunge.
            F Retreat.
            attack-unanswered
            error This retreat does not get out of reach: it ends at extension distance.
            > Go back one more step, or parry.

            L Extend to the high inside line and lunge.
            F Hold on guard.
            attack-unanswered
            warning An attack is on its way, and the follower only holds.
            > If the touch is taken on purpose, say so: 'take the touch'.

            L Thrust to the high inside line.
            F Take the touch.
            too-far-or-too-near
            error This cannot touch: it is made at lunge distance.
            > Add a lunge, advance first, or begin at extension distance.

            start: On guard in sixte, blades apart, out of distance.
            L Thrust to the high inside line with a lunge.
            F Take the touch.
            too-far-or-too-near
            error This cannot touch: even with the lunge it ends at lunge distance or further away.
            > Advance first, or begin at lunge distance.

            L Thrust to the high inside line with a lunge.
            F Parry quarte with a retreat.
            L Hold the lunge and parry quarte.
            F Riposte straight to the high inside line.
            too-far-or-too-near
            error This cannot touch: it is made at lunge distance.
            > Add a lunge, advance first, or begin at extension distance.

            L Thrust to the high inside line with a lunge.
            F Retreat.
            L Thrust to the low inside line.
            F Take the touch.
            too-far-or-too-near
            error This cannot touch: it is made at lunge distance.
            > Recover forward first, and lunge.

            L Thrust to the high inside line with a lunge.
            F Parry quarte.
            L Take the touch.
            F Riposte straight to the high inside line with a lunge.
            too-far-or-too-near
            warning This riposte lunges from extension distance, where the arm alone reaches; a lunge from so close bends the blade hard.
            > Leave out the lunge.

            L Thrust to the high outside line with a lunge.
            F Take the touch.
            attack-into-closed-line
            error This goes to the high outside line, but the follower is in sixte, which closes it.
            > Aim for the high inside line, the low inside line, or the low outside line.

            start: On guard in quinte, blades engaged, at lunge distance.
            L Thrust to the high inside line with a lunge.
            F Take the touch.
            attack-into-closed-line
            error This goes to the high inside line, but the follower's blade is in contact there and closes it.
            > Aim for the low inside line, or the low outside line.

            L Extend to the high inside line and lunge.
            F Parry octave.
            parry-misses
            error Octave closes the low outside line, but the attack arrives in the high inside line.
            > From sixte, quarte (a simple parry) or circular sixte would close it.

            L Extend to the low outside line and lunge.
            F Parry prime.
            parry-misses
            warning Prime closes the high inside line or the low inside line, but the attack arrives in the low outside line. Schools differ about this position.
            > From sixte, octave (a half-circular parry) would close it.

            L Extend to the high inside line and lunge.
            F Parry circular quarte.
            parry-misses
            error A circular parry of quarte starts in quarte, but the hand is in sixte.
            > From sixte, quarte (a simple parry) or circular sixte would close it.

            start: On guard in sixte, blades engaged, at lunge distance.
            L Thrust to the high outside line with opposition and lunge.
            F Parry circular sixte.
            parry-misses
            error The attack arrives in the high outside line, which sixte closes without a circle; a circular parry meets an attack in the other line of the same height.
            > Leave out the circle.

            L Extend to the high inside line and lunge.
            F Parry sixte.
            parry-misses
            warning The hand is in sixte already, and the attack arrives in the high inside line: only the circular parry meets it from there.
            > Write 'circular parry of sixte'.

            L Extend to the high inside line and lunge.
            F Half-circular parry of quarte.
            parry-misses
            warning From sixte to quarte is a simple parry, not a half-circular parry.
            > Leave out the kind of parry, or use the right name.

            L Advance.
            F Parry quarte.
            parry-misses
            warning There is no attack to parry here.
            > Write an attack into the leader's turn, or write 'move the hand' instead of 'parry'.

            start: On guard in octave, blades apart, at lunge distance.
            L Move the hand to sixte.
            F Hold on guard in octave.
            L Disengage to the high inside line and lunge.
            F Parry quarte.
            wrong-way-past-blade
            error There is no blade to pass: the blades are apart and the partner's is not in the high outside line, in front of the point.
            > Call it a straight thrust, or engage first.

            start: On guard in sixte, blades engaged, at lunge distance.
            L One-two to the high inside line with a lunge.
            F Take the touch.
            wrong-way-past-blade
            error A one-two from the high outside line ends in the high outside line, not in the high inside line.
            > Name the line it ends in, call it a disengage, or call it a double.

            L Thrust to the high inside line with a lunge.
            F Parry quarte.
            L Take the touch.
            F Riposte straight to the high outside line.
            wrong-way-past-blade
            error A straight riposte from quarte goes to the high inside line; to the high outside line it has to pass the blade.
            > Write 'riposte by disengage', or name the line of the parry.

            start: On guard in quarte, blades engaged, at lunge distance.
            L Counter-disengage to the high outside line with a lunge.
            F Take the touch.
            wrong-way-past-blade
            error There is no change of engagement here to deceive; a counter-disengage follows the partner's blade round.
            > Call it a disengage, or call it a double.

            L Extend to the high inside line and lunge.
            F Lunge to the high inside line and take the touch.
            both-lunge-at-once
            error Both lunge on count 1.
            > Give the second lunge a count of its own, while the first fencer recovers. The leader's turn changes with it.

            level: training
            cautions: [Both lunge here; keep the points low.]
            L Extend to the high inside line and lunge.
            F Lunge to the high inside line and take the touch.
            both-lunge-at-once

            level: training
            cautions: [Keep the points low.]
            L Extend to the high inside line and lunge.
            F Lunge to the high inside line and take the touch.
            both-lunge-at-once
            error Both lunge on count 1.
            > Give the second lunge a count of its own, while the first fencer recovers. The leader's turn changes with it.

            cautions: [Both lunge here; keep the points low.]
            L Extend to the high inside line and lunge.
            F Lunge to the high inside line and take the touch.
            both-lunge-at-once
            error Both lunge on count 1.
            > Give the second lunge a count of its own, while the first fencer recovers. The leader's turn changes with it.

            opening: Salute. On guard in sixte.
            L Extend to the high inside line and lunge.
            F Parry quarte.
            L Take the touch.
            F Riposte straight.
            mask-off-in-reach
            error A point is aimed at the follower, whose mask is off.
            > Write 'Masks on' into the opening, before coming on guard.

            closing: Masks off. Salute.
            L Recover on guard in sixte.
            F Hold.
            mask-off-in-reach
            note Masks come off at lunge distance, from where a lunge reaches; both are at rest.
            > Step back out of distance first: 'Step back out of distance. Masks off.'

            L Lunge.
            F Hold.
            L Advance.
            F Hold.
            lunge-not-recovered
            error The leader goes forward from the lunge without recovering.
            > Recover first, forward or back.

            L Thrust to the high inside line with a lunge.
            F Parry quarte.
            L Parry quarte.
            F Riposte straight to the high inside line.
            lunge-not-recovered

            start: On guard in sixte, blades apart, at extension distance.
            L Take the touch.
            F Riposte to the high inside line.
            riposte-without-parry
            error The follower has not parried, so this is not a riposte.
            > Call it an attack.

            L Thrust to the high inside line with a lunge.
            F Parry quarte.
            L Take the touch.
            F Counter-riposte to the high inside line.
            riposte-without-parry
            error A counter-riposte follows the parry of a riposte, and the follower has parried none.
            > Call it a riposte, or call it an attack.

            L Thrust to the thigh with a lunge.
            F Retreat.
            off-target
            error The thigh is not a target at foil.
            > Choose a place on the target: the chest, or the flank.

            closing: Step back out of distance. Masks off.
            salute-missing
            error The closing has no salute.
            > Write: closing: Step back out of distance. Masks off. Salute.

            closing: Masks off. Salute.
            start: On guard in sixte, blades apart, at extension distance.
            L Recover on guard in sixte.
            F Hold.
            mask-off-in-reach
            error Masks come off at extension distance.
            > Step back out of distance first: 'Step back out of distance. Masks off.'

            closing: Masks off. Salute.
            L Extend to the high inside line.
            F Hold.
            mask-off-in-reach
            error Masks come off at lunge distance.
            > Step back out of distance first: 'Step back out of distance. Masks off.'

            opening: Masks on. Leader, salute.
            salute-missing
            error In the opening only one side salutes.
            > Write: opening: Salute. Masks on. Leader, salute.

            L Lunge.
            F Take quarte.
            not-back-at-start
            warning After the last count the leader is still in the lunge; the follower's hand is in quarte, not in sixte; the distance is extension distance, not lunge distance.
            > Add what brings both back to the start, or accept this with a reason.

            start: On guard in sixte, blades engaged, at lunge distance.
            L Hold.
            F Leave the blade, then return to guard in sixte, blades apart.
            not-back-at-start
            warning After the last count the blades are apart, but touched.
            > Add what brings both back to the start, or accept this with a reason.

            L Engage in sixte.
            F Hold.
            not-back-at-start
            warning After the last count the blades touch, but were apart.
            > Add what brings both back to the start, or accept this with a reason.

            start: On guard in sixte, blades apart, out of distance.
            L Advance.
            F Hold.
            not-back-at-start

            form: solo
            start: On guard in sixte.
            L Lunge!
            F Lunge.
            not-back-at-start
            warning After the last count the class is still in the lunge.
            > Add what brings both back to the start, or accept this with a reason.

            L Wobble gracefully.
            F Hold on guard.
            not-fully-checked
            warning Not fully checked: count 1.
            > Unknown here: the attack, what the leader does (since count 1). Not read: 'Wobble'. Say it in fencing terms.

            L Extend to the high inside line and lunge.
            F Parry quatre.
            words-unread
            note 'quatre' could not be read. Did you mean 'quarte'? The rest is read as: Parry.
            > To add it, write in school.yaml: words: {quatre: quarte}, with a fencing term of the same meaning after the colon.

            start: On guard in sixte, wobbling, blades apart, at lunge distance.
            words-unread
            note 'wobbling' could not be read. The rest is read as: Come on guard in sixte. At lunge distance, blades apart.
            > To add it, write in school.yaml: words: {wobbling: …}, with a fencing term of the same meaning after the colon.

            L Parry quarte and riposte to the high inside line.
            F Hold.
            too-much-in-a-count
            error This turn asks for a second thing: 'riposte to the high inside line'.
            > Give it a count of its own; only parts of one action may be joined, such as 'extend and lunge'.

            level: beginner
            L Extend to the high inside line and lunge.
            F Parry quarte.
            too-much-in-a-count
            error This turn asks for a second thing: 'lunge'.
            > At this level a count has one action: give this one a count of its own.

            L Advance.
            turn-missing
            error Count 1 has nothing for the follower.
            > Write what the follower does, even if it is 'follower: Hold.'.

            form: solo
            F Advance.
            turn-missing
            error Count 1 has nothing for the leader.
            > Write what the caller says: 'leader: Advance!'.
            """;

    static Stream<Scene> scenes() {
        return Stream.of(SCENES.split("\n\n")).map(SaidTest::scene);
    }

    private static Scene scene(String text) {
        StringBuilder keys = new StringBuilder();
        StringBuilder steps = new StringBuilder();
        List<String> said = new ArrayList<>();
        String rule = "";
        for (String line : text.lines().toList()) {
            if (!rule.isEmpty()) {
                said.add(line);
            } else if (line.startsWith("L ")) {
                steps.append("  - leader: ").append(line.substring(2)).append("\n    distance: lunge\n");
            } else if (line.startsWith("F ")) {
                boolean alone = steps.isEmpty();
                steps.append(alone ? "  - follower: " : "    follower: ").append(line.substring(2));
                steps.append(alone ? "\n    distance: lunge\n" : "\n");
            } else if (line.contains(": ")) {
                keys.append(line).append('\n');
            } else {
                rule = line;
            }
        }
        return new Scene(keys + (steps.isEmpty() ? "" : "steps:\n" + steps), rule, said);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scenes")
    void is_said_as_it_was_written(Scene scene) {
        List<String> said = Judged.drill(scene.drill()).all().stream()
                .filter(finding -> finding.rule().equals(scene.rule()))
                .flatMap(SaidTest::lines)
                .toList();
        assertEquals(
                scene.said().stream().collect(Collectors.joining("\n")),
                said.stream().collect(Collectors.joining("\n")),
                scene.drill());
    }

    private static Stream<String> lines(Finding finding) {
        return Stream.of(
                finding.severity().word() + " " + finding.what().english(),
                "> " + finding.wayOut().english());
    }
}
