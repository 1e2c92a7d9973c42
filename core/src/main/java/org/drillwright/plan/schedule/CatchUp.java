package org.drillwright.plan.schedule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What some of a group have missed, and how they get it.
 *
 * @param on when it comes again; they are new to it there
 * @param needed the class before which they have to have worked it with a helper, as it isn't on before what needs it
 */
public record CatchUp(String drill, List<String> people, Optional<LocalDate> on, Optional<LocalDate> needed) {

    public CatchUp {
        people = List.copyOf(people);
    }
}
