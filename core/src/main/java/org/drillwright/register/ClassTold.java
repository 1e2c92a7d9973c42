package org.drillwright.register;

import java.time.LocalDate;
import java.util.List;

/**
 * What the record is to tell of a class.
 *
 * @param named the class
 * @param plan the mark of the plan that was worked
 * @param worked who was there and who worked with whom: all of it, once for each time
 * @param signedOff who knows a drill now; these are only added
 * @param notSignedOff sign-offs of that day that are taken back
 * @param signsOnly whether only sign-offs were told: then what is on record of the class holds, and what was worked is
 *     added only if nothing is
 */
public record ClassTold(
        LocalDate date,
        String named,
        String plan,
        List<Entry> worked,
        List<Entry> signedOff,
        List<Entry> notSignedOff,
        boolean signsOnly) {

    public ClassTold {
        worked = List.copyOf(worked);
        signedOff = List.copyOf(signedOff);
        notSignedOff = List.copyOf(notSignedOff);
    }
}
