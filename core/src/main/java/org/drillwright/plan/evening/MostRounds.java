package org.drillwright.plan.evening;

import java.util.List;
import java.util.OptionalInt;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.plan.lesson.DrillLoad;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Person;

/** How many rounds of partners a drill may be given where the instructor wants as many as fit. */
record MostRounds(ClassBrief brief, List<Drill> drills, List<Person> students, Knowledge knowledge) {

    /** Those asked for; else as many as there are new partners to be had; one where nobody has a partner. */
    int of(DrillLoad load) {
        OptionalInt asked = brief.wanted(load.drill()).rounds();
        if (asked.isPresent() || brief.rounds().isPresent()) {
            return load.rounds();
        }
        return isPartnered(load.drill()) ? Math.max(1, partners(load.drill())) : 1;
    }

    private boolean isPartnered(String id) {
        return drills.stream().anyMatch(drill -> drill.id().equals(id) && drill.form() == Form.PARTNER);
    }

    /** The longest run without a repeat: with as many who know the drill as are new or more, one for each who knows it. */
    private int partners(String drill) {
        int present = students.size();
        int fresh = brief.mode() == Mode.TRAINING
                ? 0
                : (int) students.stream()
                        .filter(student -> !knowledge.knows(student.name(), drill))
                        .count();
        int odd = present % 2;
        int knowing = present - fresh + odd;
        return fresh == 0 ? present + odd - 1 : Math.max(fresh, knowing);
    }
}
