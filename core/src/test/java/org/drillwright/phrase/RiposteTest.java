package org.drillwright.phrase;

import java.util.stream.Stream;

/**
 * Who has the right to riposte, and what a riposte and a counter-riposte lead to. The right after the Technical Rules,
 * t.11: the riposte follows the parry.
 */
class RiposteTest implements Staged {

    static Stream<Scene> scenes() {
        return Scene.in("""
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry quarte.
                L Hold the lunge.
                F Riposte straight to the high inside line.
                > L sixte open, arm to nothing, lunge | F quarte open, arm to high-inside | at 0 | blades high-inside held by F
                ! L HoldUnderAttack
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry quarte.
                L Hold the lunge and parry quarte.
                F Riposte straight to the high inside line.
                > L quarte closed, lunge | F quarte open, arm to nothing | at 0 | blades high-inside held by L | right L quarte, against riposte
                L Counter-riposte straight to the high inside line.
                F Take the touch.
                > L quarte open, arm to high-inside, lunge | F quarte open, arm to nothing | at 0 | blades high-inside held by L
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry quarte.
                L Parry quarte.
                F Riposte straight to the high inside line.
                > L quarte closed, lunge | F quarte open, arm to nothing | at 0 | blades high-inside held by L | right L quarte, against riposte
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry quarte.
                L Take the touch.
                F Counter-riposte straight to the high inside line.
                > L sixte open, arm to nothing, lunge | F quarte open, arm to high-inside | at 0 | blades high-inside held by F
                ! F NoParryBefore[counter=true]
                = On guard in sixte, blades apart, at extension distance.
                L Take the touch.
                F Riposte to the high inside line.
                > L sixte closed | F sixte open, arm to high-inside | at 0
                ! F NoParryBefore[counter=false]
                = On guard in sixte, blades apart, at lunge distance.
                L Parry quarte.
                F Thrust to the high inside line with a lunge.
                > L quarte closed | F sixte open, arm to nothing, lunge | at 0 | blades high-inside held by L | right L quarte
                L Take the touch.
                F Riposte to the low inside line.
                > L quarte closed | F sixte open, arm to low-inside, lunge | at 0 | blades high-inside held by L
                ! F NoParryBefore[counter=false]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry quarte.
                L Hold the lunge.
                F Feint a riposte to the high inside line.
                > L sixte open, arm to nothing, lunge | F quarte open, arm to high-inside | at 0 | blades high-inside held by F | on L high-inside, riposte, threat, along the blade
                L Take the touch.
                F Riposte to the low inside line.
                > L sixte open, arm to nothing, lunge | F quarte open, arm to low-inside | at 0 | blades high-inside held by F
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry quarte.
                L Hold the lunge and parry quarte.
                F Feint a riposte to the high inside line.
                > L quarte closed, reaching, lunge | F quarte open, arm to high-inside | at 0 | blades ? | right L quarte, against riposte, of a feint
                L Take the touch.
                F Riposte to the low inside line.
                > L quarte closed, reaching, lunge | F quarte open, arm to low-inside | at 0 | blades ?
                = On guard in sixte, blades apart, at lunge distance.
                L Feint to the high inside line.
                F Parry quarte.
                > L sixte open, arm to high-inside | F quarte closed, reaching | at 1 | blades ? | right F quarte, of a feint
                L Riposte to the low inside line with a lunge.
                F Take the touch.
                > L sixte open, arm to low-inside, lunge | F quarte closed, reaching | at 0 | blades ?
                ! L NoParryBefore[counter=false]
                = On guard in sixte, blades apart, at lunge distance.
                L Feint to the high inside line.
                F Hold.
                L Riposte to the low inside line with a lunge.
                F Take the touch.
                > L sixte open, arm to low-inside, lunge | F sixte closed | at 0
                ! L NoParryBefore[counter=false]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry quarte.
                L Take the touch.
                F Riposte straight to the high outside line.
                > L sixte open, arm to nothing, lunge | F quarte open, arm to high-outside | at 0 | blades high-inside held by F
                ! F NotStraight[parry=QUARTE, expected=HIGH_INSIDE, named=HIGH_OUTSIDE]
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry quarte.
                L Take the touch.
                F Riposte straight to the high inside line with a lunge.
                > L sixte open, arm to nothing, lunge | F quarte open, arm to high-inside, lunge | at -1 | blades high-inside held by F
                ! F LungeTooClose
                = On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry quarte.
                L Take the touch.
                F Riposte straight.
                * L sixte open, arm to nothing, lunge | F quarte open, arm to high-inside | at 0 | blades high-inside held by F | on L high-inside, riposte, along the blade
                > L sixte open, arm to nothing, lunge | F quarte open, arm to high-inside | at 0 | blades high-inside held by F
                = opposite On guard in sixte, blades apart, at lunge distance.
                L Thrust to the high inside line with a lunge.
                F Parry quarte.
                L Take the touch.
                F Riposte straight.
                * L sixte open, arm to nothing, lunge | F quarte open, arm to high-outside | at 0 | blades high-outside/high-inside held by F | on L high-outside, riposte, along the blade
                > L sixte open, arm to nothing, lunge | F quarte open, arm to high-outside | at 0 | blades high-outside/high-inside held by F
                = On guard in sixte, blades apart, at lunge distance.
                L Parry quarte.
                F Thrust to the high inside line with a lunge.
                L Take the touch.
                F Riposte straight to the high outside line.
                > L quarte closed | F sixte open, arm to high-outside, lunge | at 0 | blades high-inside held by L
                ! F NoParryBefore[counter=false]
                = On guard in sixte, blades apart, at lunge distance.
                L Parry quarte.
                F Thrust to the high inside line with a lunge.
                L Take the touch.
                F Riposte straight.
                > L quarte closed | F sixte open, arm to ?, lunge | at 0 | blades high-inside held by L
                ! F NoParryBefore[counter=false]
                ? F line
                """);
    }
}
