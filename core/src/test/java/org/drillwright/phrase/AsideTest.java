package org.drillwright.phrase;

import java.util.stream.Stream;

/** What is done beside the phrase: masks, the arm bent, the blade lowered, and the state named in a turn. */
class AsideTest implements Staged {

    static Stream<Scene> scenes() {
        return Scene.in("""
                = On guard in sixte, blades apart, at lunge distance.
                L Take off the mask.
                F Hold.
                > L sixte closed, unmasked | F sixte closed | at 1
                ! L MaskOffInReach[measure=1, inPlay=false]
                = On guard in sixte, blades apart, at lunge distance.
                L Extend to the high inside line.
                F Take off the mask.
                > L sixte open, arm to high-inside | F sixte closed, unmasked | at 1 | on F high-inside, extension, threat
                ! F MaskOffInReach[measure=1, inPlay=true]
                = On guard in sixte, blades apart, at advance-lunge distance.
                L Take off the mask.
                F Hold.
                > L sixte closed, unmasked | F sixte closed | at 2
                = On guard in sixte, blades apart, out of distance.
                L Take off the mask.
                F Hold.
                > L sixte closed, unmasked | F sixte closed | at 2+
                L Put on the mask.
                F Hold.
                > L sixte closed | F sixte closed | at 2+
                = On guard in sixte, blades apart, at lunge distance.
                L Extend to the high inside line.
                F Hold.
                L Bend the arm.
                F Hold.
                > L sixte open | F sixte closed | at 1 | on F high-inside, extension, threat
                = On guard in sixte, blades apart, at lunge distance.
                L Lower the point.
                F Hold.
                > L ? open | F sixte closed | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Carry the hand out to the right.
                F Hold.
                > L ? open | F sixte closed | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Retreat, carrying the hand a little to the right.
                F Raise the rear hand.
                > L sixte closed | F sixte closed | at 2
                = On guard in sixte, blades apart, at lunge distance.
                L Breathe.
                F Hold.
                > L sixte closed | F sixte closed | at 1
                = On guard in sixte, blades engaged, at lunge distance.
                L Blades apart.
                F Hold.
                > L sixte closed | F sixte closed | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Blades engaged.
                F Hold.
                > L sixte closed | F sixte closed | at 1 | blades high-outside
                = On guard in sixte, blades apart, at lunge distance.
                L Salute.
                F Hold.
                > L sixte closed | F sixte closed | at 1
                """);
    }
}
