package org.drillwright.phrase;

import java.util.stream.Stream;

/** Attacks whose first movement draws a parry and whose second goes round it, over one count and the next. */
class CompoundAttackTest implements Staged {

    static Stream<Scene> scenes() {
        return Scene.in("""
                = On guard in sixte, blades engaged, at lunge distance.
                L One-two to the high outside line with a lunge.
                F Parry quarte.
                > L sixte open, arm to high-outside, lunge | F quarte closed, reaching | at 0 | blades ? | on F high-outside, shown in high-inside, drawn | right F quarte, of a feint
                L Hold the lunge.
                F Parry sixte.
                > L sixte open, arm to nothing, lunge | F sixte closed | at 0 | blades high-outside held by F | right F sixte
                = On guard in sixte, blades engaged, at lunge distance.
                L One-two to the high outside line with a lunge.
                F Parry quarte.
                L Hold the lunge.
                F Take the touch.
                > L sixte open, arm to high-outside, lunge | F quarte closed, reaching | at 0 | blades ?
                = On guard in sixte, blades engaged, at lunge distance.
                L One-two to the high outside line with a lunge.
                F Parry quarte.
                L Hold the lunge.
                F Hold.
                > L sixte open, arm to high-outside, lunge | F quarte closed, reaching | at 0 | blades ?
                = On guard in sixte, blades engaged, at lunge distance.
                L One-two to the high outside line with a lunge.
                F Parry quarte.
                L Hold the lunge.
                F Advance.
                > L sixte open, arm to high-outside, lunge | F quarte closed, reaching | at -1 | blades ? | right F quarte, of a feint
                ! on F NotOwnedTo[arrival=PAST_THE_PARRY]
                = On guard in sixte, blades engaged, at lunge distance.
                L One-two to the high outside line with a lunge.
                F Parry circular sixte.
                > L sixte open, arm to high-outside, lunge | F sixte closed, reaching | at 0 | blades ? | on F high-outside, shown in high-inside, drawn | right F sixte, of a feint, round
                = On guard in sixte, blades engaged, at lunge distance.
                L One-two to the high outside line with a lunge.
                F Parry octave.
                > L sixte open, arm to nothing, lunge | F octave closed | at 0 | blades low-outside held by F | right F octave
                ! F ParryMisses[position=OCTAVE, kind=UNSTATED, attacked=HIGH_OUTSIDE, from=SIXTE, firm=true]
                = On guard in sixte, blades engaged, at lunge distance.
                L One-two to the high inside line with a lunge.
                F Take the touch.
                > L sixte open, arm to high-inside, lunge | F sixte closed | at 0 | blades high-outside
                ! L EndsElsewhere[path=ONE_TWO, from=HIGH_OUTSIDE, expected=HIGH_OUTSIDE, named=HIGH_INSIDE]
                = On guard in sixte, blades engaged, at lunge distance.
                L Double to the high inside line with a lunge.
                F Parry circular sixte.
                > L sixte open, arm to high-inside, lunge | F sixte closed, reaching | at 0 | blades ? | on F high-inside, shown in high-inside, drawn | right F sixte, of a feint, round
                L Hold the lunge.
                F Parry quarte.
                > L sixte open, arm to nothing, lunge | F quarte closed | at 0 | blades high-inside held by F | right F quarte
                = On guard in octave, blades apart, at lunge distance.
                L Extend to the high inside line.
                F Hold.
                L One-two to the high outside line with a lunge.
                F Parry sixte.
                * L octave open, arm to high-outside, lunge | F octave closed | at 0 | on F high-outside
                > L octave open, arm to nothing, lunge | F sixte closed | at 0 | blades high-outside held by F | right F sixte
                = On guard in sixte, blades engaged, at lunge distance.
                L Feint with a disengage to the high inside line.
                F Parry circular sixte.
                > L sixte open, arm to high-inside | F sixte closed, reaching | at 1 | blades ? | right F sixte, of a feint, round
                L Counter-disengage to the high inside line with a lunge.
                F Take the touch.
                > L sixte open, arm to high-inside, lunge | F sixte closed, reaching | at 0
                = On guard in sixte, blades engaged, at lunge distance.
                L One-two to the high outside line with a lunge.
                F Half-circular parry of quarte.
                > L sixte open, arm to high-outside, lunge | F quarte closed, reaching | at 0 | blades ? | on F high-outside, shown in high-inside, drawn | right F quarte, of a feint
                ! F KindDiffers[from=SIXTE, to=QUARTE, called=HALF_CIRCULAR, is=SIMPLE]
                """);
    }
}
