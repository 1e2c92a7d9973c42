package org.drillwright.phrase;

import java.util.stream.Stream;

/**
 * Who is told to keep the measure steps as the partner steps (common practice, no source).
 */
class MeasureKeptTest implements Staged {

    static Stream<Scene> scenes() {
        return Scene.in("""
                = On guard in sixte, blades apart, at advance-lunge distance.
                L Advance one step.
                F Keep the distance.
                > L sixte closed | F sixte closed | at 2
                = On guard in sixte, blades apart, at lunge distance.
                L Follow the partner.
                F Retreat two steps.
                > L sixte closed | F sixte closed | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Hold.
                F Keep the distance.
                > L sixte closed | F sixte closed | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Keep the distance.
                F Keep the distance.
                > L sixte closed | F sixte closed | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry quarte. Keep your distance.
                > L sixte open, arm to nothing, lunge | F quarte closed | at 0 | blades high-inside held by F | right F quarte
                """);
    }
}
