package org.drillwright.plan.evening;

import java.util.List;
import java.util.OptionalInt;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.plan.lesson.DrillLoad;
import org.drillwright.plan.pair.Pairing;
import org.drillwright.plan.pair.PairingRequest;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.Mode;

/** How many rounds of partners a drill may be given where the instructor wants as many as fit. */
record MostRounds(ClassBrief brief, List<Drill> drills, PairingRequest request) {

    /** Those asked for; else as many as there are new partners to be had; one where nobody has a partner. */
    int of(DrillLoad load) {
        OptionalInt asked = brief.wanted(load.drill()).rounds();
        if (asked.isPresent() || brief.rounds().isPresent()) {
            return load.rounds();
        }
        return isPartnered(load.drill()) ? Pairing.longestRun(request, load.drill(), hoped(load.drill())) : 1;
    }

    private boolean isPartnered(String id) {
        return drills.stream().anyMatch(drill -> drill.id().equals(id) && drill.form() == Form.PARTNER);
    }

    /**
     * The longest run without a repeat if nobody is kept apart: with as many who know the drill as are new or more, one for
     * each who knows it; where it is new to all, as where all know it.
     */
    private int hoped(String drill) {
        int present = request.students().size();
        int fresh = brief.mode() == Mode.TRAINING
                ? 0
                : (int) request.students().stream()
                        .filter(student -> request.isNew(student.name(), drill))
                        .count();
        int odd = present % 2;
        int knowing = present - fresh + odd;
        boolean alike = fresh == 0 || fresh == present;
        return Math.max(1, alike ? present + odd - 1 : Math.max(fresh, knowing));
    }
}
