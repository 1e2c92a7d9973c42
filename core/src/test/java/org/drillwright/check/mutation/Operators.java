package org.drillwright.check.mutation;

import java.util.List;
import java.util.stream.Stream;

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
                    "parry-misses, because the parry no longer ends there; attack-into-closed-line, where the partner's guard is in the new"
                            + " line; wrong-way-past-blade, where the stroke is a straight riposte that would have to pass the blade.",
                    scene -> LineSpoils.swapLine(scene, scene.isSabre() ? Words.SABRE_TARGETS : Words.SIDES)),
            new Operator(
                    "swap the height",
                    "A plain thrust that a named parry meets on the same count goes to the other height (high, low).",
                    "As for the side.",
                    "parry-misses, attack-into-closed-line or wrong-way-past-blade, as for the side.",
                    scene -> scene.isSabre() ? Stream.empty() : LineSpoils.swapLine(scene, Words.HEIGHTS)),
            new Operator(
                    "disengage to the same side",
                    "A disengage, cut-over, counter-disengage, one-two or double with a named line ends on the other side.",
                    "At sabre, where targets are divided differently; after a feint that a circular parry followed, where going"
                            + " round again may end on either side.",
                    "wrong-way-past-blade, because it ends where its definition does not lead; attack-into-closed-line or parry-misses, where the guard"
                            + " or the parry already covers the line.",
                    LineSpoils::disengageToSameSide),
            new Operator(
                    "wrong parry",
                    "The position of a parry becomes one that closes another line.",
                    "A ceding parry, or a stroke at the arm that names no line.",
                    "parry-misses.",
                    LineSpoils::wrongParry),
            new Operator(
                    "parry into its circular",
                    "A parry that names no kind is called circular.",
                    "Never.",
                    "parry-misses, because a circular parry starts in its own position and meets the other line.",
                    LineSpoils::circular),
            new Operator(
                    "hold under attack",
                    "A parry, an evasion or a step back that answers an attack becomes 'Hold on guard'.",
                    "Never.",
                    "attack-unanswered.",
                    TurnSpoils::holdUnderAttack),
            new Operator(
                    "miss a turn",
                    "One side's turn is left out, on every count of every drill.",
                    "Never.",
                    "turn-missing.",
                    TurnSpoils::missTurn),
            new Operator(
                    "riposte without parry",
                    "The parry before a riposte becomes 'Take the touch'.",
                    "Never.",
                    "riposte-without-parry on the count of the riposte.",
                    TurnSpoils::riposteWithoutParry),
            new Operator(
                    "drop a recovery",
                    "The turn in which somebody recovers from the lunge becomes 'Hold the lunge'.",
                    "Never.",
                    "no-true-distance on that count, lunge-not-recovered on the next count in which that side moves, or not-back-at-start"
                            + " on the last count.",
                    FeetSpoils::dropRecovery),
            new Operator(
                    "advance on the lunge",
                    "The turn of somebody who stays on the lunge becomes 'Advance'.",
                    "Never.",
                    "lunge-not-recovered.",
                    FeetSpoils::advanceOnLunge),
            new Operator(
                    "recover too soon",
                    "Somebody on the lunge, who is about to be touched by a riposte without a lunge, recovers instead.",
                    "Épée at the hand or forearm, which is a foot action nearer.",
                    "too-far-or-too-near, because the riposte now needs a lunge.",
                    FeetSpoils::recoverTooSoon),
            new Operator(
                    "two lunges",
                    "The answer to an attack with a lunge becomes an attack with a lunge.",
                    "The level is free and a caution speaks of it; no drill here has such a caution.",
                    "both-lunge-at-once.",
                    TurnSpoils::twoLunges),
            new Operator(
                    "contact denied",
                    "A start with the blades engaged has them apart, where the first count takes, presses or changes.",
                    "The partner's arm comes out on that count.",
                    "blade-not-there on the first count.",
                    BladeSpoils::contactDenied),
            new Operator(
                    "taking without contact",
                    "An attack with a lunge on the first count, from blades that are apart, becomes a bind with a lunge.",
                    "Never.",
                    "blade-not-there on the first count.",
                    BladeSpoils::takenWithoutContact),
            new Operator(
                    "renewal first",
                    "The first stroke of somebody who has not attacked becomes a remise.",
                    "Never.",
                    "nothing-to-renew on that count.",
                    BladeSpoils::renewalFirst),
            new Operator(
                    "agents swapped",
                    "On the count of a riposte the two sides swap turns.",
                    "The other has parried on an earlier count, too.",
                    "riposte-without-parry on that count.",
                    BladeSpoils::agentsSwapped),
            new Operator(
                    "one step more",
                    "A single step forward or back, alone in its turn, becomes two.",
                    "The measure cannot be worked out there, as for a wrong cue.",
                    "no-true-distance on that count or the next, too-far-or-too-near on the next, or not-back-at-start on the last.",
                    FeetSpoils::oneStepMore),
            new Operator(
                    "end of a hit dropped",
                    "A touch that is taken becomes 'Hold on guard', or 'Hold the lunge'.",
                    "Never.",
                    "attack-unanswered on that count.",
                    BladeSpoils::endDropped),
            new Operator(
                    "off target",
                    "The line or target of a stroke becomes the thigh.",
                    "Épée, whose target is the whole body.",
                    "off-target.",
                    LineSpoils::offTarget),
            new Operator(
                    "bare face",
                    "'Masks on' is removed from the opening.",
                    "No point or edge goes at anybody in the drill.",
                    "mask-off-in-reach on the count of the first stroke.",
                    CareSpoils::bareFace),
            new Operator(
                    "shift the measure",
                    "The start is a foot action further away (drills for two).",
                    "It was at advance-lunge distance: that, too, may be called out of distance.",
                    "no-true-distance on the first count, or too-far-or-too-near on the count of the first attack.",
                    FeetSpoils::shiftMeasure),
            new Operator(
                    "wrong cue",
                    "The distance cue names a measure two foot actions away from every measure that it named.",
                    "The measure cannot be worked out there: after a half step, a half lunge or a flèche it is unknown until"
                            + " stated again.",
                    "no-true-distance.",
                    FeetSpoils::wrongCue),
            new Operator(
                    "no safety note",
                    "The safety note of a count with a stroke at a person is left out.",
                    "Never.",
                    "safety-note-missing.",
                    CareSpoils::noSafetyNote),
            new Operator(
                    "no gear",
                    "One required piece is dropped from the list (mask, jacket, glove; the underarm protector where touches are meant).",
                    "No point or edge goes at anybody in the drill.",
                    "gear-missing.",
                    CareSpoils::noGear),
            new Operator(
                    "no salute",
                    "The salute is removed from the opening or the closing.",
                    "Never.",
                    "salute-missing.",
                    CareSpoils::noSalute),
            new Operator(
                    "a choice",
                    "'or hold' is appended to a turn of a drill for two.",
                    "The level's turns are free.",
                    "choice-left-open.",
                    TurnSpoils::choice),
            new Operator(
                    "a second action",
                    "', then jump forward' is appended to a turn of a drill for two.",
                    "The level's turns are free; the turn only holds, waits or receives, so that it has no action of its own; or it"
                            + " is a preparation (a beat, an engagement, an invitation, a bare extension), which counts as one action with a step.",
                    "too-much-in-a-count.",
                    TurnSpoils::secondAction));

    private Operators() {}
}
