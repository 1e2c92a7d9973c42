package org.drillwright.phrase;

import java.util.stream.Stream;

/** What meets an attack without a parry: evasions, touches taken, retreats, and what is no answer. */
class AnswerTest implements Staged {

    static Stream<Scene> scenes() {
        return Scene.in("""
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Duck.
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 0
                = On guard in sixte, blades apart, at lunge distance.
                L Hold.
                F Wait on guard in quarte.
                > L sixte closed | F quarte closed | at 1
                = On guard in sixte, blades apart, at advance-lunge distance.
                L Extend to the high inside line.
                F Take the touch.
                > L sixte open, arm to high-inside | F sixte closed | at 2
                ! F OutOfReach[measure=2, lunges=false, lunged=false]
                = On guard in sixte, blades apart, at lunge distance.
                L Extend to the high inside line.
                F Take the touch.
                > L sixte open, arm to high-inside | F sixte closed | at 1
                ! F OutOfReach[measure=1, lunges=false, lunged=false]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Yield.
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 0
                ! on F Unanswered[line=HIGH_INSIDE]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Advance.
                > L sixte open, arm to high-inside, lunge | F sixte closed | at -1
                ! F RunsOn[measure=-1]
                ! on F Unanswered[line=HIGH_INSIDE]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Retreat.
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Jump back.
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Cross step back.
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Half step back.
                > L sixte open, arm to high-inside, lunge | F sixte closed | at ?
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Step back out of distance.
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 2+
                = On guard in sixte, blades apart, at lunge distance.
                L Advance, thrust to the high inside line and lunge.
                F Retreat.
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 0
                ! on F RetreatTooShort[measure=0, more=1]
                = epee On guard in sixte, blades apart, at extension distance.
                L Thrust to the forearm in the high inside line.
                F Retreat.
                > L sixte open, arm to high-inside | F sixte closed | at 1
                ! on F RetreatTooShort[measure=1, more=1]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Stamp the foot.
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 0
                ! on F Unanswered[line=HIGH_INSIDE]
                = On guard in sixte, blades apart, at extension distance.
                L Thrust to the high inside line, then retreat.
                F Bend the arm.
                > L sixte open, arm to high-inside | F sixte closed | at 1
                ! on F Unanswered[line=HIGH_INSIDE]
                = On guard in sixte, blades apart, at advance-lunge distance.
                L Thrust to the high inside line.
                F Take the touch.
                > L sixte open, arm to high-inside | F sixte closed | at 2
                ! L OutOfReach[measure=2, lunges=false, lunged=false]
                """);
    }
}
