package org.drillwright.phrase;

import java.util.stream.Stream;

/**
 * Parries: what they are refused for, the contact that follows, and the right to riposte. The kinds of parry after
 * Warford 1884, pages 10 to 17. Written before anything was run.
 */
class ParryTest implements Staged {

    static Stream<Scene> scenes() {
        return Scene.in("""
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry quarte.
                > L sixte open, arm to nothing, lunge | F quarte closed | at 0 | blades high-inside held by F | right F quarte
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Take quarte.
                > L sixte open, arm to nothing, lunge | F quarte closed | at 0 | blades high-inside held by F | right F quarte
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry circular sixte.
                > L sixte open, arm to nothing, lunge | F sixte closed | at 0 | blades high-outside held by F | right F sixte, round
                = On guard in tierce, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry circular sixte.
                > L tierce open, arm to nothing, lunge | F sixte closed | at 0 | blades high-outside held by F | right F sixte, round
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry.
                > L sixte open, arm to nothing, lunge | F ? ?, arm? to ? | at 0 | blades ? | right F ?
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry octave.
                > L sixte open, arm to nothing, lunge | F octave closed | at 0 | blades low-outside held by F | right F octave
                ! F ParryMisses[position=OCTAVE, kind=UNSTATED, attacked=HIGH_INSIDE, from=SIXTE, firm=true]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the low outside line with a lunge.
                F Parry quinte.
                > L sixte open, arm to nothing, lunge | F quinte closed | at 0 | blades high-inside held by F | right F quinte
                ! F ParryMisses[position=QUINTE, kind=UNSTATED, attacked=LOW_OUTSIDE, from=SIXTE, firm=false]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry prime.
                > L sixte open, arm to nothing, lunge | F prime closed | at 0 | blades ? | right F prime
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry sixte.
                > L sixte open, arm to nothing, lunge | F sixte closed | at 0 | blades high-outside held by F | right F sixte, round
                ! F CircleWanted[position=SIXTE, attacked=HIGH_INSIDE]
                = On guard in octave, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry sixte.
                > L octave open, arm to nothing, lunge | F sixte closed | at 0 | blades high-outside held by F | right F sixte
                ! F ParryMisses[position=SIXTE, kind=UNSTATED, attacked=HIGH_INSIDE, from=OCTAVE, firm=true]
                = On guard in octave, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry circular octave.
                > L octave open, arm to nothing, lunge | F octave closed | at 0 | blades low-outside held by F | right F octave, round
                ! F ParryMisses[position=OCTAVE, kind=CIRCULAR, attacked=HIGH_INSIDE, from=OCTAVE, firm=true]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry circular quarte.
                > L sixte open, arm to nothing, lunge | F quarte closed | at 0 | blades high-inside held by F | right F quarte, round
                ! F CircleElsewhere[position=QUARTE, from=SIXTE, attacked=HIGH_INSIDE]
                = On guard in sixte, blades engaged, at lunge distance.
                L Thrust to the high outside line with opposition and lunge.
                F Parry circular sixte.
                > L sixte open, arm to nothing, lunge | F sixte closed | at 0 | blades high-outside held by F | right F sixte, round
                ! F CircleNotNeeded[position=SIXTE, attacked=HIGH_OUTSIDE]
                = On guard in sixte, blades engaged, at lunge distance.
                L Thrust to the high outside line with opposition and lunge.
                F Ceding parry of quarte.
                > L sixte open, arm to nothing, lunge | F quarte closed | at 0 | blades high-inside held by F | right F quarte
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the low inside line with a lunge.
                F Ceding parry of quarte.
                > L sixte open, arm to nothing, lunge | F quarte closed | at 0 | blades high-inside held by F | right F quarte
                ! F NothingToCedeTo
                ! F ParryMisses[position=QUARTE, kind=CEDING, attacked=LOW_INSIDE, from=SIXTE, firm=true]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Half-circular parry of quarte.
                > L sixte open, arm to nothing, lunge | F quarte closed | at 0 | blades high-inside held by F | right F quarte
                ! F KindDiffers[from=SIXTE, to=QUARTE, called=HALF_CIRCULAR, is=SIMPLE]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the low outside line with a lunge.
                F Half-circular parry of octave.
                > L sixte open, arm to nothing, lunge | F octave closed | at 0 | blades low-outside held by F | right F octave
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the low outside line with a lunge.
                F Simple parry of octave.
                > L sixte open, arm to nothing, lunge | F octave closed | at 0 | blades low-outside held by F | right F octave
                ! F KindDiffers[from=SIXTE, to=OCTAVE, called=SIMPLE, is=HALF_CIRCULAR]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the low inside line with a lunge.
                F Diagonal parry of septime.
                > L sixte open, arm to nothing, lunge | F septime closed | at 0 | blades low-inside held by F | right F septime
                = epee On guard in sixte, blades apart, at lunge distance.
                L Thrust to the forearm.
                F Parry quarte.
                > L sixte open, arm to nothing | F quarte closed | at 1 | blades high-inside held by F | right F quarte
                = epee On guard in sixte, blades apart, at lunge distance.
                L Thrust to the forearm in the high outside line.
                F Parry quarte.
                > L sixte open, arm to nothing | F quarte closed | at 1 | blades high-inside held by F | right F quarte
                ! L ClosedLine[line=HIGH_OUTSIDE, guard=[SIXTE], open=[HIGH_INSIDE, LOW_INSIDE, LOW_OUTSIDE]]
                ! F ParryMisses[position=QUARTE, kind=UNSTATED, attacked=HIGH_OUTSIDE, from=SIXTE, firm=true]
                = On guard in sixte, blades apart, at lunge distance.
                L Advance.
                F Parry quarte.
                > L sixte closed | F quarte closed | at 0 | right F quarte
                ! F NothingToParry
                = On guard in sixte, blades engaged, at lunge distance.
                L Hold.
                F Take sixte.
                > L sixte closed | F sixte closed | at 1 | blades high-outside
                L Hold.
                F Take quarte.
                > L sixte closed | F quarte closed | at 1 | blades ?
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry quarte.
                L Recover on guard in sixte.
                F Take quarte.
                > L sixte closed | F quarte closed | at 1 | right F quarte
                L Hold.
                F Take sixte.
                > L sixte closed | F sixte closed | at 1
                """);
    }
}
