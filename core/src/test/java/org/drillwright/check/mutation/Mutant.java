package org.drillwright.check.mutation;

import java.util.List;
import org.drillwright.model.Drill;

/**
 * A correct drill with one thing spoilt.
 *
 * @param place what was spoilt, in words
 * @param harmless whether the operator's own rule, stated beforehand, says that it is still correct
 * @param expected any of these notices it
 */
record Mutant(String place, Drill drill, boolean harmless, List<Expected> expected) {

    Mutant {
        expected = List.copyOf(expected);
    }

    static Mutant spoilt(String place, Redraft redraft, Expected... expected) {
        return new Mutant(place, redraft.drill(), false, List.of(expected));
    }

    /** One turn is written anew. */
    static Mutant turn(Scene scene, Scene.At at, String words, Expected... expected) {
        return spoilt(at + ": " + words, scene.redraft().turn(at.step(), at.side(), words), expected);
    }

    Mutant harmlessIf(boolean rule) {
        return new Mutant(place, drill, rule, expected);
    }
}
