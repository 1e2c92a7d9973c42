package org.drillwright.plan.kept;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.pair.Walk;
import org.drillwright.wording.Message;

/**
 * What a plan that was printed says: whole in itself, so that it can be read after the roster and the drills have changed.
 *
 * @param named the class
 * @param after the plan that this one took over from
 * @param worked rounds at the beginning that were taken over as worked
 * @param cards each drill of the rounds with the mark of its card
 * @param here everyone who is here for some of the time, in the roster's order
 * @param helpers who could work with somebody left over in the last round, the instructor first
 * @param walks the rounds that are walked by two lines
 */
public record KeptPlan(
        String named,
        LocalDate date,
        Optional<PlanMark> after,
        int worked,
        Map<String, String> cards,
        List<String> here,
        List<String> helpers,
        List<Round> rounds,
        List<Walk> walks) {

    public KeptPlan {
        cards = Map.copyOf(cards);
        here = List.copyOf(here);
        helpers = List.copyOf(helpers);
        rounds = List.copyOf(rounds);
        walks = List.copyOf(walks);
    }

    /** A plan of a class in which nobody was and nothing was worked. */
    public static KeptPlan ofNothing(String named, LocalDate date) {
        return new KeptPlan(named, date, Optional.empty(), 0, Map.of(), List.of(), List.of(), List.of(), List.of());
    }

    /** The same for other people. */
    public KeptPlan with(List<String> others) {
        return new KeptPlan(named, date, after, worked, cards, others, helpers, rounds, walks);
    }

    /** @param order the names of the roster in their order, who stands in no round among them */
    public static List<String> hereIn(List<Round> rounds, List<String> order) {
        return order.stream()
                .filter(name ->
                        rounds.stream().anyMatch(round -> round.groupOf(name).isPresent()))
                .toList();
    }

    /** Its mark, of so many signs. */
    public PlanMark mark(int length) {
        return PlanMark.of(KeptText.of(this), length);
    }

    /** Whether a mark is this plan's own: it is not where somebody has changed what it says. */
    public boolean fits(PlanMark mark) {
        return mark(mark.signs().length() - 1).equals(mark);
    }

    /** Everyone it names, helpers too. */
    public Set<String> names() {
        Set<String> names = new LinkedHashSet<>(here);
        names.addAll(helpers);
        rounds.forEach(round -> round.groups().forEach(group -> names.addAll(group.everyone())));
        return names;
    }

    /** What can't be so, as the beginning of a sentence; nothing if all of it can. */
    public Optional<Message> fault() {
        for (Round round : rounds) {
            Set<String> seen = new HashSet<>();
            for (Group group : round.groups()) {
                for (String person : group.people()) {
                    if (!seen.add(person)) {
                        return Optional.of(Message.of(KeptPlan.class, "twice", person, round.number()));
                    }
                }
            }
        }
        return Optional.empty();
    }
}
