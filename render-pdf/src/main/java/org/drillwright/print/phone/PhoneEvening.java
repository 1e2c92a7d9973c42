package org.drillwright.print.phone;

import java.util.function.Function;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.pair.Round;

/**
 * What the parts of an evening's page are made of.
 *
 * @param drills what each drill is called, by its id
 */
record PhoneEvening(KeptPlan plan, EveningPeople people, Function<String, EveningDrill> drills, Voice voice) {

    /** The title of the drill that a round works. */
    void drill(Html html, Round round) {
        EveningDrill drill = drills.apply(round.drill());
        voice.author(html, drill.title(), drill.tag());
    }

    /** What a place is called in a round: in lines that walk it is a post. */
    PhoneText place(int round) {
        return plan.walks().stream().anyMatch(walk -> walk.holds(round)) ? PhoneText.POST : PhoneText.PLACE;
    }
}
