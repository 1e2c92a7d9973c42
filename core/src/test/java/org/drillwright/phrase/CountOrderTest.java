package org.drillwright.phrase;

import java.util.stream.Stream;

/**
 * Within a count what attacks comes before what answers it, whoever makes it; where neither answers the other, the
 * leader goes first.
 */
class CountOrderTest implements Staged {

    static Stream<Scene> scenes() {
        return Scene.in("""
                = On guard in sixte, blades apart, at lunge distance.
                L Parry quarte.
                F Thrust to the high inside line with a lunge.
                > L quarte closed | F sixte open, arm to nothing, lunge | at 0 | blades high-inside held by L | right L quarte
                = On guard in sixte, blades apart, at lunge distance.
                L Retreat.
                F Thrust to the high inside line with a lunge.
                > L sixte closed | F sixte open, arm to high-inside, lunge | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Step back out of distance.
                F Thrust to the high inside line with a lunge.
                > L sixte closed | F sixte open, arm to high-inside, lunge | at 2+
                = On guard in sixte, blades apart, at lunge distance.
                L Duck.
                F Thrust to the high inside line with a lunge.
                > L sixte closed | F sixte open, arm to high-inside, lunge | at 0
                = On guard in sixte, blades apart, at lunge distance.
                L Extend to the high inside line.
                F Hold.
                L Hold.
                F Parry quarte.
                > L sixte open, arm to high-inside | F quarte closed, reaching | at 1 | blades ? | right F quarte, against extension, of a feint
                = On guard in octave, blades apart, at lunge distance.
                L Hold.
                F Extend to the high inside line.
                L Parry septime.
                F Thrust to the low inside line with a lunge.
                > L septime closed | F octave open, arm to nothing, lunge | at 0 | blades low-inside held by L | right L septime
                = On guard in sixte, blades apart, at lunge distance.
                L Hold.
                F Lunge.
                L Thrust to the high inside line.
                F Recover on guard in sixte.
                > L sixte open, arm to high-inside | F sixte closed | at 1
                ! L OutOfReach[measure=1, lunges=false, lunged=false]
                ! on F Unanswered[line=HIGH_INSIDE]
                = On guard in sixte, blades apart, at lunge distance.
                L Move the hand to quarte.
                F Thrust to the high outside line with a lunge.
                > L quarte closed | F sixte open, arm to high-outside, lunge | at 0
                ! on L HoldUnderAttack
                = On guard in sixte, blades apart, at lunge distance.
                L Move the hand to quarte.
                F Thrust to the high inside line with a lunge.
                > L quarte closed | F sixte open, arm to nothing, lunge | at 0 | blades high-inside held by L | right L quarte
                = On guard in sixte, blades apart, at lunge distance.
                L Xyzzy plugh.
                F Thrust to the high inside line with a lunge.
                > L ? ?, arm? to ?, feet?, mask? | F sixte open, arm to high-inside, lunge | at ? | blades ? | on L ? | on F ? | right ? | changed by L from ?
                ? F mask
                ? F contact
                ? F guard
                ? F distance
                """);
    }
}
