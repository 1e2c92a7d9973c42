package org.drillwright.phrase;

import java.util.stream.Stream;

/** Strokes: what they threaten, whether they mean to touch, the contact they keep, and the right behind them. Written from the rules of the phrase before anything was run. */
class StrokeTest implements Staged {

    static Stream<Scene> scenes() {
        return Scene.in("""
                = On guard in sixte, blades apart, at lunge distance.
                L Extend to the high inside line.
                F Hold.
                > L sixte open, arm to high-inside | F sixte closed | at 1 | on F high-inside, extension, threat
                = On guard in sixte, blades apart, at extension distance.
                L Extend to the high inside line.
                F Hold.
                > L sixte open, arm to high-inside | F sixte closed | at 0
                ! F HoldUnderAttack
                = On guard in sixte, blades apart, at lunge distance.
                L Extend to the high inside line and lunge.
                F Take the touch.
                * L sixte open, arm to high-inside, lunge | F sixte closed | at 0 | on F high-inside, extension
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 0
                = On guard in sixte, blades apart, at lunge distance.
                L Extend to the high inside line.
                F Hold.
                L Lunge.
                F Take the touch.
                * L sixte open, arm to high-inside, lunge | F sixte closed | at 0 | on F high-inside
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 0
                = On guard in sixte, blades apart, at lunge distance.
                L Feint to the high inside line.
                F Hold.
                > L sixte open, arm to high-inside | F sixte closed | at 1 | on F high-inside, threat
                = On guard in sixte, blades apart, at lunge distance.
                L False attack to the high inside line.
                F Hold.
                > L sixte open, arm to high-inside | F sixte closed | at 1 | on F high-inside, threat
                = On guard in sixte, blades apart, at lunge distance.
                L False attack to the high inside line with a lunge.
                F Take the touch.
                * L sixte open, arm to high-inside, lunge | F sixte closed | at 0 | on F high-inside
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 0
                = On guard in sixte, blades apart, at lunge distance.
                L Half step forward.
                F Hold.
                L False attack to the high inside line.
                F Hold.
                > L sixte open, arm to high-inside | F sixte closed | at ? | on F high-inside, threat
                = On guard in sixte, blades apart, at lunge distance.
                L Half step forward.
                F Hold.
                L Extend to the high inside line.
                F Hold.
                > L sixte open, arm to high-inside | F sixte closed | at ? | on F high-inside, extension, threat
                ? L distance
                = On guard in sixte, blades engaged, at lunge distance.
                L Extend to the high outside line.
                F Hold.
                > L sixte open, arm to high-outside | F sixte closed | at 1 | blades high-outside | on F high-outside, extension, threat
                = On guard in sixte, blades engaged, at lunge distance.
                L Extend to the high outside line with opposition.
                F Hold.
                > L sixte open, arm to high-outside | F sixte closed | at 1 | blades high-outside | on F high-outside, extension, threat, along the blade
                = On guard in sixte, blades engaged, at lunge distance.
                L Press the blade.
                F Hold.
                L Extend to the high outside line.
                F Hold.
                > L sixte open, arm to high-outside | F sixte open | at 1 | blades high-outside held by L | on F high-outside, extension, threat, along the blade
                = On guard in sixte, blades engaged, at lunge distance.
                L Glide to the high outside line with a lunge.
                F Take the touch.
                * L sixte open, arm to high-outside, lunge | F sixte closed | at 0 | blades high-outside | on F high-outside, along the blade
                > L sixte open, arm to high-outside, lunge | F sixte closed | at 0 | blades high-outside
                = On guard in sixte, blades engaged, at lunge distance.
                L Disengage.
                F Hold.
                > L sixte open, arm to high-inside | F sixte closed | at 1 | on F high-inside, threat
                = On guard in sixte, blades engaged, at lunge distance.
                L Disengage with a lunge.
                F Take the touch.
                * L sixte open, arm to high-inside, lunge | F sixte closed | at 0 | on F high-inside
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 0
                = On guard in sixte, blades engaged, at lunge distance.
                L Cut over to the high inside line with a lunge.
                F Take the touch.
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 0
                = opposite On guard in quarte, blades engaged, at lunge distance.
                L Disengage.
                F Hold.
                > L quarte open, arm to high-inside | F quarte closed | at 1 | on F high-inside, threat
                = On guard in sixte, blades engaged, at lunge distance.
                L Disengage to the inside line with a lunge.
                F Take the touch.
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 0
                = On guard in quarte, blades engaged, at lunge distance.
                L Counter-disengage to the high inside line with a lunge.
                F Change the engagement, then parry quarte.
                * L quarte open, arm to high-inside, lunge | F sixte closed | at 0 | on F high-inside | changed by F from high-inside
                > L quarte open, arm to nothing, lunge | F quarte closed | at 0 | blades high-inside held by F | right F quarte
                = On guard in quarte, blades engaged, at lunge distance.
                L Counter-disengage to the high outside line with a lunge.
                F Take the touch.
                > L quarte open, arm to high-outside, lunge | F quarte closed | at 0
                ! L NothingToCounter
                = On guard in quarte, blades engaged, at lunge distance.
                L Change the engagement.
                F Hold.
                L Counter-disengage to the high outside line with a lunge.
                F Take the touch.
                > L sixte open, arm to high-outside, lunge | F quarte closed | at 0 | changed by L from high-inside
                ! L NothingToCounter
                = On guard in quarte, blades engaged, at lunge distance.
                L Counter-disengage to the low inside line with a lunge.
                F Change the engagement, then take the touch.
                > L quarte open, arm to low-inside, lunge | F sixte closed | at 0 | changed by F from high-inside
                ! L EndsElsewhere[path=COUNTER_DISENGAGE, from=HIGH_OUTSIDE, expected=HIGH_INSIDE, named=LOW_INSIDE]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge, then take the touch.
                F Stop hit to the high inside line.
                > L sixte open, arm to high-inside, lunge | F sixte open, arm to high-inside | at 0
                = epee On guard in sixte, blades apart, at advance-lunge distance.
                L Extend to the forearm.
                F Hold.
                > L sixte open, arm to ? | F sixte closed | at 2 | on F ?, extension, threat, beyond the table, from 1
                = epee On guard in sixte, blades apart, at lunge distance.
                L Extend to the forearm.
                F Take the touch.
                * L sixte open, arm to ? | F sixte closed | at 1 | on F ?, extension, beyond the table, from 1
                > L sixte open, arm to ? | F sixte closed | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Extend to the forearm.
                F Hold.
                > L sixte open, arm to ? | F sixte closed | at 1 | on F ?, extension, threat, beyond the table
                ! L OffTarget[target=FOREARM]
                = On guard in sixte, blades apart, at lunge distance.
                L Extend to the front thigh.
                F Hold.
                > L sixte open, arm to ? | F sixte closed | at 1 | on F ?, extension, threat, beyond the table
                ! L OffTarget[target=THIGH]
                = On guard in sixte, blades apart, at lunge distance.
                L Extend to the head.
                F Hold.
                > L sixte open, arm to high-inside | F sixte closed | at 1 | on F high-inside, extension, threat, beyond the table
                ! L OffTarget[target=HEAD]
                = sabre On guard in tierce, blades apart, at lunge distance.
                L Extend to the thigh.
                F Hold.
                > L tierce open, arm to ? | F tierce closed | at 1 | on F ?, extension, threat, beyond the table
                ! L OffTarget[target=THIGH]
                = sabre On guard in tierce, blades apart, at lunge distance.
                L Cut to the flank with a lunge.
                F Take the touch.
                > L tierce open, arm to outside, lunge | F tierce closed | at 0
                ! L ClosedLine[line=OUTSIDE, guard=[TIERCE], open=[HEAD, INSIDE]]
                = On guard in quinte, blades engaged, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Take the touch.
                > L quinte open, arm to high-inside, lunge | F quinte closed | at 0 | blades high-inside
                ! L ClosedLine[line=HIGH_INSIDE, guard=none, open=[HIGH_OUTSIDE, LOW_INSIDE, LOW_OUTSIDE]]
                = On guard in quarte, blades engaged, at lunge distance.
                L Counter-disengage with a lunge.
                F Change the engagement, then take the touch.
                * L quarte open, arm to high-inside, lunge | F sixte closed | at 0 | on F high-inside | changed by F from high-inside
                > L quarte open, arm to high-inside, lunge | F sixte closed | at 0 | changed by F from high-inside
                = On guard in sixte, blades engaged, at lunge distance.
                L Disengage to the low line with a lunge.
                F Take the touch.
                > L sixte open, arm to ?, lunge | F sixte closed | at 0
                ? L line
                = On guard in sixte, blades engaged, at lunge distance.
                L Disengage to the outside with a lunge.
                F Take the touch.
                > L sixte open, arm to ?, lunge | F sixte closed | at 0
                ? L line
                = sabre On guard in tierce, blades apart, at lunge distance.
                L Extend to the head.
                F Hold.
                L Lunge.
                F Take the touch.
                * L tierce open, arm to head, lunge | F tierce closed | at 0 | on F head
                > L tierce open, arm to head, lunge | F tierce closed | at 0
                = On guard in quarte, blades engaged, at lunge distance.
                L Change the engagement.
                F Hold.
                L Counter-disengage with a lunge.
                F Take the touch.
                > L sixte open, arm to ?, lunge | F quarte closed | at 0 | changed by L from high-inside
                ! L NothingToCounter
                """);
    }
}
