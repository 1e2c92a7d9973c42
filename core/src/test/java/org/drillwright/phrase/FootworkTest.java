package org.drillwright.phrase;

import java.util.stream.Stream;

/** What the feet do to the measure, counted in foot actions, and how a guard is taken up again. Written from the rules of the phrase before anything was run. */
class FootworkTest implements Staged {

    static Stream<Scene> scenes() {
        return Scene.in("""
                = On guard in sixte, blades apart, at advance-lunge distance.
                > L sixte closed | F sixte closed | at 2
                L Advance.
                F Hold.
                > L sixte closed | F sixte closed | at 1
                L Retreat.
                F Retreat.
                > L sixte closed | F sixte closed | at 3
                = On guard in sixte, blades apart, at advance-lunge distance.
                L Jump forward.
                F Cross step back.
                > L sixte closed | F sixte closed | at 2
                L Cross step forward.
                F Jump back.
                > L sixte closed | F sixte closed | at 2
                L Stamp the foot.
                F Hold.
                > L sixte closed | F sixte closed | at 2
                = On guard in sixte, blades apart, at advance-lunge distance.
                L Half step forward.
                F Hold.
                > L sixte closed | F sixte closed | at ?
                = On guard in sixte, blades apart, at advance-lunge distance.
                L Bring the rear foot up.
                F Hold.
                > L sixte closed, gained | F sixte closed | at 2
                L Lunge.
                F Hold.
                > L sixte closed, lunge | F sixte closed | at 0
                = On guard in sixte, blades apart, at lunge distance.
                L Lunge.
                F Hold.
                > L sixte closed, lunge | F sixte closed | at 0
                L Recover forward.
                F Hold.
                > L sixte closed | F sixte closed | at 0
                = On guard in sixte, blades apart, at lunge distance.
                L Lunge.
                F Hold.
                > L sixte closed, lunge | F sixte closed | at 0
                L Recover back.
                F Hold.
                > L sixte closed | F sixte closed | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Lunge.
                F Hold.
                L Recover on guard in quarte.
                F Hold.
                > L quarte closed | F sixte closed | at 1
                = On guard in sixte, blades apart, at advance-lunge distance.
                L Lunge.
                F Hold.
                L Lunge.
                F Hold.
                > L sixte closed, lunge | F sixte closed | at ?
                ! L NotRecovered[what=LUNGES_AGAIN]
                = On guard in sixte, blades apart, at lunge distance.
                L Lunge.
                F Hold.
                L Advance.
                F Hold.
                > L sixte closed | F sixte closed | at ?
                ! L NotRecovered[what=GOES_FORWARD]
                = On guard in sixte, blades apart, at lunge distance.
                L Lunge.
                F Hold.
                L Retreat.
                F Hold.
                > L sixte closed | F sixte closed | at ?
                ! L NotRecovered[what=GOES_BACK]
                = On guard in sixte, blades apart, at advance-lunge distance.
                L Lunge.
                F Lunge.
                > L sixte closed, lunge | F sixte closed, lunge | at 0
                ! F BothLunge
                = On guard in sixte, blades apart, at advance-lunge distance.
                L Lunge.
                F Hold.
                L Hold.
                F Lunge.
                > L sixte closed, lunge | F sixte closed, lunge | at 0
                = On guard in sixte, blades apart, at lunge distance.
                L Half lunge.
                F Hold.
                > L sixte closed, lunge | F sixte closed | at ?
                = On guard in sixte, blades apart, at lunge distance.
                L Flèche.
                F Hold.
                > L sixte closed | F sixte closed | at ?
                = sabre On guard in tierce, blades apart, at lunge distance.
                L Flèche.
                F Hold.
                > L tierce closed | F tierce closed | at ?
                ! L RearFootPasses
                = sabre On guard in tierce, blades apart, at lunge distance.
                L Cross step forward.
                F Cross step back.
                > L tierce closed | F tierce closed | at 1
                ! L RearFootPasses
                = On guard in sixte, blades engaged, at lunge distance.
                L Step back out of distance.
                F Hold.
                > L sixte closed | F sixte closed | at 2+
                = On guard in sixte, blades engaged, at lunge distance.
                L Come to attention.
                F Hold.
                > L ? open, standing | F sixte closed | at 1
                = On guard in sixte, blades engaged, at lunge distance.
                L Return to guard in sixte.
                F Hold.
                > L sixte closed | F sixte closed | at 1 | blades high-outside
                = On guard in sixte, blades engaged, at lunge distance.
                L Return to guard in quarte.
                F Hold.
                > L quarte closed | F sixte closed | at 1 | blades ?
                = On guard in sixte, blades engaged, at lunge distance.
                L Lunge.
                F Hold.
                L Recover on guard in sixte.
                F Hold.
                > L sixte closed | F sixte closed | at 1 | blades ?
                = On guard in sixte, blades engaged, at lunge distance.
                L Return to guard in quarte, blades apart.
                F Hold.
                > L quarte closed | F sixte closed | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Return to guard in quarte, blades engaged.
                F Hold.
                > L quarte closed | F sixte closed | at 1 | blades high-inside
                = On guard in sixte, blades apart, at lunge distance.
                L Engage in quarte.
                F Hold.
                L Return to guard in sixte.
                F Hold.
                > L sixte closed | F sixte closed | at 1
                """);
    }
}
