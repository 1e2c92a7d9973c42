package org.drillwright.phrase;

import java.util.stream.Stream;

/** The state in which the first count begins, out of the words of the start and the opening before it. */
class StartStateTest implements Staged {

    static Stream<Scene> scenes() {
        return Scene.in("""
                = On guard in sixte, blades apart, at lunge distance.
                > L sixte closed | F sixte closed | at 1
                = On guard in quarte, blades engaged, at extension distance.
                > L quarte closed | F quarte closed | at 0 | blades high-inside
                = opposite On guard in quarte, blades engaged, at lunge distance.
                > L quarte closed | F quarte closed | at 1 | blades high-inside/high-outside
                = Leader on guard in quarte, follower on guard in sixte, blades apart, at lunge distance.
                > L quarte closed | F sixte closed | at 1
                = On guard in octave, blades apart, out of distance.
                > L octave closed | F octave closed | at 2+
                = On guard in octave, blades apart, at close distance.
                > L octave closed | F octave closed | at close
                = At lunge distance.
                > L sixte closed | F sixte closed | at 1 | blades ?
                = On guard, blades engaged, at lunge distance.
                > L sixte closed | F sixte closed | at 1 | blades ?
                = On guard in sixte gorbly, blades apart, at lunge distance.
                > L ? ?, arm? to ? | F ? ?, arm? to ? | at 1 | on L ? | on F ? | right ? | changed by F from ?
                = On guard in sixte, gorbly blorp, blades apart, at lunge distance.
                > L sixte closed, arm? to ? | F sixte closed, arm? to ? | at 1
                = On guard in sixte, blades apart, at gorbly distance.
                > L sixte closed, arm? to ? | F sixte closed, arm? to ? | at ?
                = On guard in sixte, blades gorbly, at lunge distance.
                > L sixte closed, arm? to ? | F sixte closed, arm? to ? | at 1 | blades ?
                = Leader on guard in gorbly, follower on guard in quarte, blades apart, at lunge distance.
                > L ? ?, arm? to ? | F quarte closed | at 1 | on F ? | right ? | changed by L from ?
                = On guard in sixte, quarte gorbly, blades apart, at lunge distance.
                > L ? ?, arm? to ? | F ? ?, arm? to ? | at 1 | on L ? | on F ? | right ? | changed by F from ?
                """);
    }
}
