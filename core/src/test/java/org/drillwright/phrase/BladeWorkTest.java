package org.drillwright.phrase;

import java.util.stream.Stream;

/** What is done to the blade: who closes a line afterwards, where the blades touch, and who holds the contact. */
class BladeWorkTest implements Staged {

    static Stream<Scene> scenes() {
        return Scene.in("""
                = On guard in quarte, blades engaged, at lunge distance.
                L Beat the blade.
                F Hold.
                > L quarte closed | F quarte open, reaching | at 1
                = On guard in quarte, blades engaged, at lunge distance.
                L Expel the blade.
                F Hold.
                > L quarte closed | F quarte open, reaching | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Beat in quarte.
                F Hold.
                > L quarte closed | F sixte open, reaching | at 1
                = On guard in quarte, blades engaged, at lunge distance.
                L Press the blade.
                F Hold.
                > L quarte closed | F quarte open | at 1 | blades high-inside held by L
                = On guard in quarte, blades engaged, at lunge distance.
                L Press the blade.
                F Return the pressure.
                > L quarte closed | F quarte closed, reaching | at 1 | blades high-inside held by L
                = On guard in quarte, blades engaged, at lunge distance.
                L Hold.
                F Bind the blade.
                > L quarte open | F quarte closed | at 1 | blades high-inside held by F
                = On guard in sixte, blades apart, at lunge distance.
                L Engage in sixte.
                F Hold.
                > L sixte closed | F sixte closed | at 1 | blades high-outside held by L | changed by L from nothing
                = On guard in quarte, blades engaged, at lunge distance.
                L Hold.
                F Change the engagement.
                > L quarte closed | F sixte closed | at 1 | blades high-outside held by F | changed by F from high-inside
                = On guard in octave, blades engaged, at lunge distance.
                L Change the engagement.
                F Hold.
                > L septime closed | F octave closed | at 1 | blades low-inside held by L | changed by L from low-outside
                L Change the engagement.
                F Hold.
                > L octave closed | F octave closed | at 1 | blades low-outside held by L | changed by L from low-inside held by L
                = On guard in tierce, blades engaged, at lunge distance.
                L Change the engagement.
                F Hold.
                > L quarte closed | F tierce closed | at 1 | blades high-inside held by L | changed by L from high-outside
                = On guard in quarte, blades engaged, at lunge distance.
                L Leave the blade.
                F Hold.
                > L ? open | F quarte closed | at 1
                = On guard in sixte, blades apart, at lunge distance.
                L Open the outside line.
                F Invite in quarte.
                > L ? open | F quarte closed | at 1
                """);
    }
}
